// Everything the page knows, in one place. What is drawn is a function of this.
import type { Complaint, Document, Files } from "./api";
import type { Units } from "./numbers";
import type { Outline } from "./outline";
import type { CatalogueMould, Fat, Gauge, Plan } from "./plan";

export type Slot = "pour" | "pipe";

/** Whose a formula is: the base's, the topping's, or nobody's yet, lying open by itself. */
export type Whose = Slot | "apart";
export const everyone: Whose[] = ["pour", "pipe", "apart"];

/** What can be edited: the run, or one of the formulas. */
export type Of = "run" | Whose;

/** What could make a soap that burns, or burn her. */
export interface Danger {
  text: string;
  is_of_heat: boolean; // and not of what the superfat comes to
}

export interface FormulaPaper {
  file: string;
  version: string | null; // none while there is no such file
  shipped: boolean;
  document: Document;
  saved: Document; // as it stands in the file
  clash?: Theirs; // another hand wrote it meanwhile
  unanswered?: string[]; // texts that were sent to be written, and no answer came
}

/** What another hand left in a file; no text where the file was taken away. */
export interface Theirs {
  version: string | null;
  text: string | null;
}

/** What undo goes back to. */
export interface Page {
  run: Document;
  formulas: Partial<Record<Whose, { paper: FormulaPaper; document: Document }>>;
}

interface Measured {
  mould: string; // the file's name, as asked for
  gauge: Gauge;
  outline: Outline;
}

type Saving =
  | { is: "shipped" } // untouched, and saved as a copy once it is touched
  | { is: "saved" }
  | { is: "waiting" }
  | { is: "failed"; line: string }
  | ({ is: "conflict"; file: string } & Theirs);

interface State {
  view: "reading" | "run" | "start" | "formula";
  formula_of: Whose; // the one that the view of a formula shows
  fault?: string;
  files?: Files;
  fats: Fat[];
  catalogue: CatalogueMould[];

  file: string;
  version: string | null;
  shipped: boolean;
  run: Document;
  formulas: Partial<Record<Whose, FormulaPaper>>;
  past: Page[];
  future: Page[];
  saving: Saving;

  plan?: Plan;
  batch: number; // which of its sizes is weighed, as the program lists them
  is_old: boolean; // the figures shown are not of what is typed now
  changed_beside?: string; // the file whose change made them old
  dangers: Record<"run" | "apart", Danger[]>; // of the last answer that told of them
  complaint?: Complaint;
  measured?: Measured;
  measuring_failed?: string;

  picking?: { of: Whose; row: number; text: string }; // the list of fats is open for this row
  typed?: { key: string; text: string }; // the field being typed in, as typed
  open: Set<string>; // arithmetic shown
  folded: Set<string>; // lanes folded away by hand
  units: Units;
  said: string; // for those who listen to the page
}

export const state: State = {
  view: "reading",
  formula_of: "pour",
  fats: [],
  catalogue: [],
  file: "",
  version: null,
  shipped: false,
  run: {},
  formulas: {},
  past: [],
  future: [],
  saving: { is: "saved" },
  batch: 0,
  is_old: false,
  dangers: { run: [], apart: [] },
  open: new Set(),
  folded: new Set(),
  units: remembered_units(),
  said: "",
};

function remembered_units(): Units {
  const kept = localStorage.getItem("units");
  return kept === "metric" || kept === "us" ? kept : "both";
}

export function document_of(of: Of): Document | undefined {
  return of === "run" ? state.run : state.formulas[of]?.document;
}

let draw: () => void = () => {};
let is_due = false;

export function drawn_by(drawing: () => void): void {
  draw = drawing;
}

/** Draws once for all changes of this turn. */
export function changed(): void {
  if (is_due) return;
  is_due = true;
  queueMicrotask(() => {
    is_due = false;
    draw();
  });
}

export function toggle(set: Set<string>, name: string): void {
  if (!set.delete(name)) set.add(name);
  changed();
}
