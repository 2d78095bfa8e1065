// When a run or an order is made: asked for only while it is looked at, when what is typed lies in its files, the plan is
// drawn and the hand rests; one question at a time, and anew when the day has changed.
import { ask_days, Refused, type DaysQuestion } from "../program/api";
import { is_complete } from "./order_lines";
import { know_records } from "./records_beside";
import { save_formulas, save_open } from "./saving";
import { amend, state, update, type AskedDays } from "./state";
import { know_files_beside, times_struck } from "./versions_beside";

const rest_ms = 300;
const retry_ms = 1000;

export interface DaysTold extends Omit<AskedDays, "of"> {
  is_old: boolean; // they are not of what is typed now
}

/** What is asked about. */
interface Whose {
  known?: AskedDays;
  rests_on: () => readonly unknown[]; // all that the answer depends on
  is_ready: boolean;
  written: () => Promise<void>;
  question: () => DaysQuestion;
  is_open: () => boolean;
  keep: (asked: AskedDays) => void;
}
type Of = "run" | "order";

/** By the clock of whoever looks; the program's own says what today is. */
const today = (): string => new Date().toDateString();

const run_question = (): DaysQuestion => ({ file: state.run.file, run: state.run.now });

/** What it is made of was written before it was planned. */
function of_run(): Whose {
  const { run, plan } = state;
  return {
    known: state.run_days,
    rests_on: () => [state.plan, today()],
    is_ready: plan !== undefined && !state.is_old,
    written: () => Promise.resolve(),
    question: () => state.planned ?? run_question(),
    is_open: () => run === state.run,
    keep: (run_days) => update({ run_days }),
  };
}

/** Its runs are read from their files. */
function of_order(): Whose | undefined {
  const { order } = state;
  if (!order) return undefined;
  const { open } = order;
  return {
    known: order.days,
    rests_on: () => [open.now, open.file, state.plan, times_struck(), state.recorded, today()],
    is_ready: is_complete(open.now) && !open.theirs && !state.is_old,
    written: async () => {
      await save_formulas();
      await save_open();
      await know_files_beside();
      await know_records();
    },
    question: () => ({ file: open.file, order: open.now }),
    is_open: () => order === state.order,
    keep: (days) => amend(order, { days }),
  };
}

const whose = (of: Of): Whose | undefined => (of === "run" ? of_run() : of_order());

/** As it is typed now. */
export const days_question = (of: Of): DaysQuestion => whose(of)!.question();

const is_same = (one: readonly unknown[] | undefined, other: readonly unknown[]): boolean =>
  one !== undefined && one.length === other.length && one.every((each, i) => each === other[i]);

/** Nothing at first; the page is drawn again when the answer is here. */
export function days_now(of: Of): DaysTold {
  const asked = whose(of);
  if (!asked) return { is_old: true };
  const { known, is_ready } = asked;
  const is_of_now = is_same(known?.of, asked.rests_on());
  if (!is_of_now && is_ready) ask_soon(of, asked);
  const complaint = is_of_now ? known?.complaint : undefined;
  return { days: known?.days, complaint, is_old: !is_ready || !is_of_now || complaint !== undefined };
}

/** The same question once more. */
export function days_again(of: Of): void {
  const asked = whose(of);
  if (asked?.known) asked.keep({ ...asked.known, of: [] });
}

const due = new Map<Of, { of: readonly unknown[]; timer: number }>();
const asking = new Set<Of>();

function ask_soon(of: Of, asked: Whose): void {
  const rests_on = asked.rests_on();
  const waiting = due.get(of);
  if (asking.has(of) || is_same(waiting?.of, rests_on)) return;
  window.clearTimeout(waiting?.timer);
  due.set(of, { of: rests_on, timer: window.setTimeout(() => void ask(of), asked.known ? rest_ms : 0) });
}

async function ask(of: Of): Promise<void> {
  due.delete(of);
  const asked = whose(of);
  if (!asked?.is_ready) return; // the next drawing asks for it
  asking.add(of);
  try {
    await asked.written();
    await answered(of, asked);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    // What could not be written is told beside its file's name.
  } finally {
    asking.delete(of);
    update({});
  }
}

async function answered(of: Of, { known, rests_on, question, is_open, keep }: Whose): Promise<void> {
  const rested_on = rests_on();
  try {
    const days = await ask_days(question());
    if (is_open()) keep({ of: rested_on, days });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (!is_open()) return;
    keep({ of: rested_on, days: known?.days, complaint: error.complaint });
    if (error.may_pass) window.setTimeout(() => is_open() && days_again(of), retry_ms);
  }
}
