// What the page knows of the batches at the bench.
import type { BenchBatch } from "../program/bench";

/** A tick, or a reading of today's weigh-cup. */
export interface Act {
  id: string;
  tab: string; // that it was done in
  at: number; // when, by this browser's clock
  run: string; // its file
  text?: string; // of the run as it was planned, where the batch is not begun yet
  batch: number;
  seen: string; // the mark of the weights that she saw
  key?: string; // of the row that is ticked, or no more
  done?: boolean;
  reading?: string | null;
}

/** Of the run that lies open. */
export interface AtBench {
  run: string; // its file
  batches: readonly BenchBatch[]; // that were begun
  version?: string; // none before they are read
  complaints: readonly string[]; // of what is kept of them
  failed?: string; // why they could not be read
  acts: readonly Act[]; // that the program does not have yet, of whatever run
  unsent?: string; // why
  told?: { batch: number; words: string }; // what came of the last act, where that was not what she wanted
  chosen?: number; // the number of the batch that is looked at
}

/** Of each size of whipping, how many it pipes now. */
export interface WhipToday {
  of?: object; // the question for the plan that it is of
  batch: number;
  reading: string;
  mark?: string; // of the weights that the answer is for
  pieces?: (number | null)[];
  complaint?: string;
}
