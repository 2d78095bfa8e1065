// Danger beside the figures that it is about.
import { html, nothing, type TemplateResult } from "lit";
import type { FormulaSlot } from "../documents/file_types";
import { state } from "../documents/state";

export const danger_sign = html`<span aria-hidden="true">⚠</span> Danger`;

/** Beside a place that shows or asks the superfat of one of the batters, and where it is weighed that of one batch. */
export function danger_beside(whose: FormulaSlot, id = "", pieces?: number): TemplateResult | typeof nothing {
  const texts = dangers_of(whose, pieces);
  if (!texts.length) return nothing;
  return html`<div class="dangers" id=${id || nothing}>
    ${texts.map((text) => html`<p class="danger"><strong>${danger_sign}</strong> ${text}</p>`)}
  </div>`;
}

/** Of its superfat: all but those that are of the other batter alone, or of batches of another size. */
export function dangers_of(whose: FormulaSlot, pieces?: number): string[] {
  const other = whose === "pour" ? "pipe" : "pour";
  return state.dangers[whose === "apart" ? "apart" : "run"]
    .filter((one) => !one.is_of_heat)
    .filter((one) => whose === "apart" || one.batter !== other)
    .filter((one) => pieces === undefined || one.batch_pieces === undefined || one.batch_pieces === pieces)
    .map((one) => one.text);
}
