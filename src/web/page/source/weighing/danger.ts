// Danger above all that is weighed and beside the vessel that it is about, with a way to its cause.
import { html, nothing, type TemplateResult } from "lit";
import type { Slot } from "../documents/file_types";
import { open_formula } from "../documents/formula_opening";
import { state, update } from "../documents/state";
import { danger_sign } from "../figures/dangers";
import { go_on, to_field, to_id } from "../forms/form_parts";
import type { Caution, Vessel } from "../program/answers";
import { dangers_in, type Weights } from "./at_bench";

const words_of = ({ text }: Caution): TemplateResult =>
  html`<p class="danger"><strong>${danger_sign}</strong> ${text}</p>`;

/** Of the weights that are shown; what the plan of now warns of stands over every view already. */
export function dangers_above(weights: Weights): TemplateResult | typeof nothing {
  const elsewhere = new Set(state.dangers.run.map(({ text }) => text));
  const told = dangers_in(weights).filter(({ text }) => !elsewhere.has(text));
  return told.length ? html`<div class="dangers" role="alert">${told.map(words_of)}</div>` : nothing;
}

const has_alkali = ({ vessel }: Vessel): boolean => ["lye", "lye_pot", "share"].includes(vessel);

const is_about = ({ batter }: Caution, vessel: Vessel): boolean =>
  !batter || !vessel.batter || batter === vessel.batter;

export function danger_at(weights: Weights, vessel: Vessel): TemplateResult | typeof nothing {
  if (!has_alkali(vessel)) return nothing;
  const told = dangers_in(weights).filter((one) => is_about(one, vessel));
  return told.length
    ? html`<div class="dangers">${told.map((one) => html`${words_of(one)} ${way_to_cause(one)}`)}</div>`
    : nothing;
}

/** To the formula that makes it lye-heavy; where it is about something else, to the cautions. */
function way_to_cause({ batter, topic }: Caution): TemplateResult {
  if (!batter || topic === "heat")
    return html`<button type="button" class="to-cause" @click=${to_cautions}>To the cautions</button>`;
  const whose = batter === "pour" ? "base" : "topping";
  return html`<button type="button" class="to-cause" @click=${() => to_superfat(batter)}>
    To the superfat of the ${whose}
  </button>`;
}

function to_superfat(slot: Slot): void {
  open_formula(slot);
  requestAnimationFrame(() => go_on(to_field(slot, "/superfat")));
}

function to_cautions(): void {
  update({ view: "watch" });
  go_on(to_id("watch-title"));
}
