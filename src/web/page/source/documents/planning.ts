// From what is typed to figures: one question at a time, the next as soon as the last is answered.
// A plan takes some milliseconds, so this is quicker than waiting for a pause, and never piles up.
import { ask_plan, Refused } from "../program/api";
import { plan_ahead } from "./ahead";
import { conflict_of } from "./conflicts";
import { take_dangers, take_refusal } from "./dangers";
import { save_formulas } from "./saving";
import { state, update } from "./state";
import { trial } from "./trial";
import { is_any_unsaved } from "./unsaved";
import { know_files_beside, take_in_changes, times_struck } from "./versions_beside";

const retry_ms = 1000;
const calm_ms = 450; // half-typed numbers are not complained about

let is_asking = false;
let is_wanted = false;
let calm = 0;

/** For each keystroke. */
export function plan_soon(): void {
  update({ is_old: true });
  if (is_asking) is_wanted = true;
  else void plan_now();
}

export async function plan_now(): Promise<void> {
  if (is_asking) {
    is_wanted = true;
    return;
  }
  is_asking = true;
  tell_settled(false);
  try {
    do {
      is_wanted = false;
      await ask();
    } while (is_wanted);
  } finally {
    is_asking = false;
    tell_settled(true);
  }
}

/** At once, and asked again as all else is: by then every file that it rests on is watched. */
export async function show_plan_ahead(): Promise<void> {
  const { run } = state;
  const planned = { file: run.file, run: run.now };
  const plan = await plan_ahead(planned)?.catch(() => undefined);
  if (!plan || run !== state.run || state.plan || is_any_unsaved()) return;
  update({ plan, planned });
  take_dangers(plan);
}

const tell_settled = (is: boolean): void => void (document.documentElement.dataset.settled = String(is));

/** Whether figures of what was asked about are still of what lies open. */
function is_of_now(): () => boolean {
  const { run } = state;
  const { apart } = state.formulas;
  const { file, now } = run;
  return () => {
    const is_same_run = run === state.run && (file === run.file || now === run.now);
    return apart === state.formulas.apart && (apart !== undefined || is_same_run);
  };
}

async function ask(): Promise<void> {
  let is_answer = is_of_now();
  try {
    // Where there is nothing to wait for, the question is on its way before the page is drawn.
    const writing = save_formulas();
    if (writing) await writing;
    const looking = know_files_beside();
    if (looking) await looking;
    is_answer = is_of_now();
    const { apart } = state.formulas;
    if (conflict_of(apart ? "apart" : "run")) return update({ is_old: true }); // the file is not what is typed
    const struck = times_struck();
    const planned = apart ? trial(apart.file) : { file: state.run.file, run: state.run.now };
    const plan = await ask_plan(planned);
    window.clearTimeout(calm);
    if (!is_answer()) return void (is_wanted = true);
    update({ plan, planned, complaint: undefined });
    take_dangers(plan);
    // Of files that have changed while it was on its way, it says nothing.
    const is_of_files = struck === times_struck();
    update({ is_old: is_wanted || !is_of_files });
    if (is_of_files) take_in_changes();
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (!is_answer()) return void (is_wanted = true);
    complain(error);
  }
}

function complain(refused: Refused): void {
  update({ is_old: true });
  window.clearTimeout(calm);
  const show = () => {
    update({ complaint: refused.complaint });
    take_refusal(refused.complaint);
  };
  if (state.complaint || !state.plan) show();
  else calm = window.setTimeout(show, calm_ms);
  // A program that is just being started again answers soon.
  if (refused.may_pass) window.setTimeout(plan_soon, retry_ms);
}
