// What the label needs to know of a material: its INCI name or make-up, its allergens, and who says so.
import { html, nothing, type TemplateResult } from "lit";
import { list_at, value_at } from "../documents/editing";
import type { DocumentId } from "../documents/file_types";
import type { Document, Json } from "../program/json";
import { field } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of } from "./form_lists";
import { choice_field, folded } from "./form_parts";

/** For whatever is weighed in, dusted on or melted, at this place of the run or of a formula. */
export function supplier_form(of: DocumentId, here: string, name: string): TemplateResult {
  const said = said_of(of, here);
  return folded({
    of,
    name: `${here} label`,
    pointers: ["inci", "allergens", "document"].map((one) => `${here}/${one}`),
    summary: `For the label${said && `: ${said}`}`,
    body: () =>
      html`${inci(of, `${here}/inci`, name)}
        <p class="question">Fragrance allergens in it</p>
        ${shares(of, `${here}/allergens`, "Allergen", "Add an allergen", (at, i) => is_listed(of, at, i))}
        ${field({ label: "Supplier's document, with its date", of, at: `${here}/document`, optional: true })}`,
  });
}

function said_of(of: DocumentId, here: string): string {
  const allergens = list_at(of, `${here}/allergens`).length;
  return [
    value_at(of, `${here}/inci`) === undefined ? "" : "INCI given",
    allergens ? `${allergens} ${allergens === 1 ? "allergen" : "allergens"}` : "",
  ]
    .filter(Boolean)
    .join(", ");
}

type Naming = "unsaid" | "one" | "many";
const blank_share = { name: "", share: "" };
const starts: Record<Naming, Json | undefined> = { unsaid: undefined, one: "", many: [blank_share] };

function inci(of: DocumentId, here: string, name: string): TemplateResult {
  const said = value_at(of, here);
  const chosen: Naming = said === undefined ? "unsaid" : Array.isArray(said) ? "many" : "one";
  /** The one name is the first of several. */
  const puts = (to: Naming) => (to === "many" && said ? [{ ...blank_share, name: said }] : starts[to]);
  return html`${choice_field({
    of,
    question: `INCI of ${name}`,
    at: here,
    is_told_elsewhere: chosen !== "unsaid",
    chosen,
    answers: [
      ["unsaid", "Not given"],
      ["one", "One name"],
      ["many", "A composition"],
    ],
    puts,
  })}
  ${chosen === "one" ? field({ label: "INCI name", of, at: here }) : nothing}
  ${
    chosen === "many"
      ? html`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${shares(of, here, "INCI name", "One more INCI name")}`
      : nothing
  }`;
}

/** For a name that is spelt much like one on the EU's list and is not meant by it. */
function is_listed(of: DocumentId, at: string, i: number): TemplateResult {
  return choice_field({
    of,
    question: `Allergen ${i + 1}: on the EU's list?`,
    at: `${at}/listed`,
    chosen: value_at(of, `${at}/listed`) === false ? "other" : "as_named",
    answers: [
      ["as_named", "Where its name stands there"],
      ["other", "No, another substance"],
    ],
    puts: (to) => (to === "other" ? false : undefined),
  });
}

function shares(
  of: DocumentId,
  at: string,
  label: string,
  add: string,
  more?: (at: string, i: number) => TemplateResult,
): TemplateResult {
  const list = { of, at };
  return html`${(rows_of(list) as Document[]).map(
    (one, i) =>
      html`<div class="row named" id=${item_id(list, i)}>
        ${field({ label: `${label} ${i + 1}`, of, at: `${at}/${i}/name` })}
        ${field({ label: `Share ${i + 1}`, of, at: `${at}/${i}/share`, unit: "%", short: true })}
        ${more?.(`${at}/${i}`, i) ?? nothing} ${item_buttons(list, i, String(one.name || `${label} ${i + 1}`))}
      </div>`,
  )}
  ${add_button(list, add, () => add_to(list, blank_share, label))}`;
}
