// What a piece costs and what to ask for it, for several numbers of pieces side by side.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { value_at } from "../documents/editing";
import { question_now, quote_again, quote_now } from "../documents/quoting";
import { open_up, state, wish_quote, type QuoteWish } from "../documents/state";
import { danger_sign } from "../figures/dangers";
import { id_of, said_beneath } from "../forms/field";
import { choice, go_on, to_id, unfold } from "../forms/form_parts";
import { has_prices } from "../forms/money_said";
import { has_studio } from "../forms/shared";
import type { Quote } from "../program/answers";
import { wording, type Complaint } from "../program/api";
import type { Document } from "../program/json";
import { is_bare_number } from "../program/numbers";
import { go_to_field, keep_in_studio, place_words } from "./complaint";
import { quote_papers } from "./quote_papers";
import { quote_picture } from "./quote_picture";
import { side_by_side, sold_at_a_loss } from "./quote_table";
import { show } from "./where";

export function quote_panel(): TemplateResult {
  return html`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${has_prices() ? asked_and_told() : no_prices()}
  </section>`;
}

const no_prices = (): TemplateResult =>
  html`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${() => to_studio()}>To the prices paid</button>`;

/** In the set-up, and there to a place in it. */
function to_studio(form?: string, id = "lane-studio"): void {
  open_up("set-up studio");
  if (form) unfold("studio", form);
  void show("set-up");
  requestAnimationFrame(() => go_on(to_id(id))); // after the view has led the keyboard to its title
}

function asked_and_told(): TemplateResult {
  const { quote, complaint, is_old } = quote_now();
  return html`${quote ? html`${dangers(quote)} ${sold_at_a_loss(quote)}` : nothing}
    <div class="row">${numbers_field(complaint)}</div>
    ${own_ways() ? nothing : price_for_now(quote?.currency, complaint)} ${complaint ? said(complaint) : nothing}
    ${quote ? told(quote, is_old) : complaint ? nothing : html`<p class="hint" role="status">Asking what it costs ...</p>`}`;
}

/** Of each number, the run's own among them; what is the same of several, once. */
function dangers({ numbers }: Quote): TemplateResult | typeof nothing {
  const all = [...new Set(numbers.flatMap((one) => one.dangers))];
  if (!all.length) return nothing;
  const of = (text: string) => numbers.filter((one) => one.dangers.includes(text)).map((one) => one.sell);
  return html`<div class="dangers">
    ${all.map((text) => html`<p class="danger"><strong>${danger_sign}</strong> ${of(text).join(", ")} to sell: ${text}</p>`)}
  </div>`;
}

const own_fields = ["sell", "margin", "markup", "price"];

export const at_own_field = (complaint: Complaint | undefined, name: string): string | undefined =>
  complaint?.file === "" && complaint.field === name ? wording(complaint) : undefined;

/** What has no field of its own here. */
function said(complaint: Complaint): TemplateResult | typeof nothing {
  if (own_fields.some((name) => at_own_field(complaint, name))) return nothing;
  return html`<p class="alarm" role="status">${place_words(complaint.field)}${wording(complaint)}</p>
    ${
      complaint.is_fault
        ? html`<button type="button" @click=${quote_again}>Ask again</button>`
        : complaint.field.startsWith("/")
          ? html`<button type="button" @click=${go_to_field}>Go to the field</button>`
          : nothing
    }
    ${keep_in_studio(complaint)}`;
}

interface Plain {
  id: string;
  label: string;
  unit?: string;
  value: string;
  hint?: string;
  complaint?: string;
  take: (text: string) => void;
  left?: () => void;
}

/** A field of the moment, which is of no file. */
export function plain_field({ id, label, unit, value, hint, complaint, take, left }: Plain): TemplateResult {
  return html`<div class="field ${complaint ? "wants" : ""}">
    <label for=${id} data-said=${unit ?? nothing}>${label}</label>
    <input
      id=${id}
      .value=${live(value)}
      @input=${(event: Event) => take((event.target as HTMLInputElement).value)}
      @blur=${() => left?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${complaint ? "true" : "false"}
      aria-describedby=${complaint || hint ? `${id}-said` : nothing}
    />
    ${said_beneath(id, complaint, hint)}
  </div>`;
}

function numbers_field(complaint?: Complaint): TemplateResult {
  const { numbers } = state.quote_wish;
  return plain_field({
    id: "quote-numbers",
    label: "Numbers of pieces",
    value: numbers ?? String(state.plan?.pieces.sell ?? ""),
    hint: "One, or several to compare: 12, 24, 48",
    complaint: at_own_field(complaint, "sell"),
    take: (text) => wish_quote({ numbers: text }),
    left: () => {
      if (numbers !== undefined && !numbers.trim()) wish_quote({ numbers: undefined });
    },
  });
}

const to_ways = (): void =>
  has_studio() ? to_studio("money asking", `${id_of("studio", "/asking")}-name`) : to_studio();

export const own_ways = (): boolean => Object.keys((value_at("studio", "/asking") ?? {}) as Document).length > 0;

type By = NonNullable<QuoteWish["by"]>;

const ways: [By, string][] = [
  ["margin", "By a margin"],
  ["markup", "By a markup"],
  ["price", "A price as set"],
];

const figures: Record<By, { label: string; unit: string }> = {
  margin: { label: "Margin, of the price", unit: "%" },
  markup: { label: "Markup, on the cost", unit: "%" },
  price: { label: "Price of a piece", unit: "" },
};

/** As long as the studio says no way of selling. */
export function price_for_now(currency: string | undefined, complaint?: Complaint): TemplateResult {
  const { by, figure } = state.quote_wish;
  const { label, unit } = figures[by ?? "price"];
  const with_unit = (text: string) => (unit && is_bare_number(text) ? `${text.trim()} ${unit}` : text);
  return html`${choice("A price, for this moment", by, ways, (to) => {
      wish_quote({ by: to, figure: "" });
      go_on(to_id("quote-figure"));
    })}
    ${
      by
        ? html`<div class="row">
            ${plain_field({
              id: "quote-figure",
              label,
              unit: unit || currency,
              value: unit ? figure.replace(/ %$/, "") : figure,
              complaint: at_own_field(complaint, by),
              take: (text) => wish_quote({ figure: with_unit(text) }),
            })}
          </div>`
        : nothing
    }
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${to_ways}>Keep my ways of selling</button>`;
}

function told(quote: Quote, is_old: boolean): TemplateResult {
  const unpriced = [...new Set(quote.numbers.flatMap((one) => one.unpriced))];
  return html`${
    unpriced.length
      ? html`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${unpriced.join(", ")}. The cost leaves it out.
        </p>`
      : nothing
  }
  ${quote.remarks.map((one) => html`<p class="hint">${one}</p>`)} ${side_by_side(quote, is_old)}
  ${worth_making(quote, is_old)} ${quote_picture(quote, is_old)}
  ${quote_papers({ file: state.run.file, question: question_now(), prices: quote.numbers[0].prices, is_old })}`;
}

function worth_making(
  { numbers, steps, pack_steps, pack_steps_untold, gaps, currency }: Quote,
  is_old: boolean,
): TemplateResult {
  const more = (amount: string | null) => (amount === null ? "" : `, ${amount} ${currency} more`);
  return html`<div class="worth-making ${is_old ? "old" : ""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${numbers.flatMap(({ around }) => around.map(({ text }) => html`<li><b>${text}</b></li>`))}
      ${gaps.map(({ from, to, why }) => html`<li><b>${from === to ? from : `${from} to ${to}`} cannot be made: ${why}.</b></li>`)}
    </ul>
    ${
      steps.length
        ? html`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${steps.map((one) => html`<li><b>${one.sell}: ${one.begins}${more(one.more)}</b></li>`)}
            </ul>
          </details>`
        : nothing
    }
    ${
      pack_steps.length || pack_steps_untold.length
        ? html`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${pack_steps.map((one) => html`<li><b>${one.sell}: ${one.shown_as}${more(one.more)} to lay out</b></li>`)}
              ${pack_steps_untold.map(
                ({ from, to, shown_as, why }) =>
                  html`<li><b>${from === to ? from : `${from} to ${to}`}: ${shown_as}, not told: ${why}.</b></li>`,
              )}
            </ul>
          </details>`
        : nothing
    }
  </div>`;
}
