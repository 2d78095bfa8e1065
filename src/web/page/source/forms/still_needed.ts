// All that is missing for the figures, told together, each with the way to its field.
import { html, nothing, type TemplateResult } from "lit";
import { formula_slots, type DocumentId, type FormulaSlot } from "../documents/file_types";
import { open_formula } from "../documents/formula_opening";
import { open_up, state, update } from "../documents/state";
import { is_about } from "./field";
import { go_on, to_id } from "./form_parts";
import { wanted_now, type Wanted } from "./wanted";

const of_formula = (of: DocumentId): of is FormulaSlot => (formula_slots as readonly string[]).includes(of);

/** Whether what the program complains of is one of the places that are blank. */
export function is_of_blank(): boolean {
  const said = state.complaint;
  if (!said?.field || said.lye_heavy) return false;
  return wanted_now().some(({ of, at }) => is_about(of) && (at === said.field || at.startsWith(`${said.field}/`)));
}

/** Nothing as long as nothing is missing. */
export function still_needed(): TemplateResult | typeof nothing {
  const all = state.complaint ? wanted_now() : [];
  if (!all.length) return nothing;
  return html`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${all.length}</p>
    <ul class="choice">
      ${all.map(
        (one) =>
          html`<li>
            <button type="button" @click=${() => go_to_wanted(one)}>
              ${one.part ? html`<small>${one.part}</small> ` : nothing}${one.label}
            </button>
          </li>`,
      )}
    </ul>
  </div>`;
}

/** Opens all that it is folded away in, and goes there. */
function go_to_wanted({ of, id, folds }: Wanted): void {
  for (const fold of folds) open_up(fold);
  update({ has_asked: true });
  if (of_formula(of)) {
    if (state.view !== "formula" || state.formula_of !== of) open_formula(of);
  } else if (state.view !== "set-up" && !(of === "own_fats" && state.view === "formula")) update({ view: "set-up" });
  // Once more, after the view has led the keyboard to its title.
  requestAnimationFrame(() => go_on(to_id(id)));
}
