// Figures as they are read at the bench. Conversions only show; nothing is reckoned from them.

export type Units = "metric" | "both" | "us";

const gram_per_ounce = 28.349523125; // international avoirdupois ounce, exact by definition
const mm_per_inch = 25.4; // international inch, exact by definition
const ml_per_fluid_ounce = 29.5735295625; // US fluid ounce, 1/128 gallon of 231 cubic inches, exact

export function plain(value: number, decimals: number): string {
  return value.toFixed(decimals).replace(/^-(0(\.0*)?)$/, "$1");
}

export function trimmed(value: number, decimals: number): string {
  return plain(value, decimals).replace(/(\.\d*?)0+$/, "$1").replace(/\.$/, "");
}

/** As many decimals as the scale shows. */
export function decimals_of(step: number | undefined): number {
  if (!step || step >= 1) return 0;
  return Math.min(3, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
}

/** As few decimals as show all of these whole: what was rounded to a scale is shown as it is weighed. */
export function decimals_in(grams: number[]): number {
  const is_whole = (value: number) => Math.abs(value - Math.round(value)) < 1e-6;
  return [0, 1, 2].find((decimals) => grams.every((one) => is_whole(one * 10 ** decimals))) ?? 3;
}

/** In two parts, the second beside the first: ["68.0 g", "2.40 oz"]. */
export type Shown = [string, string];

function chosen(units: Units, metric: string, us: string): Shown {
  return units === "metric" ? [metric, ""] : units === "us" ? [us, ""] : [metric, us];
}

export function mass(units: Units, grams: number, decimals = 1): Shown {
  const ounces = grams / gram_per_ounce;
  return chosen(units, `${plain(grams, decimals)} g`, `${plain(ounces, ounces < 10 ? 2 : 1)} oz`);
}

export function volume(units: Units, ml: number, decimals = 1): Shown {
  return chosen(units, `${plain(ml, decimals)} ml`, `${plain(ml / ml_per_fluid_ounce, 2)} fl oz`);
}

export function length(units: Units, mm: number): Shown {
  return chosen(units, `${trimmed(mm, 1)} mm`, inches(mm));
}

/** To the nearest sixteenth, as rulers show it. */
function inches(mm: number): string {
  const sixteenths = Math.round((Math.abs(mm) / mm_per_inch) * 16);
  const sign = mm < 0 && sixteenths ? "-" : "";
  let above = sixteenths % 16;
  let below = 16;
  while (above && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  const whole = Math.floor(sixteenths / 16);
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
  const found = /^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(text ?? ""));
  if (!found) return undefined;
  const value = Number(found[1] ?? 0) + Number(found[2]!.replace(",", ".")) / Number(found[3] ?? 1);
  const unit = { mm: 1, cm: 10, m: 1000 }[found[4]!] ?? mm_per_inch;
  return value * unit;
}

/** The unit a text ends with: what a bare number typed in its place is taken to mean. */
export function unit_of(text: unknown): string {
  return /^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(text ?? ""))?.[1]?.trim() ?? "";
}

export const is_bare_number = (text: string): boolean => /^\s*[+-]?\d[\d.,/\s]*$/.test(text);

export function duration(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  if (seconds >= 60 && seconds % 60 === 0 && minutes < 90) return `${minutes} min`;
  if (seconds < 90) return `${Math.round(seconds)} s`;
  return minutes < 90 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}
