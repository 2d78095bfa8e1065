// The other files that the figures rest on: studio, mould, own fats and tips, and formulas that could not be read. What
// they were when figures were last asked for.
import { changes_now, type Changes, type Versions } from "../program/api";
import { at } from "../program/pointer";
import { listed } from "../program/words";
import { beside_ids, formula_slots, type OpenFile } from "./file_types";
import { folder_of, named_from } from "./names";
import { lines_of } from "./order_lines";
import { is_own_hand } from "./own_hand";
import { beside_run } from "./run_names";
import { announce, state, update } from "./state";

const known: Versions = new Map();

/** Names of nothing that may be read: the plan says what is wrong with them. */
const unreadable = new Set<string>();

const nothing_changed: Changes = { changed: {}, unreadable: [] };

/** What lies open and is read by the program from its file. */
export const files_leant_on = (): Set<OpenFile> =>
  new Set([
    ...formula_slots.flatMap((slot) => state.formulas[slot] ?? []),
    ...beside_ids.flatMap((id) => state.beside[id] ?? []),
  ]);

/** Before figures are asked for: whatever changes from now on is seen. Nothing to wait for where all are known. */
export function know_files_beside(): Promise<void> | undefined {
  const names = names_beside();
  const read = new Set([...files_leant_on()].map(({ file }) => file)); // looked at below before it is forgotten
  for (const name of known.keys()) if (!names.has(name) && !read.has(name)) known.delete(name);
  for (const name of unreadable) if (!names.has(name)) unreadable.delete(name);
  const unknown = [...names].filter((name) => !known.has(name));
  return unknown.length ? know(unknown) : undefined;
}

async function know(unknown: string[]): Promise<void> {
  for (const [name, version] of await versions_of(unknown)) if (!known.has(name)) known.set(name, version);
}

async function versions_of(names: string[]): Promise<Versions> {
  const readable = names.filter((name) => !unreadable.has(name));
  const now = readable.length ? await changes_now(new Map(readable.map((name) => [name, null]))) : nothing_changed;
  leave_out(now.unreadable);
  return new Map(names.map((name) => [name, now.changed[name] ?? null]));
}

export const version_of = async (file: string): Promise<string | null> => (await versions_of([file])).get(file) ?? null;

/** What is watched beside what lies open. */
export const known_beside = (): Versions => new Map([...known].filter(([name]) => !unreadable.has(name)));

/** By each name that the program may find them under: beside the file that names them, or in this folder. */
function names_beside(): Set<string> {
  const names = new Set<string>();
  const from_run = (name: unknown) => {
    if (typeof name !== "string" || !name) return;
    names.add(beside_run(name));
    if (!name.includes("..")) names.add(name);
  };
  const run = state.run.now;
  names.add(beside_run("studio.json"));
  from_run(at(run, "/pour/mould"));
  from_run(at(run, "/pipe/beads/own_tips"));
  for (const one of Array.isArray(run.decorations) ? run.decorations : []) from_run(at(one, "/mould"));
  for (const slot of ["pour", "pipe"] as const) if (!state.formulas[slot]) from_run(at(run, `/${slot}/formula`));
  for (const { file, now } of files_leant_on()) {
    const name = now.own_fats;
    if (typeof name === "string" && name) names.add(folder_of(file) + name).add(name);
  }
  from_run(at(state.beside.studio?.now, "/own_tips"));
  for (const name of names_of_order()) names.add(name);
  for (const id of beside_ids) names.delete(state.beside[id]?.file ?? "");
  return names;
}

/** The runs of the order that lies open and what they are made of, as far as that is hers. */
function names_of_order(): Set<string> {
  const { open } = state.order ?? {};
  const names = new Set(open ? lines_of(open.now).map(({ run }) => named_from(open.file, run)) : []);
  const { runs = [], formulas = [], moulds = [], fats = [], tips = [] } = state.files ?? {};
  const hers = [...runs, ...formulas, ...moulds, ...fats, ...tips].filter(({ shipped }) => !shipped);
  let many = -1;
  while (many !== names.size) {
    many = names.size;
    for (const { file, used_by = [] } of hers) if (used_by.some((user) => names.has(user))) names.add(file);
  }
  if (open && names.size) names.add(named_from(open.file, "studio.json"));
  names.delete(state.run.file);
  return names;
}

/** Those that are of another version now than was asked with, unless figures were asked for meanwhile. */
export function changed_beside(asked: Versions, { changed }: Changes): string[] {
  const names = Object.keys(changed).filter((name) => known.has(name) && known.get(name) === asked.get(name));
  for (const name of names) known.set(name, changed[name]);
  return names;
}

export const leave_out = (names: string[]): void => names.forEach((name) => unreadable.add(name));

/** Formulas that changed between the first plan, which may be quicker, and their being read. */
export function read_meanwhile(): string[] {
  return [...files_leant_on()].flatMap(({ file, version }) => {
    const planned_with = known.get(file) ?? version;
    known.delete(file);
    return planned_with === version ? [] : [file];
  });
}

let strikes = 0;
export const times_struck = (): number => strikes;

/** What stands there is of files that are no more. Whoever strikes it out asks for it anew. */
export function strike(files: readonly string[]): void {
  ++strikes;
  for (const { file } of files_leant_on()) if (files.includes(file)) struck_lying_open.add(file);
  update({ is_old: true, changed_beside: united(state.changed_beside, files) });
}

const struck_lying_open = new Set<string>(); // which says so itself

const united = (some: readonly string[], others: readonly string[]): string[] => [...new Set([...some, ...others])];

/** There are figures of them as they are now. */
export function take_in_changes(): void {
  if (!state.changed_beside.length) return;
  const others = state.changed_beside.filter(
    (file) => !struck_lying_open.has(file) && !is_own_hand(file, known.get(file) ?? null),
  );
  struck_lying_open.clear();
  update({ changed_beside: [] });
  if (!others.length) return;
  update({ taken_in: { files: united(state.taken_in?.files ?? [], others), since: Date.now() } });
  announce(taken_in_words());
}

export function taken_in_words(): string {
  const { files = [] } = state.taken_in ?? {};
  if (!files.length) return "";
  const [were, them, they] = files.length === 1 ? ["was", "it", "it is"] : ["were", "them", "they are"];
  return `${listed(files)} ${were} changed outside this page: the figures are of ${them} as ${they} now.`;
}

const readable_ms = 5000;

/** By the next that is typed, once it could be read. */
export function forget_taken_in(): void {
  if (state.taken_in && Date.now() - state.taken_in.since > readable_ms) update({ taken_in: undefined });
}
