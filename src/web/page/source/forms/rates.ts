// The amounts of a formula, each a number and what it is of, and what shares add up to.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { redraw } from "../documents/drawing";
import { edit, text_at } from "../documents/editing";
import type { FormulaSlot } from "../documents/file_types";
import { state, update } from "../documents/state";
import type { Json } from "../program/json";
import { complaint_at, id_of, leave_field, said_beneath } from "./field";
import { want } from "./wanted";

const spoons = ["tsp/lb", "tbsp/lb", "tsp/kg"];
/** What the rate of a formula is of. */
export const rate_units = ["%", "g/kg", ...spoons].flatMap((one) => [`${one} of fats`, `${one} of batter`]);
/** A supplier also limits by the finished soap. */
export const limit_units = [...rate_units, "% of finished soap", "g/kg of finished soap"];

/** "2 % of fats" as its number and what it is of; the unit is empty where none of these is said. */
function split_rate(text: string, units: string[]): [string, string] {
  const plain = text.trim().replaceAll(/\s+/g, " ");
  const unit = [...units].sort((a, b) => b.length - a.length).find((one) => plain.endsWith(one)) ?? "";
  return [unit ? plain.slice(0, -unit.length).trim() : text, unit];
}

/** A number and what it is of, which is never guessed. */
export function rate_field(
  of: FormulaSlot,
  pointer: string,
  label: string,
  units: string[],
  is_optional = false,
): TemplateResult {
  const id = id_of(of, pointer);
  const [number, unit] = split_rate(text_at(of, pointer), units);
  const shown = state.typed?.key === id ? state.typed.text : number;
  const is_wanted = !is_optional && !(number.trim() && unit);
  if (is_wanted) want(of, pointer, id, number.trim() ? `${label}: of what` : label);
  const complaint = complaint_at(of, pointer);
  const set = (amount: string, what: string) => {
    const text = `${amount.trim()} ${what}`.trim();
    edit(of, pointer, is_optional && !amount.trim() ? undefined : text);
    redraw();
  };
  const typed = (event: Event) => {
    const text = (event.target as HTMLInputElement).value;
    const [amount, what] = split_rate(text, units);
    update({ typed: { key: id, text } });
    set(amount, what || unit);
  };
  return html`<div class="field rate ${complaint ? "wants" : ""}">
    <label for=${id}>${label}</label>
    <div class="rate-of">
      <input
        id=${id}
        .value=${live(shown)}
        @input=${typed}
        @blur=${leave_field}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${complaint ? "true" : "false"}
        aria-describedby=${complaint ? `${id}-said` : nothing}
      />
      <select
        aria-label="${label}: of what"
        @change=${(event: Event) => set(shown, (event.target as HTMLSelectElement).value)}
      >
        <option value="" .selected=${live(unit === "")}>of what?</option>
        ${units.map((one) => html`<option value=${one} .selected=${live(one === unit)}>${one}</option>`)}
      </select>
    </div>
    ${said_beneath(id, complaint)}
  </div>`;
}

/** Adds up what she typed, as it is typed; undefined where one is no plain number of per cent. */
function sum_of_shares(shares: (Json | undefined)[]): { sum: number; unread: number } {
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
    return `${what} add to ${percent(sum)} so far; ${
      unread === 1 ? "one has no share that can be added" : `${unread} have no share that can be added`
    }.`;
  const lacking = 100 - sum;
  if (Math.abs(lacking) <= whole_within) return `${what} add to ${percent(sum)}.`;
  return lacking > 0
    ? `${what} add to ${percent(sum)}: ${percent(lacking)} ${lacking === 1 ? "is" : "are"} missing.`
    : `${what} add to ${percent(sum)}: ${percent(-lacking)} too much.`;
}
