// From what is typed to figures: one question at a time, the next as soon as the last is answered.
// A plan takes some milliseconds, so this is quicker than waiting for a pause, and never piles up.
import { post, Refused } from "./api";
import { know_beside, times_struck } from "./beside";
import { clash_of } from "./clash";
import { take_dangers, take_refusal } from "./danger";
import { trial } from "./formula_opening";
import type { Plan } from "./plan";
import { save_formulas } from "./saving";
import { changed, state } from "./state";

const retry_ms = 1000;
const calm_ms = 450; // half-typed numbers are not complained about

let is_asking = false;
let is_wanted = false;
let calm = 0;

/** For each keystroke. */
export function plan_soon(): void {
  state.is_old = true;
  if (is_asking) is_wanted = true;
  else void plan_now();
}

export async function plan_now(): Promise<void> {
  if (is_asking) {
    is_wanted = true;
    return;
  }
  is_asking = true;
  settled(false);
  try {
    do {
      is_wanted = false;
      await ask();
    } while (is_wanted);
  } finally {
    is_asking = false;
    settled(true);
    changed();
  }
}

const settled = (is: boolean): void => void (document.documentElement.dataset.settled = String(is));

async function ask(): Promise<void> {
  const { file, run } = state;
  const { apart } = state.formulas;
  try {
    await save_formulas();
    await know_beside();
    if (clash_of(apart ? "apart" : "run")) return void (state.is_old = true); // the file is not what is typed
    const struck = times_struck();
    const plan = await post<Plan>("/api/plan", apart ? trial(apart.file) : { file: state.file, run: state.run });
    window.clearTimeout(calm);
    if (apart !== state.formulas.apart) return void (is_wanted = true); // gone on from meanwhile
    if (file !== state.file && state.run !== run) return void (is_wanted = true); // another run, or its copy
    state.plan = plan;
    state.complaint = undefined;
    take_dangers(plan);
    // Of files that have changed while it was on its way, it says nothing.
    state.is_old = is_wanted || struck !== times_struck();
    if (struck === times_struck()) state.changed_beside = undefined;
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (apart !== state.formulas.apart) return void (is_wanted = true);
    complain(error);
  }
  changed();
}

function complain(refused: Refused): void {
  state.is_old = true;
  window.clearTimeout(calm);
  const show = () => {
    state.complaint = refused.complaint;
    take_refusal(refused.complaint);
    changed();
  };
  if (state.complaint || !state.plan) show();
  else calm = window.setTimeout(show, calm_ms);
  // A program that is just being started again answers soon.
  if (refused.may_pass) window.setTimeout(plan_soon, retry_ms);
}
