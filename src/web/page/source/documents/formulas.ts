// The formulas that the run names, read and kept open.
import { Refused } from "../program/api";
import { at } from "../program/pointer";
import { tell } from "./events";
import { formula_slots, type OpenFile, type Slot } from "./file_types";
import { remember_saved } from "./history";
import { formula_kind } from "./kinds";
import { is_changed, load } from "./open_file";
import { asked_name } from "./run_names";
import { open_as, state } from "./state";

/** But for those that are read already. */
export async function read_formulas(): Promise<void> {
  for (const slot of ["pour", "pipe"] as const) {
    const name = at(state.run.now, `/${slot}/formula`);
    if (typeof name === "string" && name) await read_formula(slot, asked_name(name, state.files?.formulas));
    else open_as(slot, undefined);
  }
}

/** One file may be the formula of both batters. */
async function read_formula(slot: Slot, name: string): Promise<void> {
  if (state.formulas[slot]?.file === name) return;
  const same = formula_slots.map((one) => state.formulas[one]).find((file) => file?.file === name);
  open_as(slot, same);
  if (same) return;
  try {
    const file = await loaded_formula(name);
    open_as(slot, file);
    if (is_changed(file)) tell("unwritten", { file });
    if (file.theirs) tell("conflict", { file });
  } catch (error) {
    if (!(error instanceof Refused || error instanceof SyntaxError)) throw error;
    // The plan itself says what is wrong with it.
  }
}

/** Undo goes back from what was left unsaved to what is in the file. */
export async function loaded_formula(name: string): Promise<OpenFile> {
  const file = await load(formula_kind, name);
  if (is_changed(file)) remember_saved(file);
  return file;
}
