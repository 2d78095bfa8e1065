// The bench sheet, the label's draft, pictures and 3D files: one tap each.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { state } from "../documents/state";
import { is_of_several, pieces_of } from "../figures/batches";
import type { Plan } from "../program/answers";
import { both, length } from "../program/numbers";
import { keep, paper_button as button, paper_buttons, paper_size, printing, stem_of, told_of_papers } from "./papers";

/** The batches by their numbers, as the sheet takes them. */
const numbered = (plan: Plan) =>
  plan.batches.flatMap((one) => one.numbers.map((number) => ({ number, one }))).sort((a, b) => a.number - b.number);

/** One that there is: typing may have made fewer of them. */
function sheet_batch(plan: Plan): number {
  const { batch } = state.printing;
  return is_of_several(plan) && batch <= plan.pieces.batches ? batch : 0;
}

function which_batch(plan: Plan): TemplateResult | typeof nothing {
  if (!is_of_several(plan)) return nothing;
  const now = sheet_batch(plan);
  const choose = (event: Event) => printing({ batch: Number((event.target as HTMLSelectElement).value) });
  const option = (number: number, words: string) =>
    html`<option value=${number} .selected=${live(number === now)}>${words}</option>`;
  return html`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${choose}>
        ${option(0, "the whole run")}
        ${numbered(plan).map(({ number, one }) =>
          option(number, `batch ${number} of ${plan.pieces.batches}: ${pieces_of(plan, one)}`),
        )}
      </select>
    </div>
  </div>`;
}

export function files_out(plan: Plan): TemplateResult {
  const { paper } = state.printing;
  const stem = stem_of(state.run.file);
  const of_plan = { file: state.run.file, run: state.run.now };
  const mould = state.measured?.mould;
  const of_mould = { file: mould, "below-brim": `${plan.pour.below_brim_mm} mm` };
  const batch = sheet_batch(plan);
  const sheet = { plan: of_plan, paper, ...(batch ? { batch: String(batch) } : {}) };
  return html`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${paper_size()} ${which_batch(plan)}
    <div class="choice">
      ${paper_buttons(
        { words: "Bench sheet", kind: "sheet", file: `${stem}${batch ? ` batch ${batch}` : ""}`, of: sheet },
        "strong",
      )}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${plan.label ? button("Label draft", keep(`${stem} label.txt`, { kind: "label", plan: of_plan })) : ""}
      ${button("Drawing of the pour, true size", keep(`${stem} pour.svg`, { kind: "picture", plan: of_plan }))}
      ${button("Drawing of the piece", keep(`${stem}.svg`, { kind: "piece", plan: of_plan }))}
      ${button("Whole piece, GLB (3D viewer)", keep(`${stem}.glb`, { kind: "glb", plan: of_plan }))}
      ${button("Whole piece, STL (3D printing)", keep(`${stem}.stl`, { kind: "stl", plan: of_plan }))}
      ${
        mould
          ? html`${button("Filled cavity, GLB (3D viewer)", keep(`${stem} cavity.glb`, { kind: "glb", gauge: of_mould }))}
            ${button("Cavity, STL (3D printing)", keep(`${stem} cavity.stl`, { kind: "stl", gauge: { file: mould } }))}`
          : ""
      }
    </div>
    <p role="status">
      ${told_of_papers() || `The drawing has the pour line ${both(length(state.units, plan.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`;
}
