// The batches at the bench: ticks, today's weigh-cup and the weights that a batch was begun with are the program's, and the
// same in every tab. What is done is shown at once, and sent until the program has it.
import { Refused, wording, type KnownBench } from "../program/api";
import {
  begin_anew,
  finish_batch,
  keep_tick,
  keep_weigh_cup,
  read_bench,
  type BenchBatch,
  type KeptBatches,
} from "../program/bench";
import { text_of } from "../program/json";
import { drop_acts, move_acts, next_act, put_act, storage_name, waiting_acts } from "./bench_acts";
import type { Act, AtBench } from "./bench_types";
import { plan_soon } from "./planning";
import { announce, state, update } from "./state";

const retry_ms = 2000;

const amend_bench = (what: Partial<AtBench>): void => update({ bench: { ...state.bench, ...what } });

const draw_acts = (): void => amend_bench({ acts: waiting_acts() });

addEventListener("storage", ({ key }) => {
  if (key === storage_name()) draw_acts();
});

/** For each drawing: another run lies open, so its batches are read. */
export function follow_run_to_bench(): void {
  const { file } = state.run;
  if (!file || state.bench.run === file) return;
  update({ bench: { run: file, batches: [], complaints: [], acts: waiting_acts() } });
  void look_at_bench().then(send_acts);
}

/** The example has become the copy that lies open: what was begun of it goes on. */
export function go_on_at_bench(from: string): void {
  const { file } = state.run;
  move_acts(from, file);
  if (state.bench.run === from) amend_bench({ run: file, acts: waiting_acts() });
  if (state.bench.run === file) void look_at_bench();
}

/** What is watched, as soon as it is known. */
export function bench_known(): KnownBench | undefined {
  const { run, version } = state.bench;
  return version === undefined || run !== state.run.file ? undefined : { run, version };
}

let answers = 0; // so many, so that a list that was read before one of them is not taken for the last word

export async function look_at_bench(): Promise<void> {
  const { run } = state.bench;
  const before = answers;
  try {
    const kept = await read_bench(run);
    if (run !== state.bench.run) return;
    if (before !== answers) return await look_at_bench();
    take(kept);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (run !== state.bench.run) return;
    amend_bench({ failed: wording(error.complaint) });
    if (may_come(error)) setTimeout(() => state.bench.failed !== undefined && void look_at_bench(), retry_ms);
  }
}

const take = ({ batches, version, complaints = [] }: KeptBatches): void =>
  amend_bench({ batches, version, complaints: complaints.map(({ line }) => line), failed: undefined });

/** Nobody answers now, or this page's key is of an earlier start. */
const may_come = ({ may_pass, status }: Refused): boolean => may_pass || status >= 500 || [401, 403].includes(status);

export const kept_batch = (number: number): BenchBatch | undefined =>
  state.bench.batches.find((one) => one.batch === number);

const waiting_of = (number: number): Act[] =>
  state.bench.acts.filter(({ run, batch }) => run === state.bench.run && batch === number);

/** What she did of this batch that the program does not have yet. */
export const is_waiting = (number: number): boolean => waiting_of(number).length > 0;

interface Ticked {
  is_done: boolean;
  is_waiting: boolean; // the program does not have it yet
}

export function ticked(number: number, key: string): Ticked {
  const act = waiting_of(number).find((one) => one.key === key);
  const is_kept = kept_batch(number)?.ticks[key] !== undefined;
  return { is_done: act?.done ?? is_kept, is_waiting: act !== undefined };
}

export function weigh_cup_of(number: number): string {
  const act = waiting_of(number).find((one) => one.reading !== undefined);
  return (act ? act.reading : kept_batch(number)?.weigh_cup) ?? "";
}

/** The first of a batch freezes its weights: as the run was planned that she saw. */
function act_on(number: number, seen: string, what: Pick<Act, "key" | "done" | "reading">): void {
  const { run } = state.bench;
  const is_begun = kept_batch(number) !== undefined;
  const text = is_begun || !state.planned ? undefined : text_of(state.planned.run);
  put_act({ run, batch: number, seen, text, ...what });
  amend_bench({ acts: waiting_acts(), chosen: number, told: undefined });
  void send_acts();
}

export const tick = (number: number, seen: string, key: string, done: boolean): void =>
  act_on(number, seen, { key, done });

export const read_weigh_cup = (number: number, seen: string, reading: string): void =>
  act_on(number, seen, { reading: reading || null });

let is_sending = false;

/** One tab at a time, and one after the other. */
async function send_acts(): Promise<void> {
  if (is_sending) return;
  is_sending = true;
  try {
    await navigator.locks.request(storage_name(), send_all);
  } finally {
    is_sending = false;
  }
  if (waiting_acts().length) setTimeout(() => void send_acts(), retry_ms);
}

async function send_all(): Promise<void> {
  for (let act = next_act(); act; act = next_act()) if (!(await is_sent(act))) return;
}

async function is_sent(act: Act): Promise<boolean> {
  const { id } = act;
  try {
    const kept = await sent(act);
    ++answers;
    drop_acts((one) => one.id === id);
    put(kept, act.run);
    return true;
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (may_come(error)) {
      amend_bench({ unsent: wording(error.complaint) });
      return false;
    }
    await give_up(act, error);
    return true;
  }
}

function sent({ run, text, batch, seen, key, done, reading }: Act): Promise<BenchBatch> {
  const which = { run, text, batch, seen };
  if (key !== undefined) return keep_tick({ ...which, key, done: done ?? false });
  return keep_weigh_cup({ ...which, reading: reading ?? null });
}

function put(kept: BenchBatch, run: string): void {
  const acts = waiting_acts();
  if (run !== state.bench.run) return amend_bench({ acts, unsent: undefined });
  const others = state.bench.batches.filter((one) => one.batch !== kept.batch);
  const batches = [...others, kept].sort((a, b) => a.batch - b.batch);
  amend_bench({ acts, batches, unsent: undefined });
}

/** The program will not have it, however often it is asked: she is told why, and shown what holds now. */
async function give_up(act: Act, { complaint }: Refused): Promise<void> {
  ++answers;
  drop_acts((one) => one.run === act.run && one.batch === act.batch);
  const words = `Not taken: ${wording(complaint)}.`;
  amend_bench({ acts: waiting_acts(), unsent: undefined, told: { batch: act.batch, words } });
  announce(words);
  plan_soon();
  await look_at_bench();
}

/** Puts away what was begun of this batch; its next tick begins it with the weights of then. */
export async function start_anew(number: number): Promise<void> {
  const { run } = state.bench;
  await change_batch(number, async () => {
    const kept = await begin_anew(run, number);
    drop_acts((one) => one.run === run && one.batch === number);
    return kept;
  });
}

export const finish = (number: number): Promise<void> =>
  change_batch(number, () => finish_batch(state.bench.run, number));

async function change_batch(number: number, act: () => Promise<KeptBatches>): Promise<void> {
  const { run } = state.bench;
  try {
    const kept = await act();
    ++answers;
    if (run !== state.bench.run) return;
    take(kept);
    amend_bench({ acts: waiting_acts(), told: undefined, chosen: number });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    amend_bench({ told: { batch: number, words: wording(error.complaint) } });
  }
}

export const choose_batch = (number: number): void => amend_bench({ chosen: number, told: undefined });

export const told_is_read = (): void => amend_bench({ told: undefined });
