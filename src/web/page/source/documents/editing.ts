// What typing does: the document changes, the old one stays for undo. What follows from it is in effects.ts.
import type { Document, Json } from "../program/json";
import { at, with_value } from "../program/pointer";
import { is_beside, type DocumentId, type OpenFile } from "./file_types";
import { remember } from "./history";
import { put_in } from "./open_file";
import { remember_in } from "./own_steps";
import { state, update } from "./state";

export function file_of(of: DocumentId): OpenFile | undefined {
  if (of === "run") return state.run;
  if (of === "order") return state.order?.open;
  return is_beside(of) ? state.beside[of] : state.formulas[of];
}

export const document_of = (of: DocumentId): Document | undefined => file_of(of)?.now;

export const value_at = (of: DocumentId, pointer: string): Json | undefined => at(document_of(of), pointer);

export const text_at = (of: DocumentId, pointer: string): string => String(value_at(of, pointer) ?? "");

export function list_at(of: DocumentId, pointer: string): Json[] {
  const list = value_at(of, pointer);
  return Array.isArray(list) ? list : [];
}

/** The thing that stands there, but for some of what is said of it. */
export function without(of: DocumentId, pointer: string, keys: string[]): Document {
  const thing = (value_at(of, pointer) ?? {}) as Document;
  return Object.fromEntries(Object.entries(thing).filter(([key]) => !keys.includes(key)));
}

/** An order has steps of its own. */
function remember_of(of: DocumentId, pointer?: string): void {
  if (of === "order" && state.order) remember_in(state.order, pointer);
  else remember(pointer === undefined ? "" : `${of} ${pointer}`);
}

export function edit(of: DocumentId, pointer: string, value: Json | undefined): void {
  const file = file_of(of);
  if (!file || at(file.now, pointer) === value) return;
  remember_of(of, pointer);
  put_in(file, with_value(file.now, pointer, value));
}

/** Places put in, left out or moved, several at once: always a step of its own. */
export function edit_whole(of: DocumentId, change: (document: Document) => Document): void {
  const file = file_of(of);
  if (!file) return;
  remember_of(of);
  update({ typed: undefined });
  put_in(file, change(file.now));
}

/** Several files changed by one thought: one step of undo. */
export function edit_several(changes: [DocumentId, (document: Document) => Document][]): void {
  remember();
  update({ typed: undefined });
  for (const [of, change] of changes) {
    const file = file_of(of);
    if (file) put_in(file, change(file.now));
  }
}
