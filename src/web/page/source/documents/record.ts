// What really happened: the records of the run's batches are the program's, and the same in every tab and on the command
// line. What is typed is shown at once, and sent until the program has it; what it refuses stays in its field.
import { Refused, wording, type Choice } from "../program/api";
import {
  note_in_record,
  read_record,
  type Blank,
  type KeptRecord,
  type RecordedBatch,
  type RecordOf,
  type Weighing,
} from "../program/record";
import {
  change_note,
  change_notes,
  drop_notes,
  next_note,
  note_of,
  notes_storage,
  pause_ms,
  put_note,
  waiting_notes,
} from "./record_acts";
import type { AtRecord, NoteAct, Refusal } from "./record_types";
import { state, update } from "./state";

const retry_ms = 2000;

export const amend_record = (what: Partial<AtRecord>): void => update({ record: { ...state.record, ...what } });

const draw_notes = (): void => amend_record({ acts: waiting_notes() });

addEventListener("storage", ({ key }) => {
  if (key === notes_storage()) draw_notes();
});

/** For each drawing: another run lies open, so its records are read. */
export function follow_run_to_record(): void {
  if (state.run.file) follow_to_record({ run: state.run.file });
}

/** The same of a base that lines of an order are poured from. */
export function follow_to_record({ run, together }: RecordOf): void {
  if (is_shown({ run, together })) return;
  update({ record: { run, together, batches: [], acts: waiting_notes(), chosen: remembered({ run, together }) } });
  void look_at_record().then(send_notes);
}

const name_of = ({ run, together }: RecordOf): string => (together === undefined ? run : `${run}#${together}`);
const is_shown = (of: RecordOf): boolean => name_of(of) === name_of(state.record);

/** The example has become the copy that lies open: nothing was recorded of it yet. */
export function go_on_with_record(from: string): void {
  if (state.record.run !== from) return;
  amend_record({ run: state.run.file });
  void look_at_record();
}

const chosen_name = (of: RecordOf): string => `record ${name_of(of)}`;
const remembered = (of: RecordOf): string | undefined => sessionStorage.getItem(chosen_name(of)) ?? undefined;

/** What is watched, as soon as it is known. */
export const record_known = (): string | undefined =>
  state.record.run === state.run.file ? state.record.version : undefined;

/** Of an order that is looked at. */
export const base_known = (): { run: string; record: string } | undefined => {
  const { run, together, version } = state.record;
  return together !== undefined && version !== undefined && state.view === "order"
    ? { run, record: version }
    : undefined;
};

let answers = 0; // so many, so that a list that was read before one of them is not taken for the last word

export async function look_at_record(): Promise<void> {
  const { run, together, chosen } = state.record;
  const of = { run, together };
  const before = answers;
  try {
    const kept = await read_record(of, chosen);
    if (!is_shown(of)) return;
    if (before !== answers || chosen !== state.record.chosen) return await look_at_record();
    const { batches, run_batches } = kept.record;
    const poured_by = kept.poured_by ?? undefined;
    amend_record({ batches, of: run_batches ?? state.record.of, version: kept.version, poured_by, failed: undefined });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (!is_shown(of)) return;
    amend_record({ failed: wording(error.complaint) });
    if (may_come(error)) setTimeout(() => state.record.failed !== undefined && void look_at_record(), retry_ms);
  }
}

/** Nobody answers now, or this page's key is of an earlier start. */
const may_come = ({ may_pass, status }: Refused): boolean => may_pass || status >= 500 || [401, 403].includes(status);

/** Of one batch; what is known of the others stays. */
export function take_record({ record }: KeptRecord, of: RecordOf): void {
  ++answers;
  if (!is_shown(of)) return;
  const ids = new Set(record.batches.map(({ begun }) => begun.id));
  const is_known = (one: RecordedBatch) => ids.has(one.begun.id);
  const put = (one: RecordedBatch) => record.batches.find(({ begun }) => begun.id === one.begun.id) ?? one;
  const fresh = record.batches.filter(({ begun }) => !state.record.batches.some((one) => one.begun.id === begun.id));
  const batches = [...state.record.batches.map((one) => (is_known(one) ? put(one) : one)), ...fresh];
  amend_record({ batches, of: record.run_batches ?? state.record.of });
}

/** The one that is looked at: it was chosen, else it was begun last. */
export function batch_looked_at(): RecordedBatch | undefined {
  const { batches, chosen } = state.record;
  return batches.find(({ begun }) => begun.id === chosen) ?? batches.at(-1);
}

export const remember_chosen = (of: RecordOf, batch: string): void => sessionStorage.setItem(chosen_name(of), batch);

export function choose_record(batch: string): void {
  remember_chosen(state.record, batch);
  amend_record({ chosen: batch });
  void look_at_record();
}

/** Of that number in the run, the one begun last; since a moment, if one is given. */
export const newest_record = (number: number, since?: string): RecordedBatch | undefined =>
  state.record.batches
    .filter((one) => one.number === number && (!since || new Date(one.begun.begun_at) >= new Date(since)))
    .at(-1);

/** "12 pieces, 1040 g", as it is noted. */
export const weighing_words = ({ pieces, written }: Pick<Weighing, "pieces" | "written">): string =>
  `${pieces} ${pieces === 1 ? "piece" : "pieces"}, ${written}`;

/** What is noted in a blank, or of a weighing on its day. */
export function noted_in({ blanks, cured, rows }: RecordedBatch, key: string): string {
  const day = /^cured\.(.+)$/.exec(key)?.[1];
  const weighing = day && cured?.find(({ on }) => on === day);
  if (day) return weighing ? weighing_words(weighing) : "";
  return [...(blanks ?? []), ...(rows ?? [])].find((one) => one.key === key)?.noted ?? "";
}

export interface TypedNote {
  key: string; // of the blank
  text: string; // as it stands in its field
  value: string; // and is noted
  is_left: boolean; // at once; else once the hand rests
  lacks?: boolean; // a word, and so it waits
}

export function type_note(batch: RecordedBatch, { key, text, value, is_left, lacks }: TypedNote): void {
  const seen = noted_in(batch, key);
  const before = note_of(batch.begun.id, key);
  if (value === seen && !lacks && (!before || (!before.was_sent && before.seen === seen))) {
    if (before) drop_notes(({ id }) => id === before.id);
    return draw_notes();
  }
  const is_same = before?.value === value && !before.lacks === !lacks;
  if (is_same && (before.refused ?? !before.is_typed)) return; // it was asked, and nothing else is typed
  const { run, together } = state.record;
  put_note({ run, together, batch: batch.begun.id, key, text, value, seen, is_typed: !is_left, lacks });
  draw_notes();
  if (is_left) void send_notes();
  else setTimeout(() => void send_notes(), pause_ms + 50);
}

/** In one tap. */
export const note_at_once = (batch: RecordedBatch, key: string, value: string): void =>
  type_note(batch, { key, text: value, value, is_left: true });

/** She says that it is so: what was asked about, or in place of what somebody else noted. */
export function insist(act: NoteAct): void {
  const { refused, value } = act;
  if (!refused) return;
  const { answers = { confirmed: value } } = refused;
  const more = (said: string[] = [], one?: string) => (one === undefined ? said : [...said, one]);
  const answer = refused.is_asked
    ? { confirmed: more(act.confirmed, answers.confirmed), beyond: more(act.beyond, answers.beyond) }
    : { seen: refused.noted ?? act.seen };
  change_note(act.id, { ...answer, refused: undefined });
  draw_notes();
  void send_notes();
}

/** What is noted stays, and what is typed goes. */
export function give_way(act: NoteAct): void {
  drop_notes(({ id }) => id === act.id);
  draw_notes();
}

let is_sending = false;

/** One tab at a time, and one after the other. */
export async function send_notes(): Promise<void> {
  if (is_sending) return;
  is_sending = true;
  try {
    await navigator.locks.request(notes_storage(), send_all);
  } finally {
    is_sending = false;
  }
  if (waiting_notes().some((one) => !one.refused && !one.lacks)) setTimeout(() => void send_notes(), retry_ms);
}

async function send_all(): Promise<void> {
  for (let act = next_note(); act; act = next_note()) if (!(await is_sent(act))) return;
}

/** The run may be called otherwise by now. */
function noted_of({ batch, run, together }: NoteAct): RecordOf {
  const { record } = state;
  const is_here = record.batches.some(({ begun }) => begun.id === batch);
  return is_here ? { run: record.run, together: record.together } : { run, together };
}

async function is_sent(act: NoteAct): Promise<boolean> {
  const { id, batch, key, value, seen, confirmed, beyond } = act;
  const of = noted_of(act);
  change_note(id, { was_sent: true });
  try {
    const kept = await note_in_record({
      ...of,
      batch,
      act: id,
      set: { [key]: value || null },
      seen: { [key]: seen || null },
      confirmed,
      "beyond-stock": beyond,
    });
    drop_notes((one) => one.id === id);
    is_there(act, kept);
    take_record(kept, of);
    amend_record({ acts: waiting_notes(), unsent: undefined });
    return true;
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (may_come(error)) {
      amend_record({ unsent: wording(error.complaint) });
      return false;
    }
    await refuse(act, error);
    return true;
  }
}

/** What is typed there meanwhile goes on from it, and what another blank was refused for may be well now. */
function is_there({ batch, key }: NoteAct, { record }: KeptRecord): void {
  const it = record.batches.find(({ begun }) => begun.id === batch);
  change_notes((one) => {
    if (one.batch !== batch) return one;
    if (one.key === key) return it ? { ...one, seen: noted_in(it, key) } : one;
    return one.refused && !one.refused.is_asked && one.refused.noted === undefined
      ? { ...one, refused: undefined }
      : one;
  });
}

async function refuse({ id, value }: NoteAct, { complaint }: Refused): Promise<void> {
  const { asks, choices, problem } = complaint;
  const seen = asks === "seen" ? (choices?.[0]?.seen ?? "") : undefined;
  const noted = seen === true ? "" : seen; // by somebody else
  const words = asks ? problem : wording(complaint);
  if (noted === value) drop_notes((one) => one.id === id);
  else
    change_note(id, {
      refused: { words, is_asked: asks === "confirmed" || asks === "beyond-stock", noted, ...said_by(choices) },
    });
  draw_notes();
  await look_at_record();
}

/** By what she says that it is so. */
function said_by(choices: Choice[] = []): Pick<Refusal, "answers" | "is_lye"> {
  const confirmed = choices[0]?.confirmed;
  const beyond = choices[0]?.["beyond-stock"];
  if (confirmed === undefined && beyond === undefined) return {};
  return { answers: { confirmed, beyond }, is_lye: confirmed === more_lye };
}

const more_lye = "lye-heavy"; // what confirms that more lye was weighed than planned

/** So many of a batch that are not taken, or wait for a word of hers. */
export const refused_of = (batch: string): number =>
  state.record.acts.filter((one) => one.batch === batch && (one.refused ?? one.lacks)).length;

/** A reading that was taken at the weights goes into its blank, where it is plain which one that is. */
export async function note_weigh_cup(batch: RecordedBatch | undefined, reading: string): Promise<void> {
  if (!batch || !reading) return;
  const it = batch.blanks ? batch : await whole_record(batch.begun.id);
  const cups = it?.blanks?.filter(is_cup_of_topping) ?? [];
  if (it && cups.length === 1) note_at_once(it, cups[0].key, reading);
}

async function whole_record(id: string): Promise<RecordedBatch | undefined> {
  try {
    return (await read_record(state.record, id)).record.batches.find(({ begun }) => begun.id === id);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return undefined; // it is asked at the bench, beside the reading
  }
}

export const is_cup_of_topping = ({ key }: Blank): boolean => /^topping(-\d+)?\.cup$/.test(key);
