// The packs that a material is bought in, and what of it stands on the shelf: all in the studio.
import { html, nothing, type TemplateResult } from "lit";
import { edit_several, list_at, text_at, value_at } from "../documents/editing";
import { announce, state } from "../documents/state";
import type { Document, Json } from "../program/json";
import { at, escaped, with_value } from "../program/pointer";
import { complaint_at, field } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of, type List } from "./form_lists";
import { change, change_whole, go_on, one_of, to_field, to_first_in, unfold } from "./form_parts";
import { called, material_finder, materials } from "./material_finder";
import { prices_shared, studios_currency } from "./money_said";
import { names_in, remove_named } from "./named_rows";
import { taken_out, without_empty } from "./shared";

const blank_pack: Json = { holds: "", paid: "" };

/** The one that is usually bought comes first. */
const list_of = (material: string): List => ({
  of: "studio",
  at: `/packs/${escaped(material)}`,
  in_order: true,
  and: (document, many) =>
    many ? document : taken_out(without_empty(document, "/packs"), [`/serves_as/${escaped(material)}`]),
});

/** Every name that a material goes by. */
function names_of(material: string): string[] {
  const fat = state.fats.find((one) => one.id === material || one.name === material);
  return fat ? [fat.id, fat.name, fat.inci, ...fat.also_called] : [material];
}

/** What stands under one of its names at that place of the studio. */
function key_in(place: string, material: string): string | undefined {
  const names = new Set(names_of(material).map((one) => one.toLowerCase()));
  return names_in("studio", place).find((one) => names.has(one.toLowerCase()));
}

export const pack_key = (material: string): string | undefined => key_in("/packs", material);

/** A bare number is grams of what is weighed in a run; of anything else it may be a count. */
const unit_of_material = (material: string): string | undefined =>
  materials().includes(material) || state.fats.some((one) => one.id === material) ? "g" : undefined;

const money_fold = "money packs";

export function pack_rows(currency: string): TemplateResult {
  return html`${names_in("studio", "/packs").map((material) => packs_of(material, currency))}
  ${material_finder({
    key: "pack",
    label: "Which material comes in packs?",
    offers: materials(),
    taken: (name) => pack_key(name) !== undefined,
    take: begin_packs,
  })}`;
}

function packs_of(material: string, currency: string): TemplateResult {
  const list = list_of(material);
  const name = called(material);
  return html`<div class="part" role="group" aria-label="Packs of ${name}">
    <p class="part-title">${name}</p>
    ${rows_of(list).map((_, i) => pack_row(list, i, name, unit_of_material(material), currency))}
    <div class="row">
      ${add_button(list, html`Another pack of ${name}`, () => add_to(list, blank_pack, `A pack of ${name}`))}
      ${field({ of: "studio", label: "Lost beside the batch", at: `/waste/${escaped(material)}`, unit: "%", optional: true, takes_part: true, short: true })}
      ${serves_as(material)}
    </div>
  </div>`;
}

const serves_at = (material: string): string => `/serves_as/${escaped(material)}`;

/** What its goods are bought in place of: another make of one material, never another fat. */
function serves_as(material: string): TemplateResult | typeof nothing {
  const place = serves_at(material);
  const said = text_at("studio", place);
  const own = new Set(names_of(material));
  const others = [...new Set([...materials(), ...names_in("studio", "/packs")])].filter(
    (one) => !own.has(one) && value_at("studio", serves_at(one)) === undefined,
  );
  const put = (to: string) => (studio: Document) =>
    without_empty(with_value(studio, place, to || undefined), "/serves_as");
  if (!said && (materials().some((one) => own.has(one)) || !others.length)) return nothing;
  return one_of({
    label: "Another make of",
    of: "studio",
    at: place,
    answers: others.map((one): [string, string] => [one, called(one)]),
    unsaid: "nothing: a material of its own",
    optional: true,
    take: (to) => change_whole("studio", `${called(material)}: ${to ? called(to) : "a material of its own"}`, put(to)),
  });
}

function pack_row(list: List, i: number, name: string, unit: string | undefined, currency: string): TemplateResult {
  const here = `${list.at}/${i}`;
  const one = (key: string, label: string, more: object = {}) =>
    field({ of: "studio", label, at: `${here}/${key}`, short: true, ...more });
  const has_volume = value_at("studio", `${here}/density`) !== undefined || complaint_at("studio", `${here}/holds`);
  return html`<div class="row" id=${item_id(list, i)} role="group" aria-label="Pack ${i + 1} of ${name}">
    ${one("holds", "One pack holds", { unit, hint: unit ? undefined : "Such as 50 pieces, or 1 kg" })}
    ${one("paid", "Paid for it", { told: currency })} ${from(here)}
    ${one("as_of", "Day of the price", { optional: true, date: true })}
    ${has_volume ? one("density", "Density of what it holds", { unit: "g/ml", optional: true }) : nothing}
    ${item_buttons(list, i, `pack ${i + 1} of ${name}`)}
  </div>`;
}

/** One of the sellers, where there are any. */
function from(here: string): TemplateResult {
  const place = `${here}/from`;
  const sellers = names_in("studio", "/sellers");
  if (!sellers.length) return field({ of: "studio", label: "From", at: place, optional: true, short: true });
  return one_of({
    label: "From",
    of: "studio",
    at: place,
    answers: sellers.map((name): [string, string] => [name, name]),
    unsaid: "not given",
    optional: true,
  });
}

/** Of what has a price, that is its first pack. */
export function begin_packs(material: string): void {
  const place = `/packs/${escaped(material)}`;
  const [in_studio, in_run] = [`/prices/${escaped(material)}`, `/money/prices/${escaped(material)}`];
  const of_run = prices_shared().length ? value_at("run", in_run) : undefined; // else in another currency
  const prices = [of_run, value_at("studio", in_studio)].flatMap(as_pack);
  const rows = prices.length ? [...prices, blank_pack] : [blank_pack];
  const has_own = of_run !== undefined;
  edit_several([
    ["studio", (studio) => with_currency(with_value(taken_out(studio, [in_studio]), place, rows))],
    ...(has_own ? [["run", (run: Document) => taken_out(run, [in_run])] as ["run", (run: Document) => Document]] : []),
  ]);
  announce(prices.length ? `The price of ${called(material)} is its first pack now` : `${called(material)} added`);
  unfold("studio", money_fold);
  go_on(to_first_in(item_id(list_of(material), rows.length - 1)));
}

const with_currency = (studio: Document): Document =>
  at(studio, "/currency") ? studio : with_value(studio, "/currency", studios_currency());

function as_pack(price: Json | undefined): Json[] {
  const paid = at(price, "/paid");
  if (!paid) return [];
  const confirmed = at(price, "/confirmed");
  return [{ holds: at(price, "/for") ?? "", paid, ...(confirmed === undefined ? {} : { confirmed }) }];
}

/** Beside a price: a material has one price, or packs. */
export const another_pack = (material: string): TemplateResult =>
  html`<button
    type="button"
    aria-label="Another pack size of ${called(material)}"
    @click=${() => begin_packs(material)}
  >
    Another pack size
  </button>`;

/** In place of its price. */
export function packs_told(material: string): TemplateResult {
  const key = pack_key(material)!;
  const many = list_at("studio", list_of(key).at).length;
  const open = () => {
    unfold("studio", money_fold);
    go_on(to_first_in(item_id(list_of(key), 0)));
  };
  return html`<div class="row">
    <p>${called(material)}: by ${many === 1 ? "its pack" : `its ${many} packs`}</p>
    <button type="button" aria-label="To its packs: ${called(material)}" @click=${open}>To its packs</button>
  </div>`;
}

/** What is on the shelf is taken off what is to be bought. */
export function shelf_rows(): TemplateResult {
  const here = (material: string) => `/have/${escaped(material)}`;
  return html`${names_in("studio", "/have").map((material) => {
    const unit = unit_of_material(material);
    const hint = unit ? undefined : "Such as 12 pieces, or 1 kg";
    return html`<div class="row">
      ${field({ of: "studio", label: called(material), at: here(material), unit, hint, short: true })}
      ${remove_named("studio", "/have", material, called(material))}
    </div>`;
  })}
  ${material_finder({
    key: "have",
    label: "Which material stands on the shelf?",
    offers: materials(),
    taken: (name) => key_in("/have", name) !== undefined,
    take: (name) => change("studio", `${called(name)} added`, here(name), "", to_field("studio", here(name))),
  })}`;
}
