// The mould being described: what is typed, what the program found in it, and what it wants.
import { Refused } from "../program/api";
import type { Document, Json } from "../program/json";
import { with_value } from "../program/pointer";
import type { OpenFile } from "./file_types";
import { mould_kind } from "./kinds";
import { sets_out } from "./goings";
import { look_into } from "./measuring";
import { has_part, place_as_typed, wanted_of } from "./mould_text";
import { begin, load, put_in } from "./open_file";
import { redo_in, remember_in, undo_in } from "./own_steps";
import { amend, state, update, type MouldDraft } from "./state";
import type { UnsavedCopy } from "./unsaved";

const pause_ms = 30;
const retry_ms = 2000;
let timer = 0;
let is_asking = false;
let is_due = false;

function take_draft(open: OpenFile, way: MouldDraft["way"], title: string): void {
  const mesh = way === "mesh" ? state.mesh : undefined;
  update({ mould: { way, title, open, is_old: false, shapes: {}, past: [], future: [] }, mesh, typed: undefined });
  measure_soon();
}

export const leave_draft = (): void => update({ mould: undefined, mesh: undefined });

/** Being described is what there is no file of yet. */
export const begin_draft = (now: Document, way: MouldDraft["way"], title: string): void =>
  take_draft(begin(mould_kind, now), way, title);

/**
 * A mould that is there: her own is changed in its file, one of the catalogue becomes a copy with a name of its own.
 * False where she has gone elsewhere meanwhile.
 */
export async function open_draft(file: string, is_shipped: boolean): Promise<boolean> {
  const is_wanted = sets_out();
  const open = await load(mould_kind, file, is_shipped ? crypto.randomUUID() : file);
  if (!is_wanted()) return false;
  const name = String(open.now.name ?? file);
  if (is_shipped) amend(open, { now: { ...open.now, name: "" } });
  take_draft(open, "form", is_shipped ? `A copy of ${name}` : `Change ${name}`);
  return true;
}

/** What was typed last time and never reached a file. */
export async function go_on_with({ id, file, text }: UnsavedCopy): Promise<boolean> {
  const is_wanted = sets_out();
  const open = file ? await load(mould_kind, file, id) : begin(mould_kind, JSON.parse(text) as Document, id);
  if (!is_wanted()) return false;
  take_draft(open, "form", String(open.now.name ?? "").trim() || "A mould of your own");
  return true;
}

/** The draft where there must be one. */
export const draft = (): MouldDraft => state.mould!;
export const mould_now = (): Document => draft().open.now;

export function set(pointer: string, value: Json | undefined): void {
  remember_in(draft(), pointer);
  put_in(draft().open, with_value(mould_now(), pointer, value));
}

export const undo_draft = (): void => undo_in(draft());
export const redo_draft = (): void => redo_in(draft());

const changes_nothing_measured = ["name", "note", "owned", "unmould_after"];

/** Of `before`, where a key was typed: a name alone is no question. */
export function measure_draft(before?: Document): void {
  const now = mould_now();
  const keys = Object.keys({ ...before, ...now }).filter((key) => before?.[key] !== now[key]);
  const is_measured_anew = !before || keys.some((key) => !changes_nothing_measured.includes(key));
  if (is_measured_anew) amend(draft(), { is_old: true });
  const is_of_complaint = keys.some((key) => draft().complaint?.field === `/${key}`);
  const is_question = keys.some((key) => !["name", "note"].includes(key));
  if (draft().is_old || is_of_complaint || is_question) measure_soon();
}

function measure_soon(): void {
  clearTimeout(timer);
  timer = window.setTimeout(() => void measure(), pause_ms);
}

/** One question at a time: a large mesh takes longer than a keystroke. */
async function measure(): Promise<void> {
  if (is_asking) return void (is_due = true);
  const { mould } = state;
  if (!mould) return;
  const text = mould.open.now;
  if (!has_part(text, "shape") && !has_part(text, "mesh")) return; // a mesh on its way here is measured by itself
  if (wanted_of(text).length) return amend(mould, { complaint: undefined });
  is_asking = true;
  try {
    const written = mould_kind.written(text);
    const question = {
      file: mould.open.file || "new.mould.json",
      mould: { ...written, name: written.name || "New mould" },
    };
    const answer = await look_into(question);
    if (mould.open.now === text) amend(mould, { answer, is_old: false, complaint: undefined });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (mould.open.now === text && mould === state.mould) complain_of_mould(error);
    if (error.may_pass) window.setTimeout(measure_soon, retry_ms);
  } finally {
    is_asking = false;
    if (is_due) measure_soon();
    is_due = false;
  }
}

export function complain_of_mould(error: Refused): void {
  const { field, problem, remedy, keep, entry } = error.complaint;
  const line = field ? `${problem}; ${remedy}` : error.message;
  amend(draft(), {
    complaint: {
      field: place_as_typed(mould_now(), field),
      line,
      keep: keep && { ...keep, at: place_as_typed(mould_now(), keep.at) },
      about: entry === undefined ? undefined : place_as_typed(mould_now(), `${field}/${entry}`),
    },
  });
}
