// What Undo and Redo take back and bring again: typing in the run and its formulas, in an order, in a mould that is being described,
// or what was done to whole files in the lists.
import { last_act, next_act } from "../documents/file_acts";
import { redo, undo } from "../documents/history";
import { held_now } from "../documents/beside";
import type { OpenFile, Step } from "../documents/file_types";
import { redo_draft, undo_draft } from "../documents/mould_draft";
import { redo_order, undo_order } from "../documents/order_opening";
import { state } from "../documents/state";
import { is_list } from "../documents/views";
import { redo_last, undo_last } from "./lists";

interface Steps {
  undo?: () => void; // none where there is nothing to take back
  redo?: () => void;
}

export function steps(): Steps {
  const { view, mould, order, past, future } = state;
  if (view === "shelf" || view === "trail") return {}; // a count puts right what was recorded
  if (view === "moulds" && mould) return among(mould, undo_draft, redo_draft);
  const held = is_list(view) ? held_now() : undefined;
  if (held) return among({ past: steps_of(held, past), future: steps_of(held, future) }, undo, redo);
  if (is_list(view)) return { undo: last_act() && undo_last, redo: next_act() && redo_last };
  if (view === "order" && order) return among(order, undo_order, redo_order);
  return among({ past, future }, undo, redo);
}

/** Only as long as the next step is one in that file, and in no run that is out of sight. */
function steps_of(held: OpenFile, all: readonly Step[]): readonly Step[] {
  const next = all.at(-1);
  const there = next && [next.own_fats, next.own_tips].find((one) => one?.file === held);
  return there && there.now !== held.now ? all : [];
}

const among = (
  { past, future }: { past: readonly unknown[]; future: readonly unknown[] },
  back: () => void,
  on: () => void,
): Steps => ({ undo: past.length ? back : undefined, redo: future.length ? on : undefined });
