// A decoration as the run says it.
import type { Document } from "./api";
import { text_at } from "./asking";
import { value_at } from "./field";
import { at } from "./pointer";
import { state } from "./state";

export const pointer_of = (i: number): string => `/perch/${i}`;

export const called = (i: number): string => text_at(`/perch/${i}/name`).trim() || `Decoration ${i + 1}`;
export const is_cut = (): boolean => at(state.run, "/cut") !== undefined;

export type Way = "mould" | "rod" | "drizzle";

export const way_of = (here: string): Way | undefined =>
  (["mould", "rod", "drizzle"] as const).find((way) => value_at("run", `${here}/${way}`) !== undefined);

export type CountKey = "per_piece" | "per_cast";

export const count_key = (here: string): CountKey | undefined =>
  (["per_piece", "per_cast"] as const).find((key) => value_at("run", `${here}/${key}`) !== undefined);

export function without(thing: Document, keys: string[]): Document {
  return Object.fromEntries(Object.entries(thing).filter(([key]) => !keys.includes(key)));
}
