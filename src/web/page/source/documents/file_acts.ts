// What is done to whole files in the lists: copied, changed, removed. Each is one step, taken back as one.
import {
  forget_removed,
  list_files,
  read_file,
  remove_file,
  removed_files,
  rename_file,
  restore_file,
  type Listed,
  type RemovedFile,
} from "../program/api";
import { text_of, type Document } from "../program/json";
import { with_value } from "../program/pointer";
import { close_beside } from "./beside";
import { beside_ids, formula_slots, type Kind, type OpenFile } from "./file_types";
import { is_in_history, remember } from "./history";
import { file_name, folder_of, last_part } from "./names";
import { create } from "./new_file";
import { begin, has_new_name, load, put_in, save, take_new_names } from "./open_file";
import { in_own_hand } from "./own_hand";
import { remember_in } from "./own_steps";
import { amend, announce, list_renamed, state, take_run, update } from "./state";

interface Act {
  words: string; // what was done
  undo: () => Promise<unknown>;
  redo: () => Promise<unknown>;
}

let acts: readonly Act[] = [];
let undone: readonly Act[] = [];

export const last_act = (): Act | undefined => acts.at(-1);
export const next_act = (): Act | undefined => undone.at(-1);

function done(act: Act): void {
  acts = [...acts, act];
  undone = [];
  update({ list_told: act.words });
  announce(act.words);
}

let last_turn: Promise<unknown> = Promise.resolve();

/** One after the other, however fast one taps: what is taken back is what was done last. */
function in_turn<T>(act: () => Promise<T>): Promise<T> {
  const turn = last_turn.then(act);
  last_turn = turn.catch(() => undefined); // who asked for it says what went wrong
  return turn;
}

export const undo_act = (): Promise<void> => in_turn(undo_last);

async function undo_last(): Promise<void> {
  const act = last_act();
  if (!act) return;
  await act.undo();
  acts = acts.slice(0, -1);
  undone = [...undone, act];
  update({ list_told: "" });
  announce("Undone");
  await list_anew();
}

export const redo_act = (): Promise<void> => in_turn(redo_next);

async function redo_next(): Promise<void> {
  const act = next_act();
  if (!act) return;
  await act.redo();
  undone = undone.slice(0, -1);
  acts = [...acts, act];
  update({ list_told: act.words });
  announce("Redone");
  await list_anew();
}

export async function list_anew(): Promise<void> {
  const [files, removed] = await Promise.all([list_files(), removed_files()]);
  update({ files, removed });
}

/** Of a built-in one too. Which names its files as the first does. */
export const copy_file = (kind: Kind, one: Listed): Promise<string> => in_turn(() => copy(kind, one));

async function copy(kind: Kind, one: Listed): Promise<string> {
  const { $schema: _, ...text } = JSON.parse((await read_file(one.file)).text) as Document;
  const name = `${one.name || stem_of(one.file)}, copy`;
  const now: Document = {
    ...text,
    ...(kind.called && { [kind.called]: name }),
    ...(kind.has_id ? { id: crypto.randomUUID() } : {}),
  };
  const file_called = kind.called ? kind.new_name(begin(kind, now)) : file_name(name, ending_of(one.file));
  const { file } = await create({ kind, name: file_called, text: text_of(now), from: one.file });
  await list_anew();
  let removed = "";
  done({
    words: `Copied ${one.name || one.file}.`,
    undo: async () => (removed = await put_away(file, true)),
    redo: () => put_back(file, removed),
  });
  return file;
}

/** What is said of a file in the lists. */
export interface Called {
  name: string;
  note: string;
  stem: string; // of the file's name
}

const ending_of = (file: string): string => /(\.(run|order|formula|fats|tips))?\.json$/.exec(file)?.[0] ?? "";
export const stem_of = (file: string): string => last_part(file).slice(0, -ending_of(file).length || undefined);
const named_anew = (file: string, stem: string): string => folder_of(file) + stem + ending_of(file);

const open_already = (file: string): OpenFile | undefined =>
  [
    state.run,
    state.order?.open,
    ...formula_slots.map((slot) => state.formulas[slot]),
    ...beside_ids.map((id) => state.beside[id]),
  ].find((one) => one?.file === file);

export const change_file = (kind: Kind, one: Listed, to: Called): Promise<void> => in_turn(() => change(kind, one, to));

async function change(kind: Kind, one: Listed, to: Called): Promise<void> {
  const before: Called = { name: one.name, note: one.note, stem: stem_of(one.file) };
  await call(kind, one.file, to);
  await list_anew();
  const file = named_anew(one.file, to.stem);
  done({
    words: `Changed ${to.name || file}.`,
    undo: () => call(kind, file, before),
    redo: () => call(kind, one.file, to),
  });
}

async function call(kind: Kind, name: string, { name: called, note, stem }: Called): Promise<void> {
  const already = open_already(name);
  const file = already ?? (await load(kind, name));
  const before = {
    name: String((kind.called && file.now[kind.called]) ?? ""),
    note: String(file.now.note ?? ""),
    stem: stem_of(name),
  };
  const { note: _, ...rest } = file.now;
  const noted = { ...rest, ...(note && { note }) };
  const now = kind.called ? with_value(noted, `/${kind.called}`, called || undefined) : noted;
  if (text_of(now) !== text_of(file.now)) {
    if (already && is_in_history(already)) remember();
    if (already === state.order?.open && state.order) remember_in(state.order);
    put_in(file, now);
    await save(file);
    if (file.theirs) throw new Error(`${name} was changed outside this page just now. Look at it again.`);
  }
  const to = named_anew(name, stem);
  if (to === name) return follow(name, before, { name: called, note, stem });
  [name, to].forEach(in_own_hand);
  const { renamed_in } = await rename_file(name, to);
  list_renamed(kind, name, to);
  follow(to, before, { name: called, note, stem });
  renamed_in.forEach(in_own_hand);
  if (already) has_new_name(already, to);
  for (const user of renamed_in) {
    const open = open_already(user);
    if (open) await take_new_names(open);
  }
}

/** What lies open of it in its list says what it is called now, but for what was typed there. */
function follow(file: string, before: Called, now: Called): void {
  const open = state.list_open;
  if (open?.file !== file) return;
  const said = (key: keyof Called) => (open[key] === before[key] ? now[key] : open[key]);
  amend(open, { name: said("name"), note: said("note"), stem: said("stem") });
}

/** `even_so` where others name it. What restores it is given back. */
async function put_away(file: string, even_so: boolean): Promise<string> {
  in_own_hand(file);
  const { removed } = await remove_file(file, even_so);
  if (state.run.file === file) take_run();
  if (state.order?.open.file === file) update({ order: undefined });
  const beside = beside_ids.map((id) => state.beside[id]).find((one) => one?.file === file);
  if (beside) close_beside(beside);
  return removed;
}

function put_back(file: string, removed: string): Promise<unknown> {
  in_own_hand(file);
  return restore_file(removed);
}

export const remove = (one: Listed, even_so: boolean): Promise<void> => in_turn(() => take_away(one, even_so));

async function take_away(one: Listed, even_so: boolean): Promise<void> {
  let removed = await put_away(one.file, even_so);
  await list_anew();
  done({
    words: `Removed ${one.name || one.file}.`,
    undo: () => put_back(one.file, removed),
    redo: async () => (removed = await put_away(one.file, true)),
  });
}

/** What was removed, maybe long ago. */
export const bring_back_file = (one: RemovedFile): Promise<void> => in_turn(() => bring_back(one));

async function bring_back({ removed, file, name }: RemovedFile): Promise<void> {
  await put_back(file, removed);
  await list_anew();
  let again = "";
  done({
    words: `${name || file} is back.`,
    undo: async () => (again = await put_away(file, true)),
    redo: () => put_back(file, again),
  });
}

/** For good: there is no way back. */
export async function delete_removed({ removed, file, name }: RemovedFile): Promise<void> {
  update({ removed: await forget_removed(removed), list_told: "" });
  announce(`${name || file} is deleted for good.`);
}
