// The place that is shown, and the way to each.
import { slot_names, type Place } from "../documents/addresses";
import { open_run } from "../documents/opening";
import { list_anew } from "../documents/file_acts";
import { sets_out } from "../documents/goings";
import { close_apart, open_formula, open_formula_file } from "../documents/formula_opening";
import { mould_kind } from "../documents/kinds";
import { leave_draft } from "../documents/mould_draft";
import { measure_own_moulds } from "../documents/own_moulds";
import { open_order } from "../documents/order_opening";
import { state, update } from "../documents/state";
import { look_at_stock, remember_forms, show_trail } from "../documents/stock";
import { unsaved_copies } from "../documents/unsaved";
import { is_list, is_of_run, type View } from "../documents/views";
import { leave_mould, open_mould } from "../moulds/chosen_mould";
import { go_on_with_draft } from "../moulds/new_mould";
import { Refused } from "../program/api";

/** With the open file or draft itself: under another name it is the same place. */
export interface Held extends Place {
  of?: object;
}

export function place_now(): Held | undefined {
  const { view, run, order, formula_of, formulas, mould, chosen_mould, stock } = state;
  if (view === "reading") return undefined;
  if (is_of_run(view)) return { name: view, file: run.file, of: run };
  if (view === "moulds" && mould) return { name: "describing", file: mould.open.id, of: mould };
  if (view === "moulds" && chosen_mould) return { name: "chosen", file: chosen_mould.file, of: chosen_mould };
  if (view === "order") return { name: view, file: order?.open.file, of: order };
  if (view === "trail") return { name: view, file: stock.trail?.of };
  if (view !== "formula") return { name: view };
  if (formula_of === "apart") return { name: "formula", file: formulas.apart?.file, of: formulas.apart };
  return { name: slot_names[formula_of], file: run.file, of: run };
}

/** One stays where one is, if what was typed in a formula can neither be written nor left. */
export async function open({ name, file }: Place): Promise<void> {
  const is_wanted = sets_out();
  const is_open = name === slot_names.apart && state.formulas.apart?.file === file;
  if (!is_open && !(await close_apart())) return;
  if (!is_wanted()) return;
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
    if (state.view === "formula") open_formula(slot); // she may have gone on already
    return;
  }
  if (name === slot_names.apart) return open_formula_file(file);
  if (name === "order") return open_order(file);
  if (name === "trail" && file) return show_trail(file);
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
    held_open: undefined,
    fault: undefined,
  });
  const described = unsaved_copies(mould_kind).find((one) => one.id === file);
  if (name === "describing" && described) await go_on_with_draft(described);
  if (name === "chosen") open_mould(file);
  if (name === "shelf") open_shelf();
  void read_files();
}

function open_shelf(): void {
  remember_forms();
  void look_at_stock();
}

async function read_files(): Promise<void> {
  try {
    await list_anew();
    measure_own_moulds();
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    update({ list_complaint: error.message });
  }
}
