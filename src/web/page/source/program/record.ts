// What really happened to the batches of a run, as the program keeps it in her folder.
import type { NotedRow, PouredLine, Remark } from "./answers";
import { json, posted } from "./api";

/** Something that may be noted of a batch, in the order of its sheet, and what is. */
export interface Blank {
  key: string;
  of?: string; // "base", "topping"; of the batch where there is none
  words: string;
  kind: "mass" | "temperature" | "minutes" | "date" | "count" | "length" | "volume" | "choice" | "text" | "weighing";
  when: "day_before" | "base_mixed" | "poured" | "topping_mixed" | "whipped" | "piped" | "afterwards";
  unit?: string; // as it is filled in on paper
  planned?: string;
  choices?: string[];
  noted?: string; // as it was typed
  noted_at?: string;
}

/** Pieces that were put on a scale together on a day of their cure. */
export interface Weighing {
  on: string;
  pieces: number;
  written: string; // what they weighed together
}

/** Whose batches are recorded: a run's, or of an order's file and a word the base that lines with it are poured from. */
export interface RecordOf {
  run: string;
  together?: string;
}

/** A batch whose record has begun. Of one that is not looked at, what is noted is counted alone. */
export interface RecordedBatch {
  number: number; // in its run
  begun: { id: string; code: string; begun_on: string; begun_at: string; pieces: number };
  poured_from: string | null; // the code of a base that was mixed for several runs
  lines: PouredLine[]; // what is poured from it, where it is such a base
  for_sale: boolean;
  not_for_sale_because?: string;
  noted: number; // so many of its blanks
  blanks?: Blank[];
  cured?: Weighing[];
  rows?: NotedRow[];
  as_weighed?: Remark[]; // what comes of its lye by weights that were not planned
}

export interface Recorded {
  batches: RecordedBatch[]; // by the day they were begun
  run_batches: number | null; // how many the run is made in, where that is known
  done?: string[]; // in sentences
  remarks?: { severity: string; text: string }[];
}

/** An order that pours the run together with others, from a base of which a batch waits. */
export interface PouredBy {
  order: string; // its file
  words: string; // of a sentence that says so
}

export interface KeptRecord {
  version?: string; // of all that is recorded beside the run, where all of the run was asked for
  poured_by?: PouredBy | null; // likewise
  record: Recorded;
}

/** Of `batch`, else of the one begun last, all that may be noted. */
export const read_record = ({ run, together }: RecordOf, batch = ""): Promise<KeptRecord> =>
  json<KeptRecord>(
    "GET",
    `/api/record?run=${encodeURIComponent(run)}&batch=${encodeURIComponent(batch)}` +
      (together === undefined ? "" : `&together=${encodeURIComponent(together)}`),
  );

/** What answers questions that came up, by the members of the question that they answer. */
export interface Answers {
  confirmed?: string[];
  lot?: string[]; // "olive=OL-12"
  "beyond-stock"?: string[]; // codes of lots
}

/** `seen` is the mark of the weights that she saw: no others are recorded. A base has an act's id in its place. */
export interface Beginning extends Answers, RecordOf {
  batch: number;
  seen?: string;
  act?: string;
  code?: string; // hers, in place of the day and the next letter
  again?: boolean; // another making of what was begun before
}

export const begin_record = (beginning: Beginning): Promise<KeptRecord> =>
  posted<KeptRecord>("/api/record/begin", beginning);

/** An act that was done already, by its id, is done once. */
interface Noting extends RecordOf {
  batch: string; // its id
  act: string;
  set?: { [key: string]: string | null }; // null takes it back
  seen?: { [key: string]: string | null }; // what was noted there, as far as she knows
  confirmed?: string[];
  "beyond-stock"?: string[];
  code?: string; // another for the batch
}

export const note_in_record = (noting: Noting): Promise<KeptRecord> => posted<KeptRecord>("/api/record/note", noting);
