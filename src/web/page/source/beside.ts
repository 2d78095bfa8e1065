// The other files that the figures rest on: mould, formulas, own fats and tips. Another tab or program may write them
// at any time; then the figures are struck out at once, and asked for anew.
import { get, read_kept, Refused } from "./api";
import { beside_run, read_formulas } from "./editing";
import { measure_soon } from "./measuring";
import { forget_own_fats } from "./own_fats";
import { ask_again } from "./own_moulds";
import { plan_soon } from "./planning";
import { at } from "./pointer";
import { formulas_written, half_written_ms, meet_their_formula, type Looked } from "./saving";
import { changed, everyone, state, type FormulaPaper } from "./state";
import { forget_tips } from "./tips";

const pause_ms = 700;

/** What each was when figures were last asked for; null while there is none of that name. */
const known = new Map<string, string | null>();

/** Names of nothing that may be read: the plan says what is wrong with them. */
const unreadable = new Set<string>();

let is_looking = false;

/** Before figures are asked for: whatever changes from now on is seen. */
export async function know_beside(): Promise<void> {
  const names = beside();
  const read = new Set([...papers()].map((paper) => paper.file)); // looked at below before it is forgotten
  for (const name of known.keys()) if (!names.has(name) && !read.has(name)) known.delete(name);
  for (const name of unreadable) if (!names.has(name)) unreadable.delete(name);
  for (const name of names) if (!known.has(name)) known.set(name, await version_of(name));
}

async function version_of(file: string, known_as: string | null = null): Promise<string | null> {
  if (unreadable.has(file)) return null;
  try {
    const path = `/api/changed?file=${encodeURIComponent(file)}&version=${known_as ?? ""}&wait=0`;
    return (await get<Looked>(path)).version;
  } catch (error) {
    if (!(error instanceof Refused) || error.status !== 422) throw error;
    unreadable.add(file);
    return null;
  }
}

/** By each name that the program may find them under: beside the file that names them, or in this folder. */
function beside(): Set<string> {
  const names = new Set<string>();
  const from_run = (name: unknown) => {
    if (typeof name !== "string" || !name) return;
    names.add(beside_run(name));
    if (!name.includes("..")) names.add(name);
  };
  from_run(at(state.run, "/pour/mould"));
  from_run(at(state.run, "/pipe/beads/tips_from"));
  for (const one of Array.isArray(state.run.perch) ? state.run.perch : []) from_run(at(one, "/mould"));
  for (const slot of ["pour", "pipe"] as const) if (!state.formulas[slot]) from_run(at(state.run, `/${slot}/formula`));
  for (const paper of papers()) {
    const name = paper.document.fats_from;
    if (typeof name === "string" && name)
      names.add(paper.file.slice(0, paper.file.lastIndexOf("/") + 1) + name).add(name);
  }
  return names;
}

const papers = (): Set<FormulaPaper> => new Set(everyone.flatMap((whose) => state.formulas[whose] ?? []));

/** Looks again and again, for as long as the page is open. */
export function keep_looking(): void {
  if (is_looking) return;
  is_looking = true;
  const again = () =>
    void look().then(
      () => window.setTimeout(again, pause_ms),
      () => window.setTimeout(again, 3 * pause_ms), // nobody answers; whoever types is told so
    );
  again();
}

let look_now: Promise<void> | undefined;

export function look(): Promise<void> {
  look_now ??= look_once().finally(() => (look_now = undefined));
  return look_now;
}

async function look_once(): Promise<void> {
  if (!state.file) return;
  for (const paper of papers()) await look_at_formula(paper);
  const gone_on = read_meanwhile();
  for (const [name, before] of known) {
    const now = await version_of(name, before);
    if (known.get(name) === before && now !== before) (gone_on.push(name), known.set(name, now));
  }
  if (gone_on.length) await follow_change(gone_on[0]!);
}

/** Formulas that changed between the first plan, which may be quicker, and their being read. */
function read_meanwhile(): string[] {
  return [...papers()].flatMap(({ file, version }) => {
    const planned_with = known.get(file) ?? version;
    known.delete(file);
    return planned_with === version ? [] : [file];
  });
}

/** By the version that the page holds, or was told of last. */
const held = (paper: FormulaPaper): string | null => (paper.clash ?? paper).version;

async function look_at_formula(paper: FormulaPaper): Promise<void> {
  if (paper.shipped) return;
  const [file, before] = [paper.file, held(paper)];
  if ((await version_of(file, before)) === before) return;
  await formulas_written(); // it may be our own hand
  if (held(paper) !== before || paper.file !== file || !papers().has(paper)) return;
  strike(file);
  await half_written();
  const kept = await there_now(file);
  await formulas_written();
  if (held(paper) === before) meet_their_formula(paper, kept);
  forget_own_fats();
  plan_soon();
}

async function there_now(file: string): Promise<{ version: string | null; text: string | null }> {
  const version = await version_of(file);
  return version === null ? { version, text: null } : read_kept(file);
}

async function follow_change(file: string): Promise<void> {
  strike(file);
  await half_written();
  forget_own_fats();
  forget_tips();
  state.measured = undefined;
  measure_soon();
  ask_again();
  await read_formulas();
  plan_soon();
}

let strikes = 0;
export const times_struck = (): number => strikes;

/** What stands there is of files that are no more. */
function strike(file: string): void {
  ++strikes;
  state.is_old = true;
  state.changed_beside = file;
  changed();
}

/** Other programs may still be at it: what they leave is looked at, not what lies there in between. */
const half_written = (): Promise<void> => new Promise((later) => window.setTimeout(later, half_written_ms));
