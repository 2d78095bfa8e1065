// What stands on the shelf: it is the program's, and the same in every tab and on the command line. It is read while it
// is looked at; each act is one question, and what is typed of it lies in this tab until the program has it.
import { Refused, wording, type Complaint } from "../program/api";
import { act_on_stock, read_stock, read_trail, type StockAct } from "../program/stock";
import type { AskedTrail, AtStock, StockForm } from "./stock_types";
import { announce, state, update } from "./state";

const retry_ms = 2000;

const amend = (what: Partial<AtStock>): void => update({ stock: { ...state.stock, ...what } });

export const is_of_shelf = (): boolean => state.view === "shelf" || state.view === "trail";

/** What is watched while it is looked at, as soon as it is known. */
export const stock_known = (): string | undefined => (is_of_shelf() ? state.stock.version : undefined);

/** Nobody answers now, or this page's key is of an earlier start. */
const may_come = ({ may_pass, status }: Refused): boolean => may_pass || status >= 500 || [401, 403].includes(status);

export async function look_at_stock(): Promise<void> {
  try {
    const { version, stock } = await read_stock();
    amend({ version, list: stock, failed: undefined });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    amend({ failed: wording(error.complaint) });
    if (may_come(error))
      setTimeout(() => is_of_shelf() && state.stock.failed !== undefined && void look_at_stock(), retry_ms);
  }
  const { trail } = state.stock;
  if (state.view === "trail" && trail) await follow(trail.of);
}

/** Where a lot or a batch went, and what is in it: "lot CO-117", or its code alone, as it is typed. */
export function show_trail(of: string, order?: string): void {
  const is_same = state.stock.trail?.of === of;
  update({ view: "trail", stock: { ...state.stock, trail: { ...(is_same && state.stock.trail), of, order } } });
  void (state.stock.version === undefined ? look_at_stock() : follow(of));
}

async function follow(of: string): Promise<void> {
  const put = (what: Omit<AskedTrail, "of" | "order">) => {
    const asked = state.stock.trail;
    if (asked?.of === of) amend({ trail: { of, order: asked.order, ...what } });
  };
  try {
    const { version, trail } = await read_trail(of);
    put({ trail });
    amend({ version });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    const { problem, choices = [] } = error.complaint;
    const meant = choices.flatMap(({ what }) => what ?? []);
    put(
      meant.length
        ? { complaint: `${problem}: which is meant?`, choices: meant }
        : { complaint: wording(error.complaint) },
    );
  }
}

const forms_name = (): string => `shelf ${state.files?.folder ?? ""}`;

/** A reload loses none of them. */
function keep_forms(forms: readonly StockForm[]): void {
  sessionStorage.setItem(forms_name(), JSON.stringify(forms));
  amend({ forms });
}

export function remember_forms(): void {
  try {
    amend({ forms: JSON.parse(sessionStorage.getItem(forms_name()) ?? "[]") as StockForm[] });
  } catch {
    amend({ forms: [] });
  }
}

type Which = Pick<StockForm, "kind" | "of">;
const is_same = (one: Which, other: Which): boolean => one.kind === other.kind && one.of === other.of;

export const form_of = (which: Which): StockForm | undefined => state.stock.forms.find((one) => is_same(one, which));

export function open_form(form: Which & Partial<StockForm>): void {
  if (form_of(form)) return;
  const typed = { on: today(), ...form.typed };
  keep_forms([...state.stock.forms, { sources: [], confirmed: [], act: crypto.randomUUID(), ...form, typed }]);
  amend({ told: undefined });
}

export const close_form = (form: Which): void => keep_forms(state.stock.forms.filter((one) => !is_same(one, form)));

const change_form = (form: Which, what: Partial<StockForm>): void =>
  keep_forms(state.stock.forms.map((one) => (is_same(one, form) ? { ...one, ...what } : one)));

/** What was asked or refused was of what stood there before. */
export const type_in_form = (form: StockForm, what: Pick<Partial<StockForm>, "typed" | "sources">): void =>
  change_form(form, {
    ...what,
    typed: { ...form.typed, ...what.typed },
    act: crypto.randomUUID(),
    confirmed: [],
    complaint: undefined,
  });

/** A question of the page itself, before anything is sent. */
export function ask_first(form: StockForm, field: string, problem: string): void {
  const complaint: Complaint = { file: "", field, problem, remedy: "", line: problem };
  change_form(form, { complaint });
  announce(problem);
}

export async function record(form: StockForm, act: Omit<StockAct, "act">): Promise<boolean> {
  const now = form_of(form);
  if (!now || now.is_asking) return false;
  change_form(form, { is_asking: true, complaint: undefined });
  try {
    const { stock } = await act_on_stock({ ...act, act: now.act, confirmed: now.confirmed, seen: now.seen });
    const sentences = stock.done.length ? stock.done : ["It was recorded already."];
    close_form(form);
    amend({ told: { of: form.of, sentences } });
    announce(sentences.join(" "));
    await look_at_stock();
    return true;
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    change_form(form, { is_asking: false, complaint: error.complaint });
    announce(`Not recorded: ${error.complaint.problem}`);
    if (error.complaint.asks === "seen") await look_at_stock();
    return false;
  }
}

/** She says that what was asked about is so. */
export function confirm(form: StockForm, value: string): void {
  change_form(form, { confirmed: [...form.confirmed, value], complaint: undefined });
}

/** She has seen by now what is there. */
export const see = (form: StockForm, seen: StockForm["seen"]): void =>
  change_form(form, { seen, complaint: undefined });

/** By the clock of whoever looks. */
export function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((one) => String(one).padStart(2, "0")).join("-");
}
