// Before anything lies on the scales: an order waits to pour this run together with others, from one base.
import { html, nothing, type TemplateResult } from "lit";
import { open_order } from "../documents/order_opening";
import { newest_record } from "../documents/record";
import { state } from "../documents/state";
import { begun_large } from "../program/words";
import type { AtHand } from "./at_bench";

export function poured_by({ kept, number }: AtHand): TemplateResult | typeof nothing {
  const { run, poured_by: by } = state.record;
  const is_begun = kept && newest_record(number, kept.begun_at);
  if (!by || run !== state.run.file || is_begun) return nothing;
  return html`<div class="banner quiet poured-by">
    <p>${begun_large(by.words)}. What stands here would be a base of its own.</p>
    <button type="button" @click=${() => void open_order(by.order)}>To the order</button>
  </div>`;
}
