// What must be said and is not said yet. The forms tell it themselves, in the words that stand at their fields: all of
// them are gone through once, folded or not, and nothing of it is drawn.
import type { DocumentId } from "../documents/file_types";
import { state, update } from "../documents/state";

export interface Wanted {
  of: DocumentId;
  at: string; // JSON pointer
  id: string; // of its field
  label: string;
  part: string; // what it belongs to
  folds: string[]; // what must be open for its field to stand on the page
}

interface Around {
  part?: string;
  fold?: string;
}

let gathered: Wanted[] | undefined;
let around: Around[] = [];

export const is_gathering = (): boolean => gathered !== undefined;

/** A place that has nothing in it and must have something. */
export function want(of: DocumentId, at: string, id: string, label: string): undefined {
  if (!gathered || gathered.some((one) => one.id === id)) return;
  const parts = around.flatMap(({ part }) => part ?? []);
  gathered.push({ of, at, id, label, part: parts.at(-1) ?? "", folds: around.flatMap(({ fold }) => fold ?? []) });
}

/** What is asked in there belongs to that part, or is folded away in it. */
export function within<T>(place: Around, ask: () => T): T {
  around.push(place);
  try {
    return ask();
  } finally {
    around.pop();
  }
}

let questions: () => unknown = () => undefined;

/** All questions about what lies open. */
export const wants_from = (all: () => unknown): void => void (questions = all);

let known: { of: readonly unknown[]; wanted: Wanted[] } | undefined;

/** What the answer depends on. */
const looked_at = (): readonly unknown[] => [
  state.run.now,
  ...Object.values(state.formulas).map((file) => file.now),
  ...Object.values(state.beside).map((file) => file.now),
  state.formulas.apart,
  state.plan,
  state.fats,
  state.files,
];

export function wanted_now(): Wanted[] {
  if (is_gathering()) return [];
  const of = looked_at();
  const is_known = known?.of.length === of.length && of.every((one, i) => one === known!.of[i]);
  if (!is_known) known = { of, wanted: gather() };
  return known!.wanted;
}

function gather(): Wanted[] {
  gathered = [];
  around = [];
  try {
    questions();
    return gathered;
  } finally {
    gathered = undefined;
  }
}

export function touch(id: string): void {
  if (!state.touched.has(id)) update({ touched: new Set(state.touched).add(id) });
}

/**
 * Whether a complaint about that place comes too soon: something is still blank there that was never left, nor asked
 * about. It is told with all else that is wanted.
 */
export function is_too_soon(of: DocumentId, pointer: string): boolean {
  if (state.has_asked) return false;
  const wanted = wanted_now().filter(
    (one) => one.of === of && (one.at === pointer || one.at.startsWith(`${pointer}/`)),
  );
  return wanted.length > 0 && wanted.every((one) => !state.touched.has(one.id));
}
