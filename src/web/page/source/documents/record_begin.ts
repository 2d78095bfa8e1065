// The record of a batch begins when its lye is mixed: what was frozen of it is kept in her folder, with a code of its own.
import { Refused, wording, type Choice } from "../program/api";
import {
  begin_record,
  note_in_record,
  type Answers,
  type KeptRecord,
  type RecordedBatch,
  type RecordOf,
} from "../program/record";
import { look_at_bench, weigh_cup_of } from "./bench";
import { make_own } from "./open_file";
import { amend_record, choose_record, newest_record, note_weigh_cup, take_record } from "./record";
import type { BeginningRecord } from "./record_types";
import { save_formulas, save_open } from "./saving";
import { announce, state } from "./state";

const amend = (what: Partial<BeginningRecord>): void => {
  const { beginning } = state.record;
  if (beginning) amend_record({ beginning: { ...beginning, ...what } });
};

export const ask_to_begin = (batch: number): void =>
  amend_record({ beginning: { batch, act: crypto.randomUUID(), code: "", answers: {} }, told: undefined });

export const not_yet = (): void => amend_record({ beginning: undefined });

export const type_code_to_begin = (code: string): void => amend({ code, complaint: undefined });

/** A built-in example is made a run of her own first. What lines are poured from has no mark. */
export async function begin_now(seen?: string): Promise<void> {
  const { beginning, together } = state.record;
  if (!beginning || beginning.is_asking) return;
  amend({ is_asking: true, complaint: undefined });
  try {
    if (together !== undefined) await save_formulas();
    else if (state.run.shipped) await make_own(state.run);
    await save_open();
    await (together === undefined ? begin(beginning, seen) : begin_base(beginning));
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    amend({ complaint: error.complaint });
    announce(`Not begun: ${error.complaint.problem}`);
  } finally {
    amend({ is_asking: false });
  }
}

const asked_of = ({ batch, code, answers }: BeginningRecord) => ({
  batch,
  code: code.trim() || undefined,
  again: newest_record(batch) !== undefined,
  ...answers,
});

async function begin(beginning: BeginningRecord, seen?: string): Promise<void> {
  const run = state.run.file;
  const begun = take_begun(await begin_record({ run, seen, ...asked_of(beginning) }), { run });
  void note_weigh_cup(begun, weigh_cup_of(beginning.batch));
  await look_at_bench();
}

async function begin_base(beginning: BeginningRecord): Promise<void> {
  const { run, together } = state.record;
  const { act } = beginning;
  const kept = await begin_record({ run, together, act, ...asked_of(beginning) });
  if (state.record.run !== run || state.record.together !== together) return;
  choose_record(take_begun(kept, { run, together }).begun.id);
}

function take_begun(kept: KeptRecord, of: RecordOf): RecordedBatch {
  const [begun] = kept.record.batches;
  amend_record({
    ...of,
    beginning: undefined,
    told: { batch: begun.begun.id, remarks: (kept.record.remarks ?? []).map((one) => one.text) },
  });
  take_record(kept, of);
  announce(`The record is begun: ${begun.begun.code}`);
  return begun;
}

/** What she says to a question that came up. */
export async function answer_and_begin(choice: Choice, seen?: string): Promise<void> {
  const { beginning } = state.record;
  if (!beginning) return;
  const { answers } = beginning;
  const more = (member: keyof Answers) => {
    const value = choice[member];
    return value === undefined ? answers[member] : [...(answers[member] ?? []), value];
  };
  amend({ answers: { confirmed: more("confirmed"), lot: more("lot"), "beyond-stock": more("beyond-stock") } });
  await begin_now(seen);
}

export const type_code = (batch: string, text: string): void => amend_record({ code: { batch, text } });

export const leave_code = (): void => amend_record({ code: undefined });

/** Another code for a batch that has one. */
export async function give_code(): Promise<void> {
  const { code, run, together } = state.record;
  if (!code?.text.trim()) return leave_code();
  try {
    const act = crypto.randomUUID();
    const of = { run, together };
    take_record(await note_in_record({ ...of, batch: code.batch, act, code: code.text.trim() }), of);
    leave_code();
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    amend_record({ code: { ...code, complaint: wording(error.complaint) } });
  }
}
