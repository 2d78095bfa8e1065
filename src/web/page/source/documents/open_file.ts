// The life of a file that lies open, whatever kind it is of: it is loaded, with what was typed last time and never
// reached it; typed in; kept in this browser until it is written; written, if it came with the program as a copy; and
// where another hand wrote it meanwhile, nothing is written before she has said which text is to stay.
import { read_file, Refused, wording, write_file, type Kept } from "../program/api";
import { document_in, text_of, type Document } from "../program/json";
import { first_text } from "./ahead";
import { tell } from "./events";
import type { Kind, OpenFile, Theirs } from "./file_types";
import { is_copy_of, renaming } from "./names";
import { create } from "./new_file";
import { in_own_hand, left_own_hand } from "./own_hand";
import { amend, announce, list_file, state, update } from "./state";
import { drop_unsaved, keep_unsaved, unsaved_copy, type UnsavedCopy } from "./unsaved";

const half_written_ms = 300;

export const is_changed = (file: OpenFile): boolean => file.now !== file.saved;

/** What there is no file of yet. */
export function begin(kind: Kind, now: Document, id: string = crypto.randomUUID()): OpenFile {
  return { kind, id, file: "", version: null, shipped: false, now, saved: undefined, unanswered: [] };
}

/** Refused where it cannot be read; SyntaxError where it is no JSON. */
export async function load(kind: Kind, name: string, id = name): Promise<OpenFile> {
  const kept = await first_text(name);
  const now = with_id(kind, JSON.parse(kept.text) as Document, kept.shipped);
  const left = unsaved_copy(kind, id);
  const copy = left?.copy && kept.shipped ? await finished_copy(kind, left, now) : undefined;
  if (copy) {
    drop_unsaved(kind, id);
    return load(kind, copy);
  }
  const { version, shipped = false } = kept;
  const file: OpenFile = { kind, id, file: name, version, shipped, now, saved: now, unanswered: [] };
  if (left) restore(file, left, kept);
  return file;
}

/** A run or an order of her own has an id; one that has none yet gets it with the first change. */
const with_id = (kind: Kind, now: Document, shipped = false): Document =>
  kind.has_id && !shipped && now.id === undefined ? { ...now, id: crypto.randomUUID() } : now;

/** The copy of a shipped file that was written just as the page was left, if it is what was typed. */
async function finished_copy(kind: Kind, left: UnsavedCopy, shipped: Document): Promise<string | undefined> {
  if (!state.files?.[kind.list].some((one) => one.file === left.copy)) return undefined;
  const typed = document_in(left.text);
  const copy = document_in((await read_file(left.copy!)).text);
  if (!typed || !copy || text_of(typed) === text_of(shipped)) return undefined;
  return is_copy_of(kind.written(typed), copy) ? left.copy : undefined;
}

/** Taken up where the file is still the same; else it is asked which is to stay. */
function restore(file: OpenFile, left: UnsavedCopy, kept: Kept): void {
  const typed = document_in(left.text);
  if (!typed || text_of(typed) === text_of(file.now)) return drop_unsaved(file.kind, file.id);
  amend(file, { now: typed });
  if (left.version === kept.version || kept.shipped) return;
  amend(file, { version: left.version });
  ask_which(file, kept);
}

export function put_in(file: OpenFile, now: Document): void {
  const before = file.now;
  amend(file, { now, failed: undefined, ...(file.is_taken ? { set_aside: undefined, is_taken: undefined } : {}) });
  keep_unsaved(file);
  tell("edited", { file, before });
}

const under_way = new WeakMap<OpenFile, Promise<void>>();

/** Until no writing of it is under way whose version is not known yet. */
const at_rest = async (file: OpenFile): Promise<void> => under_way.get(file);

/**
 * Writes what is typed and not in the file, one writing after the other. Refused where that cannot be done; a conflict
 * is no refusal, it is asked.
 */
export const save = (file: OpenFile): Promise<void> => in_turn(file, () => write(file));

/** Makes a file of her own of one that came with the program, though nothing was typed in it. */
export const make_own = (file: OpenFile): Promise<void> =>
  in_turn(file, () => (file.shipped ? attempt(file, write_new) : Promise.resolve()));

function in_turn(file: OpenFile, act: () => Promise<void>): Promise<void> {
  const next = at_rest(file).then(act);
  under_way.set(
    file,
    next.catch(() => undefined),
  );
  return next;
}

async function write(file: OpenFile): Promise<void> {
  if (!is_changed(file) || file.theirs) return;
  await attempt(file, file.shipped || !file.file ? write_new : write_over);
}

async function attempt(file: OpenFile, act: (file: OpenFile) => Promise<void>): Promise<void> {
  amend(file, { failed: undefined });
  try {
    await act(file);
  } catch (error) {
    if (error instanceof Refused) amend(file, { failed: wording(error.complaint) });
    throw error;
  }
}

async function write_new(file: OpenFile): Promise<void> {
  const { kind, id, now: sent } = file;
  const from = file.shipped ? file.file : undefined;
  const written = kind.written(sent);
  const kept = await create({
    kind,
    name: kind.new_name(file),
    text: text_of(written),
    from,
    goes_on: from !== undefined && kind.name === "run",
    about_to: (name) => keep_unsaved(file, name),
    is_own: ({ text }) => from !== undefined && is_copy_of(written, document_in(text) ?? {}),
  });
  const saved = JSON.parse(kept.text) as Document;
  const renamed = renaming(written, saved);
  const now = file.now === sent ? saved : renamed(file.now);
  drop_unsaved(kind, id);
  amend(file, { id: kept.file, file: kept.file, version: kept.version, shipped: false, now, saved });
  if (is_changed(file)) keep_unsaved(file);
  if (from !== undefined) tell("copied", { file, from, renamed });
}

async function write_over(file: OpenFile): Promise<void> {
  const { version, now: sent } = file;
  const text = text_of(file.kind.written(sent));
  amend(file, { unanswered: [...new Set(file.unanswered).add(text)] });
  try {
    in_own_hand(file.file);
    const written = await write_file({ file: file.file, version, text });
    left_own_hand(file.file, written.version);
    agree(file, sent, written.version);
  } catch (error) {
    if (!(error instanceof Refused) || error.status !== 409) throw error;
    left_own_hand(file.file, version);
    meet(file, error.answer as Theirs);
    if (is_changed(file) && !file.theirs) await write_over(file);
  }
}

/** What stands in the file is known. */
function agree(file: OpenFile, saved: Document, version: string | null): void {
  amend(file, { saved, version, theirs: undefined, failed: undefined, unanswered: [] });
  if (is_changed(file)) keep_unsaved(file);
  else drop_unsaved(file.kind, file.id);
  list_file(file.kind, file.file, saved);
}

/** A text in the file that is of another version than the one known. It may be our own, of which no answer came. */
function meet(file: OpenFile, { version, text }: Theirs): void {
  if (text === text_of(file.kind.written(file.now))) return agree(file, file.now, version);
  const is_ours = text !== null && file.unanswered.includes(text);
  amend(file, { unanswered: [] });
  if (is_ours) return amend(file, { version, saved: undefined, theirs: undefined });
  const theirs = is_changed(file) || file.theirs ? undefined : document_in(text);
  if (theirs) take_unasked(file, theirs, version);
  else ask_which(file, { version, text });
}

/** Nothing is typed here that it could take the place of; what stood here can be brought back. */
function take_unasked(file: OpenFile, theirs: Document, version: string | null): void {
  tell("giving_way", { file });
  amend(file, { set_aside: file.now, is_taken: true, now: theirs });
  agree(file, theirs, version);
  announce(`${file.file} was changed outside this page, and stands here as it is now.`);
  tell("gave_way", { file });
}

/** The program wrote it, by an act of hers on this page. What she typed meanwhile is asked about by watching. */
export function written_by_program(file: OpenFile, { version, text }: { version: string; text: string }): void {
  const now = document_in(text);
  if (!now || file.theirs || is_changed(file)) return;
  tell("giving_way", { file });
  amend(file, { now });
  agree(file, now, version);
  tell("gave_way", { file });
}

export const forget_set_aside = (file: OpenFile): void => amend(file, { set_aside: undefined, is_taken: undefined });

/** Neither is lost: nothing is written before she has said which is to stay. */
function ask_which(file: OpenFile, { version, text }: Theirs): void {
  amend(file, { theirs: { version, text } });
  keep_unsaved(file);
  announce(
    text === null
      ? `${file.file} was deleted outside this page. Save it again, or leave it deleted?`
      : `${file.file} was changed outside this page. Which version do you want to keep?`,
  );
  tell("conflict", { file });
}

/** What is in the file takes the place of what is on the page, which is set aside. */
export function take_theirs(file: OpenFile): void {
  if (!file.theirs) return;
  const theirs = document_in(file.theirs.text);
  if (!theirs) {
    const failed = `what is in ${file.file} now is no ${file.kind.name}; keep what is on this page`;
    return amend(file, { failed });
  }
  tell("giving_way", { file });
  amend(file, { set_aside: file.now, now: theirs });
  agree(file, theirs, file.theirs.version);
  tell("gave_way", { file });
}

/** What is on the page is written over what is in the file. */
export function keep_mine(file: OpenFile): void {
  if (!file.theirs) return;
  amend(file, { version: file.theirs.version, saved: undefined, theirs: undefined, failed: undefined });
  keep_unsaved(file);
  tell("unwritten", { file });
}

/** Whether it is asked about because its file is gone. */
export const is_deleted = ({ theirs }: OpenFile): boolean => theirs?.text === null;

/** What is typed of it is forgotten with it. */
export function leave_deleted(file: OpenFile): void {
  if (!is_deleted(file)) return;
  drop_unsaved(file.kind, file.id);
  amend(file, { saved: file.now, theirs: undefined, failed: undefined });
  announce(`${file.file} stays deleted.`);
  tell("left_deleted", { file });
}

/** The text that gave way comes back, and the other is set aside. */
export function bring_back(file: OpenFile): void {
  if (!file.set_aside) return;
  const { set_aside, now } = file;
  const is_once = file.is_taken;
  update({ typed: undefined });
  put_in(file, set_aside);
  amend(file, { set_aside: is_once ? undefined : now });
}

/** By the version that the page holds, or was told of last. */
const version_held = (file: OpenFile): string | null => (file.theirs ?? file).version;

/** The file is called so from now on. */
export function has_new_name(file: OpenFile, name: string): void {
  amend(file, { id: name, file: name });
  tell("renamed", { file, renamed: (document) => document });
}

/** The program itself wrote other names into it. */
export async function take_new_names(file: OpenFile): Promise<void> {
  const { version, text } = await read_file(file.file);
  const there = document_in(text);
  if (!there || file.theirs || version === file.version) return;
  const renamed = renaming(file.now, there);
  if (is_changed(file)) return amend(file, { version, now: renamed(file.now), saved: there });
  amend(file, { version, now: there, saved: there });
  tell("renamed", { file, renamed });
}

/** What is to be watched of it; nothing where no hand of hers can write it. */
export const watched_of = (file: OpenFile): [string, string | null][] =>
  file.shipped || !file.file ? [] : [[file.file, version_held(file)]];

/**
 * The file is of another version than `before`: if that is not our own doing, another hand wrote it or took it away;
 * `seen` is called as soon as that is known. What other programs leave is looked at, not what lies there while they are
 * still at it.
 */
export async function look_at(
  file: OpenFile,
  before: string | null,
  version_of: (file: string) => Promise<string | null>,
  seen: () => void,
): Promise<boolean> {
  const name = file.file;
  const is_as_before = () => version_held(file) === before && file.file === name;
  if (!is_as_before()) return false;
  await at_rest(file); // it may be our own hand
  if (!is_as_before()) return false;
  seen();
  await half_written();
  const there = await there_now(name, version_of);
  await at_rest(file);
  if (!is_as_before()) return true;
  meet(file, there);
  if (is_changed(file) && !file.theirs) tell("unwritten", { file });
  return true;
}

async function there_now(name: string, version_of: (file: string) => Promise<string | null>): Promise<Theirs> {
  const version = await version_of(name);
  return version === null ? { version, text: null } : read_file(name);
}

export const half_written = (): Promise<void> => new Promise((later) => setTimeout(later, half_written_ms));
