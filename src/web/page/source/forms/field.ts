// A field of the run or of one of its formulas, with the program's complaint beside it.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { edit, file_of, value_at } from "../documents/editing";
import { beside_ids, formula_slots, type DocumentId } from "../documents/file_types";
import { state, update } from "../documents/state";
import { term_button, term_words } from "../figures/explained";
import type { TermName } from "../figures/terms";
import { wording, type Complaint } from "../program/api";
import type { Document, Json } from "../program/json";
import { is_bare_number, unit_of } from "../program/numbers";
import { is_too_soon, touch, want } from "./wanted";

export interface FieldOptions {
  label: string;
  at: string; // JSON pointer
  of?: DocumentId; // the document it is in
  unit?: string; // what a bare number means
  told?: string; // the unit of it that is not written, such as a currency
  count?: boolean; // a whole number, not a text
  number?: boolean; // a number, not a text
  date?: boolean; // a day, as ISO 8601 has it
  hint?: string;
  wide?: boolean;
  optional?: boolean; // emptied, it is left out
  is_due?: boolean | undefined; // and yet it must be said now
  takes_part?: boolean; // and with the last of its part the part goes too
  short?: boolean;
  term?: TermName; // a word of its label that is explained
  described_by?: string; // the id of what else is told of it, where that stands on the page
}

export const id_of = (of: string, pointer: string): string => `f-${of}${pointer.replaceAll(/[^\w]/g, "-")}`;

/** What is wrong with what was typed: for the plan, or else for what the piece costs, or when it is made. */
function complaint_now(of?: DocumentId): Complaint | undefined {
  if (of === "order") return state.order?.quoted?.complaint ?? state.order?.days?.complaint;
  const of_plan = <Asked extends { complaint?: Complaint }>(asked: Asked | undefined, plan: unknown) =>
    plan === state.plan ? asked?.complaint : undefined;
  return state.complaint ?? of_plan(state.quoted, state.quoted?.of) ?? of_plan(state.run_days, state.run_days?.of[0]);
}

/** The line that is about this place or about something in it. */
export function complaint_at(of: DocumentId, pointer: string): string | undefined {
  const complaint = complaint_now(of);
  if (!complaint || (complaint.field !== pointer && !complaint.field.startsWith(`${pointer}/`))) return undefined;
  return is_about(of) && !is_too_soon(of, complaint.field) ? wording(complaint) : undefined;
}

/** The line that is about this place itself, and not about something in it. */
export function complaint_on(of: DocumentId, pointer: string): string | undefined {
  return complaint_now(of)?.field === pointer ? complaint_at(of, pointer) : undefined;
}

/** Whether the complaint is about this document. */
export function is_about(of: DocumentId): boolean {
  const complaint = complaint_now(of);
  const file = file_of(of)?.file;
  if (!complaint || file === undefined) return false;
  return complaint.file === "" || complaint.file === file || complaint.file.endsWith(`/${file}`);
}

/** What goes with it when it is left out. */
function left_out(of: DocumentId, pointer: string): string {
  const part = pointer.slice(0, pointer.lastIndexOf("/"));
  return Object.keys((value_at(of, part) ?? {}) as Document).length > 1 ? pointer : part;
}

/** The field on the page that the program's complaint is about, or about a part of. */
export function wanting_field(): HTMLElement | undefined {
  const complaint = complaint_now();
  if (!complaint) return undefined;
  for (const of of ["run", ...formula_slots, ...beside_ids] as const)
    for (let pointer = complaint.field; pointer; pointer = pointer.slice(0, pointer.lastIndexOf("/"))) {
      const found = complaint_at(of, pointer) && document.getElementById(id_of(of, pointer));
      if (found) return found;
    }
  return undefined;
}

function meant(options: FieldOptions, text: string): Json | undefined {
  const of = options.of ?? "run";
  if (options.optional && text.trim() === "") return undefined;
  if (options.number) return /^\s*\d+([.,]\d+)?\s*$/.test(text) ? Number(text.trim().replace(",", ".")) : text;
  if (options.count) return /^\s*\d{1,9}\s*$/.test(text) ? Number(text) : text;
  const unit = unit_for(options, of);
  return unit && is_bare_number(text) ? `${text.trim()} ${unit}` : text;
}

// The unit stays what it was while a new number is typed over the old one.
function unit_for(options: FieldOptions, of: DocumentId): string {
  return unit_of(value_at(of, options.at)) || options.unit || "";
}

/** Beneath a field: what the program asks for, or else a hint. */
export const said_beneath = (
  id: string,
  complaint: string | undefined,
  hint?: unknown,
): TemplateResult | typeof nothing =>
  complaint || hint
    ? html`<p id="${id}-said" class=${complaint ? "complaint" : "hint"}>${complaint ?? hint}</p>`
    : nothing;

let is_pressed = false;
addEventListener("pointerdown", () => (is_pressed = true), true);
for (const end of ["pointerup", "pointercancel"]) addEventListener(end, () => (is_pressed = false), true);

const forget_typed = (): void => update({ typed: undefined });

/** Drawn anew only once the finger is lifted, so that what it presses does not move away beneath it. */
export function leave_field(event: Event): void {
  const { id } = event.target as HTMLElement;
  const left = () => {
    forget_typed();
    touch(id);
  };
  if (is_pressed) addEventListener("pointerup", () => setTimeout(left), { once: true });
  else left();
}

/** A text that begins with a question mark is a blank: what is to be put there. */
const blank_words = (value: Json | undefined): string | undefined =>
  typeof value === "string" && value.startsWith("?") ? value.slice(1).trim() : undefined;

/** Behind its label: the unit of a bare number, and that it is required as long as it is blank. */
const said_of = ({ unit = "", told = "" }: FieldOptions, is_wanted: boolean): string | typeof nothing =>
  [unit.replace("cm2", "cm²"), told, is_wanted ? "required" : ""].filter(Boolean).join(", ") || nothing;

export function field(options: FieldOptions): TemplateResult {
  const of = options.of ?? "run";
  const id = id_of(of, options.at);
  const value = value_at(of, options.at);
  const blank = blank_words(value);
  const is_typed = state.typed?.key === id;
  const shown = is_typed ? state.typed!.text : value === undefined || blank !== undefined ? "" : String(value);
  const is_wanted = blank !== undefined || (shown.trim() === "" && (!options.optional || options.is_due === true));
  if (is_wanted) want(of, options.at, id, options.label);
  const complaint = complaint_at(of, options.at);
  const typed = (event: Event) => {
    const text = (event.target as HTMLInputElement).value;
    update({ typed: { key: id, text } });
    const value = meant(options, text);
    edit(of, value === undefined && options.takes_part ? left_out(of, options.at) : options.at, value);
  };
  const taken_as = is_typed && typeof value === "string" && value !== shown ? `taken as ${value}` : "";
  const hint = taken_as || options.hint || blank;
  return html`<div
    class="field ${options.wide ? "wide" : ""} ${options.short ? "short" : ""} ${complaint ? "wants" : ""}"
  >
    ${beside_term(
      html`<label for=${id} data-said=${said_of(options, is_wanted)}>${options.label}</label>`,
      options.term,
    )}
    <input
      id=${id}
      type=${options.date ? "date" : "text"}
      aria-required=${options.optional && !options.is_due ? nothing : "true"}
      .value=${live(shown)}
      @input=${typed}
      @blur=${leave_field}
      autocomplete="off"
      spellcheck="false"
      inputmode=${options.date ? nothing : options.count ? "numeric" : options.number ? "decimal" : "text"}
      aria-invalid=${complaint ? "true" : "false"}
      aria-describedby=${
        [complaint || hint ? `${id}-said` : "", options.described_by ?? ""].filter(Boolean).join(" ") || nothing
      }
    />
    ${said_beneath(id, complaint, hint)} ${options.term ? term_words(options.term) : nothing}
  </div>`;
}

/** In one line, no higher than it would be without. */
export const beside_term = (label: TemplateResult, term?: TermName): TemplateResult =>
  term ? html`<div class="labelled">${label}${term_button(term)}</div>` : label;
