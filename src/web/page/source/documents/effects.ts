// What follows from an edit, and from what else happens to an open file: saving, planning, measuring. This is the only
// place that knows all of them.
import type { Document } from "../program/json";
import { at, with_value } from "../program/pointer";
import { go_on_at_bench } from "./bench";
import { close_beside, name_copy_of_own, read_studio } from "./beside";
import { on } from "./events";
import { list_anew } from "./file_acts";
import type { OpenFile } from "./file_types";
import { close_formula } from "./formula_opening";
import { read_formulas } from "./formulas";
import { change_in_history } from "./history";
import { measure_soon } from "./measuring";
import { leave_draft, measure_draft } from "./mould_draft";
import { last_part } from "./names";
import { put_in } from "./open_file";
import { plan_soon } from "./planning";
import { go_on_with_record } from "./record";
import { leave_order } from "./order_opening";
import { save_now, save_soon } from "./saving";
import { state, take_run, update } from "./state";
import { forget_taken_in } from "./versions_beside";

const is_formula = (file: OpenFile): boolean => Object.values(state.formulas).includes(file);
const is_leant_on = (file: OpenFile): boolean => Object.values(state.beside).includes(file);

const formulas_named = (run: Document): string =>
  `${String(at(run, "/pour/formula"))}\n${String(at(run, "/pipe/formula"))}`;

function follow_run(before: Document, now: Document): void {
  if (at(before, "/pour/mould") !== at(now, "/pour/mould")) measure_soon();
  if (formulas_named(before) !== formulas_named(now)) void read_formulas();
  plan_soon();
  save_soon();
}

/** What comes of a formula's text; the plan writes it first. */
const follow_formula = plan_soon;

/** The run names the copy of its formula, and has named it always. */
function name_copy(formula: OpenFile, from: string): void {
  for (const slot of ["pour", "pipe"] as const) {
    if (state.formulas[slot] !== formula) continue;
    const place = `/${slot}/formula`;
    const named = (run: Document) =>
      String(at(run, place) ?? "").endsWith(last_part(from)) ? with_value(run, place, formula.file) : run;
    change_in_history(state.run, named);
    if (named(state.run.now) !== state.run.now) put_in(state.run, named(state.run.now));
  }
}

/** What named it is told of that by the program. */
async function close_deleted(file: OpenFile): Promise<void> {
  if (file === state.run) {
    take_run();
    localStorage.removeItem("run");
    update({ view: "runs" });
  } else if (file === state.mould?.open) leave_draft();
  else if (file === state.order?.open) leave_order();
  else if (is_leant_on(file)) close_beside(file);
  else await close_formula(file);
  await list_anew();
  if (state.run.file) plan_soon();
}

export function wire_effects(): void {
  on("edited", ({ file, before }) => {
    forget_taken_in();
    if (file === state.run) follow_run(before, file.now);
    else if (is_formula(file) || is_leant_on(file)) follow_formula();
    else if (file === state.mould?.open) measure_draft(before);
    else if (file === state.order?.open) save_soon(file);
  });

  on("gave_way", ({ file }) => {
    update({ typed: undefined }); // it may be of a text that stands there no more
    if (file === state.mould?.open) return measure_draft();
    if (file === state.order?.open) return;
    if (file === state.run) {
      measure_soon();
      void read_formulas().then(plan_soon);
    }
    plan_soon();
  });

  on("left_deleted", ({ file }) => void close_deleted(file));

  on("unwritten", ({ file }) => {
    if (file === state.run || file === state.order?.open) void save_now(file);
    else if (is_formula(file) || is_leant_on(file)) plan_soon();
  });

  on("conflict", ({ file }) => {
    if (is_formula(file) || is_leant_on(file)) update({ is_old: true });
  });

  on("renamed", ({ file }) => {
    if (is_leant_on(file) && state.held_open !== undefined) update({ held_open: file.file });
    if (file === state.run) {
      localStorage.setItem("run", file.file);
      measure_soon();
      void read_formulas();
    }
    plan_soon();
  });

  on("copied", ({ file, from }) => {
    if (is_formula(file)) name_copy(file, from);
    if (is_leant_on(file)) name_copy_of_own(file, from);
    if (state.held_open === from) update({ held_open: file.file });
    if (file !== state.run) return;
    go_on_at_bench(from);
    go_on_with_record(from);
    localStorage.setItem("run", file.file);
    void read_studio().then(plan_soon);
  });
}
