// Why there are no figures, or none of what is typed now, and the way to the place that it is about.
import { html, nothing, type TemplateResult } from "lit";
import { edit } from "../documents/editing";
import type { Slot } from "../documents/file_types";
import { open_formula } from "../documents/formula_opening";
import { plan_soon } from "../documents/planning";
import { save_now } from "../documents/saving";
import { state } from "../documents/state";
import { is_about, wanting_field } from "../forms/field";
import { reach } from "../forms/form_parts";
import { keep_it } from "../forms/keep_it";
import { is_of_blank, still_needed } from "../forms/still_needed";
import { wording, type Complaint } from "../program/api";
import { show } from "./where";

/** `comes_of_it` is what that means for what stands beneath. */
export function complaint(
  comes_of_it = state.plan ? "The figures below are out of date." : "No figures yet.",
): TemplateResult {
  const said = is_of_blank() ? undefined : state.complaint;
  return html`<div class="complaints" role="status">
      ${
        said
          ? html`<p class="alarm">
                <strong>${comes_of_it}</strong>
                ${place_words(said.field)}${wording(said)}
              </p>
              ${said.is_fault ? html`<button type="button" @click=${ask_again}>Ask again</button>` : nothing}
              ${
                is_about("run")
                  ? keep_it(state.run.now, said.keep, (pointer, value) => edit("run", pointer, value))
                  : keep_in_studio(said)
              }
              ${is_elsewhere() ? html`<button type="button" @click=${go_to_field}>Go to the field</button>` : nothing}`
          : nothing
      }
    </div>
    ${still_needed()}`;
}

export function keep_in_studio({ keep }: Complaint): TemplateResult | typeof nothing {
  const { studio } = state.beside;
  return studio && is_about("studio")
    ? keep_it(studio.now, keep, (pointer, value) => edit("studio", pointer, value))
    : nothing;
}

/** "/additives/2/rate" as "additives 3, rate: ". */
export function place_words(pointer: string): string {
  const words = pointer
    .split("/")
    .slice(1)
    .map((step) => (/^\d+$/.test(step) ? ` ${Number(step) + 1}` : `, ${step.replaceAll("_", " ")}`));
  return words.length ? `${words.join("").slice(2)}: ` : "";
}

/** After a fault of the program's own: it is up again, and what was typed is still here. */
export function ask_again(): void {
  plan_soon();
  if (state.run.failed) void save_now();
}

/** Whether what is wrong has a field, and the keyboard is not in it. */
function is_elsewhere(): boolean {
  if (formula_wanting()) return true;
  const field = wanting_field();
  return field ? document.activeElement !== field : is_of_the_set_up();
}

const is_of_the_set_up = (): boolean =>
  state.view !== "set-up" && is_about("run") && state.complaint !== undefined && state.complaint.field !== "";

/** What is wrong in a formula is corrected where the whole formula stands. */
const formula_wanting = (): Slot | undefined =>
  (["pour", "pipe"] as const).find((one) => state.complaint?.file && state.complaint.field && is_about(one));

export function go_to_field(): void {
  const wanted = wanting_field();
  const slot = formula_wanting();
  if (wanted) return reach(wanted);
  if (slot) open_formula(slot);
  else void show("set-up");
  once_drawn(() => reach(wanting_field()));
}

/** After the view has led the keyboard to its title. */
function once_drawn(act: () => void): void {
  requestAnimationFrame(() => requestAnimationFrame(act));
}
