// A decoration as the run says it.
import { text_at, value_at } from "../documents/editing";
import { state } from "../documents/state";
import { at } from "../program/pointer";
import type { List } from "./form_lists";

export const decorations: List = { at: "/decorations" };
export const pointer_of = (i: number): string => `${decorations.at}/${i}`;

export const called = (i: number): string => text_at("run", `${pointer_of(i)}/name`).trim() || `Decoration ${i + 1}`;
export const is_cut = (): boolean => at(state.run.now, "/cut") !== undefined;

export type Way = "mould" | "rod" | "drizzle" | "bought";

export const way_of = (here: string): Way | undefined =>
  (["mould", "rod", "drizzle", "bought"] as const).find((way) => value_at("run", `${here}/${way}`) !== undefined);

export type CountKey = "per_piece" | "per_cast";

export const count_key = (here: string): CountKey | undefined =>
  (["per_piece", "per_cast"] as const).find((key) => value_at("run", `${here}/${key}`) !== undefined);
