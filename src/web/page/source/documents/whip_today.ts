// How far a bowl goes by today's weigh-cup: asked of the program, as the plan of now would have it.
import { ask_plan, Refused, wording } from "../program/api";
import type { Plan } from "../program/answers";
import { at, with_value } from "../program/pointer";
import type { WhipToday } from "./bench_types";
import { state, update } from "./state";

/** Nothing at first; the page is drawn again when the answer is here. */
export function whip_today(batch: number, reading: string): WhipToday | undefined {
  const { planned, whip_today: known } = state;
  if (!reading || !planned) return undefined;
  const is_known = known?.of === planned && known.batch === batch && known.reading === reading;
  if (!is_known) void ask(batch, reading);
  return known?.batch === batch && known.reading === reading ? known : undefined;
}

let is_asking = false;

async function ask(batch: number, reading: string): Promise<void> {
  const { planned } = state;
  if (is_asking || !planned) return;
  is_asking = true;
  const asked = { of: planned, batch, reading };
  const cup = { holds: at(planned.run, "/pipe/whip/holds") ?? "", net: reading };
  try {
    const plan = await ask_plan({ ...planned, run: with_value(planned.run, "/pipe/whip_now", cup) });
    update({ whip_today: { ...asked, ...pieces_in(plan, batch) } });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    update({ whip_today: { ...asked, complaint: wording(error.complaint) } });
  } finally {
    is_asking = false;
  }
}

function pieces_in(plan: Plan, number: number): Pick<WhipToday, "mark" | "pieces"> {
  const batch = plan.batches.find(({ numbers }) => numbers.includes(number));
  if (!batch) return {};
  return { mark: batch.mark, pieces: batch.pipe?.whippings.map((one) => one.pieces_now) };
}
