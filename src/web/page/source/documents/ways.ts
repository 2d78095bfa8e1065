// What a mould holds by each way of finding out, batches among them: asked for while it is looked at, and anew when the
// plan or the record has changed.
import type { Gauge } from "../program/answers";
import { ask_gauge, Refused, wording } from "../program/api";
import { follow_run_to_record } from "./record";
import { state, update, type AtWays } from "./state";

interface Question {
  mould: string;
  batches_of: string; // a file of the folder whose records count
  below_brim_mm?: number;
}

const is_same = (one: readonly unknown[] | undefined, other: readonly unknown[]): boolean =>
  one !== undefined && one.length === other.length && one.every((each, i) => each === other[i]);

let asking: readonly unknown[] | undefined;

/** Of the run's mould, at its own pour line. */
export function ways_of_run(mould: string): AtWays {
  follow_run_to_record();
  const { plan, run, record, is_old } = state;
  const of = [mould, run.file, plan, record.version];
  return known(of, !is_old && plan !== undefined, {
    mould,
    batches_of: run.file,
    below_brim_mm: plan?.pour.below_brim_mm,
  });
}

/** Of one in the list: the line is that of the last batch, if there was one. */
export const ways_of_mould = (mould: string, gauge: Gauge | undefined): AtWays =>
  known([mould, gauge], gauge !== undefined, { mould, batches_of: "studio.json" });

function known(of: readonly unknown[], is_ready: boolean, question: Question): AtWays {
  if (is_same(state.ways.of, of)) return state.ways;
  if (is_ready && !is_same(asking, of)) void ask(of, question);
  return {};
}

async function ask(of: readonly unknown[], { mould, batches_of, below_brim_mm }: Question): Promise<void> {
  asking = of;
  const line = below_brim_mm === undefined ? {} : { "below-brim": `${below_brim_mm} mm` };
  const answer = await asked({ file: mould, "batches-of": batches_of, ...line });
  if (is_same(asking, of)) update({ ways: { of, ...answer } });
  asking = undefined;
}

async function asked(question: Parameters<typeof ask_gauge>[0]): Promise<AtWays> {
  try {
    return { ways: (await ask_gauge(question)).ways };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return { failed: wording(error.complaint) };
  }
}
