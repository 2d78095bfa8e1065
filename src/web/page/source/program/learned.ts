// What batches say for the next plan, each figure apart; and taking one into the file where a typed one would stand.
import type { Learned } from "./answers";
import { json, posted } from "./api";

export interface KeptLearned {
  version: string; // of the records that it is told from
  learned: Learned | null; // nothing is recorded
  versions: { [file: string]: string }; // of those that figures can be taken into
}

export const read_learned = (run: string): Promise<KeptLearned> =>
  json<KeptLearned>("GET", `/api/learned?run=${encodeURIComponent(run)}`);

/** One of the two. Refused with status 409 where the file is of another version by now. */
interface Taking {
  run: string;
  file: string;
  version: string;
  take?: string;
  undo?: string;
}

/** The file as it was written. */
export interface WrittenFile {
  file: string;
  version: string;
  text: string;
}

export const take_learned = (taking: Taking): Promise<WrittenFile> => posted<WrittenFile>("/api/learned/take", taking);
