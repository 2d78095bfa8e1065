// One file, two hands: which of the open files another hand wrote, so that it is asked which text is to stay.
import { beside_ids, formula_slots, type FormulaSlot, type OpenFile } from "./file_types";
import { state } from "./state";

const formulas_in = (slots: readonly FormulaSlot[]): OpenFile[] => [
  ...new Set(slots.flatMap((slot) => state.formulas[slot] ?? [])),
];

const beside = (): OpenFile[] => beside_ids.flatMap((id) => state.beside[id] ?? []);

const in_conflict = (files: OpenFile[]): OpenFile[] => files.filter((file) => file.theirs);

/** Among the files that the figures are made of: of neither text there are figures. */
export const conflict_of = (what: "run" | "apart"): OpenFile | undefined =>
  in_conflict([...formulas_in(what === "apart" ? ["apart"] : ["pour", "pipe"]), ...beside()])[0];

/** Those that hold what another hand wrote, unasked. */
export const all_taken = (): OpenFile[] =>
  [state.run, ...formulas_in(formula_slots), ...beside()].filter((file) => file.is_taken && !file.theirs);

/** Of the run, of all formulas that lie open, and of what they lean on. */
export const all_conflicts = (): OpenFile[] => in_conflict([state.run, ...formulas_in(formula_slots), ...beside()]);
