// Opening a formula: the base's or the topping's, or one by itself, which is tried in the run that lies open.
import { read_file, Refused } from "../program/api";
import { text_of, type Document } from "../program/json";
import { edit } from "./editing";
import type { FormulaSlot, OpenFile, Slot } from "./file_types";
import { formula_kind } from "./kinds";
import { sets_out } from "./goings";
import { remember_saved } from "./history";
import { file_name } from "./names";
import { create } from "./new_file";
import { is_changed, load } from "./open_file";
import { lay_open } from "./opening";
import { forget_own_fats } from "./own_fats";
import { plan_now } from "./planning";
import { save_formulas } from "./saving";
import { announce, open_as, state, update } from "./state";
import { is_of_run } from "./views";

// To try a formula in where no run can be opened.
const tried_in = "examples/plain_bars.run.json";

export function open_formula(slot: FormulaSlot): void {
  forget_own_fats();
  const came_from = is_of_run(state.view) ? state.view : state.came_from;
  update({ view: "formula", came_from, formula_of: slot, picking: undefined, typed: undefined });
}

export async function open_formula_file(name: string): Promise<void> {
  const is_wanted = sets_out();
  const slot = (["pour", "pipe"] as const).find((one) => state.run.file && state.formulas[one]?.file === name);
  if (slot) return open_formula(slot);
  if (!state.run.file) await lay_open(tried_in, "reading");
  const formula = await load(formula_kind, name);
  if (is_wanted()) open_apart(formula);
}

function open_apart(formula: OpenFile): void {
  update({ run_steps: { past: state.past, future: state.future }, past: [], future: [] });
  open_as("apart", formula);
  if (is_changed(formula)) remember_saved(formula);
  update({ plan: undefined, complaint: undefined });
  open_formula("apart");
  void plan_now();
}

/** Back to the run; false if what was typed could not be written, and so stays open. */
async function leave_formula(): Promise<boolean> {
  const was_apart = state.formulas.apart !== undefined;
  if (!(await close_apart())) return false;
  update({ view: was_apart ? "weigh" : state.came_from, typed: undefined });
  return true;
}

/** The run that lies open is planned again. */
export async function close_apart(): Promise<boolean> {
  if (!state.formulas.apart) return true;
  if (!(await put_apart_away())) return false;
  void plan_now();
  return true;
}

async function put_apart_away(): Promise<boolean> {
  try {
    await save_formulas();
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    update({ complaint: error.complaint });
    return false;
  }
  if (state.formulas.apart?.theirs) {
    announce("Choose first which version of the formula to keep.");
    window.scrollTo(0, 0);
    return false;
  }
  open_as("apart", undefined);
  const dangers = { ...state.dangers, apart: [] };
  update({ dangers, ...state.run_steps, run_steps: undefined, plan: undefined, complaint: undefined });
  return true;
}

/** Where its file is gone: another may be chosen in the run, or in the list. */
export async function close_formula(file: OpenFile): Promise<void> {
  const is_looked_at = state.view === "formula" && state.formulas[state.formula_of] === file;
  const is_apart = state.formulas.apart === file;
  for (const slot of ["pour", "pipe"] as const) if (state.formulas[slot] === file) open_as(slot, undefined);
  if (is_apart) await close_apart();
  if (is_looked_at) update({ view: is_apart ? "formulas" : "set-up", typed: undefined });
}

export async function use_in_run(slot: Slot): Promise<void> {
  const { file } = state.formulas.apart!;
  if (await leave_formula()) edit("run", `/${slot}/formula`, file);
}

/** Everything is left blank: the program asks for one thing after the other, and nothing is guessed. */
const blank = (name: string): Document => ({
  schema: "brimwright.formula/2",
  name,
  fats: [],
  superfat: "",
  alkali: [],
  water: {},
  pour_temperature: "",
});

export const new_formula = (name: string): Promise<void> => made(blank(name));

export async function copy_formula(from: string, name: string): Promise<void> {
  const { $schema: _, ...formula } = JSON.parse((await read_file(from)).text) as Document;
  await made({ ...formula, name }, from);
}

async function made(formula: Document, from?: string): Promise<void> {
  const is_wanted = sets_out();
  const name = file_name(String(formula.name), ".formula.json");
  const { file } = await create({ kind: formula_kind, name, text: text_of(formula), from });
  if (is_wanted()) await open_formula_file(file);
}
