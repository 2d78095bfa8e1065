// Undo and redo of a document that lies open by itself.
import type { Document } from "../program/json";
import type { OpenFile } from "./file_types";
import { put_in } from "./open_file";
import { amend, announce, update } from "./state";

export interface OwnSteps {
  open: OpenFile;
  past: readonly Document[]; // steps back, and on
  future: readonly Document[];
}

const one_thought_ms = 1200;
let last_place = "";
let last_time = 0;

/** What is typed in the same place at once is one step; without a place it is a step of its own. */
export function remember_in(of: OwnSteps, place = ""): void {
  const now = performance.now();
  const is_same_thought = place && place === last_place && now - last_time <= one_thought_ms && of.past.length;
  amend(of, { past: is_same_thought ? of.past : [...of.past, of.open.now], future: [] });
  [last_place, last_time] = [place, now];
}

export function undo_in(of: OwnSteps): void {
  const there = of.past.at(-1);
  if (!there) return;
  amend(of, { past: of.past.slice(0, -1), future: [...of.future, of.open.now] });
  step_to(of, there, "Undone");
}

export function redo_in(of: OwnSteps): void {
  const there = of.future.at(-1);
  if (!there) return;
  amend(of, { past: [...of.past, of.open.now], future: of.future.slice(0, -1) });
  step_to(of, there, "Redone");
}

function step_to({ open }: OwnSteps, there: Document, words: string): void {
  last_place = "";
  update({ typed: undefined });
  put_in(open, there);
  announce(words);
}
