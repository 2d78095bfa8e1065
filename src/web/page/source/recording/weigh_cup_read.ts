// A weigh-cup that was read at the weights, where it is not plain which whipping it was of: a tap puts it into its blank.
import { html, nothing, type TemplateResult } from "lit";
import { kept_batch, weigh_cup_of } from "../documents/bench";
import { note_at_once, noted_in } from "../documents/record";
import { note_of } from "../documents/record_acts";
import { state } from "../documents/state";
import type { Blank, RecordedBatch } from "../program/record";

export function weigh_cup_read(batch: RecordedBatch, blank: Blank): TemplateResult | typeof nothing {
  const { number, begun } = batch;
  const kept = state.bench.run === state.record.run ? kept_batch(number) : undefined;
  const reading = kept && new Date(kept.begun_at) <= new Date(begun.begun_at) ? weigh_cup_of(number) : "";
  if (!reading || noted_in(batch, blank.key) || note_of(begun.id, blank.key)) return nothing;
  return html`<p class="read-at-weights">
    <button type="button" @click=${() => note_at_once(batch, blank.key, reading)}>
      Note ${reading}, as read at the weights
    </button>
  </p>`;
}
