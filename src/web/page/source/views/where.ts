// Where one is, in the browser's history: Back goes back, a reload stays, and focus and scrolling return with the place.
// Every change of what is shown is kept, whoever made it; the address holds the place, and never the key.
import { address_of, first_view, place_in, type Place } from "../documents/addresses";
import { sets_out } from "../documents/goings";
import { begin, read_lists } from "../documents/opening";
import { state } from "../documents/state";
import { is_of_run, type View } from "../documents/views";
import { is_key_in_address } from "../program/http";
import { open, place_now, type Held } from "./places";

/** In the browser's history, beside the address. */
interface Entry {
  id: string;
  before?: string; // the address that this one was gone to from
}

/** How a place was left. */
interface Left {
  scroll: number;
  words?: string; // on what was focused, and the how many-eth of those with these words
  nth?: number;
}

let entry: Entry = { id: "" };
let held: Held | undefined;
let is_going = false;
const things = new Map<string, object | undefined>(); // by the entry's id
const left = JSON.parse(sessionStorage.getItem("left") ?? "{}") as Record<string, Left>;

/** For each drawing: a place that was gone to becomes a step in the history. */
export function keep_address(): void {
  const now = place_now();
  if (is_going || !now || (held && address_of(held) === address_of(now))) return;
  remember_leaving();
  hold(now);
}

function hold(now: Held): void {
  const is_same = !held || (held.name === now.name && held.of !== undefined && held.of === now.of);
  held = now;
  if (is_same) return put_address();
  entry = { id: crypto.randomUUID(), before: location.hash };
  things.set(entry.id, now.of);
  history.pushState(entry, "", address_of(now));
  requestAnimationFrame(arrive);
}

/** Without a step. */
export function put_address(): void {
  if (!held) return;
  if (!entry.id) entry = { id: crypto.randomUUID() };
  things.set(entry.id, held.of);
  history.replaceState(entry, "", address_of(held));
}

const focusable = "button, input, select, summary, a[href], [tabindex]";
const words_on = (node: Element): string => node.id || (node.getAttribute("aria-label") ?? node.textContent).trim();
const alike = (words: string): Element[] =>
  [...document.querySelectorAll(`#main :is(${focusable})`)].filter((one) => words_on(one) === words);

function remember_leaving(): void {
  const node = document.activeElement;
  if (!node?.closest("#main") || node.id === "main") left[entry.id] = { scroll: scrollY };
  else left[entry.id] = { scroll: scrollY, words: words_on(node), nth: alike(words_on(node)).indexOf(node) };
}

/** At its top, for eyes and ears, unless the keyboard has been led to a place in it already. */
function arrive(): void {
  scrollTo(0, 0);
  if (!document.activeElement?.closest("#main")) focus_title();
}

function focus_title(): void {
  const title = document.querySelector<HTMLElement>("#main h1");
  if (!title) return;
  title.tabIndex = -1;
  title.focus({ preventScroll: true });
}

function come_back(): void {
  const { scroll, words, nth = 0 } = left[entry.id] ?? { scroll: 0 };
  const node = words === undefined ? undefined : (alike(words)[nth] as HTMLElement | undefined);
  if (node) node.focus({ preventScroll: true });
  else focus_title();
  scrollTo(0, scroll);
}

/** A view of the run that lies open, or a list. */
export const show = (view: View): Promise<void> =>
  go_to({ name: view, file: is_of_run(view) ? state.run.file : undefined });

/** However many steps it takes, it is one in the history. */
export async function go_to(place: Place): Promise<void> {
  remember_leaving();
  await opened(place, () => {
    const now = place_now();
    if (now && !(held && address_of(held) === address_of(now))) hold(now);
  });
}

/** `then` comes before anything is drawn that would be taken for a further step. */
async function opened(place: Place, then: () => void): Promise<void> {
  is_going = true;
  try {
    await open(place);
  } finally {
    is_going = false;
    then();
  }
}

/** By the browser's own way back, if that leads there, so that one stands where one stood. */
export function go_back_to(place: Place): void {
  if (entry.before === address_of(place)) history.back();
  else void go_to(place);
}

let stepping: Promise<void> = Promise.resolve();

/** Back and Forward, one after the other. What has another name by now is still the same. */
function step_to(to: Entry | null, place: Place | undefined): void {
  remember_leaving();
  const is_overtaken = () => (history.state as Entry | null)?.id !== to?.id; // by a further step
  stepping = stepping.then(async () => {
    if (!place) return put_address();
    if (is_overtaken()) return;
    const thing = to ? things.get(to.id) : undefined;
    const open_now = [state.run, state.formulas.apart, state.order].find((one) => one && one === thing);
    await opened(open_now ? { ...place, file: "open" in open_now ? open_now.open.file : open_now.file } : place, () => {
      held = place_now();
      if (is_overtaken()) return;
      entry = to ?? { id: crypto.randomUUID() };
      put_address();
      requestAnimationFrame(come_back);
    });
  });
}

export function wire_history(): void {
  history.scrollRestoration = "manual";
  addEventListener("popstate", (event) => {
    if (!is_key_in_address()) step_to(event.state as Entry | null, place_in(location.hash));
  });
  addEventListener("pagehide", () => {
    remember_leaving();
    sessionStorage.setItem("left", JSON.stringify(left));
  });
}

/** Where the address says, as after a reload; else on the run opened last. */
export async function begin_here(): Promise<void> {
  const place = place_in(location.hash);
  if (place) entry = (history.state as Entry | null) ?? { id: "" };
  const is_wanted = sets_out();
  await begin(first_view(place));
  if (place && is_wanted() && is_still(place)) {
    await opened(place, () => {
      held = place_now();
      put_address();
      requestAnimationFrame(come_back);
    });
  }
  await read_lists();
}

/** She may have gone on already. */
const is_still = (place: Place): boolean => !held || address_of(held) === address_of(place);
