// What Undo and Redo take back and bring again: typing in the run and its formulas, in a mould that is being described,
// or what was done to whole files in the lists.
import { last_act } from "../documents/file_acts";
import { redo, undo } from "../documents/history";
import { redo_draft, undo_draft } from "../documents/mould_draft";
import { state } from "../documents/state";
import { is_list } from "../documents/views";
import { undo_last } from "./lists";

interface Steps {
  undo?: () => void; // none where there is nothing to take back
  redo?: () => void;
}

export function steps(): Steps {
  const { view, mould, past, future } = state;
  if (view === "moulds" && mould) return among(mould, undo_draft, redo_draft);
  if (is_list(view)) return { undo: last_act() && undo_last };
  return among({ past, future }, undo, redo);
}

const among = (
  { past, future }: { past: readonly unknown[]; future: readonly unknown[] },
  back: () => void,
  on: () => void,
): Steps => ({ undo: past.length ? back : undefined, redo: future.length ? on : undefined });
