// What a run and its formulas lean on, lying open to be changed: the studio beside the run, and the files of her own
// fats and tips.
import { read_file, Refused, write_file } from "../program/api";
import { document_in, text_of, type Document } from "../program/json";
import { at } from "../program/pointer";
import { edit } from "./editing";
import { tell } from "./events";
import { beside_ids, formula_slots, type BesideId, type FormulaSlot, type Kind, type OpenFile } from "./file_types";
import { remember_saved } from "./history";
import { fats_kind, studio_kind, tips_kind } from "./kinds";
import { folder_of, last_part } from "./names";
import { create } from "./new_file";
import { is_changed, load, make_own } from "./open_file";
import { in_own_hand, left_own_hand } from "./own_hand";
import { beside_run } from "./run_names";
import { list_file, state, update } from "./state";

const open_beside = (id: BesideId, file: OpenFile | undefined): void => {
  const { [id]: _, ...others } = state.beside;
  update({ beside: file ? { ...others, [id]: file } : others });
};

export function close_beside(file: OpenFile): void {
  for (const id of beside_ids) if (state.beside[id] === file) open_beside(id, undefined);
}

/** The program itself says what is wrong with a file that cannot be read. */
async function loaded(kind: Kind, name: string): Promise<OpenFile | undefined> {
  try {
    return await load(kind, name);
  } catch (error) {
    if (!(error instanceof Refused || error instanceof SyntaxError)) throw error;
    return undefined;
  }
}

async function opened(id: BesideId, kind: Kind, name: string, is_wanted = () => true): Promise<OpenFile | undefined> {
  const there = () => (state.beside[id]?.file === name ? state.beside[id] : undefined);
  if (there()) return there();
  const file = await loaded(kind, name);
  if (there() || !is_wanted()) return there(); // it came by another way, or too late
  open_beside(id, file);
  if (file && is_changed(file)) {
    remember_saved(file);
    tell("unwritten", { file });
  }
  if (file?.theirs) tell("conflict", { file });
  return file;
}

const studio_name = (): string => beside_run("studio.json");

/** Asked for where one is listed, or where the folder has changed. */
export async function read_studio(is_asked = false): Promise<void> {
  const name = studio_name();
  const is_listed = (state.files?.studios ?? []).some((one) => one.file === name);
  if (state.beside.studio?.file === name) return;
  if (is_listed || is_asked) await opened("studio", studio_kind, name, () => name === studio_name());
  else open_beside("studio", undefined);
}

/** A studio's file beside the run, with nothing in it yet; one that is there already is opened. */
export async function make_studio(): Promise<void> {
  if (state.run.shipped) await make_own(state.run);
  const name = studio_name();
  if (await opened("studio", studio_kind, name)) return;
  await begin_studio(name);
  await opened("studio", studio_kind, name);
}

/** Under this name alone; what stands there already is opened as it is. */
async function begin_studio(name: string): Promise<void> {
  try {
    in_own_hand(name);
    const { version } = await write_file({
      file: name,
      version: null,
      text: text_of({ schema: "brimwright.studio/1" }),
    });
    left_own_hand(name, version);
  } catch (error) {
    if (!(error instanceof Refused) || error.status !== 409) throw error;
  }
  list_file(studio_kind, name);
}

/** Where a formula's own fats lie, or are to lie. */
const beside_formula = (formula: OpenFile, name: string): string => folder_of(formula.file) + name;

async function there(file: string): Promise<boolean> {
  try {
    return document_in((await read_file(file)).text) !== undefined;
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return false;
  }
}

/** The file of own fats that a formula names; a new one where it names none. */
export async function open_own_fats(slot: FormulaSlot): Promise<OpenFile | undefined> {
  const formula = state.formulas[slot];
  if (!formula) return undefined;
  if (formula.shipped) await make_own(formula);
  const named = String(at(formula.now, "/own_fats") ?? "");
  if (named) {
    const beside = beside_formula(formula, named);
    return opened("own_fats", fats_kind, (await there(beside)) ? beside : named);
  }
  const listed = (state.files?.fats ?? []).find(
    (one) => !one.shipped && folder_of(one.file) === folder_of(formula.file),
  );
  const blank = { schema: "brimwright.fats/1", fats: [] };
  const file = listed?.file ?? (await made(fats_kind, beside_formula(formula, "my.fats.json"), blank));
  edit(slot, "/own_fats", last_part(file));
  return opened("own_fats", fats_kind, file);
}

/** The same of the tips of the run; a studio names them for all its runs. */
export async function open_own_tips(): Promise<OpenFile | undefined> {
  if (state.run.shipped) await make_own(state.run);
  const place = "/pipe/beads/own_tips";
  const of_run = String(at(state.run.now, place) ?? "");
  const named = of_run || String(at(state.beside.studio?.now, "/own_tips") ?? "");
  if (named) return opened("own_tips", tips_kind, beside_run(named));
  const folder = folder_of(state.run.file);
  const listed = (state.files?.tips ?? []).find((one) => !one.shipped && folder_of(one.file) === folder);
  const blank = { schema: "brimwright.tips/2", tips: [] };
  const file = listed?.file ?? (await made(tips_kind, `${folder}my.tips.json`, blank));
  if (state.beside.studio) edit("studio", "/own_tips", last_part(file));
  else edit("run", place, last_part(file));
  return opened("own_tips", tips_kind, file);
}

/** By itself, from its list; a run and its formulas need not name it. */
export async function open_held(kind: Kind, name: string): Promise<void> {
  const id = kind === fats_kind ? "own_fats" : "own_tips";
  if (await opened(id, kind, name)) update({ held_open: name });
}

/** The file of fats or tips that lies open in the list that is shown. */
export function held_now(): OpenFile | undefined {
  const { view, held_open, beside } = state;
  const open = view === "fats" ? beside.own_fats : view === "tips" ? beside.own_tips : undefined;
  return open && open.file === held_open ? open : undefined;
}

/** A new file with one thing in it. */
export async function make_held(kind: Kind, one: Document): Promise<void> {
  const is_fats = kind === fats_kind;
  const blank: Document = is_fats
    ? { schema: "brimwright.fats/1", fats: [one] }
    : { schema: "brimwright.tips/2", tips: [one] };
  await open_held(kind, await made(kind, is_fats ? "my.fats.json" : "my.tips.json", blank));
}

async function made(kind: Kind, name: string, blank: Document): Promise<string> {
  const { file } = await create({ kind, name, text: text_of(blank) });
  list_file(kind, file);
  return file;
}

/** A copy of own fats or tips that came with the program is what the formula and the run name from now on. */
export function name_copy_of_own(copy: OpenFile, from: string): void {
  const named = (document: Document | undefined, place: string): boolean =>
    String(at(document, place) ?? "").endsWith(last_part(from));
  for (const slot of formula_slots)
    if (copy === state.beside.own_fats && named(state.formulas[slot]?.now, "/own_fats"))
      edit(slot, "/own_fats", copy.file);
  const tips = "/pipe/beads/own_tips";
  if (copy === state.beside.own_tips && named(state.run.now, tips)) edit("run", tips, copy.file);
}
