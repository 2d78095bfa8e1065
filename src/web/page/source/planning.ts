// From what is typed to figures: asks the program soon after each keystroke and keeps the newest answer.
import { post, Refused } from "./api";
import type { Plan } from "./plan";
import { save_formulas } from "./saving";
import { changed, state } from "./state";

const pause_ms = 30; // two fast keystrokes are one question
const patience_ms = 1000;

let timer = 0;
let asked = 0;
let shown = 0;
let since = 0;

export function plan_soon(): void {
  if (!since) since = performance.now();
  state.is_old = true;
  clearTimeout(timer);
  timer = window.setTimeout(() => void plan_now(), pause_ms);
}

export async function plan_now(): Promise<void> {
  const mine = ++asked;
  const started = since || performance.now();
  since = 0;
  try {
    await save_formulas();
    const plan = await post<Plan>("/api/plan", { file: state.file, run: state.run });
    if (mine < shown) return;
    shown = mine;
    state.plan = plan;
    state.complaint = undefined;
    if (mine === asked && !since) state.is_old = false;
    state.keystroke_ms = performance.now() - started;
  } catch (error) {
    if (mine < shown) return;
    shown = mine;
    if (!(error instanceof Refused)) throw error;
    state.complaint = error.complaint;
    state.is_old = true;
    // A program that is just being started again answers soon.
    if (error.status === 0) window.setTimeout(() => mine === asked && void plan_now(), patience_ms);
  }
  document.documentElement.dataset.settled = String(mine === asked && !since);
  changed();
}
