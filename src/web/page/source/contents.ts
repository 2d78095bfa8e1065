// What is inside of something stirred in: fat and acid, which take alkali, and what a label must name.
import { html, nothing, type TemplateResult } from "lit";
import type { Document, Json } from "./api";
import { edit_formula } from "./editing";
import { field, value_at } from "./field";
import { add_row, asked, drop_button, drop_row, listed, rows_at } from "./formula_field";
import { known_fats } from "./own_fats";
import type { Whose } from "./state";

/** As the program knows them; it refuses any other. */
export const acids = [
  "citric acid, anhydrous",
  "citric acid monohydrate",
  "lactic acid (100 %)",
  "acetic acid (100 %)",
  "ascorbic acid",
  "malic acid",
  "tartaric acid",
  "vinegar, 5 g acetic acid per 100 g",
  "lactic acid 88 % (of which part is lactate ester, titrated as total acid)",
];

export const fat_answers = (of: Whose): [string, string][] => known_fats(of).map((one) => [one.id, one.name]);

type Held = "unsaid" | "none" | "some";

const held_now = (value: Json | undefined): Held => (value === undefined ? "unsaid" : value === "none" ? "none" : "some");

function take_held(of: Whose, at: string, start: Json): (to: Held) => void {
  return (to) => {
    if (to === held_now(value_at(of, at))) return;
    edit_formula(of, at, to === "unsaid" ? undefined : to === "none" ? "none" : start);
  };
}

/** Fat in it takes its share of the alkali. */
export function fat_in_it(of: Whose, row: string): TemplateResult {
  return held_fat(of, `${row}/contains_fat`, [["unsaid", "Not said"], ["none", "Holds none"], ["some", "Holds fat"]], fat_answers(of));
}

export function held_fat(of: Whose, at: string, answers: [Held, string][], fats: [string, string][]): TemplateResult {
  const now = held_now(value_at(of, at));
  return html`${asked(of, at, "Fat in it", now === "unsaid" && !answers.some(([one]) => one === now) ? undefined : now, answers, take_held(of, at, { fat: "", share: "" }))}
    ${now === "some" ? html`<div class="row">${listed(of, `${at}/fat`, "Which fat", fats)} ${field({ label: "Fat in what is weighed", of, at: `${at}/share`, unit: "%", short: true })}</div>` : nothing}`;
}

/** Acid in it uses up alkali. */
export function acid_in_it(of: Whose, row: string): TemplateResult {
  const at = `${row}/acid`;
  const now = held_now(value_at(of, at));
  return html`${asked(of, at, "Acid in it", now, [["unsaid", "Not said"], ["none", "Holds none"], ["some", "Holds acid"]], take_held(of, at, { acid: "", share: "" }))}
    ${now === "some" ? html`<div class="row">${listed(of, `${at}/acid`, "Which acid", acids.map((one) => [one, one]))} ${field({ label: "Of that acid in what is weighed", of, at: `${at}/share`, unit: "%", short: true })}</div>` : nothing}`;
}

type Naming = "unsaid" | "one" | "many";

/** INCI name or composition, allergens, and the document that these are from. */
export function label_data(of: Whose, row: string): TemplateResult {
  const inci = `${row}/inci`;
  const value = value_at(of, inci);
  const now: Naming = value === undefined ? "unsaid" : Array.isArray(value) ? "many" : "one";
  const starts: Record<Naming, Json | undefined> = { unsaid: undefined, one: "", many: [{ name: "", share: "" }] };
  return html`${asked(of, now === "one" ? `${inci}-way` : inci, "INCI, for the label", now, [["unsaid", "Not said"], ["one", "One name"], ["many", "A composition"]], (to) => to !== now && edit_formula(of, inci, starts[to]))}
    ${now === "one" ? field({ label: "INCI name", of, at: inci }) : nothing}
    ${now === "many" ? named_shares(of, inci, "INCI name", "One more name") : nothing}
    <p class="question">Fragrance allergens in it</p>
    ${named_shares(of, `${row}/allergens`, "Allergen", "Add an allergen")}
    ${field({ label: "The supplier's document that they are from, with its date", of, at: `${row}/document`, optional: true })}`;
}

function named_shares(of: Whose, at: string, name: string, add: string): TemplateResult {
  const rows = rows_at(of, at) as Document[];
  return html`${rows.map(
    (one, i) => html`<div class="row named">${field({ label: name, of, at: `${at}/${i}/name` })} ${field({ label: "Share", of, at: `${at}/${i}/share`, unit: "%", short: true })}
      ${drop_button(`Leave out ${String(one.name || `${name} ${i + 1}`)}`, () => drop_row(of, at, i))}</div>`,
  )}<button type="button" @click=${() => add_row(of, at, { name: "", share: "" }, "/name")}>${add}</button>`;
}

/** What of it is said, for the line that folds it away. */
export function label_words(row: Document): string {
  const allergens = Array.isArray(row.allergens) ? row.allergens.length : 0;
  return [row.inci === undefined ? "" : "INCI said", allergens ? `${allergens} ${allergens === 1 ? "allergen" : "allergens"}` : ""].filter(Boolean).join(", ");
}
