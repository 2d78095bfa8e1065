// What typing does: the document changes, the old one stays for undo, figures and file follow.
import { read_kept, type Document, type Json, type Kept } from "./api";
import { measure_soon } from "./measuring";
import { plan_soon } from "./planning";
import { at, with_value } from "./pointer";
import { keep_formula_net, keep_net, save_soon, take_formula_net } from "./saving";
import {
  changed,
  document_of,
  everyone,
  state,
  type FormulaPaper,
  type Of,
  type Page,
  type Slot,
  type Whose,
} from "./state";

const most_steps_back = 300;
const one_thought_ms = 1200; // typing in one field without a longer pause is one step of undo

let last_field = "";
let last_time = 0;

/** All that is typed, as it stands. */
export function page(): Page {
  const formulas: Page["formulas"] = {};
  for (const whose of everyone) {
    const paper = state.formulas[whose];
    if (paper) formulas[whose] = { paper, document: paper.document };
  }
  return { run: state.run, formulas };
}

/** Without a field it is a step of its own. */
function remember(field = ""): void {
  const now = performance.now();
  if (!field || field !== last_field || now - last_time > one_thought_ms || !state.past.length) {
    state.past.push(page());
    if (state.past.length > most_steps_back) state.past.shift();
  }
  state.future = [];
  last_field = field;
  last_time = now;
}

export function edit(of: Of, pointer: string, value: Json | undefined): void {
  const document = document_of(of);
  if (!document || at(document, pointer) === value) return;
  remember(`${of} ${pointer}`);
  take(of, with_value(document, pointer, value));
}

/** Places put in, left out or moved, several at once: always a step of its own. */
export function edit_whole(of: Of, change: (document: Document) => Document): void {
  const document = document_of(of);
  if (!document) return;
  remember();
  state.typed = undefined;
  take(of, change(document));
}

function take(of: Of, document: Document): void {
  if (of === "run") take_run(document);
  else take_formula(of, state.formulas[of]!, document);
}

function take_formula(whose: Whose, paper: FormulaPaper, document: Document): void {
  paper.document = document;
  keep_formula_net(paper);
  if (whose === "apart") return follow_formula();
  share_paper(paper);
  follow();
}

/** One file may be the formula of both batters. */
function share_paper(paper: FormulaPaper): void {
  for (const slot of ["pour", "pipe"] as const)
    if (state.formulas[slot]?.file === paper.file) state.formulas[slot] = paper;
}

function take_run(run: Document): void {
  const before = state.run;
  state.run = run;
  if (at(before, "/pour/mould") !== at(run, "/pour/mould")) measure_soon();
  if (formula_names(before) !== formula_names(run)) void read_formulas();
  follow();
}

/** The run is not touched by it: an example stays one. */
function follow_formula(): void {
  plan_soon();
  changed();
}

function follow(): void {
  if (state.saving.is !== "conflict") state.saving = { is: "waiting" };
  keep_net();
  plan_soon();
  save_soon();
  changed();
}

const formula_names = (run: Document): string =>
  `${String(at(run, "/pour/formula"))}\n${String(at(run, "/pipe/formula"))}`;

function step(from: Page[], to: Page[], said: string): void {
  const there = from.pop();
  if (!there) return;
  to.push(page());
  last_field = "";
  for (const whose of everyone) {
    const then = there.formulas[whose];
    if (!then || !state.formulas[whose]) continue;
    then.paper.document = then.document;
    keep_formula_net(then.paper);
    state.formulas[whose] = then.paper;
  }
  state.typed = undefined;
  state.said = said;
  if (there.run === state.run) follow_formula();
  else take_run(there.run);
}

export const undo = (): void => step(state.past, state.future, "Undone");
export const redo = (): void => step(state.future, state.past, "Done again");

/** A name as a run writes it, as the page may ask for it: beside the run, or of the catalogue. */
export function asked_name(name: string, listed: { file: string }[] | undefined): string {
  const there = beside_run(name);
  return listed?.some((one) => one.file === there) ? there : name;
}

export function beside_run(name: string): string {
  const slash = state.file.lastIndexOf("/");
  return slash < 0 ? name : normal(state.file.slice(0, slash + 1) + name);
}

function normal(path: string): string {
  const parts: string[] = [];
  for (const part of path.split("/"))
    if (part === "..") parts.pop();
    else if (part !== ".") parts.push(part);
  return parts.join("/");
}

/** Reads the formulas that the run names, but for those that are read already. */
export async function read_formulas(): Promise<void> {
  for (const slot of ["pour", "pipe"] as const) {
    const name = at(state.run, `/${slot}/formula`);
    if (typeof name === "string" && name) await read_formula(slot, asked_name(name, state.files?.formulas));
    else delete state.formulas[slot];
  }
  changed();
}

async function read_formula(slot: Slot, file: string): Promise<void> {
  if (state.formulas[slot]?.file === file) return;
  const same = everyone.map((whose) => state.formulas[whose]).find((paper) => paper?.file === file);
  if (same) {
    state.formulas[slot] = same;
    return;
  }
  delete state.formulas[slot];
  try {
    const kept = await read_kept(file);
    const paper = (state.formulas[slot] = paper_of(file, kept));
    take_formula_net(paper, kept.text);
  } catch {
    // The plan itself says what is wrong with it.
  }
}

export function paper_of(file: string, { version, shipped, text }: Kept): FormulaPaper {
  const document = JSON.parse(text) as Document;
  return { file, version, shipped: shipped ?? false, document, saved: document };
}
