// What the places of a formula are asked with, beside plain fields: a few answers, a list, an amount of something.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { Json } from "./api";
import { change_formula, edit_formula } from "./editing";
import { complaint_at, complaint_on, id_of, value_at } from "./field";
import { with_value } from "./pointer";
import { changed, state, type Whose } from "./state";

const said_beneath = (id: string, complaint: string | undefined, hint?: unknown): TemplateResult | typeof nothing =>
  complaint || hint ? html`<p id="${id}-said" class=${complaint ? "complaint" : "hint"}>${complaint ?? hint}</p>` : nothing;

/** A question with a few answers side by side, each large enough for a glove. */
export function asked<T extends string>(of: Whose, pointer: string, question: string, chosen: T | undefined, answers: [T, unknown][], take: (answer: T) => void, hint?: unknown): TemplateResult {
  const id = id_of(of, pointer);
  const complaint = complaint_on(of, pointer);
  return html`<div class="field asked ${complaint ? "wants" : ""}">
    <p class="question" id="${id}-label">${question}</p>
    <div class="choice" role="group" id=${id} tabindex="-1" aria-labelledby="${id}-label" aria-describedby=${complaint || hint ? `${id}-said` : nothing}>
      ${answers.map(
        ([answer, words]) => html`<button type="button" aria-pressed=${answer === chosen ? "true" : "false"} @click=${() => take(answer)}>${words}</button>`,
      )}
    </div>
    ${said_beneath(id, complaint, hint)}
  </div>`;
}

/** One of a list; what stands there is kept, though the list does not know it. */
export function listed(of: Whose, pointer: string, label: string, answers: [string, string][]): TemplateResult {
  const id = id_of(of, pointer);
  const complaint = complaint_at(of, pointer);
  const value = value_at(of, pointer);
  const now = typeof value === "string" ? value : "";
  const all = now && !answers.some(([one]) => one === now) ? [[now, now] as [string, string], ...answers] : answers;
  const take = (event: Event) => edit_formula(of, pointer, (event.target as HTMLSelectElement).value);
  return html`<div class="field choose ${complaint ? "wants" : ""}"><label for=${id}>${label}</label>
    <select id=${id} @change=${take} aria-invalid=${complaint ? "true" : "false"} aria-describedby=${complaint ? `${id}-said` : nothing}>
      <option value="" .selected=${live(now === "")}>choose ...</option>
      ${all.map(([one, words]) => html`<option value=${one} .selected=${live(one === now)}>${words}</option>`)}
    </select>${said_beneath(id, complaint)}</div>`;
}

const spoons = ["tsp/lb", "tbsp/lb", "tsp/kg"];
/** What the rate of a formula is of. */
export const rate_units = ["%", "g/kg", ...spoons].flatMap((one) => [`${one} of fats`, `${one} of batter`]);
/** A supplier also limits by the finished soap. */
export const limit_units = [...rate_units, "% of finished soap", "g/kg of finished soap"];

/** "2 % of fats" as its number and what it is of; the unit is empty where none of these is said. */
export function split_rate(text: string, units: string[]): [string, string] {
  const plain = text.trim().replaceAll(/\s+/g, " ");
  const unit = [...units].sort((a, b) => b.length - a.length).find((one) => plain.endsWith(one)) ?? "";
  return [unit ? plain.slice(0, -unit.length).trim() : text, unit];
}

/** A number and what it is of, which is never guessed. */
export function rate_field(of: Whose, pointer: string, label: string, units: string[], is_optional = false): TemplateResult {
  const id = id_of(of, pointer);
  const value = value_at(of, pointer);
  const [number, unit] = split_rate(value === undefined ? "" : String(value), units);
  const shown = state.typed?.key === id ? state.typed.text : number;
  const complaint = complaint_at(of, pointer);
  const set = (amount: string, what: string) => {
    const text = `${amount.trim()} ${what}`.trim();
    edit_formula(of, pointer, is_optional && !amount.trim() ? undefined : text);
    changed();
  };
  const typed = (event: Event) => {
    const text = (event.target as HTMLInputElement).value;
    const [amount, what] = split_rate(text, units);
    state.typed = { key: id, text };
    set(amount, what || unit);
  };
  const left = () => {
    state.typed = undefined;
    changed();
  };
  return html`<div class="field rate ${complaint ? "wants" : ""}"><label for=${id}>${label}</label>
    <div class="rate-of"><input id=${id} .value=${live(shown)} @input=${typed} @blur=${left} inputmode="text" autocomplete="off" spellcheck="false"
      aria-invalid=${complaint ? "true" : "false"} aria-describedby=${complaint ? `${id}-said` : nothing} />
    <select aria-label="${label}: of what" @change=${(event: Event) => set(shown, (event.target as HTMLSelectElement).value)}>
      <option value="" .selected=${live(unit === "")}>of what?</option>
      ${units.map((one) => html`<option value=${one} .selected=${live(one === unit)}>${one}</option>`)}</select></div>
    ${said_beneath(id, complaint)}</div>`;
}

/** Rarely used, and so folded; what the program complains of in it stands open, and stays so. */
export function folded(of: Whose, name: string, pointers: string[], summary: unknown, inside: () => unknown): TemplateResult {
  const key = `folded ${of} ${name}`;
  if (pointers.some((pointer) => complaint_at(of, pointer))) state.open.add(key);
  const is_open = state.open.has(key);
  const turned = (event: Event) => {
    const { open } = event.target as HTMLDetailsElement;
    if (open === state.open.has(key)) return;
    if (open) state.open.add(key);
    else state.open.delete(key);
    changed();
  };
  return html`<details .open=${live(is_open)} @toggle=${turned}><summary>${summary}</summary>${is_open ? html`<div class="folded">${inside()}</div>` : nothing}</details>`;
}

export const rows_at = (of: Whose, pointer: string): Json[] => {
  const rows = value_at(of, pointer);
  return Array.isArray(rows) ? rows : [];
};

/** The list is made with its first row; without a row it is left out, unless a formula must have it. */
export function set_rows(of: Whose, pointer: string, rows: Json[], is_needed = false): void {
  change_formula(of, (formula) => with_value(formula, pointer, rows.length || is_needed ? rows : undefined));
}

export function focus_soon(id: string): void {
  requestAnimationFrame(() => document.getElementById(id)?.focus());
}

export function add_row(of: Whose, pointer: string, row: Json, focused: string): void {
  const rows = rows_at(of, pointer);
  set_rows(of, pointer, [...rows, row]);
  focus_soon(id_of(of, `${pointer}/${rows.length}${focused}`));
}

export const drop_row = (of: Whose, pointer: string, i: number, is_needed = false): void =>
  set_rows(of, pointer, rows_at(of, pointer).filter((_, j) => j !== i), is_needed);

export function drop_button(words: string, act: () => void): TemplateResult {
  return html`<button type="button" class="drop" aria-label=${words} @click=${act}>×</button>`;
}

/** Adds up what she typed, as it is typed; undefined where one is no plain number of per cent. */
export function sum_of_shares(shares: (Json | undefined)[]): { sum: number; unread: number } {
  const numbers = shares.map((one) => /^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(one ?? ""))?.[1]);
  const read = numbers.filter((one) => one !== undefined).map((one) => Number(one.replace(",", ".")));
  const sum = read.reduce((a, b) => a + b, 0);
  return { sum: Math.round(sum * 1e6) / 1e6, unread: numbers.length - read.length };
}

// Three fats at 33.33 % are a whole.
const whole_within = 0.01 + 1e-9;

/** Said as at the bench; the program has the last word on it. */
export function total_words(what: string, shares: (Json | undefined)[]): string {
  const { sum, unread } = sum_of_shares(shares);
  const percent = (value: number) => `${String(Math.round(value * 1e6) / 1e6)} %`;
  if (unread === shares.length) return `${what} have no share yet.`;
  if (unread)
    return `${what} add to ${percent(sum)} so far; ${unread === 1 ? "one has no share that can be added" : `${unread} have no share that can be added`}.`;
  const lacking = 100 - sum;
  if (Math.abs(lacking) <= whole_within) return `${what} add to ${percent(sum)}.`;
  return lacking > 0
    ? `${what} add to ${percent(sum)}: ${percent(lacking)} ${lacking === 1 ? "is" : "are"} missing.`
    : `${what} add to ${percent(sum)}: ${percent(-lacking)} too much.`;
}
