// So much of a material as it is typed: a number, and its unit beside it, which is never guessed.
import { html, type TemplateResult } from "lit";
import { ask_first, type_in_form } from "../documents/stock";
import type { StockForm } from "../documents/stock_types";
import { state } from "../documents/state";
import { is_bare_number } from "../program/numbers";
import { field } from "./form_field";

const masses = { metric: ["g", "kg"], us: ["oz", "lb"], both: ["g", "kg", "oz", "lb"] };
const volumes = { metric: ["ml", "l"], us: ["fl oz"], both: ["ml", "l", "fl oz"] };

/** Of what is counted by the piece, pieces alone; of what is weighed, all that weighs. */
export type Counted = "mass" | "pieces" | "either";

export function units_for(counted: Counted): string[] {
  const weighed = [...masses[state.units], ...volumes[state.units]];
  return counted === "pieces" ? ["pieces"] : counted === "mass" ? weighed : [...weighed, "pieces"];
}

/** A unit that stands by itself is meant. */
const unit_in = (form: StockForm, name: string, counted: Counted): string | undefined =>
  form.typed[`${name}-unit`] ?? (counted === "pieces" ? "pieces" : undefined);

export function amount_field(form: StockForm, name: string, label: string, counted: Counted): TemplateResult {
  const units = units_for(counted);
  const chosen = is_whole(form.typed[name]) ? undefined : unit_in(form, name, counted);
  return html`<div class="amount-asked">
    ${field(form, { name, label, number: true })}
    <div class="choice" role="group" aria-label="Unit: ${label}">
      ${units.map(
        (unit) =>
          html`<button
            type="button"
            aria-pressed=${unit === chosen ? "true" : "false"}
            @click=${() => type_in_form(form, { typed: { [`${name}-unit`]: unit } })}
          >
            ${unit}
          </button>`,
      )}
    </div>
  </div>`;
}

/** With its unit, as "5 kg". */
const is_whole = (text = ""): boolean => text.trim() !== "" && !is_bare_number(text);

/** As the program is told it; nothing where the unit is still to be said, and then she is asked. */
export function amount_typed(form: StockForm, name: string, counted: Counted): string | undefined {
  const text = (form.typed[name] ?? "").trim();
  if (!text) return void ask_first(form, name, "How much is it?");
  if (is_whole(text)) return text;
  const unit = unit_in(form, name, counted);
  return unit ? `${text} ${unit}` : void ask_first(form, name, "In which unit?");
}
