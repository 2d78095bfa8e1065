// What a file is to the page while it lies open, and what kinds of files there are.
import type { Document } from "../program/json";

/** What differs between the files that can be typed in. */
export interface Kind {
  name: "run" | "order" | "formula" | "mould" | "studio" | "fats" | "tips";
  list: "runs" | "orders" | "formulas" | "moulds" | "studios" | "fats" | "tips"; // where it is listed
  called?: "name" | "for" | "title"; // the key of what people call it
  has_id: boolean;
  /** What a file that is not there yet would be called. */
  new_name(file: OpenFile): string;
  /** What is written of what is typed. */
  written(now: Document): Document;
  /** Whether there is anything in it yet that is worth an unsaved copy. */
  is_begun(now: Document): boolean;
}

/** What another hand left in a file; no text where the file was taken away. */
export interface Theirs {
  version: string | null;
  text: string | null;
}

/** Changed by `open_file.ts` alone. */
export interface OpenFile {
  readonly kind: Kind;
  readonly id: string; // what its unsaved copy goes by
  readonly file: string; // its name; "" as long as there is no file
  readonly version: string | null; // as it was read or written last; none while there is no such file
  readonly shipped: boolean; // it came with the program: the first change makes a copy of it
  readonly now: Document; // as it is typed
  readonly saved: Document | undefined; // as it stands in the file
  readonly theirs?: Theirs; // another hand wrote it meanwhile: it is asked which text is to stay
  readonly set_aside?: Document; // what gave way to that
  readonly is_taken?: boolean; // unasked, for nothing was typed
  readonly failed?: string; // why it could not be written
  readonly unanswered: readonly string[]; // texts that were sent to be written, and no answer came
}

/** The batters of a run. */
export type Slot = "pour" | "pipe";

/** Whose a formula is: the base's, the topping's, or nobody's yet, lying open by itself. */
export type FormulaSlot = Slot | "apart";
export const formula_slots: readonly FormulaSlot[] = ["pour", "pipe", "apart"];

/** What a run and its formulas lean on: the studio, and the files of her own fats and tips. */
export type BesideId = "studio" | "own_fats" | "own_tips";
export const beside_ids: readonly BesideId[] = ["studio", "own_fats", "own_tips"];

/** What can be edited in fields. */
export type DocumentId = "run" | "order" | FormulaSlot | BesideId;

export const is_beside = (of: DocumentId): of is BesideId => (beside_ids as readonly string[]).includes(of);

/** All that is typed in a run and what it rests on, at one moment: what undo goes back to. */
export type Step = Partial<Record<Exclude<DocumentId, "order">, { file: OpenFile; now: Document }>>;
