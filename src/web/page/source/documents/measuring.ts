// What a mould is like: its level curve and its cut. The run's mould is read once for each name.
import type { Gauge } from "../program/answers";
import { ask_gauge, made_document, Refused, type MouldQuestion } from "../program/api";
import { outline_of, seen_from_above, solids_of, type Solid } from "../program/outline";
import { at } from "../program/pointer";
import { asked_name } from "./run_names";
import { state, update, type Found } from "./state";

const levels = 40;
const retry_ms = 2000;

let latest = 0; // so that a late answer to an earlier question is not taken for one to this

async function cavity_of(question: MouldQuestion): Promise<Solid> {
  const glb = await made_document({ kind: "glb", gauge: question });
  const solids = solids_of(await glb.arrayBuffer());
  return solids.find((solid) => solid.name === "cavity") ?? solids[0];
}

export async function look_into(question: MouldQuestion): Promise<Found> {
  const [gauge, cavity] = await Promise.all([ask_gauge(question), cavity_of(question)]);
  const outline = outline_of(cavity);
  return { gauge, outline, above: seen_from_above(cavity, outline) };
}

/** With the level curve: a row of depths from the floor to the brim. */
async function with_levels(question: MouldQuestion): Promise<Gauge> {
  const { pockets } = await ask_gauge(question);
  // A hair less: heights come rounded, and what is deeper than the cavity is refused.
  const deep = pockets[0].brim_mm - pockets[0].floor_mm - 0.001;
  const depth = Array.from({ length: levels }, (_, i) => `${((deep * (i + 1)) / levels).toFixed(4)} mm`);
  return ask_gauge({ ...question, depth });
}

export function measure_soon(): void {
  void measure();
}

async function measure(): Promise<void> {
  const name = at(state.run.now, "/pour/mould");
  if (typeof name !== "string") return;
  const mine = ++latest;
  const mould = asked_name(name, state.files?.moulds);
  try {
    const [gauge, cavity] = await Promise.all([with_levels({ file: mould }), cavity_of({ file: mould })]);
    if (mine === latest)
      update({ measured: { mould, gauge, outline: outline_of(cavity) }, measuring_failed: undefined });
  } catch (error) {
    if (mine !== latest) return;
    if (!(error instanceof Refused)) throw error;
    update({ measured: undefined, measuring_failed: error.message });
    if (error.may_pass) window.setTimeout(measure_soon, retry_ms);
  }
}
