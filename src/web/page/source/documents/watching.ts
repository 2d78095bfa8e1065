// Other tabs and programs may write any file at any time. Of one that lies open it is then asked which text is to stay;
// figures that rest on others are struck out at once, and asked for anew.
import {
  changes_now,
  longest_wait_ms,
  next_changes,
  type Changes,
  type KnownBench,
  type KnownKept,
  type Versions,
} from "../program/api";
import { bench_known, look_at_bench } from "./bench";
import { base_known, look_at_record, record_known } from "./record";
import { records_are_beside, records_known, take_records } from "./records_beside";
import { look_at_stock, stock_known } from "./stock";
import type { OpenFile } from "./file_types";
import { read_studio } from "./beside";
import { read_formulas } from "./formulas";
import { measure_soon } from "./measuring";
import { half_written, look_at, watched_of } from "./open_file";
import { forget_own_fats } from "./own_fats";
import { measure_own_moulds } from "./own_moulds";
import { plan_soon } from "./planning";
import { state, update } from "./state";
import { forget_own_tips } from "./tips";
import {
  changed_beside,
  known_beside,
  leave_out,
  files_leant_on,
  read_meanwhile,
  strike,
  version_of,
} from "./versions_beside";

const pause_ms = 300; // between two questions at least
const away_ms = 5000; // while nobody sees the page: a browser has few connections, and a hidden tab needs none for long
const silent_ms = 2000; // nobody answers; whoever types is told so
const glance_ms = 500;

let is_looking = false;
let hurry = new AbortController();

/** What is waited for may never come, as after a sleep: it is asked at once. */
export const look_now = (): void => hurry.abort();

const is_away = (): boolean => document.visibilityState === "hidden";

/** Looks again and again, for as long as the page is open. */
export function keep_looking(): void {
  if (is_looking) return;
  is_looking = true;
  const again = async () => {
    hurry = new AbortController();
    const pause = await look(hurry).then(
      () => (is_away() ? away_ms : pause_ms),
      () => (hurry.signal.aborted ? pause_ms : silent_ms),
    );
    await later(pause_ms);
    await later(pause - pause_ms, hurry.signal);
    void again();
  };
  void again();
}

const later = (ms: number, but_for?: AbortSignal): Promise<void> =>
  new Promise((gone_on) => {
    if (ms <= 0 || but_for?.aborted) return gone_on();
    setTimeout(gone_on, ms);
    but_for?.addEventListener("abort", () => gone_on());
  });

const open_files = (): OpenFile[] => [
  state.run,
  ...(state.order ? [state.order.open] : []),
  ...(state.mould ? [state.mould.open] : []),
  ...files_leant_on(),
];

const at_bench_now = (): KnownBench | undefined => {
  const bench = bench_known();
  const base = base_known();
  if (base) return { version: bench?.version, ...base };
  return bench && { ...bench, record: record_known() };
};

/** The same for the shelf and for an order that is looked at. */
const in_folder_now = (): string | undefined => stock_known() ?? records_known();

const kept_now = (): KnownKept => ({ bench: at_bench_now(), stock: in_folder_now(), beside: records_are_beside() });

const open_now = (): Versions => new Map(open_files().flatMap(watched_of));

/** Which files are watched, not what they are: one that lies open is no more one beside. */
const names_now = (): string =>
  JSON.stringify([
    [...open_now().keys()],
    [...known_beside().keys()],
    at_bench_now()?.run ?? null,
    at_bench_now()?.record ?? null,
    in_folder_now() ?? null,
    records_are_beside(),
  ]);

async function look(hurried: AbortController): Promise<void> {
  const planned_before = read_meanwhile();
  if (planned_before.length) await follow_changes(planned_before);
  const [open, beside] = [open_now(), known_beside()];
  const of_both = new Map([...beside, ...open]);
  const is_one = [...beside].every(([name, version]) => of_both.get(name) === version);
  const changes = is_one && !is_away() ? await awaited(of_both, hurried) : await changes_now(of_both, kept_now());
  if (changes.bench !== undefined) await look_at_bench();
  if (changes.record !== undefined) await look_at_record();
  if (changes.stock !== undefined) await look_in_folder(changes.stock);
  leave_out(changes.unreadable);
  await look_at_open(open, changes);
  const changed = changed_beside(beside, is_one ? changes : await changes_now(beside));
  if (changed.length) await follow_changes(changed);
}

/** Asked anew where other files are to be watched, or where no answer comes when there should be one. */
async function awaited(known: Versions, hurried: AbortController): Promise<Changes> {
  const [names, begun] = [names_now(), Date.now()];
  const glance = window.setInterval(() => {
    if (names_now() !== names || Date.now() - begun > longest_wait_ms + silent_ms) hurried.abort();
  }, glance_ms);
  try {
    return await next_changes(known, kept_now(), hurried.signal);
  } finally {
    window.clearInterval(glance);
  }
}

async function look_in_folder(version: string): Promise<void> {
  if (records_known() !== undefined) take_records(version);
  if (stock_known() !== undefined) await look_at_stock();
}

async function look_at_open(asked: Versions, { changed }: Changes): Promise<void> {
  const formulas = files_leant_on();
  for (const file of open_files()) {
    const before = asked.get(file.file);
    if (before === undefined || !(file.file in changed)) continue;
    if (formulas.has(file)) await look_at_formula(file, before);
    else await look_at(file, before, version_of, () => undefined);
  }
}

/** Asked for anew though it could not be looked into: what is struck out must not stay so. */
async function look_at_formula(formula: OpenFile, before: string | null): Promise<void> {
  let is_struck = false;
  const seen = () => {
    is_struck = true;
    strike([formula.file]);
  };
  try {
    if (await look_at(formula, before, version_of, seen)) forget_own_fats();
  } finally {
    if (is_struck) plan_soon();
  }
}

async function follow_changes(files: string[]): Promise<void> {
  strike(files);
  try {
    await half_written();
    forget_own_fats();
    forget_own_tips();
    update({ measured: undefined });
    measure_soon();
    measure_own_moulds();
    await Promise.all([read_formulas(), read_studio(true)]);
  } finally {
    plan_soon();
  }
}
