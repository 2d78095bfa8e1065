// What is added to the run, moved and taken away by hand: each is one step of undo, and the keyboard stays with it.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { Json } from "./api";
import { edit, edit_run } from "./editing";
import { complaint_at, id_of, value_at } from "./field";
import { with_value } from "./pointer";
import { state } from "./state";

/** Goes to it, though it be folded away. */
export function reach(node: Element | null | undefined): void {
  for (let around = node?.closest("details"); around; around = around.parentElement?.closest("details")) around.open = true;
  (node as HTMLElement | null | undefined)?.focus();
}

export const id_at = (pointer: string, what: string): string => `${id_of("run", pointer)}-${what}`;
const first_in = (id: string) => () => document.querySelector(`#${id} :is(input, select, button[aria-pressed])`);
const by_id = (id: string) => () => document.getElementById(id);

/** One step of undo, told to those who listen; then the keyboard goes on from `to`, once it is drawn. */
export function change(said: string, pointer: string, value: Json | undefined, to: () => Element | null): void {
  state.typed = undefined;
  state.said = said;
  edit_run(said, (run) => with_value(run, pointer, value));
  requestAnimationFrame(() => reach(to()));
}

/** What the program says of this place itself, where there is no one field for it. */
export function said_at(pointer: string): TemplateResult | typeof nothing {
  const said = state.complaint?.field === pointer ? complaint_at("run", pointer) : undefined;
  return said ? html`<p id=${id_of("run", pointer)} class="complaint" tabindex="-1">${said}</p>` : nothing;
}

export const list_at = (pointer: string): Json[] => {
  const list = value_at("run", pointer);
  return Array.isArray(list) ? list : [];
};

/** Also makes the list, if it is the first. */
export function add_to(pointer: string, item: Json, name: string): void {
  const list = list_at(pointer);
  change(`${name} added`, pointer, [...list, item], first_in(id_at(`${pointer}/${list.length}`, "item")));
}

/** The last one takes the list with it. */
export function take_from(pointer: string, i: number, name: string): void {
  const rest = list_at(pointer).filter((_, at) => at !== i);
  const next = Math.min(i, rest.length - 1);
  const to = next < 0 ? by_id(id_at(pointer, "add")) : by_id(id_at(`${pointer}/${next}`, "drop"));
  change(`${name} taken away`, pointer, rest.length ? rest : undefined, to);
}

export function move_in(pointer: string, i: number, by: -1 | 1, name: string): void {
  const list = [...list_at(pointer)];
  const [one] = list.splice(i, 1);
  list.splice(i + by, 0, one!);
  const is_at_end = i + by === 0 || i + by === list.length - 1;
  const way = by < 0 !== is_at_end ? "earlier" : "later"; // at the end the same button sleeps
  change(`${name} moved ${by < 0 ? "earlier" : "later"}`, pointer, list, by_id(id_at(`${pointer}/${i + by}`, way)));
}

/** The buttons of one of a list; those that change the order only where there is one. */
export function item_buttons(pointer: string, i: number, name: string, has_order = true): TemplateResult {
  const here = `${pointer}/${i}`;
  const last = list_at(pointer).length - 1;
  const move = (by: -1 | 1, words: string, is_at_end: boolean) =>
    html`<button type="button" id=${id_at(here, words)} ?disabled=${is_at_end} aria-label="${name} ${words}" @click=${() => move_in(pointer, i, by, name)}>
      ${by < 0 ? "↑" : "↓"}</button>`;
  return html`<div class="tools">
    ${has_order && last > 0 ? html`${move(-1, "earlier", i === 0)} ${move(1, "later", i === last)}` : nothing}
    <button type="button" id=${id_at(here, "drop")} aria-label="Take away ${name}" @click=${() => take_from(pointer, i, name)}>×</button></div>`;
}

export function add_button(pointer: string, words: string, item: Json, name: string): TemplateResult {
  return html`<button type="button" id=${id_at(pointer, "add")} @click=${() => add_to(pointer, item, name)}>${words}</button>`;
}

export interface Part {
  at: string;
  name: string; // "the bowl"
  title: string;
  add: string; // what the button says that adds it
  blank: Json; // what must be said of it, unsaid
  body: () => TemplateResult;
}

/** A part that the run may have: a button as long as it is not there, then its questions, and away again. */
export function part({ at, name, title, add, blank, body }: Part): TemplateResult {
  const id = id_at(at, "part");
  const adder = id_at(at, "add");
  if (value_at("run", at) === undefined)
    return html`<p class="choice"><button type="button" id=${adder} @click=${() => change(`${name} added`, at, blank, first_in(id))}>${add}</button></p>`;
  return html`<div class="part" id=${id} role="group" aria-label=${title}>
    <div class="part-head"><p class="part-title">${title}</p>
      <button type="button" aria-label="Take away ${name}" @click=${() => change(`${name} taken away`, at, undefined, by_id(adder))}>Take away</button></div>
    ${said_at(at)} ${body()}</div>`;
}

export interface Picking {
  label: string;
  at: string;
  choices: [value: string, words: string][];
  unsaid: string; // what stands there as long as nothing is chosen
  optional?: boolean;
  take?: (value: string) => void; // else it is written as it is
  chosen?: string; // else what is written there
}

/** One of a list of words. */
export function pick({ label, at, choices, unsaid, optional, take, chosen }: Picking): TemplateResult {
  const id = id_of("run", at);
  const value = chosen ?? String(value_at("run", at) ?? "");
  const complaint = complaint_at("run", at);
  const known = choices.some(([one]) => one === value) || !value ? choices : [[value, value] as [string, string], ...choices];
  const chose = (event: Event) => {
    const to = (event.target as HTMLSelectElement).value;
    if (take) take(to);
    else edit(at, to || !optional ? to : undefined);
  };
  return html`<div class="field choose ${complaint ? "wants" : ""}">
    <label for=${id}>${label}</label>
    <select id=${id} @change=${chose} aria-describedby=${complaint ? `${id}-said` : nothing}>
      ${[["", unsaid] as [string, string], ...known].map(([one, words]) => html`<option value=${one} .selected=${live(one === value)}>${words}</option>`)}
    </select>
    ${complaint ? html`<p id="${id}-said" class="complaint">${complaint}</p>` : nothing}
  </div>`;
}
