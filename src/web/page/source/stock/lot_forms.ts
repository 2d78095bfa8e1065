// A lot that came, one that she made of others, and a count of one.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { ask_first, type_in_form } from "../documents/stock";
import type { Source, StockForm } from "../documents/stock_types";
import { state } from "../documents/state";
import type { StockLot } from "../program/answers";
import { in_stock, is_bare_number } from "../program/numbers";
import type { StockAct } from "../program/stock";
import { act_form } from "./act_form";
import { amount_field, amount_typed, units_for, type Counted } from "./amount";
import { field, id_of, offered, said_of, typed_in } from "./form_field";
import { name_of_lot } from "./seen";

const names = () => state.stock.list?.names;

const when = (form: StockForm, label: string): TemplateResult =>
  html`${field(form, { name: "on", label, kind: "date" })}
  ${field(form, { name: "best-before", label: "Best before, if it says so", kind: "date" })}`;

export function bought_form(form: StockForm): TemplateResult {
  const currency = names()?.currency;
  return act_form({
    form,
    title: "A lot that came",
    act_words: "Record it as bought",
    names: ["bought", "pack", "packs", "price", "seller", "lot", "on", "best-before"],
    fields: html`${field(form, { name: "bought", label: "Material" })}
      ${offered(form, "bought", "Materials", names()?.materials ?? [])}
      ${amount_field(form, "pack", "One pack holds", "either")}
      <div class="row">
        ${field(form, { name: "packs", label: "Packs", count: true, hint: "left blank: one" })}
        ${field(form, {
          name: "price",
          label: `Price of one pack${currency ? `, ${currency}` : ""}`,
          number: true,
          hint: currency ? "left blank: unpriced" : 'with its currency, as "27.50 EUR"; left blank: unpriced',
        })}
      </div>
      ${field(form, { name: "seller", label: "Seller" })} ${offered(form, "seller", "Sellers", names()?.sellers ?? [])}
      ${field(form, { name: "lot", label: "Lot number", hint: "as on the pack; left blank: one of your own" })}
      <div class="row">${when(form, "Bought on")}</div>`,
    act: () => {
      const pack = amount_typed(form, "pack", "either");
      return pack
        ? { bought: typed_in(form, "bought") ?? "", pack, price: typed_in(form, "price"), ...of_lot(form) }
        : undefined;
    },
  });
}

const of_lot = (form: StockForm): Partial<StockAct> => ({
  packs: typed_in(form, "packs"),
  seller: typed_in(form, "seller"),
  lot: typed_in(form, "lot"),
  on: typed_in(form, "on"),
  "best-before": typed_in(form, "best-before"),
});

export function made_form(form: StockForm): TemplateResult {
  return act_form({
    form,
    title: "A lot that you made of others: lye solution, a blend",
    act_words: "Record it as made",
    names: ["made", "pack", "of", "lot", "on", "best-before"],
    fields: html`${field(form, { name: "made", label: "What it is" })}
      ${offered(form, "made", "Made ahead", names()?.made_ahead ?? [])}
      ${amount_field(form, "pack", "It makes", "either")} ${sources(form)}
      ${field(form, { name: "lot", label: "Lot number", hint: "left blank: one of your own" })}
      <div class="row">${when(form, "Made on")}</div>`,
    act: () => {
      const pack = amount_typed(form, "pack", "either");
      const of = pack ? sources_typed(form) : undefined;
      return of ? { made: typed_in(form, "made") ?? "", pack, of, ...of_lot(form) } : undefined;
    },
  });
}

const all_lots = (): StockLot[] => state.stock.list?.materials.flatMap(({ lots }) => lots) ?? [];

/** What of which lot is in it. */
function sources(form: StockForm): TemplateResult {
  const put = (i: number, what: Partial<Source>) =>
    type_in_form(form, { sources: form.sources.map((one, k) => (k === i ? { ...one, ...what } : one)) });
  const add = () => type_in_form(form, { sources: [...form.sources, { lot: "", amount: "", unit: "" }] });
  const said = said_of(form, "of");
  return html`<div class="made-of" role="group" aria-label="What is in it">
    ${form.sources.map((one, i) => source(form, one, i, (what) => put(i, what)))}
    <button type="button" @click=${add}>
      ${form.sources.length ? "And of another lot" : "What of which lot is in it"}
    </button>
    <p class=${said ? "complaint" : "hint"} id=${id_of(form, "of")} tabindex="-1">
      ${said ?? "Each lot loses what you took of it. Named none, it is of lots that are unknown."}
    </p>
  </div>`;
}

function source(form: StockForm, one: Source, i: number, put: (what: Partial<Source>) => void): TemplateResult {
  const id = id_of(form, `of-${i}`);
  const lot = all_lots().find((other) => name_of_lot(other) === one.lot);
  const units = units_for(counted_as(lot));
  const take_out = () => type_in_form(form, { sources: form.sources.filter((_, k) => k !== i) });
  return html`<div class="row">
    <div class="field">
      <label for="${id}-lot">Lot</label>
      <select id="${id}-lot" .value=${live(one.lot)} @change=${(event: Event) => put({ lot: value_of(event) })}>
        <option value="" ?selected=${!one.lot}>Choose</option>
        ${all_lots().map(
          (other) =>
            html`<option value=${name_of_lot(other)} ?selected=${name_of_lot(other) === one.lot}>
              ${shown_name(other)}, lot ${other.lot}: ${in_stock(state.units, other.left)}
            </option>`,
        )}
      </select>
    </div>
    <div class="field">
      <label for="${id}-amount">So much of it</label>
      <input
        id="${id}-amount"
        inputmode="decimal"
        autocomplete="off"
        .value=${live(one.amount)}
        @input=${(event: Event) => put({ amount: value_of(event) })}
      />
    </div>
    <div class="choice" role="group" aria-label="Unit of what is taken, ${i + 1}">
      ${units.map(
        (unit) =>
          html`<button type="button" aria-pressed=${unit === one.unit ? "true" : "false"} @click=${() => put({ unit })}>
            ${unit}
          </button>`,
      )}
    </div>
    <button type="button" aria-label="Leave out lot ${i + 1}" @click=${take_out}>Leave out</button>
  </div>`;
}

const value_of = (event: Event): string => (event.target as HTMLInputElement | HTMLSelectElement).value;

const counted_as = (lot: StockLot | undefined): Counted =>
  lot === undefined ? "either" : lot.left.pieces === undefined ? "mass" : "pieces";

export function shown_name({ material, make }: StockLot): string {
  const of = state.stock.list?.materials.find((one) => one.material === material);
  return make ?? of?.shown_as ?? material;
}

function sources_typed(form: StockForm): string[] | undefined {
  const typed: string[] = [];
  for (const { lot, amount, unit } of form.sources) {
    if (!lot) return void ask_first(form, "of", "Which lot is it?");
    if (!amount.trim()) return void ask_first(form, "of", "How much of it is taken?");
    if (is_bare_number(amount) && !unit) return void ask_first(form, "of", "In which unit is it?");
    typed.push(`${lot}=${is_bare_number(amount) ? `${amount.trim()} ${unit}` : amount.trim()}`);
  }
  return typed;
}

/** `deliveries` of one code and material are counted together. */
export function counted_form(form: StockForm, deliveries: StockLot[]): TemplateResult {
  const counted = counted_as(deliveries[0]);
  return act_form({
    form,
    title: `How much is there of lot ${deliveries[0].lot}?`,
    act_words: "Record the count",
    names: ["counted", "why", "on"],
    fields: html`${
      deliveries.length > 1
        ? html`<p class="hint">${deliveries.length} deliveries have this lot number: count them together.</p>`
        : nothing
    }
    ${amount_field(form, "counted", "There now", counted)}
    ${field(form, { name: "why", label: "Why, if it is not what was left", hint: "spilt, thrown away" })}
    ${field(form, { name: "on", label: "Counted on", kind: "date" })}`,
    act: () => {
      const amount = amount_typed(form, "counted", counted);
      return amount
        ? { counted: [`${form.of}=${amount}`], why: typed_in(form, "why"), on: typed_in(form, "on") }
        : undefined;
    },
  });
}
