// The batches of a run: what the largest is called, and the plan as that one batch sees it.
import type { Batch, BatchPipe, Plan, Whipping } from "../program/answers";

export { listed } from "../program/words";

/** Of one batch alone: no weight in it is a sum over several. `whole` is the run's. */
export interface Bench extends Omit<Plan, "pieces" | "pipe" | "batches" | "batch_limits" | "around"> {
  pipe?: BatchPipe;
  batch: Batch;
  place: string; // of the batch in the plan
  whippings: Whipping[]; // each size once
  whole: Plan;
}

/** The largest, which the program lists first. */
export function bench_of(plan: Plan): Bench {
  const { pieces: _, batches, batch_limits: __, around: ___, ...rest } = plan;
  const [batch] = batches;
  const { pour, pipe, dust, lye_pot, bottles } = batch;
  return {
    ...rest,
    pour,
    pipe,
    dust,
    lye_pot,
    bottles,
    batch,
    place: "batches.0",
    whippings: pipe?.whippings ?? [],
    whole: plan,
  };
}

export const counted = (many: number, one: string, more = `${one}s`): string => `${many} ${many === 1 ? one : more}`;

const of_cast = (plan: Plan): [string, string] => (plan.cut ? ["loaf", "loaves"] : ["cast", "casts"]);

/** "13 pieces", or of what is cut "14 bars from 2 loaves". */
export function pieces_of(plan: Plan, { pieces, casts }: { pieces: number; casts: number }): string {
  const words = plan.cut ? counted(pieces, "bar") : counted(pieces, "piece");
  return casts === pieces ? words : `${words} from ${counted(casts, ...of_cast(plan))}`;
}

const times = (many: number): string => (many === 1 ? "once" : `${many} times`);

export const has_sizes = (plan: Plan): boolean => plan.batches.length > 1;
export const is_of_several = (plan: Plan): boolean => plan.pieces.batches > 1;

/** Where a weight stands away from that heading; nothing in a run of one batch. */
export function in_one_batch(bench: Bench): string {
  return is_of_several(bench.whole) ? `one batch, ${pieces_of(bench.whole, bench.batch)}` : "";
}

const is_whipped_in_several = ({ whippings }: Bench): boolean => whippings.length > 1 || (whippings[0]?.count ?? 0) > 1;

/** What one whipping of a batch's topping is for; nothing where there is one alone. */
export function whipped_for(bench: Bench, one: Whipping): string {
  if (!is_whipped_in_several(bench)) return "";
  return `${pieces_of(bench.whole, one)}${one.count > 1 ? `, whipped ${times(one.count)}` : ""}`;
}

/** What it is called. */
export function whipping_called(bench: Bench, one: Whipping): string {
  const words = whipped_for(bench, one);
  return words && `one whipping: ${words}`;
}

/** Whether the run's sums are those of no single weighing. */
export const is_weighed_in_parts = (bench: Bench): boolean =>
  is_of_several(bench.whole) || is_whipped_in_several(bench);

export const fillings_of = (fillings: number, cavities: number): string =>
  `${counted(fillings, "filling")} of ${counted(cavities, "cavity", "cavities")}`;
