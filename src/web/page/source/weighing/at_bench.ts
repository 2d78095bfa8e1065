// What is weighed now: which batch of the run, and by which weights: those that it was begun with, or else the plan's.
import { kept_batch, is_waiting } from "../documents/bench";
import { state } from "../documents/state";
import type { Batch, Caution, Plan, Vessel } from "../program/answers";
import type { BenchBatch } from "../program/bench";

/** Of one batch, by one plan. */
export interface Weights {
  plan: Plan;
  batch: Batch;
  place: string; // of the batch in the plan
  vessels: Vessel[];
  mark: string;
}

export interface AtHand {
  number: number; // of the batch
  of: number; // so many has the run
  kept?: BenchBatch; // begun: with its own weights
  weights?: Weights; // to be weighed
  planned?: Weights; // as the run stands now, where it has such a batch
}

function weights_in(plan: Plan | undefined, number: number): Weights | undefined {
  const which = plan?.batches.findIndex(({ numbers }) => numbers.includes(number)) ?? -1;
  if (!plan || which < 0) return undefined;
  const batch = plan.batches[which];
  const is_first = number === 1; // what is cast ahead is cast once, for the whole run
  const vessels = batch.weigh_out.filter(({ vessel }) => vessel !== "melt" || is_first);
  return { plan, batch, place: `batches.${which}`, vessels, mark: batch.mark };
}

type Status = "not begun" | "under way" | "done";

export function status_of(number: number): Status {
  const kept = kept_batch(number);
  if (kept?.finished_at) return "done";
  return kept || is_waiting(number) ? "under way" : "not begun";
}

const batches_in_all = (): number =>
  Math.max(state.plan?.pieces.batches ?? 0, ...state.bench.batches.map(({ batch }) => batch));

/** The one that was chosen; else one that is under way, else the next to begin. */
function number_at_hand(of: number): number {
  const { chosen } = state.bench;
  if (chosen !== undefined && chosen <= of) return chosen;
  const numbers = Array.from({ length: of }, (_, i) => i + 1);
  const first = (status: Status) => numbers.find((one) => status_of(one) === status);
  return first("under way") ?? first("not begun") ?? 1;
}

export function at_hand(): AtHand {
  const of = batches_in_all();
  const number = number_at_hand(of);
  const kept = kept_batch(number);
  const planned = weights_in(state.plan, number);
  return { number, of, kept, planned, weights: kept ? weights_in(kept.plan, number) : planned };
}

/** The plan's are struck out while they are not of what is typed; a batch that is begun keeps its own. */
export const is_struck = ({ kept }: AtHand): boolean => !kept && state.is_old;

/** Of this batch, or of all. */
export const dangers_in = ({ plan, batch }: Weights): Caution[] =>
  plan.cautions.filter(
    ({ severity, batch_pieces }) =>
      severity === "danger" && (batch_pieces === undefined || batch_pieces === batch.pieces),
  );
