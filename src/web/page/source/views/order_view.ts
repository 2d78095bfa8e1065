// An order: what is wanted and when, what it costs and what to ask for it, and what goes to paper of it.
import { html, nothing, type TemplateResult } from "lit";
import { is_complete, shared_words } from "../documents/order_lines";
import { order_now } from "../documents/order_opening";
import { made_once, order_question, order_quote_again, order_quote_now } from "../documents/order_quoting";
import { amend, state } from "../documents/state";
import { show_trail } from "../documents/stock";
import { set_aside, which_is_to_stay } from "../forms/conflict";
import { is_about, wanting_field } from "../forms/field";
import { reach } from "../forms/form_parts";
import { order_form } from "../forms/order_form";
import type { OrderQuote } from "../program/answers";
import { wording, type Complaint } from "../program/api";
import { day } from "../program/numbers";
import { base_record, type PlannedBatch } from "../recording/base_record";
import { place_words } from "./complaint";
import { days_panel } from "./days_panel";
import { counted } from "../figures/batches";
import { order_costs, order_dangers, orders_at_a_loss, poured_together } from "./order_costs";
import { paper_buttons, paper_size, stem_of, told_of_papers } from "./papers";
import { own_ways, plain_field, price_for_now, at_own_field } from "./quote_panel";
import { quote_papers } from "./quote_papers";
import { ready_told } from "./ready_told";

export function order_view(): TemplateResult {
  const { order } = state;
  if (!order) return html`<h1 tabindex="-1">Order</h1>`;
  const { open } = order;
  const { due } = open.now;
  return html`${which_is_to_stay(open)} ${set_aside(open)}
    <h1 tabindex="-1">${String(open.now.for || "Order")}</h1>
    <p class="aside">${open.file}${due ? `, due ${day(String(due))}` : nothing}</p>
    ${order_form()} ${is_complete(open.now) ? days_panel("order") : nothing}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${is_complete(open.now) ? asked_and_told() : not_yet()}
    </section>
    ${is_complete(open.now) ? sheets() : nothing} ${what_happened()} ${what_it_got()}`;
}

const not_yet = (): TemplateResult =>
  html`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;

function asked_and_told(): TemplateResult {
  const { quote, complaint, is_old } = order_quote_now();
  return html`${quote ? html`${order_dangers(quote)} ${orders_at_a_loss(quote)}` : nothing}
    <div class="row">${times_field(complaint)}</div>
    ${own_ways() ? nothing : price_for_now(quote?.currency, complaint)} ${complaint ? said(complaint) : nothing}
    ${
      quote
        ? html`${ready_told(quote)} ${unpriced(quote)} ${poured_together(quote)} ${order_costs(quote, is_old)}
          ${quote_papers({
            file: order_now().open.file,
            question: order_question(order_now()),
            prices: quote.times[0].prices,
            is_old,
          })}`
        : complaint
          ? nothing
          : html`<p class="hint" role="status">Asking what it costs ...</p>`
    }`;
}

const times_field = (complaint?: Complaint): TemplateResult =>
  plain_field({
    id: "order-times",
    label: "How often it is made",
    value: order_now().times,
    hint: "Once, if nothing is typed; several to compare: 1, 2, 4",
    complaint: at_own_field(complaint, "times"),
    take: (text) => amend(order_now(), { times: text }),
  });

const own_fields = ["times", "margin", "markup", "price"];

/** In the order it is told at its place; in one of its runs or their files the line says which. */
function said(complaint: Complaint): TemplateResult | typeof nothing {
  if (own_fields.some((name) => at_own_field(complaint, name))) return nothing;
  const is_here = is_about("order");
  return html`<p class="alarm" role="status">
      ${is_here ? html`${place_words(complaint.field)}${wording(complaint)}` : complaint.line}
    </p>
    ${
      complaint.is_fault
        ? html`<button type="button" @click=${order_quote_again}>Ask again</button>`
        : is_here && wanting_field()
          ? html`<button type="button" @click=${() => reach(wanting_field())}>Go to the field</button>`
          : nothing
    }`;
}

function unpriced({ times }: OrderQuote): TemplateResult | typeof nothing {
  const all = [...new Set(times.flatMap((one) => one.unpriced))];
  if (!all.length) return nothing;
  return html`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${all.join(", ")}. The cost leaves it out.
  </p>`;
}

/** Beside the records of this folder, by its id or the name of its file. */
function what_it_got(): TemplateResult | typeof nothing {
  const { file, now } = order_now().open;
  if (file.includes("/")) return nothing;
  const id = now.id ? String(now.id) : `file:${file}`;
  return html`<section class="out" aria-labelledby="got-title">
    <h2 id="got-title">What it got</h2>
    <div class="choice">
      <button type="button" @click=${() => show_trail(`order ${id}`, file)}>Its batches and their lots</button>
    </div>
  </section>`;
}

/** To the lines with one word, as a whole. */
function what_happened(): TemplateResult | typeof nothing {
  const { file, now } = order_now().open;
  const words = shared_words(now);
  if (!words.length) return nothing;
  const { made, is_old } = made_once();
  const planned = (word: string): PlannedBatch[] | undefined =>
    made &&
    (made.together.find((one) => one.word === word)?.batches ?? []).flatMap(({ numbers, lines }) =>
      numbers.map((number) => ({
        number,
        lines: lines.map(({ run, pieces }) => `${counted(pieces, "piece")} of ${run}`),
      })),
    );
  return base_record({ order: file, words, planned, is_old });
}

/** What is weighed and done for it: one run after the other. */
function sheets(): TemplateResult {
  const { file, now } = order_now().open;
  const of = { plan: { file, order: now }, paper: state.printing.paper };
  return html`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${paper_size()}
    <div class="choice">
      ${paper_buttons({ words: "Bench sheets", kind: "sheet", file: `${stem_of(file)} sheets`, of }, "strong")}
    </div>
    <p role="status">${told_of_papers()}</p>
  </section>`;
}
