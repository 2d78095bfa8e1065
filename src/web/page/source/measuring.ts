// The mould of the run: its level curve and its cut, read once for each mould.
import { bytes, post, Refused, type Document } from "./api";
import { asked_name } from "./editing";
import { outline_of, seen_from_above, solids_of, type Loop, type Outline, type Solid } from "./outline";
import type { Gauge } from "./plan";
import { at } from "./pointer";
import { changed, state } from "./state";

const levels = 40;
const retry_ms = 2000;

let asked = 0;

export function measure_soon(): void {
  void measure();
}

/** What a request for a mould says: a file's name, and its text where it is not kept yet. */
interface MouldRequest {
  file: string;
  mould?: Document;
  unit?: string;
  role?: string;
  up?: string;
  "below-brim"?: string;
}

export async function gauge_of(request: MouldRequest): Promise<Gauge> {
  return post<Gauge>("/api/gauge", request);
}

async function cavity_of(request: MouldRequest): Promise<Solid> {
  const glb = await bytes({ kind: "glb", gauge: request });
  const solids = solids_of(await glb.arrayBuffer());
  return solids.find((solid) => solid.name === "cavity") ?? solids[0]!;
}

/** What is found in a mould: its measures, its cut, and how it looks from above. */
export interface Found {
  gauge: Gauge;
  outline: Outline;
  above: Loop[];
}

export async function look_into(request: MouldRequest): Promise<Found> {
  const [gauge, cavity] = await Promise.all([gauge_of(request), cavity_of(request)]);
  const outline = outline_of(cavity);
  return { gauge, outline, above: seen_from_above(cavity, outline) };
}

/** With the level curve: a row of depths from the floor to the brim. */
async function with_levels(request: MouldRequest): Promise<Gauge> {
  const { pockets } = await gauge_of(request);
  // A hair less: heights come rounded, and what is deeper than the cavity is refused.
  const deep = pockets[0]!.brim_mm - pockets[0]!.floor_mm - 0.001;
  const depth = Array.from({ length: levels }, (_, i) => `${((deep * (i + 1)) / levels).toFixed(4)} mm`);
  return post<Gauge>("/api/gauge", { ...request, depth });
}

async function measure(): Promise<void> {
  const name = at(state.run, "/pour/mould");
  if (typeof name !== "string") return;
  const mine = ++asked;
  const mould = asked_name(name, state.files?.moulds);
  try {
    const [gauge, cavity] = await Promise.all([with_levels({ file: mould }), cavity_of({ file: mould })]);
    if (mine !== asked) return;
    state.measured = { mould, gauge, outline: outline_of(cavity) };
    state.measuring_failed = undefined;
  } catch (error) {
    if (mine !== asked) return;
    if (!(error instanceof Refused)) throw error;
    state.measured = undefined;
    state.measuring_failed = error.message;
    if (error.may_pass) window.setTimeout(measure_soon, retry_ms);
  }
  changed();
}
