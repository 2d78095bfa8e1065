// The record of a batch begins when its lye is mixed: what was frozen of it is kept in her folder, with a code of its own.
import { Refused, wording, type Choice } from "../program/api";
import { begin_record, note_in_record, type Answers } from "../program/record";
import { look_at_bench, weigh_cup_of } from "./bench";
import { make_own } from "./open_file";
import { amend_record, newest_record, note_weigh_cup, take_record } from "./record";
import type { BeginningRecord } from "./record_types";
import { save_open } from "./saving";
import { announce, state } from "./state";

const amend = (what: Partial<BeginningRecord>): void => {
  const { beginning } = state.record;
  if (beginning) amend_record({ beginning: { ...beginning, ...what } });
};

export const ask_to_begin = (batch: number): void =>
  amend_record({ beginning: { batch, code: "", answers: {} }, told: undefined });

export const not_yet = (): void => amend_record({ beginning: undefined });

export const type_code_to_begin = (code: string): void => amend({ code, complaint: undefined });

/** A built-in example is made a run of her own first. */
export async function begin_now(seen: string): Promise<void> {
  const { beginning } = state.record;
  if (!beginning || beginning.is_asking) return;
  amend({ is_asking: true, complaint: undefined });
  try {
    if (state.run.shipped) await make_own(state.run);
    await save_open();
    await begin(beginning, seen);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    amend({ complaint: error.complaint });
    announce(`Not begun: ${error.complaint.problem}`);
  } finally {
    amend({ is_asking: false });
  }
}

async function begin({ batch, code, answers }: BeginningRecord, seen: string): Promise<void> {
  const run = state.run.file;
  const again = newest_record(batch) !== undefined;
  const kept = await begin_record({ run, batch, seen, code: code.trim() || undefined, again, ...answers });
  const [begun] = kept.record.batches;
  amend_record({
    run,
    beginning: undefined,
    told: { batch: begun.begun.id, remarks: (kept.record.remarks ?? []).map((one) => one.text) },
  });
  take_record(kept, run);
  announce(`The record is begun: ${begun.begun.code}`);
  void note_weigh_cup(begun, weigh_cup_of(batch));
  await look_at_bench();
}

/** What she says to a question that came up. */
export async function answer_and_begin(choice: Choice, seen: string): Promise<void> {
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
  const { code, run } = state.record;
  if (!code?.text.trim()) return leave_code();
  try {
    const act = crypto.randomUUID();
    take_record(await note_in_record({ run, batch: code.batch, act, code: code.text.trim() }), run);
    leave_code();
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    amend_record({ code: { ...code, complaint: wording(error.complaint) } });
  }
}
