// What is typed and not yet in its file also lies in this browser, should the tablet fall asleep.
import { text_of } from "../program/json";
import type { Kind, OpenFile } from "./file_types";
import { state } from "./state";

export interface UnsavedCopy {
  id: string;
  file: string;
  version: string | null; // of the file that it was typed over
  shipped: boolean;
  text: string;
  copy?: string; // the name under which a copy of a shipped file was being written
}

const names_of = (kind: Kind): string => `unsaved ${kind.name} ${state.files?.folder ?? ""} `;

export function keep_unsaved({ kind, id, file, version, shipped, now }: OpenFile, copy?: string): void {
  if (!kind.is_begun(now)) return;
  try {
    const unsaved: UnsavedCopy = { id, file, version, shipped, text: text_of(now), copy };
    localStorage.setItem(names_of(kind) + id, JSON.stringify(unsaved));
  } catch {
    // Full or forbidden: it still stands on the page.
  }
}

export function unsaved_copy(kind: Kind, id: string): UnsavedCopy | undefined {
  try {
    return (JSON.parse(localStorage.getItem(names_of(kind) + id) ?? "null") as UnsavedCopy | null) ?? undefined;
  } catch {
    return undefined;
  }
}

export const drop_unsaved = (kind: Kind, id: string): void => localStorage.removeItem(names_of(kind) + id);

/** Of any kind, in any folder. */
export const is_any_unsaved = (): boolean => Object.keys(localStorage).some((name) => name.startsWith("unsaved "));

export function unsaved_copies(kind: Kind): UnsavedCopy[] {
  const start = names_of(kind);
  const ids = Object.keys(localStorage).flatMap((name) => (name.startsWith(start) ? [name.slice(start.length)] : []));
  return ids.sort().flatMap((id) => unsaved_copy(kind, id) ?? []);
}
