// What the page knows of lots and pieces, and what of them she is about to record.
import type { StockAmount, StockList, Trail } from "../program/answers";
import type { Complaint } from "../program/api";

export type StockActKind = "bought" | "made" | "counted" | "sold" | "given" | "spoilt" | "counted-pieces" | "take-have";

/** What is typed of an act, from the first key on until the program has it. */
export interface StockForm {
  kind: StockActKind;
  of: string; // the lot as acts name it, or the batch's code; of a new lot nothing
  seen?: StockAmount; // of that, when the form was opened
  typed: { [field: string]: string };
  sources: Source[]; // of one she made
  act: string; // its id: another after each key
  confirmed: string[];
  is_asking?: boolean;
  complaint?: Complaint;
}

/** So much of a lot that is in one she made. */
export interface Source {
  lot: string; // as acts name it
  amount: string;
  unit: string;
}

export interface AtStock {
  version?: string; // none before it is read
  list?: StockList;
  failed?: string; // why it could not be read
  forms: readonly StockForm[];
  told?: { of: string; sentences: string[] }; // what was recorded just now, and of what
  trail?: AskedTrail;
}

export interface AskedTrail {
  of: string; // as asked
  order?: string; // the file of the order that it was asked at
  trail?: Trail;
  complaint?: string;
  choices?: string[]; // which of several things may be meant: "lot A1"
}
