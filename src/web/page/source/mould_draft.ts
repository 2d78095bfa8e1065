// The mould being described: what is typed, what the program found in it, and what it wants.
import { Refused, type Document, type Json } from "./api";
import { look_into, type Found } from "./measuring";
import { at, with_value } from "./pointer";
import { measures, point_list } from "./shapes";
import { changed, state, type Theirs } from "./state";

/** Where the mould comes from, and where it goes. */
export interface Paper {
  file?: string; // her own, written over
  version: string | null;
  from?: string; // of the catalogue, of which this becomes a copy
  from_name?: string;
  net?: string; // what it is kept under in this browser
}

interface Draft {
  document: Document;
  paper: Paper;
  answer?: Found;
  is_old: boolean; // the answer is to what was typed before
  complaint?: { field: string; line: string };
  conflict?: Theirs;
  mine?: Document; // typed here, before what is in the file took its place
}

export const draft: Draft = { document: {}, paper: { version: null }, is_old: false };

const pause_ms = 30;
let timer = 0;
let is_asking = false;
let is_due = false;

export function take_draft(document: Document, paper: Paper): void {
  const net = paper.net ?? crypto.randomUUID();
  Object.assign(draft, {
    document,
    paper: { ...paper, net },
    answer: undefined,
    is_old: false,
    complaint: undefined,
    conflict: undefined,
    mine: undefined,
  });
  ask_soon();
}

const changes_nothing_measured = ["/name", "/note", "/owned", "/unmould_after"];

export function set(pointer: string, value: Json | undefined): void {
  draft.document = with_value(draft.document, pointer, value);
  keep_draft();
  const is_of_complaint = draft.complaint?.field === pointer;
  if (!changes_nothing_measured.includes(pointer)) draft.is_old = true;
  if (draft.is_old || is_of_complaint || !["/name", "/note"].includes(pointer)) ask_soon();
  changed();
}

function ask_soon(): void {
  clearTimeout(timer);
  timer = window.setTimeout(() => void ask(), pause_ms);
}

/** One question at a time: a large mesh takes longer than a keystroke. */
async function ask(): Promise<void> {
  if (is_asking) return void (is_due = true);
  if (!has("shape") && !has("mesh")) return; // a mesh on its way here is measured by itself
  if (wanted().length) {
    draft.complaint = undefined;
    return changed();
  }
  is_asking = true;
  const asked = draft.document;
  try {
    const request = { file: draft.paper.file ?? draft.paper.from ?? "new.mould.json", mould: sendable(asked) };
    request.mould.name = String(request.mould.name ?? "").trim() || "New mould";
    const answer = await look_into(request);
    if (draft.document === asked) {
      draft.answer = answer;
      draft.is_old = false;
      draft.complaint = undefined;
    }
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (draft.document === asked) complain(error);
  } finally {
    is_asking = false;
    if (is_due) ask_soon();
    is_due = false;
  }
  changed();
}

export function complain(error: Refused): void {
  const { field, problem, remedy } = error.complaint;
  draft.complaint = { field: as_typed(field), line: field ? `${problem}; ${remedy}` : error.message };
}

const text_at = (pointer: string): string => String(at(draft.document, pointer) ?? "").trim();

export const kind_of = (): string => text_at("/shape/kind");
export const has = (part: "shape" | "mesh" | "water"): boolean => at(draft.document, `/${part}`) !== undefined;
/** A body or a skin shows its cavities; one solid does not tell how many of its kind there are. */
export const shows_cavities = (): boolean => ["body", "skin"].includes(text_at("/mesh/role"));

export function list_at(pointer: string): Json[] {
  const list = at(draft.document, pointer);
  return Array.isArray(list) ? list : [];
}

const cells = (row: Json): string[] =>
  (point_list(kind_of())?.columns ?? []).map(({ name }) => String(at(row, `/${name}`) ?? "").trim());

/** The places of the points that have both their numbers. */
export function whole_points(): number[] {
  return list_at("/shape/points").flatMap((row, i) => (cells(row).every(Boolean) ? [i] : []));
}

/** The places of the points that have one number and want the other. */
export function half_points(): number[] {
  return list_at("/shape/points").flatMap((row, i) =>
    cells(row).some(Boolean) && !cells(row).every(Boolean) ? [i] : [],
  );
}

const rounds = (): number[] => list_at("/water/weighings").flatMap((one, i) => (String(one).trim() ? [i] : []));

/** Without the rows that nothing, or not yet all, stands in. */
export function sendable(document: Document): Document {
  let sent = document;
  const keep = (pointer: string, places: number[]) => {
    if (Array.isArray(at(sent, pointer)))
      sent = with_value(
        sent,
        pointer,
        places.map((i) => at(document, `${pointer}/${i}`)!),
      );
  };
  if (point_list(kind_of())) keep("/shape/points", whole_points());
  keep("/water/weighings", rounds());
  return { ...sent };
}

/** The program counts the rows that were sent to it. */
function as_typed(field: string): string {
  const [, list, place, rest] = /^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(field) ?? [];
  if (!list) return field;
  const sent = list === "/shape/points" ? whole_points() : rounds();
  return `${list}/${sent[Number(place)] ?? place}${rest}`;
}

/** What must still be said before there is anything to measure. */
export function wanted(): string[] {
  const list: string[] = [];
  const want = (is_there: boolean, words: string) => void (is_there || list.push(words));
  if (has("shape")) {
    want(kind_of() !== "", "the shape");
    for (const { name, label, optional } of measures(kind_of()))
      want(optional || text_at(`/shape/${name}`) !== "", label.toLowerCase());
    const points = point_list(kind_of());
    if (points) want(whole_points().length >= points.least, `${points.least} points at least`);
  }
  if (has("water")) {
    want(text_at("/water/temperature") !== "", "the water's temperature");
    want(at(draft.document, "/water/to") !== undefined, "how far the water was filled");
    for (const end of ["depth", "below_brim"])
      want(
        at(draft.document, `/water/to/${end}`) === undefined || text_at(`/water/to/${end}`) !== "",
        "the water's line",
      );
    want(text_at("/water/of") !== "", "what was weighed");
    want(rounds().length > 0, "a weighing of water");
  }
  if (!shows_cavities() && !has("mesh")) want(text_at("/cavities") !== "", "how many cavities one mould has");
  return list;
}

// What is typed and not yet in a file also lies in this browser, should the tablet fall asleep.
// Each has a place of its own: two tabs may describe two moulds.
const all_nets = (): string => `mould ${state.files?.folder ?? ""}`;
const net_name = (paper: Paper): string => `${all_nets()} ${paper.net}`;

export interface Net {
  document: Document;
  paper: Paper;
}

function keep_draft(): void {
  if (!has("shape") && !has("mesh")) return;
  try {
    localStorage.setItem(net_name(draft.paper), JSON.stringify({ document: draft.document, paper: draft.paper }));
  } catch {
    // Full or forbidden: it still stands on the page.
  }
}

export function left_drafts(): Net[] {
  const names = Object.keys(localStorage).filter((name) => name.startsWith(`${all_nets()} `));
  return names.sort().flatMap((name) => read_net(name) ?? []);
}

function read_net(name: string): Net | undefined {
  try {
    return (JSON.parse(localStorage.getItem(name) ?? "null") as Net | null) ?? undefined;
  } catch {
    return undefined;
  }
}

export const drop_draft = (paper = draft.paper): void => localStorage.removeItem(net_name(paper));

/** What is in the file takes the place of what is typed, which can be brought back. False if it is no mould. */
export function take_their_mould(): boolean {
  const there = draft.conflict;
  if (!there) return true;
  try {
    const theirs = JSON.parse(there.text!) as Document;
    const mine = draft.document;
    take_draft(theirs, { ...draft.paper, version: there.version });
    draft.mine = mine;
  } catch {
    return false;
  }
  changed();
  return true;
}

/** The other of the two texts, to be saved over the file only when she says so. */
export function bring_back_mine(): void {
  const [mine, theirs] = [draft.mine!, draft.document];
  take_draft(mine, draft.paper);
  draft.mine = theirs;
  keep_draft();
  changed();
}
