// A vessel with what is weighed into it: each row as a whole is its tick box.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { repeat } from "lit/directives/repeat.js";
import { tick, ticked } from "../documents/bench";
import { announce, state, toggle } from "../documents/state";
import { arithmetic, of_plan } from "../figures/figure";
import type { Vessel, WeighOutRow } from "../program/answers";
import { is_struck, type AtHand, type Weights } from "./at_bench";
import { danger_at } from "./danger";
import { day_pot } from "./day_pot";
import { how_of, row_shown } from "./shown_rows";

export function vessel_rows(hand: AtHand, weights: Weights, vessel: Vessel): TemplateResult {
  const orders = vessel.words.filter(({ is_order }) => is_order);
  const all_done = vessel.rows.every(({ key }) => ticked(hand.number, key).is_done);
  return html`<section class="vessel ${vessel.vessel} ${all_done ? "filled" : ""}" aria-labelledby=${title_id(vessel)}>
    <div class="vessel-head">
      <h3 id=${title_id(vessel)}>
        ${vessel.title}${vessel.times ? html` <b>${vessel.times} times</b>` : nothing}${
          vessel.day_before ? html` <b>the day before</b>` : nothing
        }${all_done ? html` <span class="all-in">✓ all in</span>` : nothing}
      </h3>
      ${orders.map(({ text }) => html`<p class="vessel-order">${text}</p>`)}
    </div>
    ${day_pot(hand, weights, vessel)} ${danger_at(weights, vessel)}
    ${repeat(
      vessel.rows,
      ({ key }) => key,
      (row) => weigh_row(hand, weights, vessel, row),
    )}
  </section>`;
}

const title_id = ({ key }: Vessel): string => `vessel-${key.replaceAll(".", "-")}`;

function weigh_row(hand: AtHand, weights: Weights, vessel: Vessel, row: WeighOutRow): TemplateResult {
  const { is_done, is_waiting } = ticked(hand.number, row.key);
  const [amount, beside] = row_shown(state.units, row);
  const is_old = is_struck(hand);
  const into = row.adding ? `for ${row.adding}` : "";
  const note = [into, row.note].filter(Boolean).join(", ");
  return html`<div class="weigh ${row.role} ${is_done ? "done" : ""} ${is_waiting ? "waiting" : ""}">
    <label>
      <input
        type="checkbox"
        .checked=${live(is_done)}
        ?disabled=${hand.kept?.finished_at !== undefined}
        @change=${(event: Event) => take_tick(hand, weights, row, event.target as HTMLInputElement)}
      />
      <span class="name"
        >${row.name}${note ? html` <small>${note}</small>` : nothing}${
          is_waiting ? html` <small class="not-kept">not kept yet</small>` : nothing
        }</span
      >
      ${row.running_shown ? html`<span class="running">total ${row.running_shown}</span>` : nothing}
      <span class="amount ${is_old ? "old" : ""}"><b>${amount}</b>${beside ? html` <i>${beside}</i>` : nothing}</span>
    </label>
    ${asked(hand, weights, vessel, row)}
  </div>`;
}

function take_tick(hand: AtHand, { mark }: Weights, row: WeighOutRow, box: HTMLInputElement): void {
  if (!is_struck(hand)) return tick(hand.number, mark, row.key, box.checked);
  box.checked = !box.checked;
  announce("Not ticked: what is struck through is not to be weighed.");
}

/** Of weights that the present plan is of as well: it alone can be asked. */
function asked(hand: AtHand, weights: Weights, vessel: Vessel, row: WeighOutRow): TemplateResult | typeof nothing {
  const { planned } = hand;
  const its = planned?.mark === weights.mark ? planned.vessels.find(({ key }) => key === vessel.key) : undefined;
  const how = planned && its && how_of(planned, its, row);
  if (!how) return nothing;
  const key = `weigh.${hand.number}.${row.key}`;
  const is_open = state.open.has(key);
  const id = `sum-${key.replaceAll(/[^\w]/g, "-")}`;
  return html`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${row.name} is calculated"
      aria-expanded=${is_open ? "true" : "false"}
      aria-controls=${is_open ? id : nothing}
      @click=${() => toggle("open", key)}
    >
      ${is_open ? "–" : "="}
    </button>
    ${is_open ? html`<div class="sum" id=${id}>${"place" in how ? of_plan(how.place) : arithmetic(how.working)}</div>` : nothing}`;
}

/** What is worth knowing at these vessels, and is not done by hand. */
export function to_know(vessels: Vessel[], of_batter: TemplateResult): TemplateResult {
  const told = vessels.flatMap(({ title, words }) =>
    words.filter(({ is_order }) => !is_order).map(({ text }) => ({ title, text })),
  );
  return html`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${of_batter} ${told.map(({ title, text }) => html`<p><b>${title}:</b> ${text}</p>`)}
  </details>`;
}
