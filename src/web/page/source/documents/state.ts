// Everything the page knows, in one place: what is drawn is a function of this. Nobody changes it but by the verbs
// at the end.
import type {
  CatalogueMould,
  Days,
  Fat,
  Gauge,
  Inspection,
  MouldWays,
  OrderQuote,
  OrderTimes,
  Plan,
  Quote,
  Working,
} from "../program/answers";
import type { Complaint, Files, Keep, PlanQuestion, RemovedFile, Tip } from "../program/api";
import type { Document } from "../program/json";
import type { KeptLearned } from "../program/learned";
import type { Units } from "../program/numbers";
import type { Loop, Outline } from "../program/outline";
import type { AtBench, WhipToday } from "./bench_types";
import { redraw } from "./drawing";
import type { BesideId, FormulaSlot, Kind, OpenFile, Step } from "./file_types";
import { run_kind } from "./kinds";
import type { AtRecord } from "./record_types";
import type { AtStock } from "./stock_types";
import type { RunView, View } from "./views";

/** What could make a soap that burns, or burn her. */
export interface Danger {
  text: string;
  is_of_heat: boolean; // and not of what the superfat comes to
  batter?: "pour" | "pipe"; // the one it is about, if about one alone
  batch_pieces?: number; // the size of the batches it is about, if not all
}

/** What is found in a mould: its measures, its cut, and how it looks from above. */
export interface Found {
  gauge: Gauge;
  outline: Outline;
  above: Loop[];
}

/** How the figures of a plan come about, by their places in it. */
interface Explained {
  of: Plan;
  workings: ReadonlyMap<string, Working>;
  complaint?: string; // why it cannot be told
}

/** What is asked about costs and prices, as typed. */
export interface QuoteWish {
  numbers?: string; // of pieces; the run's own as long as none is typed
  by?: "margin" | "markup" | "price"; // for the moment, where the studio has no way of selling
  figure: string;
}

interface Quoted {
  of?: Plan;
  wish: QuoteWish;
  quote?: Quote; // the last there was, though there be a complaint
  complaint?: Complaint;
}

/** When it is made. */
export interface AskedDays {
  of: readonly unknown[]; // what the answer rested on
  days?: Days; // the last there were, though there be a complaint
  complaint?: Complaint;
}

/** A fat of a file of her own. */
export interface OwnFat {
  id: string;
  name: string;
  own: string; // the saponification value as it stands there
}

/** The mould of the run. */
interface Measured {
  mould: string; // the file's name, as asked for
  gauge: Gauge;
  outline: Outline;
}

/** The mould that is being described. */
export interface MouldDraft {
  way: "form" | "mesh";
  title: string;
  open: OpenFile;
  answer?: Found;
  is_old: boolean; // the answer is to what was typed before
  complaint?: { field: string; line: string; keep?: Keep; about?: string }; // about one entry of a list at the field
  shapes: { [kind: string]: Document }; // each keeps its measures while another is looked at
  past: readonly Document[]; // steps back, and on
  future: readonly Document[];
}

/** The order that lies open. */
export interface OpenOrder {
  open: OpenFile;
  past: readonly Document[]; // steps back, and on
  future: readonly Document[];
  times: string; // how often it is made, as typed
  quoted?: { of: readonly unknown[]; quote?: OrderQuote; complaint?: Complaint };
  once?: { of: readonly unknown[]; made?: OrderTimes }; // made once, however often it is costed
  days?: AskedDays;
}

/** What a mould holds by each way of finding out. */
export interface AtWays {
  of?: readonly unknown[]; // what the answer rested on
  ways?: MouldWays;
  failed?: string;
}

/** What the batches of the run say. */
export interface AtLearned {
  of?: readonly unknown[]; // what the answer rested on
  run?: string; // its file
  kept?: KeptLearned; // the last there was
  failed?: string; // why there is no newer one
  doing?: string; // the figure that is being taken, or taken back
  said?: { name: string; words: string; is_refused: boolean }; // how that went
}

/** A mesh file on its way to become a mould. */
export interface MeshDraft {
  name: string;
  upload?: string;
  share: number; // of it that has gone
  unit?: string;
  role?: string;
  up?: string;
  sizes: [string, string][]; // unit, and how large the mesh would be in it
  answer?: Found;
  complaint?: string;
  inspection?: Inspection; // every defect, where it was asked for
  is_measuring: boolean;
  is_keeping?: boolean;
  questions: number; // so many, so that a late answer to an earlier choice is not taken for one to this
}

/** A mould that is there, opened to begin with. */
export interface ChosenMould {
  file: string;
  name: string;
  note: string;
  shipped: boolean;
  sell: string; // of a run with it, as it is being asked for
  slice: string; // and how thick its loaf is sliced, if it is
  answer?: Found;
  complaint?: string;
  told?: string;
}

/** What is being typed about a file of a list. */
export interface ListOpen {
  file: string;
  name: string;
  note: string;
  stem: string; // of the file's name
  used_by?: string[]; // those that stand in the way of its removal
  is_busy?: boolean; // it is being saved, copied or removed
}

export type PaperSize = "A4" | "Letter";

/** What is asked of a sheet, and how making it went. */
interface Printing {
  paper: PaperSize;
  batch: number; // the number of the one that the sheet is for; 0 for all of them
  is_working: boolean;
  told: string;
  on?: View; // where it was asked
  way?: string; // of selling, by which is offered
}

interface State {
  view: View;
  came_from: RunView; // where one goes back to from a formula
  formula_of: FormulaSlot; // the one that the view of a formula shows
  fault?: string;
  files?: Files;
  removed: readonly RemovedFile[]; // that are kept still
  fats: Fat[];
  catalogue: CatalogueMould[];
  tips?: Tip[]; // those that come with the program
  own_tips: { [file: string]: Tip[] };
  own_fats: { [formula_and_file: string]: OwnFat[] | "waiting" | "none" };
  own_moulds: { [file: string]: { brimful_ml: number; cavities: number } | { complaint: string } };

  run: OpenFile; // without a name as long as none lies open
  order?: OpenOrder;
  formulas: Partial<Record<FormulaSlot, OpenFile>>;
  beside: Partial<Record<BesideId, OpenFile>>;
  past: readonly Step[];
  future: readonly Step[];
  run_steps?: { past: readonly Step[]; future: readonly Step[] }; // while a formula lies open by itself

  plan?: Plan;
  planned?: PlanQuestion; // what the plan is the answer to
  explanation?: Explained; // as soon as a figure is opened
  quote_wish: QuoteWish;
  quoted?: Quoted;
  run_days?: AskedDays;
  is_old: boolean; // the figures shown are not of what is typed now
  changed_beside: readonly string[]; // the files whose change made them old
  taken_in?: { files: readonly string[]; since: number }; // changed by another hand; the figures are of them as they are now
  dangers: Record<"run" | "apart", Danger[]>; // of the last answer that told of them
  complaint?: Complaint;
  measured?: Measured;
  measuring_failed?: string;

  bench: AtBench;
  record: AtRecord;
  stock: AtStock;
  recorded?: string; // the version of what is recorded in the folder, where an order rests on it
  learned: AtLearned;
  ways: AtWays; // in which the mould that is looked at was measured
  whip_today?: WhipToday;

  mould?: MouldDraft;
  mesh?: MeshDraft;
  chosen_mould?: ChosenMould;
  list_complaint: string;
  list_told: string; // what was done to a file just now
  list_open?: ListOpen;
  held_open?: string; // the file of fats or tips that lies open in its list
  new_run?: { name: string; mould: string; formula: string; sell: string }; // as it is being asked for
  new_formula: { name: string; copied: string }; // as it is being asked for
  new_order: string; // who it is for, likewise
  printing: Printing;

  picking?: {
    of: FormulaSlot;
    row: number; // that the list of fats is open for
    text: string;
    lit?: string;
    is_entered?: boolean; // Enter was pressed before the fats had come
  };
  finding?: { key: string; text: string }; // a material that is looked for, and in which form
  typed?: { key: string; text: string; unit?: string }; // the field being typed in, as typed
  touched: ReadonlySet<string>; // fields that were left, by their ids: what is blank in them is complained of
  has_asked: boolean; // for what is missing: then all of it is complained of
  open: ReadonlySet<string>; // arithmetic shown
  folded: ReadonlySet<string>; // lanes folded away by hand
  units: Units;
  announcement: string; // for those who listen to the page
}

const no_text: Document = {};
const no_run: OpenFile = {
  kind: run_kind,
  id: "",
  file: "",
  version: null,
  shipped: false,
  now: no_text,
  saved: no_text, // so that there is nothing to write
  unanswered: [],
};

const current: State = {
  view: "reading",
  came_from: "set-up",
  removed: [],
  formula_of: "pour",
  fats: [],
  catalogue: [],
  own_tips: {},
  own_fats: {},
  own_moulds: {},
  run: no_run,
  formulas: {},
  beside: {},
  past: [],
  future: [],
  quote_wish: { figure: "" },
  is_old: false,
  changed_beside: [],
  dangers: { run: [], apart: [] },
  list_complaint: "",
  list_told: "",
  bench: { run: "", batches: [], complaints: [], acts: [] },
  record: { run: "", batches: [], acts: [] },
  stock: { forms: [] },
  learned: {},
  ways: {},
  new_formula: { name: "", copied: "" },
  new_order: "",
  printing: {
    paper: localStorage.getItem("paper") === "Letter" ? "Letter" : "A4",
    batch: 0,
    is_working: false,
    told: "",
  },
  touched: new Set(),
  has_asked: false,
  open: new Set(remembered_parts()),
  folded: new Set(),
  units: remembered_units(),
  announcement: "",
};

export const state: Readonly<State> = current;

function remembered_units(): Units {
  const kept = localStorage.getItem("units");
  return kept === "metric" || kept === "us" ? kept : "both";
}

/** Numbers of pieces are remembered for each run, and so is that there are none. */
const name_of_numbers = (run: OpenFile): string => `numbers ${String(run.now.id ?? run.file)}`;

const remembered_wish = (run: OpenFile): QuoteWish => ({
  numbers: localStorage.getItem(name_of_numbers(run)) ?? undefined,
  figure: "",
});

export function wish_quote(wish: Partial<QuoteWish>): void {
  update({ quote_wish: { ...current.quote_wish, ...wish } });
  const { numbers } = current.quote_wish;
  if (numbers?.trim()) localStorage.setItem(name_of_numbers(current.run), numbers);
  else localStorage.removeItem(name_of_numbers(current.run));
}

// Which parts of the set-up stand open is remembered; what else is open is of the moment.
const part_of_set_up = "set-up ";

function remembered_parts(): string[] {
  try {
    const kept = JSON.parse(localStorage.getItem("parts") ?? "[]") as unknown;
    return Array.isArray(kept) ? kept.filter((one): one is string => typeof one === "string") : [];
  } catch {
    return [];
  }
}

function remember_parts(): void {
  const parts = [...current.open].filter((name) => name.startsWith(part_of_set_up));
  localStorage.setItem("parts", JSON.stringify(parts));
}

export function update(what: Partial<State>): void {
  Object.assign(current, what);
  redraw();
}

export const announce = (text: string): void => update({ announcement: text });

/** Of one that lies open, wherever it does. */
export function amend<Part extends object>(part: Part, what: Partial<Part>): void {
  Object.assign(part, what);
  redraw();
}

export function open_as(slot: FormulaSlot, file: OpenFile | undefined): void {
  const { [slot]: _, ...others } = current.formulas;
  update({ formulas: file ? { ...others, [slot]: file } : others });
}

export function toggle(which: "open" | "folded", name: string): void {
  const names = new Set(current[which]);
  if (!names.delete(name)) names.add(name);
  update({ [which]: names });
  if (name.startsWith(part_of_set_up)) remember_parts();
}

/** Another one, or none: nothing that was known of the one before holds. */
export function take_run(run: OpenFile = no_run): void {
  update({
    run,
    formulas: {},
    beside: {},
    touched: new Set(),
    has_asked: false,
    past: [],
    future: [],
    dangers: { run: [], apart: [] },
    changed_beside: [],
    taken_in: undefined,
    fault: undefined,
    plan: undefined,
    quote_wish: remembered_wish(run),
    quoted: undefined,
    run_days: undefined,
    complaint: undefined,
    finding: undefined,
    typed: undefined,
    measured: undefined,
  });
}

/** Opens what is folded away, and lets it stay so. */
export function open_up(name: string): void {
  if (!current.open.has(name)) update({ open: new Set(current.open).add(name) });
}

/** A file of this name is there, listed by what it is called. */
export function list_file({ list, called }: Pick<Kind, "list" | "called">, file: string, text: Document = {}): void {
  if (!current.files) return;
  const place = current.files[list].findIndex((one) => one.file === file);
  const entry = {
    ...(place < 0 ? {} : current.files[list][place]),
    file,
    name: String((called && text[called]) ?? ""),
    note: String(text.note ?? ""),
    shipped: false,
  };
  const others = current.files[list].filter((one) => one.file !== file);
  others.splice(place < 0 ? others.length : place, 0, entry);
  update({ files: { ...current.files, [list]: others } });
}

/** It is called otherwise from now on, and so is what lies open of it in its list. */
export function list_renamed({ list }: Pick<Kind, "list">, from: string, to: string): void {
  if (!current.files) return;
  const renamed = current.files[list].map((one) => (one.file === from ? { ...one, file: to } : one));
  const open = current.list_open;
  const followed = open?.file === from ? Object.assign(open, { file: to }) : open;
  update({ files: { ...current.files, [list]: renamed }, list_open: followed });
}
