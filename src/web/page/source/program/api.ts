// What the program is asked, and what it says: every figure on the page comes through here.
import type { CatalogueMould, Days, Explanation, Fat, Gauge, Inspection, OrderQuote, Plan, Quote } from "./answers";
import { http } from "./http";
import type { Document } from "./json";
import type { Transport } from "./transport";

const program: Transport = http;

export interface Complaint {
  file: string;
  field: string;
  problem: string;
  remedy: string;
  line: string;
  is_fault?: boolean; // of the program, not of what was given
  asks?: string; // the member of the question that answers it
  choices?: Choice[]; // what may be said there
  lye_heavy?: boolean; // the soap would be, or might be
  keep?: Keep; // what keeps a figure that is asked about
  entry?: number; // of the list at the field the one that is meant, from 0
}

/** The "confirmed" at that pointer has to name the figure. */
export interface Keep {
  at: string;
  figure: string;
}

/** Members of a question that answer what is asked, and what comes of it. */
export interface Choice {
  unit?: string;
  size?: number[]; // in that unit
  role?: string;
  up?: string;
  confirmed?: string;
  seen?: string | true; // nothing is there
  lot?: string;
  what?: string; // "lot A1", where a batch is called so too
  "beyond-stock"?: string;
}

/** What is wrong and what to do, as far as either is said. A problem with no field and no question is its file's. */
export const wording = ({ file, field, asks, is_fault, problem, remedy }: Complaint): string => {
  const is_of_file = file && !field && !asks && !is_fault;
  const whose = is_of_file ? `${file.slice(file.lastIndexOf("/") + 1)} ` : "";
  return [whose + problem, remedy].filter(Boolean).join("; ");
};

export class Refused extends Error {
  constructor(
    readonly status: number,
    readonly complaint: Complaint,
    readonly answer: object = {},
  ) {
    super(complaint.line);
  }

  /** Nobody answers, or too many ask at once: it is worth asking again by itself. */
  get may_pass(): boolean {
    return this.status === 0 || this.status === 503;
  }
}

const silent: Complaint = {
  file: "",
  field: "",
  problem: "Brimwright is not running",
  remedy: "start brimwright again and open the address it prints; what you typed is kept here",
  line: "Brimwright is not running: start it again and open the address it prints. What you typed is kept here.",
};

/** Nothing was said for or against what was asked. */
export const is_no_answer = (complaint: Complaint): boolean => complaint === silent || complaint.is_fault === true;

const kept_here = "what you typed is kept here";

/** What the program could not say itself. */
function without_words(status: number): Complaint {
  const [problem, remedy] =
    status === 503
      ? ["the program has too much to do at once", `it is asked again in a moment; ${kept_here}`]
      : ["internal error in brimwright (your files are not at fault)", `${kept_here}: change something, or ask again`];
  return { file: "", field: "", problem, remedy, line: `${problem} (answer ${status}); ${remedy}.` };
}

function refusal(status: number, answer: { complaint?: Complaint }): Refused {
  if (status === 0) return new Refused(0, silent);
  const own = without_words(status);
  const complaint = { ...own, ...answer.complaint };
  if (status >= 500) Object.assign(complaint, { is_fault: true, remedy: complaint.remedy || own.remedy });
  return new Refused(status, complaint, answer);
}

function refusal_in(status: number, body: string): Refused {
  try {
    return refusal(status, JSON.parse(body) as { complaint?: Complaint });
  } catch {
    return refusal(status, {});
  }
}

const is_answered = (status: number): boolean => status >= 200 && status < 300;

export async function json<T>(...question: Parameters<Transport["send"]>): Promise<T> {
  const { status, body } = await program.send(...question);
  if (is_answered(status)) return JSON.parse(body) as T;
  throw refusal_in(status, body);
}

export const posted = <T>(path: string, question: object): Promise<T> =>
  json<T>("POST", path, JSON.stringify(question));

export interface Listed {
  file: string;
  name: string;
  note: string;
  shipped: boolean;
  changed?: string; // of her own files, as ISO 8601 has it
  used_by?: string[]; // her files that name it
  holds?: string[]; // of fats or tips: what they are called
  pieces?: number; // of a run or an order
  due?: string; // likewise
  made_on?: string; // of a run, as is the mould
  mould?: string;
}

export interface Files {
  folder: string;
  open: string | null;
  shown_first: string | null; // the run that is opened where none is wanted
  runs: Listed[];
  orders: Listed[];
  moulds: Listed[];
  formulas: Listed[];
  meshes: Listed[];
  studios: Listed[];
  fats: Listed[];
  tips: Listed[];
  cut?: { folder: string; looked_at: number }[]; // folders with more in them than is looked at
  makes_pdf: boolean; // the helper program for it is there
  imports_meshes: boolean; // likewise; without it, binary STL alone is read
}

export interface Kept {
  file: string;
  version: string;
  text: string;
  shipped?: boolean;
}

export const list_files = (): Promise<Files> => json<Files>("GET", "/api/files");

/** A run, formula, mould or other file as it lies there. */
export const read_file = (file: string): Promise<Kept> =>
  json<Kept>("GET", `/api/file?file=${encodeURIComponent(file)}`);

interface Writing {
  file: string;
  version: string | null; // of what it is written over
  text: string;
  from?: string; // of which it is a copy: what that names is named from here
  goes_on?: boolean; // and what is at the bench of that is the copy's from now on
}

/** Refused with status 409 and what stands there, where that is of another version. */
export const write_file = (writing: Writing): Promise<Kept> => json<Kept>("PUT", "/api/file", JSON.stringify(writing));

/** What else names it is rewritten. */
export const rename_file = (file: string, to: string): Promise<{ renamed_in: string[] }> =>
  posted<{ renamed_in: string[] }>("/api/file/rename", { file, to });

/** Put away; refused, with those that name it as `used_by`, unless it is to go even so. */
export const remove_file = (file: string, even_so = false): Promise<{ removed: string }> =>
  posted<{ removed: string }>("/api/file/remove", { file, even_so });

export const restore_file = (removed: string): Promise<unknown> => posted("/api/file/restore", { removed });

/** A file that was removed, and is kept so that it can be restored. */
export interface RemovedFile {
  removed: string; // what restores it
  file: string;
  kind: string;
  name: string;
  removed_at: string;
  kept_until: string;
}

interface RemovedFiles {
  removed: RemovedFile[];
}

export const removed_files = async (): Promise<RemovedFile[]> =>
  (await json<RemovedFiles>("GET", "/api/removed")).removed;

/** Deletes it for good; those that are kept still come back. */
export const forget_removed = async (removed: string): Promise<RemovedFile[]> =>
  (await posted<RemovedFiles>("/api/removed/forget", { removed })).removed;

/** Files by their names, and what they are; null while there is none of that name. */
export type Versions = Map<string, string | null>;

export interface Changes {
  changed: { [file: string]: string | null };
  unreadable: string[]; // names of nothing that may be read
  bench?: string; // another version of what is kept of the run's batches
  record?: string; // likewise of what is recorded beside the run
  stock?: string; // and of what is recorded in the folder itself, or beside the files that were named
}

/** What is known of the batches of a run. */
export interface KnownBench {
  run: string; // or the order that is looked at
  version?: string;
  record?: string; // the version of what is recorded of them
}

/** What is known of what the program keeps. */
export interface KnownKept {
  bench?: KnownBench;
  stock?: string; // the version of what is recorded in the folder itself,
  beside?: readonly string[]; // or beside these files
}

const and = (name: string, value?: string): string =>
  value === undefined ? "" : `&${name}=${encodeURIComponent(value)}`;

const kept_and_versions = ({ bench, stock, beside = [] }: KnownKept): string =>
  `${and("run", bench?.run)}${and("bench", bench?.version)}${and("record", bench?.record)}${and("stock", stock)}` +
  beside.map((file) => `&${encodeURIComponent(`beside:${file}`)}=`).join("");

/** Three quarters of the head that the program puts up with. */
const longest_address = 12_000;

const file_and_version = ([file, version]: [string, string | null]): string =>
  `&${encodeURIComponent(`file:${file}`)}=${version ?? ""}`;

/** Those that are of another version than is known, as they are now. */
export async function changes_now(known: Versions, kept: KnownKept = {}): Promise<Changes> {
  const all: Changes = { changed: {}, unreadable: [] };
  const path = `/api/changed?wait=0${kept_and_versions(kept)}`;
  for (const part of parted(known)) {
    const { changed, unreadable, bench, record, stock } = await json<Changes>("GET", path + part);
    Object.assign(all.changed, changed);
    all.unreadable.push(...unreadable);
    Object.assign(all, { bench, record, stock });
  }
  return all;
}

/** In addresses that are not too long: nearly always one. */
function parted(known: Versions): string[] {
  const parts = [""];
  for (const pair of [...known].map(file_and_version))
    if (parts.at(-1)!.length + pair.length > longest_address) parts.push(pair);
    else parts[parts.length - 1] += pair;
  return parts;
}

const this_tab = crypto.randomUUID();
export const longest_wait_ms = 20_000;

/**
 * The same as soon as there is one, or after a while none. It ends one that waits still. More than an address holds are
 * looked at in turn, without waiting.
 */
export async function next_changes(known: Versions, kept: KnownKept, given_up: AbortSignal): Promise<Changes> {
  const [part, ...more] = parted(known);
  if (more.length) return changes_now(known, kept);
  const wait = `wait=${longest_wait_ms / 1000}&tab=${this_tab}`;
  const path = `/api/changed?${wait}${kept_and_versions(kept)}${part}`;
  return json<Changes>("GET", path, undefined, undefined, given_up);
}

/** A run's file, and its text as though it stood there. */
export interface PlanQuestion {
  file: string;
  run: Document;
}

export const ask_plan = (question: PlanQuestion): Promise<Plan> => posted<Plan>("/api/plan", question);

/** How every figure of that plan comes about. */
export const ask_explanation = (question: PlanQuestion): Promise<Explanation> =>
  posted<Explanation>("/api/plan", { ...question, explain: true });

/** What a piece costs and what to ask for it, for the numbers of pieces in `sell`; else the run's own. */
export interface QuoteQuestion extends PlanQuestion, PriceWish {
  sell?: string; // "12,24"
}

/** At most one of these, in place of the studio's ways of selling. */
interface PriceWish {
  margin?: string;
  markup?: string;
  price?: string;
  way?: string; // or this one of them alone
}

export const ask_quote = (question: QuoteQuestion): Promise<Quote> => posted<Quote>("/api/quote", question);

/** The same of an order, made so many times. */
export interface OrderQuestion extends PriceWish {
  file: string;
  order: Document;
  times?: string; // "1,2,4"
}

export const ask_order_quote = (question: OrderQuestion): Promise<OrderQuote> =>
  posted<OrderQuote>("/api/quote", question);

/** When it is made: of a run or an order. */
export type DaysQuestion = PlanQuestion | { file: string; order: Document };

export const ask_days = (question: DaysQuestion): Promise<Days> => posted<Days>("/api/days", question);

/** What is asked of a mould: a file's name, and its text where it is not kept yet. */
export interface MouldQuestion {
  file: string;
  mould?: Document;
  unit?: string;
  role?: string;
  up?: string;
  "below-brim"?: string;
  "batches-of"?: string; // a file of the folder whose records count
  depth?: string[];
}

/** Every defect of a mesh, before or after it is measured. */
export const inspect_mesh = (question: MouldQuestion): Promise<Inspection> =>
  posted<Inspection>("/api/gauge", { ...question, inspect: true });

export const ask_gauge = (question: MouldQuestion): Promise<Gauge> => posted<Gauge>("/api/gauge", question);

const list = <T>(what: string): Promise<T> => posted<T>("/api/list", { what });

export const list_fats = async (): Promise<Fat[]> => (await list<{ fats: Fat[] }>("fats")).fats;
export const list_moulds = async (): Promise<CatalogueMould[]> =>
  (await list<{ moulds: CatalogueMould[] }>("moulds")).moulds;
export const list_tips = async (): Promise<Tip[]> => (await list<{ tips: Tip[] }>("tips")).tips;

export interface Tip {
  name: string;
  opening?: string; // in words
  area_mm2?: number;
}

/** A sheet, a picture or a model, as the bytes of its file. */
export async function made_document(wish: object): Promise<Blob> {
  const { status, body } = await program.send_for_bytes("POST", "/api/document", JSON.stringify(wish));
  if (is_answered(status)) return body;
  throw refusal_in(status, await body.text());
}

/** The same, laid out at an address that a browser opens. */
export const laid_out = async (wish: object): Promise<string> =>
  (await posted<{ address: string }>("/api/document", { ...wish, open: true })).address;

/** Sends a mesh file; what comes back names it until the program stops. */
export const send_mesh = (file: File, progress: (share: number) => void): Promise<{ file: string }> =>
  json<{ file: string }>("POST", `/api/mesh?name=${encodeURIComponent(file.name)}`, file, progress);

/** Puts a mesh that was sent beside the runs. */
export const keep_mesh = async (upload: string, as: string): Promise<string> =>
  (await posted<{ file: string }>("/api/keep", { upload, as })).file;
