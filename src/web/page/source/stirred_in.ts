// What is stirred in beside fats, lye and water: additives and salts, liquids in place of water, fragrances, colours.
import { html, nothing, type TemplateResult } from "lit";
import type { Document, Json } from "./api";
import { change_formula, edit_formula } from "./editing";
import { complaint_on, field, id_of, value_at } from "./field";
import { acid_in_it, fat_answers, fat_in_it, held_fat, label_data, label_words } from "./contents";
import { add_row, asked, drop_button, drop_row, folded, limit_units, listed, rate_field, rate_units, rows_at } from "./formula_field";
import { with_value } from "./pointer";
import type { Whose } from "./state";

interface Kind {
  list: "additives" | "liquids" | "fragrances" | "colours";
  title: string;
  add: string;
  aside: string;
  row: (of: Whose, at: string, row: Document) => TemplateResult;
}

const kinds: Kind[] = [
  { list: "liquids", title: "Liquids in place of water", add: "Add a liquid", aside: "Milk, coconut milk, purées, brine.", row: liquid },
  { list: "additives", title: "Additives, salts and acids", add: "Add an additive", aside: "Whatever goes in beside fats, lye, fragrance and colour.", row: additive },
  { list: "fragrances", title: "Fragrances", add: "Add a fragrance", aside: "Essential and fragrance oils.", row: fragrance },
  { list: "colours", title: "Colours", add: "Add a colour", aside: "Micas, pigments and other colours. Those of layers stand in the run.", row: colour },
];

export function stirred_in(of: Whose): TemplateResult[] {
  return kinds.map((kind) => {
    const pointer = `/${kind.list}`;
    const rows = rows_at(of, pointer) as Document[];
    const complaint = complaint_on(of, pointer);
    return html`<section class="part" aria-labelledby="${kind.list}-title"><h2 id="${kind.list}-title">${kind.title}</h2>
      ${rows.length ? html`<ol class="formula-rows">${rows.map((row, i) => html`<li class="formula-row">${head(of, kind, row, i)} ${kind.row(of, `${pointer}/${i}`, row)}</li>`)}</ol>` : html`<p class="aside">${kind.aside}</p>`}
      ${complaint ? html`<p class="complaint" id="${id_of(of, pointer)}-said">${complaint}</p>` : nothing}
      <button type="button" id=${id_of(of, pointer)} aria-describedby=${complaint ? `${id_of(of, pointer)}-said` : nothing} @click=${() => add_row(of, pointer, blank(kind), "/name")}>${kind.add}</button>
    </section>`;
  });
}

/** Nothing of it is guessed; what must be said the program asks for. */
function blank(kind: Kind): Json {
  return kind.list === "liquids" ? { name: "", goes_into: "", composition: "" } : { name: "", rate: "" };
}

function head(of: Whose, kind: Kind, row: Document, i: number): TemplateResult {
  const at = `/${kind.list}/${i}`;
  const complaint = complaint_on(of, at);
  const name = String(row.name || `number ${i + 1} of the ${kind.list}`);
  return html`${complaint ? html`<p class="complaint">${complaint}</p>` : nothing}
    <div class="row named">${field({ label: "Name", of, at: `${at}/name` })}
      ${kind.list === "liquids" ? nothing : rate_field(of, `${at}/rate`, "How much", rate_units)}
      ${drop_button(`Leave out ${name}`, () => drop_row(of, `/${kind.list}`, i))}</div>`;
}

function goes_into(of: Whose, at: string, places: [string, string][], is_needed: boolean): TemplateResult {
  const pointer = `${at}/goes_into`;
  const now = value_at(of, pointer) as string | undefined;
  return asked(of, pointer, "Goes into", now, places, (to) => edit_formula(of, pointer, to), is_needed || now ? undefined : "The batter, unless you name another place.");
}

const any_place: [string, string][] = [["lye", "The lye"], ["fats", "The fats"], ["batter", "The batter"]];

function densities(of: Whose, at: string, row: Document): TemplateResult {
  const words = (value: Json | undefined, before: string, after: string) => (value ? `${before}${String(value)}${after}` : "");
  const said = [words(row.bulk_density, "", " in the spoon"), words(row.density, "", " in the batter"), words(row.limit, "at most ", "")].filter(Boolean).join(", ");
  return folded(of, `${at} densities`, ["bulk_density", "density", "limit"].map((one) => `${at}/${one}`), `Densities and limit${said && `: ${said}`}`, () => html`
    <div class="row">${field({ label: "Density in the spoon", of, at: `${at}/bulk_density`, unit: "g/ml", optional: true, hint: "A level cup weighed, by the cup's volume. Needed for spoons." })}
    ${field({ label: "Density of itself", of, at: `${at}/density`, unit: "g/ml", optional: true, hint: "Once it is in the batter. Left out, water's is taken, and that is said." })}</div>
    ${rate_field(of, `${at}/limit`, "The most that the supplier's document allows", limit_units, true)}`);
}

function holds(of: Whose, at: string, row: Document, has_acid: boolean): TemplateResult {
  const words = (value: Json | undefined, what: string) => (value === undefined ? "" : value === "none" ? `no ${what}` : what);
  const said = [words(row.contains_fat, "fat"), has_acid ? words(row.acid, "acid") : ""].filter(Boolean).join(", ");
  return folded(of, `${at} holds`, [`${at}/contains_fat`, `${at}/acid`], `${has_acid ? "Fat or acid" : "Fat"} in it${said && `: ${said}`}`, () => html`${fat_in_it(of, at)} ${has_acid ? acid_in_it(of, at) : nothing}`);
}

function label(of: Whose, at: string, row: Document): TemplateResult {
  const said = label_words(row);
  return folded(of, `${at} label`, ["inci", "allergens", "document"].map((one) => `${at}/${one}`), `For the label${said && `: ${said}`}`, () => label_data(of, at));
}

function additive(of: Whose, at: string, row: Document): TemplateResult {
  return html`${goes_into(of, at, any_place, true)}
    <div class="folds">${holds(of, at, row, true)} ${densities(of, at, row)} ${label(of, at, row)}</div>`;
}

function place_folded(of: Whose, at: string, row: Document): TemplateResult {
  return folded(of, `${at} place`, [`${at}/goes_into`], `Goes into the ${String(row.goes_into ?? "batter")}`, () => goes_into(of, at, any_place, false));
}

function fragrance(of: Whose, at: string, row: Document): TemplateResult {
  return html`<div class="folds">${densities(of, at, row)} ${label(of, at, row)} ${place_folded(of, at, row)} ${holds(of, at, row, false)}</div>`;
}

function colour(of: Whose, at: string, row: Document): TemplateResult {
  return html`${dispersed(of, at)}
    <div class="folds">${densities(of, at, row)} ${label(of, at, row)} ${place_folded(of, at, row)} ${holds(of, at, row, true)}</div>`;
}

const oil_from: ["formula" | "extra", string][] = [["formula", "taken out of the formula's"], ["extra", "put on top, and counted as fat"]];

function dispersed(of: Whose, row: string): TemplateResult {
  const at = `${row}/dispersed_in`;
  const has = value_at(of, at) !== undefined;
  const from = value_at(of, `${at}/from`) as "formula" | "extra" | undefined;
  const take = (to: "dry" | "oil") => (to === "oil") !== has && edit_formula(of, at, to === "oil" ? { fat: "", oil_per_colour: "" } : undefined);
  const take_from = (to: "formula" | "extra") => edit_formula(of, `${at}/from`, to);
  return html`${asked(of, at, "Stirred into oil first", has ? "oil" : "dry", [["dry", "No"], ["oil", "Yes"]], take)}
    ${has
      ? html`<div class="row">${listed(of, `${at}/fat`, "Which oil", fat_answers(of))} ${field({ label: "g of oil for 1 g of colour", of, at: `${at}/oil_per_colour`, number: true, short: true })}</div>
        ${asked(of, `${at}/from`, "That oil is", from, oil_from, take_from, from ? undefined : "Taken out of the formula's own, unless you say so.")}`
      : nothing}`;
}

/** As the program knows them; it refuses any other. */
export const compositions = [
  "coconut milk, canned",
  "goat milk",
  "cow's milk, whole",
  "cream, heavy",
  "milk, evaporated",
  "carrot, puréed raw",
  "cucumber, puréed with its skin",
  "pumpkin, canned purée",
  "avocado, puréed",
  "brine, saturated at 20 °C",
];

function liquid(of: Whose, at: string, row: Document): TemplateResult {
  return html`${how_much(of, at, row)}
    ${goes_into(of, at, [["lye", "The lye"], ["batter", "The batter"]], true)}
    ${composition(of, at)}
    <div class="folds">
      ${folded(of, `${at} ice`, [`${at}/frozen`], row.frozen === true ? "Goes in as ice" : "Goes in as ice: no", () => frozen(of, `${at}/frozen`))}
      ${folded(of, `${at} acid`, [`${at}/acid`], `Acid in it${row.acid === undefined ? "" : row.acid === "none" ? ": none" : ": some"}`, () => acid_in_it(of, at))}
      ${folded(of, `${at} density`, [`${at}/density`], `Density${row.density ? `: ${String(row.density)}` : ""}`, () => field({ label: "Density", of, at: `${at}/density`, unit: "g/ml", optional: true, hint: "Left out, it is worked out from what is in it." }))}
      ${label(of, at, row)}
    </div>`;
}

function frozen(of: Whose, at: string): TemplateResult {
  const now = value_at(of, at) === true ? "ice" : "liquid";
  const take = (to: "ice" | "liquid") => edit_formula(of, at, to === "ice" ? true : undefined);
  return asked(of, at, "Goes in as ice, which keeps the lye cooler", now, [["liquid", "No"], ["ice", "Yes"]], take);
}

type Amount = "replaces" | "rate";

function how_much(of: Whose, at: string, row: Document): TemplateResult {
  const now: Amount | undefined = row.replaces !== undefined ? "replaces" : row.rate !== undefined ? "rate" : undefined;
  const take = (to: Amount) => to !== now && change_formula(of, (formula) => with_value(with_value(formula, `${at}/${to === "rate" ? "replaces" : "rate"}`, undefined), `${at}/${to}`, ""));
  // The program asks for "replaces" where neither is said.
  return html`${asked(of, now ? `${at}/amount` : `${at}/replaces`, "How much", now, amounts, take)}
    ${now === "replaces" ? html`<div class="row">${field({ label: "Of the formula's water", of, at: `${at}/replaces`, unit: "% of water", hint: "Its own water stands in for that share." })}</div>` : nothing}
    ${now === "rate" ? rate_field(of, `${at}/rate`, "Rate", rate_units) : nothing}`;
}

const amounts: [Amount, string][] = [["replaces", "In place of so much water"], ["rate", "By the fats or the batter"]];

function composition(of: Whose, row: string): TemplateResult {
  const at = `${row}/composition`;
  const is_label = typeof value_at(of, at) === "object";
  const from_label: Document = { water: "", sugar: "", salt: "", source: "" };
  const share = (label: string, name: string) => field({ label, of, at: `${at}/${name}`, unit: "%", short: true });
  const take = (to: "shipped" | "label") => (to === "label") !== is_label && edit_formula(of, at, to === "label" ? from_label : "");
  const answers: ["shipped" | "label", string][] = [["shipped", "Shipped figures"], ["label", "The label's figures"]];
  return html`${asked(of, is_label ? at : `${row}/contents`, "What 100 g of it holds", is_label ? "label" : "shipped", answers, take)}
    ${is_label
      ? html`<div class="row">${share("Water", "water")} ${share("Sugar", "sugar")} ${share("Salt", "salt")}</div>
        ${held_fat(of, `${at}/fat`, [["none", "None"], ["some", "Holds fat"]], [["milk_fat", "Milk fat"], ...fat_answers(of)])}
        <div class="row">${field({ label: "Where the figures are from", of, at: `${at}/source`, hint: "Such as: the tin's label." })}</div>`
      : html`<div class="row">${listed(of, at, "Shipped figures of", compositions.map((one) => [one, one]))}</div>`}`;
}
