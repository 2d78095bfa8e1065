// Fields of the mould being described, each with the program's complaint beside it.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { draft, mould_now, set } from "../documents/mould_draft";
import { state, update } from "../documents/state";
import { said_beneath } from "../forms/field";
import { is_bare_number, unit_of } from "../program/numbers";
import { at } from "../program/pointer";

export interface DraftField {
  label: string;
  pointer: string;
  unit?: string;
  count?: boolean;
  optional?: boolean;
  hint?: string;
  wide?: boolean;
  unit_before?: string; // of the row above
}

const in_us: Record<string, string> = { mm: "in", g: "oz", "°C": "°F" };
const units_like: Record<string, RegExp> = {
  mm: /^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,
  g: /^(mg|g|kg|oz|lb|lbs)$/,
  "°C": /^(°?C|°?F)$/,
  "°": /^(°|deg|degrees?)$/,
  h: /^(min|h|hours?|d|days?)$/,
};

/** What a bare number means: what it meant before, as in the row above, or as she likes her figures. */
export function unit_for(pointer: string, unit: string, before = ""): string {
  const typed = typed_at(pointer);
  if (typed) return typed.unit ?? "";
  const stands = unit_of(at(mould_now(), pointer));
  if (units_like[unit]?.test(stands)) return stands;
  return before || (state.units === "us" ? (in_us[unit] ?? unit) : unit);
}

/** For rows that move under the one being typed in. */
export const forget_typed = (): void => update({ typed: undefined });

export const id_of = (pointer: string): string => `d${pointer.replaceAll("/", "-")}`;
const typed_at = (pointer: string) => (state.typed?.key === id_of(pointer) ? state.typed : undefined);
export const value_of = (pointer: string): string => typed_at(pointer)?.text ?? String(at(mould_now(), pointer) ?? "");

export function complaint_at(pointer: string): string | undefined {
  const { complaint } = draft();
  return complaint && (complaint.field === pointer || complaint.field.startsWith(`${pointer}/`))
    ? complaint.line
    : undefined;
}

/** An input and what typing in it does, without its label. */
export function draft_input(
  of: DraftField,
  described: string | undefined,
  keys?: (event: KeyboardEvent) => void,
  label?: string,
): TemplateResult {
  const { pointer } = of;
  const take = (event: Event) => {
    const text = (event.target as HTMLInputElement).value;
    const unit = of.unit ? unit_for(pointer, of.unit, of.unit_before) : "";
    update({ typed: { key: id_of(pointer), text, unit } });
    set(pointer, meant(of, text, unit));
  };
  return html`<input
    id=${id_of(pointer)}
    .value=${live(value_of(pointer))}
    @input=${take}
    @blur=${forget_typed}
    @keydown=${keys ?? nothing}
    autocomplete="off"
    spellcheck="false"
    inputmode=${of.count ? "numeric" : "text"}
    aria-label=${label ?? nothing}
    aria-describedby=${described ?? nothing}
    aria-invalid=${complaint_at(pointer) ? "true" : "false"}
  />`;
}

function meant(of: DraftField, text: string, unit: string): string | number | undefined {
  if ((of.optional || of.count) && !text.trim()) return undefined;
  if (of.count && /^\s*\d{1,6}\s*$/.test(text)) return Number(text);
  return unit && is_bare_number(text) ? `${text.trim()} ${unit}` : text;
}

export function draft_field(of: DraftField, keys?: (event: KeyboardEvent) => void): TemplateResult {
  const id = id_of(of.pointer);
  const complaint = complaint_at(of.pointer);
  const hint = taken_as(of.pointer) ?? of.hint;
  const unit = of.unit ? ` (${unit_for(of.pointer, of.unit, of.unit_before)})` : "";
  return html`<div class="field ${of.wide ? "wide" : "short"} ${complaint ? "wants" : ""}">
    <label for=${id}>${of.label}${unit}</label> ${draft_input(of, complaint || hint ? `${id}-said` : undefined, keys)}
    ${said_beneath(id, complaint, hint)}
  </div>`;
}

/** Told where it is not what the label says. */
function taken_as(pointer: string): string | undefined {
  const value = at(mould_now(), pointer);
  const typed = typed_at(pointer);
  if (!typed?.text.includes("/") || typeof value !== "string" || value === typed.text) return undefined;
  return `taken as ${value}`;
}
