// Materials by their lots: what is best before an earlier day first, as it is taken.
import { html, nothing, type TemplateResult } from "lit";
import { form_of, open_form, record, show_trail } from "../documents/stock";
import type { StockActKind, StockForm } from "../documents/stock_types";
import { state } from "../documents/state";
import { go_on, to_id } from "../forms/form_parts";
import type { MaterialInStock, StockLot } from "../program/answers";
import { day, in_stock } from "../program/numbers";
import { form_id, opener_id, told_of } from "./act_form";
import { bought_form, counted_form, made_form } from "./lot_forms";
import { deliveries_of, left_of, name_of_lot } from "./seen";

export function materials(): TemplateResult {
  const { materials: all = [] } = state.stock.list ?? {};
  return html`<section class="shelf-part" aria-labelledby="materials-title">
    <h2 id="materials-title">Materials</h2>
    <div class="row">${opener("bought", "", "Bought", true)} ${opener("made", "", "Made of others")}</div>
    ${opened("bought", "", bought_form)} ${opened("made", "", made_form)} ${take_over()}
    ${
      all.length
        ? html`<p class="aside">What is best before an earlier day stands first, and is taken first.</p>
            ${all.map(material)}`
        : html`<p class="aside">No lot has anything left.</p>`
    }
  </section>`;
}

/** Opens a form, or leads to the one that stands open. */
export function opener(
  kind: StockActKind,
  of: string,
  words: string,
  is_strong = false,
  seen?: StockForm["seen"],
  about = "",
): TemplateResult {
  const ask = () => {
    open_form({ kind, of, seen });
    go_on(to_id(form_id({ kind, of })));
    requestAnimationFrame(() => document.getElementById(form_id({ kind, of }))?.scrollIntoView({ block: "nearest" }));
  };
  return html`<button
    type="button"
    id=${opener_id(kind, of)}
    class=${is_strong ? "strong" : ""}
    aria-expanded=${form_of({ kind, of }) ? "true" : "false"}
    aria-label=${about ? `${words}: ${about}` : nothing}
    @click=${ask}
  >
    ${words}
  </button>`;
}

export function opened(
  kind: StockActKind,
  of: string,
  draw: (form: StockForm) => TemplateResult,
): TemplateResult | typeof nothing {
  const form = form_of({ kind, of });
  return form ? draw(form) : nothing;
}

/** What the studio's file lists and no lot has. */
function take_over(): TemplateResult | typeof nothing {
  const listed = state.stock.list?.not_counted ?? [];
  if (!listed.length) return nothing;
  const take = () => {
    open_form({ kind: "take-have", of: "" });
    const form = form_of({ kind: "take-have", of: "" });
    if (form) void record(form, { "take-have": true, on: form.typed.on });
  };
  const said = form_of({ kind: "take-have", of: "" })?.complaint?.line;
  return html`<div class="part">
    <p>The studio's file lists what is no lot yet: ${listed.join(", ")}. Lots alone are counted.</p>
    <button type="button" @click=${take}>Take it over as lots, once</button>
    ${said ? html`<p class="alarm" role="alert">${said}</p>` : nothing}
  </div>`;
}

const material = (one: MaterialInStock): TemplateResult =>
  html`<section class="material" aria-label=${one.shown_as}>
    <h3>${one.shown_as}</h3>
    <ul class="lots">
      ${one.lots.map((lot) => lot_row(lot, one))}
    </ul>
  </section>`;

function lot_row(lot: StockLot, of: MaterialInStock): TemplateResult {
  const name = name_of_lot(lot);
  const deliveries = deliveries_of(lot, of);
  const is_first = deliveries[0] === lot;
  return html`<li class="lot ${lot.is_past ? "past" : ""}" data-lot=${name}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${lot.lot}</b>${lot.make ? html` <span>${lot.make}</span>` : nothing} ${left(lot)}
      </p>
      <p class="lot-facts">${facts(lot).map((one) => html`<span>${one}</span> `)}</p>
      ${lot.is_past ? past(lot) : nothing}
    </div>
    <div class="lot-acts">
      ${is_first ? opener("counted", name, "Counted", false, left_of(deliveries), `lot ${lot.lot}`) : nothing}
      <button type="button" aria-label="Where it went: lot ${lot.lot}" @click=${() => show_trail(`lot ${lot.lot}`)}>
        Where it went
      </button>
    </div>
    ${is_first ? told_of(name) : nothing}
    ${is_first ? opened("counted", name, (form) => counted_form(form, deliveries)) : nothing}
  </li>`;
}

function left({ left: now, packs, pack }: StockLot): TemplateResult {
  const less = (now.g ?? now.pieces ?? 0) < 0;
  const missing = now.pieces === undefined ? { g: -(now.g ?? 0) } : { pieces: -now.pieces };
  return less
    ? html`<span class="below"
        >${in_stock(state.units, missing)} more was taken than was recorded: count what is there</span
      >`
    : html`<b>${in_stock(state.units, now)}</b>
        <span class="aside">left of ${packs === 1 ? "" : `${packs} × `}${pack}</span>`;
}

export function facts({ best_before, is_past, origin, on, seller, paid, currency }: StockLot): string[] {
  const from = { bought: "bought", made: "made", "before records": "there before records began," }[origin];
  return [
    best_before && !is_past ? `best before ${day(best_before)}` : "",
    `${from} ${day(on)}${seller ? ` from ${seller}` : ""}`,
    paid !== null ? `${paid} ${currency} in all` : origin === "bought" ? "unpriced" : "",
  ].filter(Boolean);
}

export const past = ({ best_before, lot }: StockLot): TemplateResult =>
  html`<p class="past-words">
    Best before ${day(best_before!)}, which is past. Is ${lot} still good? No batch takes it unless you choose it.
  </p>`;
