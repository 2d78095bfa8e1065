// Pieces by their batch: what is there of them, whether it is for sale, and what becomes of them.
import { html, nothing, type TemplateResult } from "lit";
import { show_trail, type_in_form } from "../documents/stock";
import { open_record } from "../documents/record_opening";
import type { StockActKind, StockForm } from "../documents/stock_types";
import { state } from "../documents/state";
import { counted } from "../figures/batches";
import type { PiecesInStock, TrailPieces } from "../program/answers";
import { day, days_in_words } from "../program/numbers";
import { act_form, told_of } from "./act_form";
import { field, typed_in } from "./form_field";
import { opened, opener } from "./lots";

export function pieces(): TemplateResult {
  const { pieces: all = [] } = state.stock.list ?? {};
  return html`<section class="shelf-part" aria-labelledby="pieces-title">
    <h2 id="pieces-title">Pieces</h2>
    ${
      all.length
        ? html`<ul class="lots">
            ${all.map(of_batch)}
          </ul>`
        : html`<p class="aside">
            No pieces are there. Those of a batch stand here once its record says how many were made.
          </p>`
    }
  </section>`;
}

const acts: [Exclude<StockActKind, "bought" | "made" | "counted" | "take-have">, string][] = [
  ["sold", "Sold"],
  ["given", "Given away"],
  ["spoilt", "Spoilt"],
  ["counted-pieces", "Counted"],
];

function of_batch(one: PiecesInStock): TemplateResult {
  const { batch, run, made, there } = one;
  return html`<li class="lot pieces-of" data-batch=${batch}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${batch}</b> <span>${run}</span> ${made === null ? nothing : html`<b>${there} there</b>`}
      </p>
      <p class="lot-facts">
        <span>${made === null ? "How many were made is not noted yet" : where_they_are(one)}</span> ${state_of(one)}
      </p>
    </div>
    <div class="lot-acts">
      ${
        made === null
          ? nothing
          : acts.map(([kind, words]) => opener(kind, batch, words, false, { pieces: there }, `pieces of ${batch}`))
      }
      <button type="button" aria-label="Its record: ${batch}" @click=${() => open_record(one.file, one.id)}>
        Its record
      </button>
      <button type="button" aria-label="What is in it: ${batch}" @click=${() => show_trail(`batch ${batch}`)}>
        What is in it
      </button>
    </div>
    ${told_of(batch)} ${acts.map(([kind]) => opened(kind, batch, (form) => form_for(form, one)))}
  </li>`;
}

/** "12 made, 1 rejected, 4 sold". */
export function where_they_are({ made, rejected, sold, given, spoilt, counted: put_right = 0 }: TrailPieces): string {
  const other: [number | undefined, string][] = [
    [rejected, "rejected"],
    [sold, "sold"],
    [given, "given away"],
    [spoilt, "spoilt"],
    [Math.max(put_right, 0), "more by count"],
    [Math.max(-put_right, 0), "fewer by count"],
  ];
  return [`${made ?? 0} made`, ...other.filter(([many]) => many).map(([many, words]) => `${many} ${words}`)].join(", ");
}

function state_of({ cures_until, for_sale, why_not, made }: PiecesInStock): TemplateResult | typeof nothing {
  const until = cures_until ? `cures until ${day(cures_until)} by its formulas` : "";
  if (for_sale) return html`<span>${until ? `◔ noted as ready, and ${until}` : "✓ for sale"}</span>`;
  if (made === null || !why_not) return until ? html`<span>◔ ${until}</span>` : nothing;
  return html`${until ? html`<span>◔ ${until}</span> ` : nothing}<span
      >✗ not for sale: ${days_in_words(why_not)}</span
    >`;
}

const words_of: Record<string, [title: string, act: string, on: string]> = {
  sold: ["Sold", "Record them as sold", "Sold on"],
  given: ["Given away", "Record them as given away", "Given on"],
  spoilt: ["Spoilt", "Record them as spoilt", "Found on"],
  "counted-pieces": ["Counted", "Record the count", "Counted on"],
};

function form_for(form: StockForm, { batch, there = 0 }: PiecesInStock): TemplateResult {
  const { kind } = form;
  const [title, act_words, on] = words_of[kind];
  const is_for_somebody = kind === "sold" || kind === "given";
  return act_form({
    form,
    title: `${title}, of ${batch}: ${there} there`,
    act_words,
    names: [kind, "for", "order", "why", "on"],
    fields: html`${field(form, { name: kind, label: kind === "counted-pieces" ? "Pieces there" : "Pieces", count: true })}
    ${is_for_somebody ? for_whom(form) : field(form, { name: "why", label: "Why" })}
    ${field(form, { name: "on", label: on, kind: "date" })}`,
    act: () => ({
      [kind]: [`${batch}=${typed_in(form, kind) ?? ""}`],
      on: typed_in(form, "on"),
      why: typed_in(form, "why"),
      order: form.typed.order || undefined,
      for: form.typed.order ? undefined : typed_in(form, "for"),
    }),
  });
}

/** One of her orders, or whoever it is. */
function for_whom(form: StockForm): TemplateResult {
  const orders = state.files?.orders.filter(({ shipped }) => !shipped) ?? [];
  const { order } = form.typed;
  const choose = (file: string) => type_in_form(form, { typed: { order: file === order ? "" : file } });
  return html`${
    orders.length
      ? html`<p class="question" id="for-order-${form.kind}">For an order</p>
          <div class="choice words" role="group" aria-labelledby="for-order-${form.kind}">
            ${orders.map(
              ({ file, name, pieces: many, due }) =>
                html`<button
                  type="button"
                  aria-pressed=${file === order ? "true" : "false"}
                  @click=${() => choose(file)}
                >
                  ${name || file}
                  <small
                    >${[many === undefined ? "" : counted(many, "piece"), due ? `due ${day(due)}` : ""].filter(Boolean).join(", ")}</small
                  >
                </button>`,
            )}
          </div>`
      : nothing
  }
  ${order ? nothing : field(form, { name: "for", label: orders.length ? "Or for whom" : "For whom", hint: "may be left blank" })}`;
}
