// Places: what can be shown, by a name and the file it is of, as the address has them; and the way to each.
import { open_run } from "../documents/opening";
import { close_apart, open_formula, open_formula_file } from "../documents/formula_opening";
import type { FormulaSlot } from "../documents/file_types";
import { mould_kind } from "../documents/kinds";
import { leave_draft } from "../documents/mould_draft";
import { measure_own_moulds } from "../documents/own_moulds";
import { state, update } from "../documents/state";
import { unsaved_copies } from "../documents/unsaved";
import { is_list, is_of_run, list_views, run_views, type View } from "../documents/views";
import { leave_mould, open_mould } from "../moulds/chosen_mould";
import { go_on_with_draft } from "../moulds/new_mould";
import { list_files, Refused } from "../program/api";

export interface Place {
  name: string; // a view, or what is open in it
  file?: string;
}

/** With the open file or draft itself: under another name it is the same place. */
export interface Held extends Place {
  of?: object;
}

const slot_names: Record<FormulaSlot, string> = { pour: "base", pipe: "topping", apart: "formula" };
const names: string[] = [...list_views, ...run_views, ...Object.values(slot_names), "describing", "chosen"];

export function place_now(): Held | undefined {
  const { view, run, formula_of, formulas, mould, chosen_mould } = state;
  if (view === "reading") return undefined;
  if (is_of_run(view)) return { name: view, file: run.file, of: run };
  if (view === "moulds" && mould) return { name: "describing", file: mould.open.id, of: mould };
  if (view === "moulds" && chosen_mould) return { name: "chosen", file: chosen_mould.file, of: chosen_mould };
  if (view !== "formula") return { name: view };
  if (formula_of === "apart") return { name: "formula", file: formulas.apart?.file, of: formulas.apart };
  return { name: slot_names[formula_of], file: run.file, of: run };
}

export const address_of = ({ name, file }: Place): string =>
  `#${name}${file ? `/${file.split("/").map(encodeURIComponent).join("/")}` : ""}`;

export function place_in(address: string): Place | undefined {
  const [name, ...file] = address.slice(1).split("/");
  if (!names.includes(name)) return undefined;
  try {
    return { name, file: file.map(decodeURIComponent).join("/") || undefined };
  } catch {
    return undefined;
  }
}

/** What to read first on the way to a place, and what to show meanwhile. */
export function first_view(place: Place | undefined): { run?: string; view?: View } {
  if (!place) return {};
  const view = place.name as View;
  if (is_of_run(view)) return { run: place.file, view };
  const is_of_the_run = place.name === slot_names.pour || place.name === slot_names.pipe;
  return { run: is_of_the_run ? place.file : undefined, view: is_list(view) ? view : "reading" };
}

/** One stays where one is, if what was typed in a formula can neither be written nor left. */
export async function open({ name, file }: Place): Promise<void> {
  const is_open = name === slot_names.apart && state.formulas.apart?.file === file;
  if (!is_open && !(await close_apart())) return;
  try {
    await open_view(name, file);
  } catch (error) {
    if (!(error instanceof Refused || error instanceof SyntaxError)) throw error;
    update({ view: "runs", list_complaint: error.message });
  }
}

async function open_view(name: string, file = ""): Promise<void> {
  const view = name as View;
  if (is_of_run(view)) return open_run_view(file, view);
  const slot = (["pour", "pipe"] as const).find((one) => slot_names[one] === name);
  if (slot) {
    await open_run_view(file, "formula");
    return open_formula(slot);
  }
  if (name === slot_names.apart) return open_formula_file(file);
  await open_list(name, file);
}

async function open_run_view(file: string, view: View): Promise<void> {
  if (file === state.run.file || !file) update({ view: state.run.file ? view : "runs", typed: undefined });
  else await open_run(file, view);
}

async function open_list(name: string, file: string): Promise<void> {
  const view = name as View;
  leave_mould();
  leave_draft();
  update({
    view: is_list(view) ? view : "moulds",
    list_complaint: "",
    list_told: "",
    list_open: undefined,
    fault: undefined,
  });
  const described = unsaved_copies(mould_kind).find((one) => one.id === file);
  if (name === "describing" && described) await go_on_with_draft(described);
  if (name === "chosen") open_mould(file);
  void read_files();
}

async function read_files(): Promise<void> {
  try {
    update({ files: await list_files() });
    measure_own_moulds();
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    update({ list_complaint: error.message });
  }
}
