// What the larger forms are made of: choices with their complaint, parts that unfold, lists that grow and shrink.
import { html, nothing, type TemplateResult } from "lit";
import type { Json } from "./api";
import { edit_run } from "./editing";
import { choice, complaint_at, id_of } from "./field";
import { at, with_value } from "./pointer";
import { state, toggle } from "./state";

/** The line about this very place, not about something in it. */
export function complaint_just_at(pointer: string): string | undefined {
  return state.complaint?.field === pointer ? complaint_at("run", pointer) : undefined;
}

/** A question with a few answers, which the program may ask for at `pointer`, if there is such a place. */
export function asked<T extends string>(
  question: string,
  pointer: string | undefined,
  chosen: T | undefined,
  answers: [T, unknown][],
  take: (value: T) => void,
): TemplateResult {
  const complaint = pointer && complaint_just_at(pointer);
  return html`<div class="field asked ${complaint ? "wants" : ""}" id=${pointer ? id_of("run", pointer) : nothing} tabindex="-1">
    <p class="question" aria-hidden="true">${question}</p>
    ${choice(question, chosen, answers, take)}
    ${complaint ? html`<p class="complaint">${complaint}</p>` : nothing}
  </div>`;
}

/** Folded away until it is asked for, or until the program complains about one of `pointers`. */
export function part(key: string, title: string, pointers: string[], inside: unknown): TemplateResult {
  if (pointers.some((pointer) => complaint_at("run", pointer))) state.open.add(key);
  const unfold = (event: Event) => {
    event.preventDefault(); // what is open is held in one place, and drawn from there
    toggle(state.open, key);
  };
  return html`<details class="part" .open=${state.open.has(key)}><summary @click=${unfold}>${title}</summary>${inside}</details>`;
}

export function list_at(pointer: string): Json[] {
  const list = at(state.run, pointer);
  return Array.isArray(list) ? list : [];
}

/** One more at the end of a list, which is begun if it is not there. */
export function add_to(pointer: string, what: string, value: Json): void {
  edit_run(what, (run) => with_value(run, pointer, [...list_at(pointer), value]));
}

/** One less; the last one takes the list with it. */
export function drop_from(pointer: string, what: string, i: number): void {
  const left = list_at(pointer).filter((_, j) => j !== i);
  state.typed = undefined;
  edit_run(what, (run) => with_value(run, pointer, left.length ? left : undefined));
}

/** Gives the hand a place to go on from, once the page is drawn. */
export function focus_soon(id: string): void {
  requestAnimationFrame(() => document.getElementById(id)?.focus());
}

export const text_at = (pointer: string): string => {
  const value = at(state.run, pointer);
  return value === undefined ? "" : String(value);
};
