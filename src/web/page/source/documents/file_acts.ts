// What is done to whole files in the lists: copied, changed, removed. Each is one step, taken back as one.
import { list_files, read_file, remove_file, rename_file, restore_file, type Listed } from "../program/api";
import { text_of, type Document } from "../program/json";
import { formula_slots, type Kind, type OpenFile } from "./file_types";
import { remember } from "./history";
import { folder_of, last_part } from "./names";
import { create } from "./new_file";
import { begin, has_new_name, load, put_in, save, take_new_names } from "./open_file";
import { announce, state, take_run, update } from "./state";

interface Act {
  words: string; // what was done
  undo: () => Promise<void>;
}

let acts: readonly Act[] = [];

export const last_act = (): Act | undefined => acts.at(-1);

function done(act: Act): void {
  acts = [...acts, act];
  update({ list_told: act.words });
  announce(act.words);
}

export async function undo_act(): Promise<void> {
  const act = last_act();
  if (!act) return;
  await act.undo();
  acts = acts.slice(0, -1);
  update({ list_told: "" });
  announce("Undone");
  await list_anew();
}

export const list_anew = async (): Promise<void> => update({ files: await list_files() });

/** Of a built-in one too. Which names its files as the first does. */
export async function copy_file(kind: Kind, one: Listed): Promise<string> {
  const { $schema: _, ...text } = JSON.parse((await read_file(one.file)).text) as Document;
  const name = `${one.name || one.file}, copy`;
  const now: Document = { ...text, name, ...(kind.name === "run" ? { id: crypto.randomUUID() } : {}) };
  const { file } = await create({ kind, name: kind.new_name(begin(kind, now)), text: text_of(now), from: one.file });
  await list_anew();
  done({ words: `Copied ${one.name || one.file}.`, undo: async () => void (await remove_file(file, true)) });
  return file;
}

/** What is said of a file in the lists. */
export interface Called {
  name: string;
  note: string;
  stem: string; // of the file's name
}

const ending_of = (file: string): string => /(\.(run|formula))?\.json$/.exec(file)?.[0] ?? "";
export const stem_of = (file: string): string => last_part(file).slice(0, -ending_of(file).length || undefined);
const named_anew = (file: string, stem: string): string => folder_of(file) + stem + ending_of(file);

const open_already = (file: string): OpenFile | undefined =>
  [state.run, ...formula_slots.map((slot) => state.formulas[slot])].find((one) => one?.file === file);

export async function change_file(kind: Kind, one: Listed, to: Called): Promise<void> {
  const before: Called = { name: one.name, note: one.note, stem: stem_of(one.file) };
  await call(kind, one.file, to);
  await list_anew();
  const file = named_anew(one.file, to.stem);
  done({ words: `Changed ${to.name || file}.`, undo: () => call(kind, file, before) });
}

async function call(kind: Kind, name: string, { name: called, note, stem }: Called): Promise<void> {
  const already = open_already(name);
  const file = already ?? (await load(kind, name));
  const { note: _, ...rest } = file.now;
  const now: Document = note ? { ...rest, name: called, note } : { ...rest, name: called };
  if (text_of(now) !== text_of(file.now)) {
    if (already) remember();
    put_in(file, now);
    await save(file);
    if (file.theirs) throw new Error(`${name} was changed outside this page just now. Look at it again.`);
  }
  const to = named_anew(name, stem);
  if (to === name) return;
  const { renamed_in } = await rename_file(name, to);
  if (already) has_new_name(already, to);
  for (const user of renamed_in) {
    const open = open_already(user);
    if (open) await take_new_names(open);
  }
}

/** `even_so` where others name it. */
export async function remove(one: Listed, even_so: boolean): Promise<void> {
  const { removed } = await remove_file(one.file, even_so);
  if (state.run.file === one.file) take_run();
  await list_anew();
  done({ words: `Removed ${one.name || one.file}.`, undo: async () => void (await restore_file(removed)) });
}
