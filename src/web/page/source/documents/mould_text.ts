// The text of a mould while it is being described: which of its rows are whole, and what is still to be said.
import type { Document, Json } from "../program/json";
import { at, with_value } from "../program/pointer";
import { measures, point_list } from "./shapes";

const words_at = (mould: Document, pointer: string): string => String(at(mould, pointer) ?? "").trim();

export const shape_of = (mould: Document): string => words_at(mould, "/shape/kind");
export const has_part = (mould: Document, part: "shape" | "mesh" | "water"): boolean =>
  at(mould, `/${part}`) !== undefined;

/** A body or a skin shows its cavities; one solid does not tell how many of its kind there are. */
export const has_cavities_shown = (mould: Document): boolean =>
  ["body", "skin"].includes(words_at(mould, "/mesh/role"));

export function rows_at(mould: Document, pointer: string): Json[] {
  const list = at(mould, pointer);
  return Array.isArray(list) ? list : [];
}

function cells(mould: Document, row: Json): string[] {
  const columns = point_list(shape_of(mould))?.columns ?? [];
  return columns.map(({ name }) => String(at(row, `/${name}`) ?? "").trim());
}

/** The places of the points that have both their numbers. */
export function whole_points(mould: Document): number[] {
  return rows_at(mould, "/shape/points").flatMap((row, i) => (cells(mould, row).every(Boolean) ? [i] : []));
}

/** The places of the points that have one number and want the other. */
export function half_points(mould: Document): number[] {
  const is_half = (row: string[]) => row.some(Boolean) && !row.every(Boolean);
  return rows_at(mould, "/shape/points").flatMap((row, i) => (is_half(cells(mould, row)) ? [i] : []));
}

const weighings = (mould: Document): number[] =>
  rows_at(mould, "/water/weighings").flatMap((one, i) => (String(one).trim() ? [i] : []));

/** Without the rows that nothing, or not yet all, stands in. */
export function without_blanks(mould: Document): Document {
  let text = mould;
  const keep = (pointer: string, places: number[]) => {
    if (!Array.isArray(at(text, pointer))) return;
    const rows = places.map((i) => at(mould, `${pointer}/${i}`)!);
    text = with_value(text, pointer, rows);
  };
  if (point_list(shape_of(mould))) keep("/shape/points", whole_points(mould));
  keep("/water/weighings", weighings(mould));
  return text;
}

/** The place as it is typed: the program counts the rows that were sent to it. */
export function place_as_typed(mould: Document, field: string): string {
  const [, list, place, rest] = /^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(field) ?? [];
  if (!list) return field;
  const rows = list === "/shape/points" ? whole_points(mould) : weighings(mould);
  return `${list}/${rows[Number(place)] ?? place}${rest}`;
}

/** What must still be said before there is anything to measure. */
export function wanted_of(mould: Document): string[] {
  const list: string[] = [];
  const is_said = (pointer: string) => words_at(mould, pointer) !== "";
  const want = (is_there: boolean, words: string) => void (is_there || list.push(words));
  if (has_part(mould, "shape")) {
    const shape = shape_of(mould);
    want(shape !== "", "the shape");
    for (const { name, label, optional } of measures(shape))
      want(optional || is_said(`/shape/${name}`), label.toLowerCase());
    const points = point_list(shape);
    if (points) want(whole_points(mould).length >= points.least, `${points.least} points at least`);
  }
  if (has_part(mould, "water")) {
    want(is_said("/water/temperature"), "the water's temperature");
    want(at(mould, "/water/filled_to") !== undefined, "how far the water was filled");
    for (const end of ["depth", "below_brim"])
      want(
        at(mould, `/water/filled_to/${end}`) === undefined || is_said(`/water/filled_to/${end}`),
        "the water's line",
      );
    want(is_said("/water/weighed_in"), "what was weighed");
    want(weighings(mould).length > 0, "a weighing of water");
  }
  if (!has_cavities_shown(mould) && !has_part(mould, "mesh"))
    want(is_said("/cavities"), "how many cavities one mould has");
  return list;
}
