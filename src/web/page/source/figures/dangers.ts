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

/** Of its superfat: all but those that name the other formula alone, or batches of another size. */
export function dangers_of(whose: FormulaSlot, pieces?: number): string[] {
  const texts = state.dangers[whose === "apart" ? "apart" : "run"]
    .filter((one) => !one.is_of_heat)
    .map((one) => one.text)
    .filter((text) => pieces === undefined || is_of_size(text, pieces));
  if (whose === "apart") return texts;
  const name = (slot: FormulaSlot) => String(state.formulas[slot]?.now.name ?? "");
  const [own, other] = [name(whose), name(whose === "pour" ? "pipe" : "pour")];
  return texts.filter((text) => !other || !text.includes(other) || (own !== "" && text.includes(own)));
}

/** The program says it in its words, before a danger that only some of the batches have. */
function is_of_size(text: string, pieces: number): boolean {
  const named = /\bBatches of (\d+) pieces?: /.exec(text);
  return !named || Number(named[1]) === pieces;
}
