// What the hands do between two weighings, in a few words.
import { html, nothing, type TemplateResult } from "lit";
import { state } from "../documents/state";
import { both, length, mass, trimmed } from "../program/numbers";
import { is_struck, type AtHand, type Weights } from "./at_bench";

const order = (hand: AtHand, words: unknown): TemplateResult =>
  html`<p class="do ${is_struck(hand) ? "old" : ""}">${words}</p>`;

export function pour_order(hand: AtHand, { batch, plan }: Weights): TemplateResult {
  const { below_brim_mm, mass_each_g } = batch.pour;
  const where =
    below_brim_mm < 0.05 ? "Pour to the brim" : `Pour to ${both(length(state.units, below_brim_mm))} below the brim`;
  return order(hand, html`${where}, <b>${both(mass(state.units, mass_each_g))}</b> ${plan.cut ? "the loaf" : "each"}.`);
}

export function whip_order(hand: AtHand, { batch }: Weights): TemplateResult | typeof nothing {
  const planned = batch.pipe?.whippings[0]?.readings.find((one) => one.planned);
  if (!planned) return nothing;
  return order(hand, html`Whip until the level weigh-cup holds <b>${both(mass(state.units, planned.net_g))}</b>.`);
}

export function pipe_order(hand: AtHand, { batch }: Weights): TemplateResult | typeof nothing {
  const { pipe } = batch;
  if (!pipe) return nothing;
  return order(
    hand,
    html`Pipe <b>${trimmed(pipe.volume_each_ml, 0)} ml</b> on each, ${both(mass(state.units, pipe.mass_each_g))} at the
      planned whipped density.`,
  );
}
