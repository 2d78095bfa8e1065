// What a formula that lies open by itself is asked about with.
import type { Document } from "../program/json";
import { free_name } from "./names";
import { asked_name } from "./run_names";
import { state } from "./state";

/**
 * Moulds, pots, batches, losses and scales of the run that lies open, and nothing of it that only its own base
 * answers to.
 */
export function trial(formula: string): { file: string; run: Document } {
  const run = state.run.now;
  const pour = run.pour as Document | undefined;
  const losses = run.losses as Document | undefined;
  const moulds: Document = pour?.moulds_owned === undefined ? {} : { moulds_owned: pour.moulds_owned };
  const mould = asked_name(String(pour?.mould ?? ""), state.files?.moulds);
  return {
    file: free_name("trial.run.json", state.files?.runs ?? []),
    run: {
      schema: "brimwright.run/2",
      name: String(run.name ?? ""),
      sell: run.sell ?? "",
      ...(run.spoilage === undefined ? {} : { spoilage: run.spoilage }),
      pour: { mould, ...moulds, formula, line: pour?.line ?? {} },
      losses: { pour: losses?.pour ?? {} },
      scales: run.scales ?? {},
      ...vessels_of(run),
    },
  };
}

function vessels_of(run: Document): Document {
  const taken: Document = {};
  for (const key of ["cut", "pots", "batch"]) if (run[key] !== undefined) taken[key] = run[key];
  if (taken.batch) {
    const { whippings: _, ...batch } = taken.batch as Document;
    taken.batch = batch;
  }
  return taken;
}
