// What the forms of runs and formulas are made of. Each change is one step of undo and is told to those who listen,
// and the keyboard goes on from there.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { edit, edit_whole, text_at, value_at } from "../documents/editing";
import type { DocumentId } from "../documents/file_types";
import { asked_name } from "../documents/run_names";
import { announce, open_up, state, toggle } from "../documents/state";
import { term_words } from "../figures/explained";
import type { TermName } from "../figures/terms";
import type { Listed } from "../program/api";
import type { Document, Json } from "../program/json";
import { with_value } from "../program/pointer";
import { beside_term, complaint_at, complaint_on, id_of, said_beneath } from "./field";
import { is_gathering, want, within } from "./wanted";

/** Goes to it, though it be folded away. */
export function reach(node: Element | null | undefined): void {
  for (let around = node?.closest("details"); around; around = around.parentElement?.closest("details"))
    around.open = true;
  (node as HTMLElement | null | undefined)?.focus();
}

export type Way = () => Element | null;

export const to_id =
  (id: string): Way =>
  () =>
    document.getElementById(id);
export const to_field = (of: DocumentId, pointer: string): Way => to_id(id_of(of, pointer));
/** Where the first answer is given inside of it. */
export const to_first_in =
  (id: string): Way =>
  () =>
    document.querySelector(`#${id} :is(input, select, button[aria-pressed])`);
const to_where_one_is: Way = () => document.activeElement;

/** Once the page is drawn. */
export function go_on(way: Way): void {
  requestAnimationFrame(() => reach(way()));
}

/** Several places at once. */
export function change_whole(
  of: DocumentId,
  said: string,
  make: (document: Document) => Document,
  way = to_where_one_is,
): void {
  announce(said);
  edit_whole(of, make);
  go_on(way);
}

export function change(of: DocumentId, said: string, pointer: string, value: Json | undefined, way?: Way): void {
  change_whole(of, said, (document) => with_value(document, pointer, value), way);
}

export const id_at = (of: DocumentId, pointer: string, what: string): string => `${id_of(of, pointer)}-${what}`;

/** What the program says of this place itself, where there is no one field for it. */
export function said_at(of: DocumentId, pointer: string): TemplateResult | typeof nothing {
  const said = complaint_on(of, pointer);
  return said ? html`<p id=${id_of(of, pointer)} class="complaint" tabindex="-1">${said}</p>` : nothing;
}

/** Answers side by side, each large enough for a glove. */
const answer_buttons = <T extends string>(
  chosen: T | undefined,
  answers: [T, unknown][],
  take: (answer: T) => void,
): TemplateResult[] =>
  answers.map(
    ([answer, words]) =>
      html`<button type="button" aria-pressed=${answer === chosen ? "true" : "false"} @click=${() => take(answer)}>
        ${words}
      </button>`,
  );

/** The same beneath a title of its own. */
export function choice<T extends string>(
  label: string,
  chosen: T | undefined,
  answers: [T, unknown][],
  take: (answer: T) => void,
): TemplateResult {
  return html`<div class="choice" role="group" aria-label=${label}>${answer_buttons(chosen, answers, take)}</div>`;
}

interface Question<T extends string> {
  of?: DocumentId;
  question: string;
  at: string; // where the answer is put
  asked_at?: string; // the place that the program asks about, if that is another
  is_told_elsewhere?: boolean; // or another field tells what is wrong there
  chosen: T | undefined;
  answers: [T, string][];
  puts: (answer: T) => Json | undefined;
  then?: (answer: T) => string; // the place to go on with
  hint?: string;
  optional?: boolean; // it need not be answered
  term?: TermName; // a word of it that is explained
}

/** A question with a few answers. */
export function choice_field<T extends string>({
  of = "run",
  question,
  at,
  asked_at = at,
  is_told_elsewhere,
  chosen,
  answers,
  puts,
  then,
  hint,
  optional,
  term,
}: Question<T>): TemplateResult {
  const id = is_told_elsewhere ? id_at(of, at, question.replaceAll(/\W+/g, "-")) : id_of(of, asked_at);
  const is_wanted = chosen === undefined && !optional;
  if (is_wanted) want(of, asked_at, id, question);
  const complaint = is_told_elsewhere ? undefined : complaint_on(of, asked_at);
  const take = (answer: T) => {
    if (answer === chosen) return;
    const words = answers.find(([one]) => one === answer)![1];
    change(of, `${question}: ${words}`, at, puts(answer), then && to_field(of, then(answer)));
  };
  return html`<div class="field asked ${complaint ? "wants" : ""}">
    ${beside_term(
      html`<p class="question" id="${id}-label" data-said=${is_wanted ? "required" : nothing}>${question}</p>`,
      term,
    )}
    <div
      class="choice"
      role="group"
      id=${id}
      tabindex="-1"
      aria-labelledby="${id}-label"
      aria-describedby=${complaint || hint ? `${id}-said` : nothing}
    >
      ${answer_buttons(chosen, answers, take)}
    </div>
    ${said_beneath(id, complaint, hint)} ${term ? term_words(term) : nothing}
  </div>`;
}

/** What is so or is not; `yes` is what stands there if it is. */
export function on_off(at: string, words: string, is_on: boolean, yes: Json): TemplateResult {
  const id = id_of("run", at);
  const complaint = complaint_on("run", at);
  const turn = () => change("run", `${words}: ${is_on ? "no" : "yes"}`, at, is_on ? undefined : yes);
  return html`<div class="choice">
      <button
        type="button"
        id=${id}
        aria-pressed=${is_on ? "true" : "false"}
        aria-describedby=${complaint ? `${id}-said` : nothing}
        @click=${turn}
      >
        ${words}
      </button>
    </div>
    ${said_beneath(id, complaint)}`;
}

interface OneOf {
  label: string;
  of?: DocumentId;
  at: string;
  answers: [value: string, words: string][];
  unsaid: string; // what stands there as long as nothing is chosen
  optional?: boolean;
  chosen?: string; // else what is written there
  take?: (answer: string) => void; // else it is written there
}

/** One of a list; what stands there is kept, though the list does not know it. */
export function one_of({ label, of = "run", at, answers, unsaid, optional, chosen, take }: OneOf): TemplateResult {
  const id = id_of(of, at);
  const complaint = complaint_at(of, at);
  const now = chosen ?? text_at(of, at);
  if (!now && !optional) want(of, at, id, label);
  const is_known = !now || answers.some(([one]) => one === now);
  const all: [string, string][] = [["", unsaid], ...(is_known ? [] : [[now, now] as [string, string]]), ...answers];
  const chose = (event: Event) => {
    const to = (event.target as HTMLSelectElement).value;
    if (take) take(to);
    else edit(of, at, to || !optional ? to : undefined);
  };
  return html`<div class="field choose ${complaint ? "wants" : ""}">
    <label for=${id} data-said=${now || optional ? nothing : "required"}>${label}</label>
    <select
      id=${id}
      aria-required=${optional ? nothing : "true"}
      @change=${chose}
      aria-invalid=${complaint ? "true" : "false"}
      aria-describedby=${complaint ? `${id}-said` : nothing}
    >
      ${all
        .filter(([one]) => one || optional || !now)
        .map(([one, words]) => html`<option value=${one} .selected=${live(one === now)}>${words}</option>`)}</select
    >${said_beneath(id, complaint)}
  </div>`;
}

/** One of the files there are, for a place in the run that names one. */
export function file_choice(label: string, at: string, listed: Listed[] = []): TemplateResult {
  const chosen = asked_name(text_at("run", at), listed);
  return one_of({
    label,
    at,
    chosen,
    answers: listed.map((one) => [one.file, one.name || one.file]),
    unsaid: "choose ...",
  });
}

interface Part {
  of?: DocumentId;
  at: string;
  name: string; // "the bowl"
  title: string;
  add: string; // what the button says that adds it
  blank: Json; // what must be said of it, unsaid
  body: () => unknown;
}

/** A part that may be there: a button as long as it is not, then its questions, and away again. */
export function part({ of = "run", at, name, title, add, blank, body }: Part): TemplateResult {
  const id = id_at(of, at, "part");
  const adder = id_at(of, at, "add");
  const asked = () => within({ part: title }, body);
  if (value_at(of, at) === undefined)
    return html`<p class="choice">
      <button type="button" id=${adder} @click=${() => change(of, `${title} added`, at, blank, to_first_in(id))}>
        ${add}
      </button>
    </p>`;
  return html`<div class="part" id=${id} role="group" aria-label=${title}>
    <div class="part-head">
      <p class="part-title">${title}</p>
      <button
        type="button"
        aria-label="Remove ${name}"
        @click=${() => change(of, `${title} removed`, at, undefined, to_id(adder))}
      >
        Remove
      </button>
    </div>
    ${said_at(of, at)} ${asked()}
  </div>`;
}

interface Fold {
  of?: DocumentId;
  name: string; // no other of this document has it
  pointers: string[]; // of what is asked in it
  summary: unknown;
  is_needed?: boolean; // and so stands open
  body: () => unknown;
}

const fold_key = (of: DocumentId, name: string): string => `folded ${of} ${name}`;

export const unfold = (of: DocumentId, name: string): void => open_up(fold_key(of, name));

/** Rarely used, and so folded; what the program complains of in it stands open, and stays so. */
export function folded({ of = "run", name, pointers, summary, is_needed, body }: Fold): TemplateResult {
  const key = fold_key(of, name);
  if (is_gathering()) return html`${within({ fold: key }, body)}`;
  if (is_needed || pointers.some((pointer) => complaint_at(of, pointer))) open_up(key);
  const is_open = state.open.has(key);
  const turn = (event: Event) => {
    event.preventDefault(); // what is open is held in one place, and drawn from there
    toggle("open", key);
  };
  return html`<details .open=${is_open}>
    <summary @click=${turn}>${summary}</summary>
    ${is_open ? html`<div class="folded">${body()}</div>` : nothing}
  </details>`;
}
