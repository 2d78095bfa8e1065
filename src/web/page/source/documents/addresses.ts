// Places as the address of the page has them: what is shown by a name, and the file it is of.
import type { FormulaSlot } from "./file_types";
import { is_list, is_of_run, list_views, run_views, type View } from "./views";

export interface Place {
  name: string; // a view, or what is open in it
  file?: string;
}

export const slot_names: Record<FormulaSlot, string> = { pour: "base", pipe: "topping", apart: "formula" };
const names: string[] = [
  ...list_views,
  ...run_views,
  ...Object.values(slot_names),
  "order",
  "trail",
  "learned",
  "describing",
  "chosen",
];

export const address_of = ({ name, file }: Place): string =>
  `#${name}${file ? `/${file.split("/").map(encodeURIComponent).join("/")}` : ""}`;

export function place_in(address: string): Place | undefined {
  const [name, ...file] = address.slice(1).split("/");
  if (!names.includes(name)) return undefined;
  try {
    return { name, file: file.map(decodeURIComponent).join("/") || undefined };
  } catch {
    return undefined;
  }
}

/** What to read first on the way to a place, and what to show meanwhile. */
export function first_view(place: Place | undefined): { run?: string; view?: View } {
  if (!place) return {};
  const view = place.name as View;
  if (is_of_run(view)) return { run: place.file, view };
  const is_of_the_run = place.name === slot_names.pour || place.name === slot_names.pipe;
  return { run: is_of_the_run ? place.file : undefined, view: is_list(view) ? view : "reading" };
}
