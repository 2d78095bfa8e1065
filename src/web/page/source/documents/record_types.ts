// What the page knows of the records of the run that lies open, or of what lines of an order are poured from.
import type { Complaint } from "../program/api";
import type { Answers, PouredBy, RecordedBatch, RecordOf } from "../program/record";

/** What she noted in one blank, from the first key on until the program has it. */
export interface NoteAct extends RecordOf {
  id: string;
  tab: string; // that it was done in
  at: number; // when, by this browser's clock
  batch: string; // its id
  key: string; // of the blank
  text: string; // as it stands in the field
  value: string; // as it is noted; empty to take back what is
  seen: string; // what was noted when she began to type
  confirmed?: string[];
  beyond?: string[]; // lots that more was taken of than is recorded
  is_typed?: boolean; // still being typed
  lacks?: boolean; // a word without which it could mean either of two things, and so it waits
  was_sent?: boolean; // and so it may be there, though no answer came
  refused?: Refusal;
}

/** Why it was not taken; it stays in its field. */
export interface Refusal {
  words: string;
  is_asked?: boolean; // it may be so: she says whether it is
  answers?: { confirmed?: string; beyond?: string }; // by what she says so, where it is not by the value
  is_lye?: boolean; // the soap may burn
  noted?: string; // by somebody else meanwhile, or taken back
}

/** The record of a batch that is being begun. */
export interface BeginningRecord {
  batch: number;
  act: string; // its id: asked again, it begins once
  code: string; // as typed
  answers: Answers;
  is_asking?: boolean;
  complaint?: Complaint;
}

/** Of the run that lies open, or of a base for lines of the order that does. */
export interface AtRecord extends RecordOf {
  version?: string; // none before it is read
  batches: readonly RecordedBatch[];
  of?: number; // so many batches the run is made in
  poured_by?: PouredBy; // an order waits to pour it together with others
  failed?: string; // why it could not be read
  acts: readonly NoteAct[]; // of whatever run
  unsent?: string; // why
  chosen?: string; // the id of the batch that is looked at
  beginning?: BeginningRecord;
  is_led_to?: boolean; // it stands beneath an order, and is to come into sight
  told?: { batch: string; remarks: string[] }; // what came up when its record began
  code?: { batch: string; text: string; complaint?: string }; // another code that is being typed
}
