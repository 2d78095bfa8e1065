// Opening a run, and making a new one.
import { list_fats, list_moulds, Refused } from "../program/api";
import { text_of, type Document } from "../program/json";
import { first_files, run_to_open } from "./ahead";
import { follow_run_to_bench } from "./bench";
import { read_studio } from "./beside";
import { sets_out } from "./goings";
import { read_formulas } from "./formulas";
import { remember_saved } from "./history";
import { run_kind } from "./kinds";
import { measure_soon } from "./measuring";
import { file_name } from "./names";
import { create } from "./new_file";
import { is_changed, load } from "./open_file";
import { plan_now, show_plan_ahead } from "./planning";
import { save_now, save_soon } from "./saving";
import { open_up, state, take_run, update } from "./state";
import type { View } from "./views";
import { keep_looking } from "./watching";

/** On the run and the view that are wanted, where they are there. */
export async function begin(wanted: { run?: string; view?: View }): Promise<void> {
  const files = await first_files();
  update({ files });
  const run = run_to_open(files, wanted.run);
  try {
    await lay_open(run, run === wanted.run || !wanted.run ? wanted.view : undefined);
  } catch (error) {
    // A run that cannot be read must not stand in the way of all others.
    const fault =
      error instanceof Refused ? error.message : `The run opened last can no longer be read: ${String(error)}`;
    update({ fault, view: "runs" });
    localStorage.removeItem("run");
  }
}

/** The figures stand; now what only helps to explain them. */
export async function read_lists(): Promise<void> {
  try {
    const [fats, catalogue] = await Promise.all([list_fats(), list_moulds()]);
    update({ fats, catalogue });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (error.may_pass) window.setTimeout(() => void read_lists(), retry_ms);
    else update({ fault: error.message });
  }
}

const retry_ms = 2000;

/** Longer than that nobody is left without any view. */
const soon = (): Promise<void> => new Promise((later) => setTimeout(later, 400));

let last_wanted: object = {};

export function open_run(name: string, view?: View): Promise<void> {
  sets_out();
  return lay_open(name, view);
}

/** Where another run is wanted meanwhile, that one is shown; and on another view she stays. */
export async function lay_open(name: string, view: View = "weigh"): Promise<void> {
  if (!name) return update({ view: "runs" });
  const wanted = (last_wanted = { name });
  const left = state.view;
  if (state.run.file && is_changed(state.run)) await save_now();
  const run = await load(run_kind, name);
  if (last_wanted !== wanted) return;
  take_run(run);
  follow_run_to_bench();
  await Promise.race([show_plan_ahead(), soon()]);
  if (state.run !== run) return;
  if (state.view === left && last_wanted === wanted) update({ view });
  localStorage.setItem("run", run.file);
  if (is_changed(run)) {
    remember_saved(run);
    save_soon();
  }
  // Weights before drawings: the program answers one thing after the other.
  const planned = plan_now().finally(measure_soon);
  await Promise.all([planned, read_formulas(), read_studio()]);
  keep_looking();
}

/** New runs stand in the folder that is served, where its studio's file has one name. */
const has_studio = (): boolean => (state.files?.studios ?? []).some((one) => one.file === "studio.json");

interface NewRun {
  name: string;
  mould: string;
  formula: string;
  sell: number;
  slice?: string; // how thick the bars are that its loaf is cut into
}

/**
 * What is the same in every run is left to the studio, where there is one; else it is taken over from the run that lay
 * open, but for the invented prices of an example. The pour line is asked next, and so its part stands open.
 */
export async function make_run(wanted: NewRun): Promise<void> {
  const is_wanted = sets_out();
  const before = state.run.now;
  const losses = (before.losses ?? {}) as Document;
  const run: Document = {
    schema: "brimwright.run/2",
    id: crypto.randomUUID(),
    name: wanted.name,
    sell: wanted.sell,
    pour: { mould: wanted.mould, formula: wanted.formula },
  };
  if (wanted.slice) run.cut = { bar: { thickness: wanted.slice }, ...(has_studio() ? {} : { kerf: "" }) };
  if (!has_studio()) {
    run.note = `Losses, scales and spoilage were taken over from "${String(before.name)}": check them.`;
    if (before.spoilage !== undefined) run.spoilage = before.spoilage;
    run.losses = { pour: losses.pour ?? {} };
    run.scales = before.scales ?? {};
    if (before.money && !state.run.shipped) run.money = before.money;
  }
  const { file } = await create({ kind: run_kind, name: file_name(wanted.name, ".run.json"), text: text_of(run) });
  if (!is_wanted()) return;
  open_up("set-up pour");
  if (wanted.slice) open_up("set-up cut");
  await open_run(file, "set-up");
}
