// When files are written: the run a moment after the last keystroke, formulas before figures are asked for.
import { Refused } from "../program/api";
import { beside_ids, formula_slots } from "./file_types";
import { is_changed, make_own, save } from "./open_file";
import { state } from "./state";

const pause_ms = 400;
const retry_ms = 2000;

let timer = 0;

export function save_soon(): void {
  clearTimeout(timer);
  timer = window.setTimeout(() => void save_now(), pause_ms);
}

/** Until the program is there again; what it refuses is told beside the file's name. */
export async function save_now(): Promise<void> {
  clearTimeout(timer);
  const { run } = state;
  try {
    await save(run);
    if (is_changed(run) && !run.theirs && run === state.run) save_soon(); // typed in meanwhile
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (error.may_pass) timer = window.setTimeout(() => void save_now(), retry_ms);
  }
}

let formulas_writing: Promise<void> = Promise.resolve();

/** Formulas, studio, own fats and tips lie in files that the plan reads: they are written before it is asked for. */
export function save_formulas(): Promise<void> {
  const next = formulas_writing.then(write_formulas);
  formulas_writing = next.catch(() => undefined);
  return next;
}

async function write_formulas(): Promise<void> {
  for (const slot of formula_slots) {
    const file = state.formulas[slot];
    if (!file || !is_changed(file) || file.theirs) continue;
    if (file.shipped && slot !== "apart") await make_own(state.run); // which names the copy
    await save(file);
  }
  for (const id of beside_ids) {
    const file = state.beside[id];
    if (file && is_changed(file) && !file.theirs) await save(file);
  }
}
