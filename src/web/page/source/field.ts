// A field of the run or of one of its formulas, with the program's complaint beside it.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { Json, Listed } from "./api";
import { asked_name, edit, edit_formula } from "./editing";
import { is_bare_number, unit_of } from "./numbers";
import { at } from "./pointer";
import { changed, everyone, state, type Whose } from "./state";

/** The run, or one of the formulas. */
export type Of = "run" | Whose;

export interface FieldOptions {
  label: string;
  at: string; // JSON pointer
  of?: Of; // the document it is in
  unit?: string; // what a bare number means
  count?: boolean; // a whole number, not a text
  number?: boolean; // a number, not a text
  hint?: string;
  wide?: boolean;
  optional?: boolean; // emptied, it is left out
  short?: boolean;
}

export const id_of = (of: string, pointer: string): string => `f-${of}${pointer.replaceAll(/[^\w]/g, "-")}`;

export function value_at(of: Of, pointer: string): Json | undefined {
  return at(of === "run" ? state.run : state.formulas[of]?.document, pointer);
}

/** The line that is about this place or about something in it. */
export function complaint_at(of: Of, pointer: string): string | undefined {
  const complaint = state.complaint;
  if (!complaint || (complaint.field !== pointer && !complaint.field.startsWith(`${pointer}/`))) return undefined;
  return is_about(of) ? `${complaint.problem}; ${complaint.remedy}` : undefined;
}

/** The line that is about this place itself, and not about something in it. */
export function complaint_on(of: Of, pointer: string): string | undefined {
  return state.complaint?.field === pointer ? complaint_at(of, pointer) : undefined;
}

/** Whether the complaint is about this document. */
export function is_about(of: Of): boolean {
  const complaint = state.complaint;
  const file = of === "run" ? state.file : state.formulas[of]?.file;
  if (!complaint || file === undefined) return false;
  return complaint.file === "" || complaint.file === file || complaint.file.endsWith(`/${file}`);
}

/** The field on the page that the program's complaint is about, or about a part of. */
export function wanting_field(): HTMLElement | undefined {
  const complaint = state.complaint;
  if (!complaint) return undefined;
  for (const of of ["run", ...everyone] as const)
    for (let pointer = complaint.field; pointer; pointer = pointer.slice(0, pointer.lastIndexOf("/"))) {
      const found = complaint_at(of, pointer) && document.getElementById(id_of(of, pointer));
      if (found) return found;
    }
  return undefined;
}

export function set_value(of: Of, pointer: string, value: Json | undefined): void {
  if (of === "run") edit(pointer, value);
  else edit_formula(of, pointer, value);
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
function unit_for(options: FieldOptions, of: Of): string {
  return unit_of(value_at(of, options.at)) || options.unit || "";
}

export function field(options: FieldOptions): TemplateResult {
  const of = options.of ?? "run";
  const id = id_of(of, options.at);
  const value = value_at(of, options.at);
  const shown = state.typed?.key === id ? state.typed.text : value === undefined ? "" : String(value);
  const complaint = complaint_at(of, options.at);
  const typed = (event: Event) => {
    const text = (event.target as HTMLInputElement).value;
    state.typed = { key: id, text };
    set_value(of, options.at, meant(options, text));
    changed();
  };
  const left = () => {
    state.typed = undefined;
    changed();
  };
  const taken_as = state.typed?.key === id && typeof value === "string" && value !== shown ? `taken as ${value}` : "";
  const said = complaint ?? (taken_as || options.hint);
  return html`<div class="field ${options.wide ? "wide" : ""} ${options.short ? "short" : ""} ${complaint ? "wants" : ""}">
    <label for=${id}>${options.label}</label>
    <input id=${id} .value=${live(shown)} @input=${typed} @blur=${left} autocomplete="off" spellcheck="false"
      inputmode=${options.count ? "numeric" : options.number ? "decimal" : "text"} aria-invalid=${complaint ? "true" : "false"}
      aria-describedby=${said ? `${id}-said` : nothing} />
    ${said ? html`<p id="${id}-said" class=${complaint ? "complaint" : "hint"}>${said}</p>` : nothing}
  </div>`;
}

/** Choices side by side, each large enough for a glove. */
export function choice<T extends string>(
  label: string,
  chosen: T | undefined,
  choices: [T, unknown][],
  take: (value: T) => void,
): TemplateResult {
  return html`<div class="choice" role="group" aria-label=${label}>
    ${choices.map(
      ([value, words]) =>
        html`<button type="button" aria-pressed=${value === chosen ? "true" : "false"} @click=${() => take(value)}>
          ${words}
        </button>`,
    )}
  </div>`;
}

/** One of the files there are, for a place in the run that names one. */
export function file_choice(label: string, pointer: string, listed: Listed[] | undefined): TemplateResult {
  const id = id_of("run", pointer);
  const named = String(value_at("run", pointer) ?? "");
  const chosen = asked_name(named, listed);
  const complaint = complaint_at("run", pointer);
  const files = listed?.some((one) => one.file === chosen) ? listed : [{ file: chosen, name: named, note: "", shipped: false }, ...(listed ?? [])];
  const take = (event: Event) => edit(pointer, (event.target as HTMLSelectElement).value);
  return html`<div class="field choose ${complaint ? "wants" : ""}">
    <label for=${id}>${label}</label>
    <select id=${id} @change=${take} aria-describedby=${complaint ? `${id}-said` : nothing}>
      ${files.map((one) => html`<option value=${one.file} .selected=${live(one.file === chosen)}>${one.name || one.file}</option>`)}
    </select>
    ${complaint ? html`<p id="${id}-said" class="complaint">${complaint}</p>` : nothing}
  </div>`;
}
