// Opening a formula: the base's or the topping's, or one by itself, which is tried in the run that lies open.
import { put, read_kept, Refused, type Document, type Kept } from "./api";
import { asked_name, edit, paper_of } from "./editing";
import { wanting_field } from "./field";
import { forget_own_fats, named_from_here } from "./own_fats";
import { file_name, open_run } from "./opening";
import { plan_now } from "./planning";
import { free_name, save_formulas, take_formula_net, text_of } from "./saving";
import { changed, state, type Page, type Slot, type Whose } from "./state";

// To try a formula in where no run can be opened.
const tried_in = "examples/plain_bars.run.json";

let run_steps: { past: Page[]; future: Page[] } | undefined; // of the run, while a formula lies open by itself

export function open_formula(whose: Whose): void {
  forget_own_fats();
  state.view = "formula";
  state.formula_of = whose;
  state.picking = undefined;
  state.typed = undefined;
  changed();
  window.scrollTo(0, 0);
  requestAnimationFrame(() => document.querySelector<HTMLElement>("#formula-title")?.focus({ preventScroll: true }));
}

/** Opens a formula to mend the place that the program complains of. */
export function mend_formula(whose: Slot): void {
  open_formula(whose);
  requestAnimationFrame(() => requestAnimationFrame(() => wanting_field()?.focus()));
}

export async function open_formula_file(file: string): Promise<void> {
  const slot = (["pour", "pipe"] as const).find((one) => state.file && state.formulas[one]?.file === file);
  if (slot) return open_formula(slot);
  if (!state.file) await open_run(tried_in);
  open_apart(file, await read_kept(file));
}

function open_apart(file: string, kept: Kept): void {
  run_steps = { past: state.past, future: state.future };
  Object.assign(state, { past: [], future: [], plan: undefined, complaint: undefined });
  const paper = (state.formulas.apart = paper_of(file, kept));
  take_formula_net(paper, kept.text);
  open_formula("apart");
  void plan_now();
}

/** Back to the run; false if what was typed could not be written, and so stays open. */
export async function leave_formula(): Promise<boolean> {
  const was_apart = state.formulas.apart !== undefined;
  if (was_apart) {
    try {
      await save_formulas();
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      state.complaint = error.complaint;
      changed();
      return false;
    }
    if (state.formulas.apart?.clash) {
      state.said = "Say first which text of the formula is to stay.";
      window.scrollTo(0, 0);
      changed();
      return false;
    }
    delete state.formulas.apart;
    state.dangers.apart = [];
    Object.assign(state, { ...run_steps, plan: undefined, complaint: undefined });
    run_steps = undefined;
  }
  state.view = "run";
  state.typed = undefined;
  changed();
  if (was_apart) await plan_now();
  window.scrollTo(0, 0);
  return true;
}

export async function use_in_run(slot: Slot): Promise<void> {
  const file = state.formulas.apart!.file;
  if (await leave_formula()) edit("run", `/${slot}/formula`, file);
}

/** Everything is left blank: the program asks for one thing after the other, and nothing is guessed. */
const blank = (name: string): Document => ({
  schema: "brimwright.formula/1",
  name,
  fats: [],
  superfat: "",
  alkali: [],
  water: {},
  pour_temperature: "",
});

export async function new_formula(name: string): Promise<void> {
  await put_formula(blank(name));
}

export async function copy_formula(file: string, name: string): Promise<void> {
  const kept = await read_kept(file);
  const { $schema: _, ...formula } = JSON.parse(kept.text) as Document;
  await put_formula(await named_from_here({ ...formula, name }, file));
}

async function put_formula(formula: Document): Promise<void> {
  const listed = state.files!.formulas;
  for (let i = 0; i < 50; ++i) {
    const file = free_name(file_name(String(formula.name), ".formula.json"), listed);
    try {
      await put<Kept>("/api/run", { file, version: null, text: text_of(formula) });
      listed.push({ file, name: String(formula.name), note: "", shipped: false });
      return await open_formula_file(file);
    } catch (error) {
      if (!(error instanceof Refused) || error.status !== 409) throw error;
      listed.push({ file, name: file, note: "", shipped: false }); // somebody else's
    }
  }
}

/**
 * What a formula that lies open by itself is asked about with: moulds, pots, batches, losses and scales of the run
 * that lies open, and nothing of it that only its own base answers to.
 */
export function trial(formula: string): { file: string; run: Document } {
  const run = state.run;
  const pour = run.pour as Document;
  const losses = run.losses as Document;
  const kept: Document = Object.fromEntries(
    ["cut", "pots", "batch"].filter((key) => run[key] !== undefined).map((key) => [key, run[key]!]),
  );
  if (kept.batch)
    kept.batch = Object.fromEntries(Object.entries(kept.batch as Document).filter(([key]) => key !== "whippings"));
  const moulds: Document = pour?.moulds_owned === undefined ? {} : { moulds_owned: pour.moulds_owned };
  return {
    file: free_name("trial.run.json", state.files?.runs ?? []),
    run: {
      schema: "brimwright.run/1",
      name: String(run.name ?? ""),
      sell: run.sell ?? "",
      spoilage: run.spoilage ?? "",
      pour: {
        mould: asked_name(String(pour?.mould ?? ""), state.files?.moulds),
        ...moulds,
        formula,
        line: pour?.line ?? {},
      },
      losses: { pour: losses?.pour ?? {} },
      scales: run.scales ?? {},
      ...kept,
    },
  };
}
