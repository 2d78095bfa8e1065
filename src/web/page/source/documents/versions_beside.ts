// The other files that the figures rest on: mould, own fats and tips, and formulas that could not be read. What they
// were when figures were last asked for.
import { Refused, version_now } from "../program/api";
import { at } from "../program/pointer";
import { formula_slots, type OpenFile } from "./file_types";
import { folder_of } from "./names";
import { beside_run } from "./run_names";
import { state, update } from "./state";

/** null while there is none of that name. */
const known = new Map<string, string | null>();

/** Names of nothing that may be read: the plan says what is wrong with them. */
const unreadable = new Set<string>();

export const open_formulas = (): Set<OpenFile> => new Set(formula_slots.flatMap((slot) => state.formulas[slot] ?? []));

/** Before figures are asked for: whatever changes from now on is seen. */
export async function know_files_beside(): Promise<void> {
  const names = names_beside();
  const read = new Set([...open_formulas()].map(({ file }) => file)); // looked at below before it is forgotten
  for (const name of known.keys()) if (!names.has(name) && !read.has(name)) known.delete(name);
  for (const name of unreadable) if (!names.has(name)) unreadable.delete(name);
  for (const name of names) if (!known.has(name)) known.set(name, await version_of(name));
}

export async function version_of(file: string, known_as: string | null = null): Promise<string | null> {
  if (unreadable.has(file)) return null;
  try {
    return await version_now(file, known_as);
  } catch (error) {
    if (!(error instanceof Refused) || error.status !== 422) throw error;
    unreadable.add(file);
    return null;
  }
}

/** By each name that the program may find them under: beside the file that names them, or in this folder. */
function names_beside(): Set<string> {
  const names = new Set<string>();
  const from_run = (name: unknown) => {
    if (typeof name !== "string" || !name) return;
    names.add(beside_run(name));
    if (!name.includes("..")) names.add(name);
  };
  const run = state.run.now;
  from_run(at(run, "/pour/mould"));
  from_run(at(run, "/pipe/beads/own_tips"));
  for (const one of Array.isArray(run.decorations) ? run.decorations : []) from_run(at(one, "/mould"));
  for (const slot of ["pour", "pipe"] as const) if (!state.formulas[slot]) from_run(at(run, `/${slot}/formula`));
  for (const { file, now } of open_formulas()) {
    const name = now.own_fats;
    if (typeof name === "string" && name) names.add(folder_of(file) + name).add(name);
  }
  return names;
}

/** Those that are of another version now. */
export async function changed_beside(): Promise<string[]> {
  const gone_on = read_meanwhile();
  for (const [name, before] of known) {
    const now = await version_of(name, before);
    if (known.get(name) !== before || now === before) continue;
    gone_on.push(name);
    known.set(name, now);
  }
  return gone_on;
}

/** Formulas that changed between the first plan, which may be quicker, and their being read. */
function read_meanwhile(): string[] {
  return [...open_formulas()].flatMap(({ file, version }) => {
    const planned_with = known.get(file) ?? version;
    known.delete(file);
    return planned_with === version ? [] : [file];
  });
}

let strikes = 0;
export const times_struck = (): number => strikes;

/** What stands there is of files that are no more. */
export function strike(file: string): void {
  ++strikes;
  update({ is_old: true, changed_beside: file });
}
