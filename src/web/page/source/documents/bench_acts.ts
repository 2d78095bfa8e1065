// What she did at the bench and the program does not have yet: it lies in this browser, for all tabs, until it has.
import type { Act } from "./bench_types";
import { state } from "./state";

const alone_after_ms = 10_000; // the tab that it was done in is gone, or cannot send it

// A reload is no other tab.
const this_tab = sessionStorage.getItem("tab") ?? crypto.randomUUID();
sessionStorage.setItem("tab", this_tab);

/** Where the browser keeps nothing, they last as long as this tab. */
let in_this_tab: Act[] = [];

export const storage_name = (): string => `bench ${state.files?.folder ?? ""}`;

export function waiting_acts(): Act[] {
  try {
    const kept = JSON.parse(localStorage.getItem(storage_name()) ?? "[]") as Act[];
    return [...kept, ...in_this_tab];
  } catch {
    return in_this_tab;
  }
}

function keep(acts: Act[]): void {
  try {
    if (acts.length) localStorage.setItem(storage_name(), JSON.stringify(acts));
    else localStorage.removeItem(storage_name());
    in_this_tab = [];
  } catch {
    in_this_tab = acts;
  }
}

const is_of_same = (one: Act, other: Act): boolean =>
  one.run === other.run && one.batch === other.batch && one.key === other.key;

/** The last word on one row holds; that of before need not be sent any more. */
export function put_act(what: Omit<Act, "id" | "tab" | "at">): void {
  const act = { ...what, id: crypto.randomUUID(), tab: this_tab, at: Date.now() };
  keep([...waiting_acts().filter((one) => !is_of_same(one, act)), act]);
}

export const drop_acts = (are_over: (act: Act) => boolean): void =>
  keep(waiting_acts().filter((one) => !are_over(one)));

export const move_acts = (from: string, to: string): void =>
  keep(waiting_acts().map((act) => (act.run === from ? { ...act, run: to } : act)));

/** The tab that it was done in sends it, so that she hears there what comes of it. */
export const next_act = (): Act | undefined =>
  waiting_acts().find((one) => one.tab === this_tab || Date.now() - one.at > alone_after_ms);
