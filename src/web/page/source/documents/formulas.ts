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

/** As the run that lies open names it. */
function named(slot: Slot): string | undefined {
  const name = at(state.run.now, `/${slot}/formula`);
  return typeof name === "string" && name ? asked_name(name, state.files?.formulas) : undefined;
}

/** But for those that are read already. What is named no more is closed at once. */
export async function read_formulas(): Promise<void> {
  await Promise.all((["pour", "pipe"] as const).map(read_formula));
}

async function read_formula(slot: Slot): Promise<void> {
  const name = named(slot);
  const is_open = () => name !== undefined && state.formulas[slot]?.file === name;
  if (is_open()) return;
  open_as(slot, open_already(name));
  if (name === undefined || is_open()) return;
  const file = await read_once(name);
  if (!file || named(slot) !== name || is_open()) return; // it came by another way, or too late
  const other = open_already(name); // one file may be the formula of both batters
  open_as(slot, other ?? file);
  if (other) return;
  if (is_changed(file)) {
    remember_saved(file);
    tell("unwritten", { file });
  }
  if (file.theirs) tell("conflict", { file });
}

const open_already = (name: string | undefined): OpenFile | undefined =>
  formula_slots.map((one) => state.formulas[one]).find((file) => file && file.file === name);

const on_their_way = new Map<string, Promise<OpenFile | undefined>>();

/** Nothing where it cannot be read: the plan itself says what is wrong with it. */
function read_once(name: string): Promise<OpenFile | undefined> {
  const reading = on_their_way.get(name) ?? load(formula_kind, name).catch(unless_refused);
  on_their_way.set(name, reading);
  return reading.finally(() => on_their_way.delete(name));
}

function unless_refused(error: unknown): undefined {
  if (!(error instanceof Refused || error instanceof SyntaxError)) throw error;
}
