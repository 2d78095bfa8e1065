// When files are written: run and order a moment after the last keystroke, formulas before figures are asked for.
import { Refused } from "../program/api";
import { beside_ids, formula_slots, type OpenFile } from "./file_types";
import { is_changed, make_own, save } from "./open_file";
import { state } from "./state";

const pause_ms = 400;
const retry_ms = 2000;

const timers = new WeakMap<OpenFile, number>();

function save_in(file: OpenFile, ms: number): void {
  clearTimeout(timers.get(file));
  timers.set(
    file,
    window.setTimeout(() => void save_now(file), ms),
  );
}

export const save_soon = (file = state.run): void => save_in(file, pause_ms);

const lies_open = (file: OpenFile): boolean => file === state.run || file === state.order?.open;

/** Until the program is there again; what it refuses is told beside the file's name. */
export async function save_now(file = state.run): Promise<void> {
  clearTimeout(timers.get(file));
  try {
    await save(file);
    if (is_changed(file) && !file.theirs && lies_open(file)) save_soon(file); // typed in meanwhile
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (error.may_pass) save_in(file, retry_ms);
  }
}

/** Run and order, where what is asked next is answered from their files. */
export async function save_open(): Promise<void> {
  for (const file of [state.run, state.order?.open]) if (file?.file && is_changed(file)) await save_now(file);
}

let formulas_writing: Promise<void> = Promise.resolve();
let writings = 0; // under way

/**
 * Formulas, studio, own fats and tips lie in files that the plan reads: they are written before it is asked for. Nothing
 * to wait for where they are.
 */
export function save_formulas(): Promise<void> | undefined {
  if (!writings && !unwritten().length) return undefined;
  ++writings;
  const next = formulas_writing.then(write_formulas).finally(() => --writings);
  formulas_writing = next.catch(() => undefined);
  return next;
}

const unwritten = (): OpenFile[] =>
  [...formula_slots.map((slot) => state.formulas[slot]), ...beside_ids.map((id) => state.beside[id])].filter(
    (file): file is OpenFile => file !== undefined && is_changed(file) && !file.theirs,
  );

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
