// Today's weigh-cup: what it reads, and how far this bowl goes by it. The reading belongs to the batch.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { read_weigh_cup, weigh_cup_of } from "../documents/bench";
import { redraw } from "../documents/drawing";
import { newest_record, note_weigh_cup } from "../documents/record";
import { announce, state } from "../documents/state";
import { whip_today } from "../documents/whip_today";
import { counted } from "../figures/batches";
import { term_button, term_words } from "../figures/explained";
import { choice } from "../forms/form_parts";
import type { Whipping } from "../program/answers";
import { both, is_bare_number, mass, unit_of, trimmed } from "../program/numbers";
import { is_struck, type AtHand, type Weights } from "./at_bench";

type Unit = "g" | "oz";

let chosen_unit: Unit | undefined;
let typed: string | undefined;

const unit_now = (reading: string): Unit =>
  chosen_unit ?? (unit_of(reading) === "oz" || (!reading && state.units === "us") ? "oz" : "g");

export function weigh_cup(hand: AtHand, weights: Weights): TemplateResult | typeof nothing {
  const whippings = weights.batch.pipe?.whippings ?? [];
  if (!whippings.some((one) => one.readings.length)) return nothing;
  const reading = weigh_cup_of(hand.number);
  const unit = unit_now(reading);
  const is_over = hand.kept?.finished_at !== undefined;
  return html`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${term_button("weigh_cup")}</div>
    ${term_words("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${live(typed ?? reading)}
        ?disabled=${is_over}
        @input=${(event: Event) => (typed = (event.target as HTMLInputElement).value)}
        @change=${(event: Event) => take(hand, weights, (event.target as HTMLInputElement).value, unit)}
      />
      ${choice(
        "Unit of the weigh-cup",
        unit,
        [
          ["g", "g"],
          ["oz", "oz"],
        ],
        choose_unit,
      )}
    </div>
    ${told_today(hand, weights, whippings, reading)} ${table(weights, whippings)}
  </div>`;
}

function choose_unit(unit: Unit): void {
  chosen_unit = unit;
  redraw();
}

function take(hand: AtHand, { mark }: Weights, text: string, unit: Unit): void {
  typed = undefined;
  const reading = is_bare_number(text) ? `${text.trim()} ${unit}` : text.trim();
  chosen_unit = undefined;
  if (reading === weigh_cup_of(hand.number)) return redraw();
  if (is_struck(hand)) {
    announce("Not taken: the weights are not those of what is typed.");
    return redraw();
  }
  read_weigh_cup(hand.number, mark, reading);
  if (hand.kept) void note_weigh_cup(newest_record(hand.number, hand.kept.begun_at), reading);
}

/** The program's own answer, where its plan of now is still the one that this batch was begun with. */
function told_today(
  hand: AtHand,
  weights: Weights,
  whippings: Whipping[],
  reading: string,
): TemplateResult | typeof nothing {
  if (!reading) return nothing;
  const today = whip_today(hand.number, reading);
  if (!today) return html`<p class="today" role="status">Asking how far this bowl goes ...</p>`;
  if (today.complaint !== undefined) return html`<p class="alarm" role="status">${today.complaint}</p>`;
  if (today.mark !== weights.mark)
    return html`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`;
  return html`<div class="today" role="status">
    ${whippings.map((one, i) => html`<p>${far_enough(one, today.pieces?.[i] ?? null)}</p>`)}
  </div>`;
}

function far_enough({ pieces, count }: Whipping, now: number | null): TemplateResult | typeof nothing {
  if (now === null) return nothing;
  const each = count > 1 ? "Each of these bowls pipes" : "This bowl pipes";
  const lacking = pieces - now;
  return html`${each} <b>${counted(now, "piece")}</b> now.
    ${lacking > 0 ? html`<strong>Short by ${lacking} at this whip.</strong>` : `Enough for the ${pieces} to make.`}`;
}

function table(weights: Weights, whippings: Whipping[]): TemplateResult {
  const cut = weights.plan.cut ? "casts" : "pieces";
  return html`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${whippings.map(
      (whipping) =>
        html`<table class="readings">
          <caption>
            A bowl for ${whipping.pieces}
          </caption>
          <thead>
            <tr>
              <th scope="col">net</th>
              <th scope="col">overrun</th>
              <th scope="col">pipes, ${cut}</th>
            </tr>
          </thead>
          <tbody>
            ${whipping.readings.map(
              (one) =>
                html`<tr class=${one.planned ? "planned" : ""}>
                  <th scope="row">${both(mass(state.units, one.net_g))}${one.planned ? " (planned)" : ""}</th>
                  <td>${trimmed(one.overrun_percent, 0)} %</td>
                  <td>${weights.plan.cut ? one.casts : one.pieces}</td>
                </tr>`,
            )}
          </tbody>
        </table>`,
    )}
  </details>`;
}
