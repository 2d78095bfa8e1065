// Pictures, 3D files and the bench sheet: one tap each.
import { html, nothing, type TemplateResult } from "lit";
import { bytes, Refused } from "./api";
import { both, length } from "./numbers";
import type { Plan } from "./plan";
import { changed, state } from "./state";

let said = "";

/** A button stands here only for what the program says it can make. */
const offers = (kind: string): boolean => state.files?.documents?.includes(kind) ?? false;

async function take(name: string, body: unknown, opens = false): Promise<void> {
  said = "";
  try {
    const address = URL.createObjectURL(await bytes(body));
    const link = document.createElement("a");
    link.href = address;
    if (opens) link.target = "_blank";
    else link.download = name;
    link.click();
    window.setTimeout(() => URL.revokeObjectURL(address), 60_000);
    said = opens ? "" : `${name} is in your downloads.`;
  } catch (error) {
    said = error instanceof Refused ? error.message : String(error);
  }
  changed();
}

export function files_out(plan: Plan): TemplateResult {
  const stem = state.file.split("/").at(-1)!.replace(/(\.run)?\.json$/, "");
  const of_plan = { file: state.file, run: state.run };
  const of_mould = { file: state.measured?.mould, "below-brim": `${plan.pour.below_brim_mm} mm` };
  return html`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">To print and to keep</h2>
    <div class="choice">
      ${offers("sheet")
        ? html`<button type="button" class="strong" @click=${() => take(`${stem}.html`, { kind: "sheet", plan: of_plan }, true)}>Bench sheet</button>`
        : nothing}
      ${offers("label")
        ? html`<button type="button" @click=${() => take(`${stem} label.txt`, { kind: "label", plan: of_plan })}>Label draft</button>`
        : nothing}
      <button type="button" @click=${() => take(`${stem}.svg`, { kind: "picture", plan: of_plan })}>Drawing, true size</button>
      ${state.measured
        ? html`<button type="button" @click=${() => take(`${stem}.glb`, { kind: "glb", gauge: of_mould })}>Filled cavity, GLB</button>
            <button type="button" @click=${() => take(`${stem}.stl`, { kind: "stl", gauge: { file: of_mould.file } })}>Cavity, STL</button>`
        : nothing}
    </div>
    <p role="status">${said || `The drawing has the pour line ${both(length(state.units, plan.pour.below_brim_mm))} below the brim.`}</p>
  </section>`;
}
