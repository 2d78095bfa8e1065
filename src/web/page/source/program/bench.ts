// A batch at the bench, as the program keeps it: the weights that it was begun with, and what is ticked of them.
import type { Plan } from "./answers";
import { json, posted, type Complaint } from "./api";

export interface BenchBatch {
  id: string;
  run: string; // its file
  batch: number; // which of the run's batches
  begun_at: string;
  finished_at?: string;
  ticks: { [key: string]: string }; // when
  weigh_cup?: string; // its reading, as typed
  mark: string;
  plan?: Plan; // as it was when the batch was begun; left out of some that are done
}

export interface KeptBatches {
  batches: BenchBatch[];
  version: string;
  complaints?: Complaint[]; // of what is kept, and cannot be read
}

export const read_bench = (run: string): Promise<KeptBatches> =>
  json<KeptBatches>("GET", `/api/bench?run=${encodeURIComponent(run)}`);

/** What begins a batch, or goes on with it: `seen` is the mark of the weights that she saw. */
interface Seen {
  run: string;
  text?: string; // of the run, as it is typed
  batch: number;
  seen: string;
}

export const keep_tick = (tick: Seen & { key: string; done: boolean }): Promise<BenchBatch> =>
  posted<BenchBatch>("/api/bench/tick", tick);

export const keep_weigh_cup = (cup: Seen & { reading: string | null }): Promise<BenchBatch> =>
  posted<BenchBatch>("/api/bench/weigh_cup", cup);

/** What was begun is put away. */
export const begin_anew = (run: string, batch: number): Promise<KeptBatches> =>
  posted<KeptBatches>("/api/bench/anew", { run, batch });

export const finish_batch = (run: string, batch: number): Promise<KeptBatches> =>
  posted<KeptBatches>("/api/bench/finish", { run, batch });
