// The bench sheet, the label's draft, pictures and 3D files: one tap each.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { conflict_of } from "../documents/conflicts";
import { save_formulas } from "../documents/saving";
import { amend, state, type PaperSize } from "../documents/state";
import { is_of_several, pieces_of } from "../figures/batches";
import { choice } from "../forms/form_parts";
import type { Plan } from "../program/answers";
import { laid_out, made_document } from "../program/api";
import { both, length } from "../program/numbers";

const printing = (what: Partial<typeof state.printing>): void => amend(state.printing, what);

function with_link(address: string, set: (link: HTMLAnchorElement) => void): void {
  const link = document.createElement("a");
  link.href = address;
  set(link);
  link.click();
}

/** Works one wish off after the other, and says how it went. */
async function tried(wish: () => Promise<string>): Promise<void> {
  if (state.printing.is_working) return;
  printing({ is_working: true, told: "Making it ..." });
  try {
    await written();
    printing({ told: await wish() });
  } catch (error) {
    printing({ told: error instanceof Error ? error.message : String(error) });
  }
  printing({ is_working: false });
}

/** The program makes papers of what lies in the files: that must be what is typed. */
async function written(): Promise<void> {
  await save_formulas();
  const conflict = conflict_of("run");
  if (conflict) throw new Error(`${conflict.file} was changed outside this page: choose first which version to keep.`);
}

const keep = (name: string, body: object) => () =>
  tried(async () => {
    const address = URL.createObjectURL(await made_document(body));
    with_link(address, (link) => (link.download = name));
    window.setTimeout(() => URL.revokeObjectURL(address), 60_000);
    return `${name} is in your downloads.`;
  });

/** In a tab of its own, where the browser prints it. */
const open = (body: object) => () =>
  tried(async () => {
    with_link(await laid_out(body), (link) => Object.assign(link, { target: "_blank", rel: "noopener" }));
    return "It is open in a tab of its own: print it there at 100 %, not fitted to the page.";
  });

const set_paper = (paper: PaperSize) => {
  printing({ paper });
  localStorage.setItem("paper", paper);
};

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
  const { paper, is_working, told } = state.printing;
  const stem = state.run.file
    .split("/")
    .at(-1)!
    .replace(/(\.run)?\.json$/, "");
  const of_plan = { file: state.run.file, run: state.run.now };
  const mould = state.measured?.mould;
  const of_mould = { file: mould, "below-brim": `${plan.pour.below_brim_mm} mm` };
  const batch = sheet_batch(plan);
  const sheet = { plan: of_plan, paper, ...(batch ? { batch: String(batch) } : {}) };
  const button = (words: string, act: () => Promise<void>, look = "") =>
    html`<button type="button" class=${look} ?disabled=${is_working} @click=${() => void act()}>${words}</button>`;
  return html`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${choice<PaperSize>(
      "Paper",
      paper,
      [
        ["A4", "A4"],
        ["Letter", "Letter"],
      ],
      set_paper,
    )}
    ${which_batch(plan)}
    <div class="choice">
      ${button("Bench sheet, to print", open({ kind: "sheet", ...sheet }), "strong")}
      ${
        state.files?.makes_pdf
          ? button(
              "Bench sheet, PDF",
              keep(`${stem}${batch ? ` batch ${batch}` : ""}.pdf`, { kind: "sheet-pdf", ...sheet }),
            )
          : ""
      }
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
      ${told || `The drawing has the pour line ${both(length(state.units, plan.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`;
}
