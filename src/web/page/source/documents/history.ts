// Undo and redo: what was typed in the run and its formulas, step by step.
import type { Document } from "../program/json";
import { on } from "./events";
import { beside_ids, formula_slots, is_beside, type BesideId, type OpenFile, type Step } from "./file_types";
import { put_in } from "./open_file";
import { announce, open_as, state, update } from "./state";

const most_steps_back = 300;
const one_thought_ms = 1200; // typing in one field without a longer pause is one step of undo

let last_field = "";
let last_time = 0;

/** All that is typed, as it stands. */
function as_it_stands(): Step {
  const step: Step = { run: { file: state.run, now: state.run.now } };
  for (const slot of formula_slots) {
    const file = state.formulas[slot];
    if (file) step[slot] = { file, now: file.now };
  }
  for (const id of beside_ids) {
    const file = state.beside[id];
    if (file) step[id] = { file, now: file.now };
  }
  return step;
}

/** What is typed in the same field at once is one step; without a field it is a step of its own. */
export function remember(field = ""): void {
  const now = performance.now();
  const is_same_thought = field && field === last_field && now - last_time <= one_thought_ms && state.past.length;
  if (!is_same_thought) add_step(as_it_stands());
  update({ future: [] });
  last_field = field;
  last_time = now;
}

const add_step = (step: Step): void => update({ past: [...state.past, step].slice(-most_steps_back) });

/** What stands in the file, where an unsaved text has just taken its place. */
export function remember_saved(file: OpenFile): void {
  add_step(with_text(as_it_stands(), file, () => file.saved ?? {}));
}

function with_text(step: Step, file: OpenFile, change: (now: Document) => Document): Step {
  const entries = Object.entries(step).map(([id, one]) =>
    one.file === file ? [id, { file, now: change(one.now) }] : [id, one],
  );
  return Object.fromEntries(entries) as Step;
}

/** Undo must not bring back what holds no more, such as names that a file has no more. */
export function change_in_history(file: OpenFile, change: (now: Document) => Document): void {
  const changed = (steps: readonly Step[]) => steps.map((step) => with_text(step, file, change));
  update({ past: changed(state.past), future: changed(state.future) });
}

export function undo(): void {
  const there = state.past.at(-1);
  if (!there) return;
  update({ past: state.past.slice(0, -1), future: [...state.future, as_it_stands()] });
  go_to(there, "Undone");
}

export function redo(): void {
  const there = state.future.at(-1);
  if (!there) return;
  update({ past: [...state.past, as_it_stands()], future: state.future.slice(0, -1) });
  go_to(there, "Redone");
}

function go_to(there: Step, words: string): void {
  last_field = "";
  update({ typed: undefined });
  for (const id of [...beside_ids, ...formula_slots, "run"] as const) go_back(id, there);
  announce(words);
}

function go_back(id: keyof Step, there: Step): void {
  const then = there[id];
  if (is_beside(id)) return go_back_beside(id, then);
  const is_open = id === "run" ? then?.file === state.run : state.formulas[id] !== undefined;
  if (!then || !is_open) return;
  if (id !== "run") open_as(id, then.file);
  if (then.file.now !== then.now) put_in(then.file, then.now);
}

/** Only into what lies open still: a file that was begun meanwhile stays. */
function go_back_beside(id: BesideId, then: Step[BesideId]): void {
  if (then && then.file === state.beside[id] && then.file.now !== then.now) put_in(then.file, then.now);
}

export const is_in_history = (file: OpenFile): boolean =>
  file === state.run ||
  formula_slots.some((slot) => state.formulas[slot] === file) ||
  beside_ids.some((id) => state.beside[id] === file);

on("giving_way", ({ file }) => {
  if (!is_in_history(file)) return;
  last_field = "";
  add_step(as_it_stands());
  update({ typed: undefined });
});

for (const event of ["copied", "renamed"] as const) on(event, ({ file, renamed }) => change_in_history(file, renamed));
