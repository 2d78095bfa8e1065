// What she noted and the program does not have yet: it lies in this browser, for all tabs, until it has.
import type { NoteAct } from "./record_types";
import { state } from "./state";

const alone_after_ms = 10_000; // the tab that it was typed in is gone, or cannot send it
export const pause_ms = 2500; // the hand rests that long

// A reload is no other tab.
const this_tab = sessionStorage.getItem("tab") ?? crypto.randomUUID();
sessionStorage.setItem("tab", this_tab);

/** Where the browser keeps nothing, they last as long as this tab. */
let in_this_tab: NoteAct[] = [];

export const notes_storage = (): string => `notes ${state.files?.folder ?? ""}`;

export function waiting_notes(): NoteAct[] {
  try {
    const kept = JSON.parse(localStorage.getItem(notes_storage()) ?? "[]") as NoteAct[];
    return [...kept, ...in_this_tab];
  } catch {
    return in_this_tab;
  }
}

function keep(acts: NoteAct[]): void {
  try {
    if (acts.length) localStorage.setItem(notes_storage(), JSON.stringify(acts));
    else localStorage.removeItem(notes_storage());
    in_this_tab = [];
  } catch {
    in_this_tab = acts;
  }
}

const is_of_same = (one: NoteAct, other: { batch: string; key: string }): boolean =>
  one.batch === other.batch && one.key === other.key;

/** The one that stands in the field: the last, for one that is on its way is not written over. */
export const note_of = (batch: string, key: string): NoteAct | undefined =>
  state.record.acts.filter((one) => is_of_same(one, { batch, key })).at(-1);

/** What is typed goes on with what was typed before, and is another act than one that may be there already. */
export function put_note(
  what: Pick<NoteAct, "run" | "together" | "batch" | "key" | "text" | "value" | "seen" | "is_typed" | "lacks">,
): void {
  const acts = waiting_notes();
  const before = acts.filter((one) => is_of_same(one, what)).at(-1);
  const act: NoteAct = {
    ...what,
    seen: before?.seen ?? what.seen,
    id: crypto.randomUUID(),
    tab: this_tab,
    at: Date.now(),
  };
  keep([...acts.filter((one) => !is_of_same(one, what) || (one.was_sent && !one.refused)), act]);
}

export const change_notes = (change: (act: NoteAct) => NoteAct): void => keep(waiting_notes().map(change));

export const change_note = (id: string, what: Partial<NoteAct>): void =>
  change_notes((one) => (one.id === id ? { ...one, ...what } : one));

export const drop_notes = (are_over: (act: NoteAct) => boolean): void =>
  keep(waiting_notes().filter((one) => !are_over(one)));

const is_ready = ({ is_typed, lacks, refused, at }: NoteAct): boolean =>
  !refused && !lacks && (!is_typed || Date.now() - at >= pause_ms);

/** The tab that it was typed in sends it, so that she hears there what comes of it. */
export const next_note = (): NoteAct | undefined =>
  waiting_notes().find((one) => is_ready(one) && (one.tab === this_tab || Date.now() - one.at > alone_after_ms));
