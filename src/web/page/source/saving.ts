// The file is the truth: it is written a moment after the last keystroke, and watched for others' changes.
// Until it is written, what was typed also lies in this browser, should the tablet fall asleep.
import { get, put, read_kept, Refused, wording, type Document, type Kept } from "./api";
import { page, read_formulas } from "./editing";
import { measure_soon } from "./measuring";
import { named_from_here } from "./own_fats";
import { plan_now, plan_soon } from "./planning";
import { at, with_value } from "./pointer";
import { changed, everyone, state, type FormulaPaper, type Slot, type Theirs, type Whose } from "./state";

const pause_ms = 400;
const retry_ms = 2000;
export const half_written_ms = 300;

let timer = 0;
let writing: Promise<void> | undefined;
let saved_run: Document = {}; // as it stands in the file
let unanswered: string[] = []; // texts of it that were sent to be written, and no answer came

export const text_of = (document: Document): string => `${JSON.stringify(document, null, 2)}\n`;
const net_name = (file: string): string => `typed ${state.files?.folder ?? ""} ${file}`;

/** Called with what a file held when it was read. */
export function take_saved(run: Document): void {
  saved_run = run;
  unanswered = [];
}

export function keep_net(copy?: string): void {
  try {
    const net = { version: state.version, text: text_of(state.run), copy };
    localStorage.setItem(net_name(state.file), JSON.stringify(net));
  } catch {
    // Full or forbidden: the file is still written.
  }
}

/** What was typed and not yet in the file when the page went away. */
export function left_in_net(file: string): { version: string | null; text: string; copy?: string } | undefined {
  try {
    return JSON.parse(localStorage.getItem(net_name(file)) ?? "null") ?? undefined;
  } catch {
    return undefined;
  }
}

export const drop_net = (file: string): void => localStorage.removeItem(net_name(file));

export function save_soon(): void {
  clearTimeout(timer);
  timer = window.setTimeout(() => void save_now(), pause_ms);
}

/** Writes what has changed; one writing after the other. */
export async function save_now(): Promise<void> {
  clearTimeout(timer);
  if (writing) {
    await writing;
    return state.saving.is === "waiting" ? save_now() : undefined;
  }
  if (state.saving.is === "conflict") return;
  writing = write_run().finally(() => (writing = undefined));
  await writing;
}

async function write_run(): Promise<void> {
  const run = state.run;
  if (run === saved_run && !state.shipped) {
    state.saving = { is: "saved" };
    return changed();
  }
  const from = state.shipped ? state.file : undefined;
  const file = from ? free_name(from.split("/").at(-1)!, state.files?.runs ?? []) : state.file;
  const version = from ? null : state.version;
  if (from) keep_net(file);
  const text = text_of(run);
  unanswered = [...new Set(unanswered).add(text)];
  try {
    const kept = await put<Kept>("/api/run", { file, version, text, from });
    drop_net(state.file);
    take_kept(kept, run, from);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    const there = error.answer as unknown as Kept;
    if (error.status === 409 && from) take_or_pass_copy(there, run, from);
    else if (error.status === 409 && there.text === text) take_kept(there, run, from);
    else if (error.status === 409 && is_own(there)) write_over_own(there);
    else if (error.status === 409) set_conflict(there);
    else state.saving = { is: "failed", line: wording(error.complaint) };
    if (error.may_pass) window.setTimeout(save_again, retry_ms);
  }
  changed();
}

/**
 * A copy of this name is there after all. It may be our own, written just as the page was left: then it is gone on
 * with; if it is not, the next name is tried.
 */
function take_or_pass_copy(there: Kept, run: Document, from: string): void {
  if (is_copy_of(run, JSON.parse(there.text) as Document)) return take_kept(there, run, from);
  state.files?.runs.push({ file: there.file, name: there.file, note: "", shipped: false });
  save_soon();
}

/** Our own hand wrote it, and the answer was lost. */
const is_own = ({ text }: Theirs): boolean => text !== null && unanswered.includes(text);

function write_over_own(there: Kept): void {
  unanswered = [];
  state.version = there.version;
  save_soon();
}

/** What could not be written a moment ago. */
export function save_again(): void {
  if (state.saving.is === "failed") state.saving = { is: "waiting" };
  save_soon();
}

/** The same run, but for the names of the files it uses, which a copy writes anew. */
export function is_copy_of(run: Document, copy: Document): boolean {
  let [one, other] = [run, copy];
  for (const name of ["/$schema", ...file_names(run)])
    [one, other] = [with_value(one, name, undefined), with_value(other, name, undefined)];
  return JSON.stringify(one) === JSON.stringify(other);
}

function file_names(run: Document): string[] {
  const perch = Array.isArray(run.perch) ? run.perch : [];
  const names = ["/pour/mould", "/pour/formula", "/pipe/formula", ...perch.map((_, i) => `/perch/${i}/mould`)];
  return names.filter((name) => at(run, name) !== undefined);
}

function take_kept(kept: Kept, sent: Document, from: string | undefined): void {
  unanswered = [];
  const written = JSON.parse(kept.text) as Document;
  if (from) {
    state.file = kept.file;
    state.shipped = false;
    localStorage.setItem("run", kept.file);
    state.files?.runs.push({ file: kept.file, name: String(written.name), note: "", shipped: false });
    rename_in_pages(sent, written);
    plan_soon();
  }
  state.version = kept.version;
  saved_run = state.run === sent ? sent : written;
  if (from && state.run !== sent) saved_run = written;
  state.saving = state.run === saved_run ? { is: "saved" } : { is: "waiting" };
  if (state.saving.is === "waiting") save_soon();
  void watch();
}

/** Files are named anew in a copy that lies elsewhere; undo must not bring the old names back. */
function rename_in_pages(before: Document, after: Document): void {
  for (const name of file_names(before)) {
    const [was, is] = [at(before, name), at(after, name)];
    if (was === is || typeof is !== "string") continue;
    const renamed = (run: Document) => (at(run, name) === was ? with_value(run, name, is) : run);
    state.run = renamed(state.run);
    for (const page of [...state.past, ...state.future]) page.run = renamed(page.run);
  }
}

export function free_name(name: string, taken: { file: string }[]): string {
  const [, stem, ending] = /^(.*?)((?:\.\w+)?\.json)$/.exec(name) ?? ["", name, ".json"];
  for (let i = 1; ; ++i) {
    const free = i === 1 ? name : `${stem}_${i}${ending}`;
    if (!taken.some((one) => one.file === free)) return free;
  }
}

const formula_net_name = (file: string): string => `typed formula ${state.files?.folder ?? ""} ${file}`;

/** What is typed in a formula of one's own, until its file holds it. */
export function keep_formula_net(paper: FormulaPaper): void {
  if (paper.shipped) return; // its copy has another name
  try {
    const net = { version: paper.version, document: paper.document };
    localStorage.setItem(formula_net_name(paper.file), JSON.stringify(net));
  } catch {
    // Full or forbidden: the file is still written.
  }
}

/** A formula just read, with what was typed last time and never reached its file. */
export function take_formula_net(paper: FormulaPaper, text: string): void {
  const net = formula_net(paper.file);
  if (!net) return;
  if (text_of(net.document) === text_of(paper.document)) return drop_formula_net(paper.file);
  state.past.push(page());
  const theirs = { version: paper.version, text };
  Object.assign(paper, { document: net.document, version: net.version }); // what it was typed over
  if (net.version !== theirs.version) clash_over(paper, theirs);
  plan_soon();
}

function formula_net(file: string): { version: string | null; document: Document } | undefined {
  try {
    return JSON.parse(localStorage.getItem(formula_net_name(file)) ?? "null") ?? undefined;
  } catch {
    return undefined;
  }
}

const drop_formula_net = (file: string): void => localStorage.removeItem(formula_net_name(file));

let formulas_writing: Promise<void> = Promise.resolve();

/** Formulas lie in files of their own, which the plan reads: they are written before it is asked for. */
export function save_formulas(): Promise<void> {
  const next = formulas_writing.then(write_formulas);
  formulas_writing = next.catch(() => undefined);
  return next;
}

/** Until no writing of ours is under way whose version we do not know yet. */
export const formulas_written = (): Promise<void> => formulas_writing;

async function write_formulas(): Promise<void> {
  for (const whose of everyone) {
    const paper = state.formulas[whose];
    if (!paper || paper.document === paper.saved || paper.clash) continue;
    if (paper.shipped) await write_copy(whose, paper);
    else await write_over(paper);
  }
}

async function write_over(paper: FormulaPaper): Promise<void> {
  const { file, version, document: sent } = paper;
  const text = text_of(sent);
  paper.unanswered = [...new Set(paper.unanswered).add(text)];
  try {
    took(paper, await put<Kept>("/api/run", { file, version, text }), sent);
  } catch (error) {
    if (!(error instanceof Refused) || error.status !== 409) throw error;
    meet_their_formula(paper, error.answer as unknown as Theirs);
    if (paper.document !== paper.saved && !paper.clash) await write_over(paper);
  }
}

/** Of a formula that came with the program, under the first name that nobody has. */
async function write_copy(whose: Whose, paper: FormulaPaper): Promise<void> {
  const from = paper.file;
  const { fats_from } = await named_from_here(paper.document, from);
  if (fats_from !== paper.document.fats_from) paper.document = { ...paper.document, fats_from: fats_from! };
  const sent = paper.document;
  if (state.shipped && whose !== "apart") await save_now(); // the run must be ours to name the copy
  const listed = state.files?.formulas ?? [];
  for (let i = 0; i < 50; ++i) {
    const file = free_name(from.split("/").at(-1)!, listed);
    listed.push({ file, name: "", note: "", shipped: false });
    try {
      took(paper, await put<Kept>("/api/run", { file, version: null, text: text_of(sent), from }), sent);
      if (whose !== "apart") name_formula(whose, from, file);
      return;
    } catch (error) {
      if (!(error instanceof Refused) || error.status !== 409) {
        listed.splice(
          listed.findIndex((one) => one.file === file),
          1,
        );
        throw error;
      }
      // Another tab's, or another program's: the next name is tried.
    }
  }
}

function took(paper: FormulaPaper, { file, version }: Kept, sent: Document): void {
  Object.assign(paper, { file, version, shipped: false, saved: sent, unanswered: [] });
  if (paper.document === sent) drop_formula_net(file);
  else keep_formula_net(paper);
  list_as_named(file, sent);
}

/** What another hand left in the file of a formula that was read before. */
export function meet_their_formula(paper: FormulaPaper, theirs: Theirs): void {
  if (theirs.text === text_of(paper.document)) return agree(paper, paper.document, theirs.version);
  const is_ours = theirs.text !== null && paper.unanswered?.includes(theirs.text);
  paper.unanswered = [];
  if (is_ours) return void Object.assign(paper, { version: theirs.version, saved: {}, clash: undefined });
  const document = theirs.text === null ? undefined : read_document(theirs.text);
  const is_untouched = paper.document === paper.saved;
  if (!is_untouched || !document) return clash_over(paper, theirs);
  state.past.push(page());
  state.typed = undefined;
  state.said = `${paper.file} had changed underneath and was read again; undo brings back what stood here.`;
  agree(paper, document, theirs.version);
}

function agree(paper: FormulaPaper, document: Document, version: string | null): void {
  Object.assign(paper, { document, saved: document, version, clash: undefined, unanswered: [] });
  drop_formula_net(paper.file);
  list_as_named(paper.file, document);
}

/** Neither is lost: nothing is written before she has said which is to stay. */
function clash_over(paper: FormulaPaper, theirs: Theirs): void {
  paper.clash = { version: theirs.version, text: theirs.text };
  keep_formula_net(paper);
  state.is_old = true;
  state.said = `${paper.file} has changed underneath. Say which is to stay.`;
  changed();
}

/** What is in the file takes the place of what is on the page; undo brings it back. */
export function take_their_formula(paper: FormulaPaper): void {
  const theirs = paper.clash?.text ? read_document(paper.clash.text) : undefined;
  if (!theirs) {
    state.said = `What is in ${paper.file} now is no formula; keep what is on this page.`;
    state.complaint = {
      file: paper.file,
      field: "",
      problem: "what is in it now is no formula",
      remedy: "keep what is on this page",
      line: "",
    };
    return changed();
  }
  state.past.push(page());
  state.typed = undefined;
  agree(paper, theirs, paper.clash!.version);
  plan_soon();
  changed();
}

/** What is on the page is written over what is in the file. */
export function keep_my_formula(paper: FormulaPaper): void {
  if (!paper.clash) return;
  Object.assign(paper, { version: paper.clash.version, saved: {}, clash: undefined });
  keep_formula_net(paper);
  plan_soon();
  changed();
}

/** Lists go by the name that stands in the file. */
function list_as_named(file: string, formula: Document): void {
  const listed = state.files?.formulas.find((one) => one.file === file);
  if (listed) Object.assign(listed, { name: String(formula.name ?? ""), note: String(formula.note ?? "") });
}

function name_formula(slot: Slot, was: string, file: string): void {
  for (const each of slot === "pour" ? (["pour", "pipe"] as const) : (["pipe"] as const)) {
    const pointer = `/${each}/formula`;
    const ends_so = (run: Document) => String(at(run, pointer) ?? "").endsWith(was.split("/").at(-1)!);
    if (!ends_so(state.run)) continue;
    state.run = with_value(state.run, pointer, file);
    for (const page of [...state.past, ...state.future])
      if (ends_so(page.run)) page.run = with_value(page.run, pointer, file);
  }
  state.saving = { is: "waiting" };
  save_soon();
}

function set_conflict(answer: Kept): void {
  unanswered = [];
  state.saving = { is: "conflict", file: answer.file, version: answer.version, text: answer.text };
  state.said = "The file has changed underneath.";
}

/** What is in the file now takes the place of what is on the page; undo brings it back. */
export function take_theirs(): void {
  if (state.saving.is !== "conflict" || state.saving.text === null) return;
  const { file, version, text } = state.saving;
  const theirs = read_document(text);
  if (!theirs) {
    state.saving = { is: "failed", line: `what is in ${file} now is no run; keep what is on this page` };
    state.version = version;
    return changed();
  }
  state.past.push(page());
  state.run = saved_run = theirs;
  state.is_old = true;
  state.version = version;
  state.saving = { is: "saved" };
  drop_net(state.file);
  measure_soon();
  void read_formulas().then(() => plan_now());
  void watch();
  changed();
}

function read_document(text: string): Document | undefined {
  try {
    return JSON.parse(text) as Document;
  } catch {
    return undefined;
  }
}

export function keep_mine(): void {
  if (state.saving.is !== "conflict") return;
  state.version = state.saving.version;
  state.saving = { is: "waiting" };
  saved_run = {};
  void save_now();
  changed();
}

let watching: AbortController | undefined;

/** Whether a file still is what it was. */
export interface Looked {
  changed: boolean;
  version: string | null;
}

/** Waits for the file to change under our hands; begun anew for each version. */
export async function watch(): Promise<void> {
  watching?.abort();
  if (state.shipped || state.version === null) return;
  const mine = (watching = new AbortController());
  const [file, version] = [state.file, state.version];
  const path = `/api/changed?file=${encodeURIComponent(file)}&version=${version}&wait=20`;
  while (!mine.signal.aborted) {
    try {
      const answer = await get<Looked>(path, mine.signal);
      if (mine.signal.aborted || !answer.changed) continue;
      if (writing) await writing;
      if (state.file === file && state.version === version) await see_change(file, answer.version);
      return;
    } catch {
      await new Promise((later) => window.setTimeout(later, retry_ms));
    }
  }
}

async function see_change(file: string, version: string | null): Promise<void> {
  const before = state.version;
  // Other programs may still be at it: what they leave is looked at, not what lies there in between.
  await new Promise((later) => window.setTimeout(later, half_written_ms));
  const kept = version ? await read_kept(file) : { file, version: "", text: "" };
  if (writing) await writing;
  if (state.file !== file) return;
  if (state.version !== before) return void watch(); // a writing of ours has found it out already
  if (kept.text === text_of(state.run)) {
    state.version = kept.version;
    return void watch();
  }
  if (is_own(kept)) {
    write_over_own(kept);
    return void watch();
  }
  state.saving = { is: "conflict", file, version: version && kept.version, text: version && kept.text };
  state.said = "The file has changed underneath.";
  changed();
}
