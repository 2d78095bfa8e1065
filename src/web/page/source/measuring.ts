// The mould of the run: its level curve and its cut, read once for each mould.
import { bytes, post, Refused, type Document } from "./api";
import { asked_name } from "./editing";
import { outline_of, solids_of, type Outline, type Solid } from "./outline";
import type { Gauge } from "./plan";
import { at } from "./pointer";
import { changed, state } from "./state";

const levels = 40;

let asked = 0;

export function measure_soon(): void {
  void measure();
}

/** What a request for a mould says: a file's name, and its text where it is not kept yet. */
export interface MouldRequest {
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

export async function drawn(request: MouldRequest): Promise<{ outline: Outline; solids: Solid[] }> {
  const glb = await bytes({ kind: "glb", gauge: request });
  const solids = solids_of(await glb.arrayBuffer());
  const cavity = solids.find((solid) => solid.name === "cavity") ?? solids[0]!;
  return { outline: outline_of(cavity), solids };
}

/** With the level curve: a row of depths from the floor to the brim. */
async function with_levels(request: MouldRequest): Promise<Gauge> {
  const { pockets } = await gauge_of(request);
  const deep = pockets[0]!.brim_mm - pockets[0]!.floor_mm;
  const depth = Array.from({ length: levels }, (_, i) => `${((deep * (i + 1)) / levels).toFixed(4)} mm`);
  return post<Gauge>("/api/gauge", { ...request, depth });
}

const solid_pause_ms = 500;

let filling_timer = 0;
let filled_to = "";

/** The solid shows the filling to the pour line, once the line stands still. */
export function fill_soon(): void {
  const { measured, plan } = state;
  if (!measured || !plan) return;
  const line = `${plan.pour.below_brim_mm} mm`;
  if (`${measured.mould} ${line}` === filled_to) return;
  filled_to = `${measured.mould} ${line}`;
  clearTimeout(filling_timer);
  filling_timer = window.setTimeout(() => void fill(measured.mould, line), solid_pause_ms);
}

async function fill(mould: string, line: string): Promise<void> {
  try {
    const { solids } = await drawn({ file: mould, "below-brim": line });
    if (state.measured?.mould !== mould) return;
    state.measured = { ...state.measured, solids };
    changed();
  } catch (error) {
    if (!(error instanceof Refused)) throw error; // the plan itself says what is wrong
  }
}

async function measure(): Promise<void> {
  const name = at(state.run, "/pour/mould");
  if (typeof name !== "string") return;
  const mine = ++asked;
  const mould = asked_name(name, state.files?.moulds);
  try {
    const [gauge, drawing] = await Promise.all([with_levels({ file: mould }), drawn({ file: mould })]);
    if (mine !== asked) return;
    state.measured = { mould, gauge, ...drawing };
    state.measuring_failed = undefined;
    filled_to = "";
    fill_soon();
  } catch (error) {
    if (mine !== asked) return;
    if (!(error instanceof Refused)) throw error;
    state.measured = undefined;
    state.measuring_failed = error.message;
  }
  changed();
}
