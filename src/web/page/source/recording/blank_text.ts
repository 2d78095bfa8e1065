// What stands in the field of a blank, and what is noted of it: a bare number is of the unit beside it.
import { state } from "../documents/state";
import type { Blank } from "../program/record";
import { is_bare_number, unit_of } from "../program/numbers";

/** Of a length that lies above a line or below it. */
export type Side = "above" | "below";

const units_of_kind: Partial<Record<Blank["kind"], string[]>> = {
  mass: ["g", "oz"],
  temperature: ["°C", "°F"],
  minutes: ["min"],
  length: ["mm", "in"],
  volume: ["ml"],
};

/** Between which she chooses, the one that the scale reads first. */
export function units_for({ kind, unit }: Blank): string[] {
  const all = units_of_kind[kind] ?? [];
  return unit && all.includes(unit) ? [unit, ...all.filter((one) => one !== unit)] : all;
}

const remembered_name = "degrees";
const remembered_degrees = (): string | undefined => localStorage.getItem(remembered_name) ?? undefined;

export const remember_degrees = (unit: string): void => localStorage.setItem(remembered_name, unit);

/** What a bare number means; nothing where it could mean either. */
export function usual_unit(blank: Blank): string | undefined {
  if (blank.kind !== "temperature") return units_for(blank)[0];
  if (state.units !== "both") return state.units === "us" ? "°F" : "°C";
  return remembered_degrees();
}

export interface InField {
  number: string; // or whatever else is typed
  unit?: string;
  side?: Side;
}

/** As it is noted, taken apart for the field. */
export function in_field(blank: Blank, value: string): InField {
  const side = blank.kind === "length" && value ? (value.startsWith("-") ? "below" : "above") : undefined;
  const plain = side ? value.replace(/^[+-]\s*/, "") : value;
  const unit = unit_of(plain);
  if (!units_for(blank).includes(unit)) return { number: plain, side };
  return { number: plain.slice(0, plain.length - unit.length).trim(), unit, side };
}

/** As it is noted. */
export function as_noted({ number, unit, side }: InField): string {
  const text = number.trim();
  if (!text) return "";
  const whole = unit && is_bare_number(text) ? `${text} ${unit}` : text;
  return side === "below" && !/^[+-]/.test(whole) ? `-${whole}` : whole;
}

/** What a number alone does not tell, as a question. */
export function lacking({ kind }: Blank, { number, unit, side }: InField): string | undefined {
  if (kind === "temperature" && !unit && is_bare_number(number)) return "Is that in °C or in °F?";
  const is_off = kind === "length" && side === undefined && /[1-9]/.test(number) && !/^\s*[+-]/.test(number);
  return is_off ? "Above the line or below it?" : undefined;
}
