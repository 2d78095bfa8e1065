// Whether what is typed lies in its file.
import { held_now } from "../documents/beside";
import { conflict_of } from "../documents/conflicts";
import type { OpenFile } from "../documents/file_types";
import { is_changed, is_deleted } from "../documents/open_file";
import { state } from "../documents/state";

interface Saving {
  words: string;
  is_kept: boolean; // nothing is left to do, for her or for the page
  is_failed?: boolean;
}

export function saving(): Saving {
  if (state.view === "order" && state.order) return of_itself(state.order.open);
  const held = held_now();
  if (held) return of_itself(held);
  const formula = unsaved_formula();
  if (formula) return formula;
  const { run } = state;
  const is_run_still = state.formula_of === "apart" || !(is_changed(run) || run.theirs || run.failed);
  if (state.view === "formula" && is_run_still) return kept_formula();
  if (run.theirs) return asked(run);
  if (run.failed) return failed(`Not saved: ${run.failed}`);
  if (is_changed(run)) return under_way;
  return kept(run.shipped ? built_in : `Saved in ${run.file}`);
}

function of_itself(file: OpenFile): Saving {
  if (file.theirs) return asked(file);
  if (file.failed) return failed(`Not saved: ${file.failed}`);
  return is_changed(file) ? under_way : kept(file.shipped ? built_in : `Saved in ${file.file}`);
}

const built_in = "Built-in: your first change is saved as a copy.";
const under_way: Saving = { words: "Saving ...", is_kept: false };
const kept = (words: string): Saving => ({ words, is_kept: true });
const failed = (words: string): Saving => ({ words, is_kept: false, is_failed: true });

const asked = (file: OpenFile): Saving =>
  failed(
    is_deleted(file)
      ? `Not saved: ${file.file} was deleted outside this page. Save it again, or leave it deleted.`
      : `Not saved: ${file.file} was changed outside this page. Choose which version to keep.`,
  );

/** Of what is typed in a formula and not in its file. */
function unsaved_formula(): Saving | undefined {
  const what = state.formulas.apart ? "apart" : "run";
  const conflict = conflict_of(what);
  if (conflict) return asked(conflict);
  const open = what === "apart" ? [state.formulas.apart] : [state.formulas.pour, state.formulas.pipe];
  if (!open.some((file) => file && is_changed(file))) return undefined;
  return state.complaint?.file === "" ? failed(`Not saved: ${state.complaint.problem}`) : under_way;
}

function kept_formula(): Saving {
  const file = state.formulas[state.formula_of];
  if (!file) return kept("");
  return kept(file.shipped ? built_in : `Saved in ${file.file}`);
}
