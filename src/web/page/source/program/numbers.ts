// Figures as they are read at the bench. Conversions only show; nothing is reckoned from them.

export type Units = "metric" | "both" | "us";

const gram_per_ounce = 28.349523125; // international avoirdupois ounce, exact by definition
const mm_per_inch = 25.4; // international inch, exact by definition
const ml_per_fluid_ounce = 29.5735295625; // US fluid ounce, 1/128 gallon of 231 cubic inches, exact

export function plain(value: number, decimals: number): string {
  return value.toFixed(decimals).replace(/^-(0(\.0*)?)$/, "$1");
}

export function trimmed(value: number, decimals: number): string {
  return without_zeros(plain(value, decimals));
}

const without_zeros = (text: string): string => text.replace(/(\.\d*?)0+$/, "$1").replace(/\.$/, "");

/** A share that may fall below zero is never rounded onto it: its sign is what one reads it for. */
export function per_cent(value: number): string {
  const decimals = [1, 2, 3].find((some) => Number(value.toFixed(some)) !== 0);
  if (decimals !== undefined) return `${plain(value, decimals)} %`;
  return is_below_zero(value) ? "just below 0 %" : "0.0 %";
}

/** The program rounds what it sends; what it rounded to nothing keeps its sign. */
export const is_below_zero = (value: number): boolean => value < 0 || Object.is(value, -0);

const is_whole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-6;

/** As many decimals as the scale shows. */
function decimals_of(step: number | undefined): number {
  return step ? ([0, 1, 2, 3].find((decimals) => is_whole(step * 10 ** decimals)) ?? 3) : 0;
}

/** The fewest decimals whose last digit is no coarser than the step. */
function decimals_as_fine_as(step: number): number {
  return Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
}

/** As few decimals as show all of these whole: what was rounded to a scale is shown as it is weighed. */
function decimals_in(grams: number[]): number {
  return [0, 1, 2].find((decimals) => grams.every((one) => is_whole(one * 10 ** decimals))) ?? 3;
}

/** In two parts, the second beside the first: ["68.0 g", "2.40 oz"]. */
export type Shown = [string, string];

function chosen(units: Units, metric: string, us: string): Shown {
  return units === "metric" ? [metric, ""] : units === "us" ? [us, ""] : [metric, us];
}

/** What is put on a scale, with the texts that the program made for it, if it did. */
export interface Weighed {
  g: number;
  scale_step_g?: number;
  g_text?: string;
  oz_text?: string;
  reads?: "g" | "oz"; // what the scale shows
}

/** The same, where several stand side by side under names that begin alike: "water_g", "lye_g". */
type WeighedAs<P extends string> = Record<`${P}g`, number> &
  Partial<Record<`${P}scale_step_g`, number>> &
  Partial<Record<`${P}g_text` | `${P}oz_text`, string>> &
  Partial<Record<`${P}reads`, "g" | "oz">>;

export function weighed_as<P extends string>(among: WeighedAs<P>, prefix: P): Weighed {
  const key = (name: string) => among[`${prefix}${name}` as keyof WeighedAs<P>] as never;
  const step: number | undefined = key("scale_step_g");
  const g: number = key("g");
  return {
    g,
    scale_step_g: step ?? 10 ** -decimals_in([g]),
    g_text: key("g_text"),
    oz_text: key("oz_text"),
    reads: key("reads"),
  };
}

/** Alkali, and lye, is never shown as more than is weighed. */
export type Rounded = "down" | "nearest";

const sent_to_g = 0.001; // the program sends grams to the milligram

/** `hair` of a gram may be lacking from a whole number of last digits. */
function rounded(grams: number, unit: number, decimals: number, towards: Rounded, hair = 1e-9): string {
  const digits = 10 ** decimals;
  if (towards === "nearest") return plain(grams / unit, decimals);
  return plain(Math.floor(((grams + hair) / unit) * digits) / digits, decimals);
}

const steps_of_scales = [1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001];

/** The step in ounces of a scale that reads them; nothing for one that reads grams. */
function ounces_of(step: number): number | undefined {
  if (steps_of_scales.some((one) => Math.abs(one * 10 - step) < 1e-9 || Math.abs(one - step) < 1e-9)) return undefined;
  return steps_of_scales.find((one) => Math.abs(one * gram_per_ounce - step) < 0.6 * sent_to_g);
}

/** In what the scale reads to its own step, in the other unit no coarser; the scale's stands first. */
export function weight(units: Units, one: Weighed, towards: Rounded = "nearest"): Shown {
  const step = one.scale_step_g || 0.1;
  const step_oz = ounces_of(step);
  const hair = Math.min(0.6 * sent_to_g, step / 2);
  const in_grams = step_oz
    ? rounded(one.g, 1, decimals_as_fine_as(step), towards)
    : rounded(one.g, 1, decimals_of(step), towards, hair);
  const in_ounces = step_oz
    ? rounded(one.g, gram_per_ounce, decimals_of(step_oz), towards, hair)
    : rounded(one.g, gram_per_ounce, decimals_as_fine_as(step / gram_per_ounce), towards);
  const [grams, ounces] = [`${one.g_text ?? in_grams} g`, `${one.oz_text ?? in_ounces} oz`];
  const by_ounces = one.reads ? one.reads === "oz" : step_oz !== undefined;
  return by_ounces && units === "both" ? [ounces, grams] : chosen(units, grams, ounces);
}

/** What is not weighed on a scale of its own, or by a step that is not known. */
export const mass = (units: Units, grams: number, decimals = 1, towards: Rounded = "nearest"): Shown =>
  weight(units, { g: grams, scale_step_g: 10 ** -decimals }, towards);

/** So much of a material, never shown as more than there is: large amounts in kilograms and pounds. */
export function in_stock(units: Units, { g = 0, pieces }: { g?: number; pieces?: number }): string {
  if (pieces !== undefined) return `${pieces} ${pieces === 1 ? "piece" : "pieces"}`;
  const shown = (unit: number) => without_zeros(rounded(g, unit, 3, "down"));
  const pound = 16 * gram_per_ounce;
  const metric = g < 1000 ? `${shown(1)} g` : `${shown(1000)} kg`;
  return both(chosen(units, metric, g < pound ? `${shown(gram_per_ounce)} oz` : `${shown(pound)} lb`));
}

export function volume(units: Units, ml: number, decimals = 1): Shown {
  return chosen(units, `${plain(ml, decimals)} ml`, `${plain(ml / ml_per_fluid_ounce, 2)} US fl oz`);
}

export function length(units: Units, mm: number): Shown {
  return chosen(units, `${trimmed(mm, 1)} mm`, inches(mm));
}

/** To the nearest thirty-second, so that millimetres differ. */
function inches(mm: number): string {
  const parts = Math.round((Math.abs(mm) / mm_per_inch) * 32);
  const sign = mm < 0 && parts ? "-" : "";
  let above = parts % 32;
  let below = 32;
  while (above && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  const whole = Math.floor(parts / 32);
  const fraction = above ? `${above}/${below}` : "";
  return `${sign}${[whole || !above ? String(whole) : "", fraction].filter(Boolean).join(" ")} in`;
}

/** The leading one, where there is little room. */
export const first = ([one]: Shown): string => one;

export const both = ([first, second]: Shown): string => (second ? `${first} (${second})` : first);

export function warmth(units: Units, celsius: number): Shown {
  return chosen(units, `${plain(celsius, 0)} °C`, `${plain(celsius * 1.8 + 32, 0)} °F`);
}

/** The millimetres of "6 mm", "0.6 cm", "1 1/4 in", for drawing only; nothing if it is not that plain. */
export function millimetres(text: unknown): number | undefined {
  const found = /^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(
    String(text ?? ""),
  );
  if (!found) return undefined;
  const value = Number(found[1] ?? 0) + Number(found[2].replace(",", ".")) / Number(found[3] ?? 1);
  const unit = { mm: 1, cm: 10, m: 1000 }[found[4]] ?? mm_per_inch;
  return value * unit;
}

/** The unit a text ends with: what a bare number typed in its place is taken to mean. */
export function unit_of(text: unknown): string {
  return /^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(text ?? ""))?.[1]?.trim() ?? "";
}

export const is_bare_number = (text: string): boolean => /^\s*[+-]?\d[\d.,/\s]*$/.test(text);

/** A day in words that no country reads otherwise; what is no date stays as it is. */
export function day(iso: string): string {
  const date = new Date(/^\d{4}-\d\d-\d\d$/.test(iso) ? `${iso}T12:00` : iso);
  return Number.isNaN(date.getTime()) ? iso : date.toLocaleDateString("en-GB", { dateStyle: "medium" });
}

/** "Fri 8 Jan 2027". */
export function weekday(iso: string): string {
  return `${new Date(`${iso}T12:00`).toLocaleDateString("en-GB", { weekday: "short" })} ${day(iso)}`;
}

/** "8 Jan", where the year is plain. */
export const day_of_month = (iso: string): string =>
  new Date(`${iso}T12:00`).toLocaleDateString("en-GB", { day: "numeric", month: "short" });

/** Days in a text of the program's own, in words. */
export const days_in_words = (text: string): string => text.replaceAll(/\d{4}-\d\d-\d\d/g, day);

/** "4 h 30 min". */
export function hours(minutes: number): string {
  const all = Math.ceil(minutes);
  const [whole, rest] = [Math.floor(all / 60), all % 60];
  return [whole ? `${whole} h` : "", rest || !whole ? `${rest} min` : ""].filter(Boolean).join(" ");
}

export function duration(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  if (seconds >= 60 && seconds % 60 === 0 && minutes < 90) return `${minutes} min`;
  if (seconds < 90) return `${Math.round(seconds)} s`;
  return minutes < 90 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}
