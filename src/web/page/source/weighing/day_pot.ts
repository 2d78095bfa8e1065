// Where the studio mixes one lye solution for several batches of a day: beside the lye of a batch, what comes out of such
// a pot instead. Which of the two it is, only the days tell, or she who mixed it; nothing is guessed.
import { html, nothing, type TemplateResult } from "lit";
import { address_of } from "../documents/addresses";
import { days_now } from "../documents/days_asking";
import { state } from "../documents/state";
import type { DayLye, Days, Vessel } from "../program/answers";
import { at } from "../program/pointer";
import { both, days_in_words, weekday, weighed_as, weight } from "../program/numbers";
import { listed } from "../program/words";
import type { AtHand, Weights } from "./at_bench";

const is_lye = ({ vessel }: Vessel): boolean => vessel === "lye" || vessel === "lye_pot";

export function day_pot(hand: AtHand, weights: Weights, vessel: Vessel): TemplateResult | typeof nothing {
  const its = state.plan?.lye_of_day;
  if (!is_lye(vessel) || !(its ?? is_said_by_studio())) return nothing;
  if (its && !its.may_be_shared) return html`<p class="day-pot">${its.text}</p>`;
  const is_of_plan = hand.planned?.mark === weights.mark;
  return html`<div class="day-pot" role="note">
    <p>
      <b>Out of a day's pot, or mixed by itself?</b> Your studio mixes one lye solution for several batches of a day. If
      this one comes out of that pot, <b>weigh no water and no alkali here</b>: one or the other, never both.
    </p>
    ${is_of_plan ? by_days(hand, vessel) : html`<p>How much is taken out of it stands on the sheet that it was mixed by.</p>`}
    <a href=${address_of({ name: "days", file: state.run.file })}>To Days, where each pot stands</a>
  </div>`;
}

/** Where there is no plan that could tell. */
const is_said_by_studio = (): boolean =>
  !state.plan && at(state.beside.studio?.now, "/days/one_lye_a_day") !== undefined;

/** As the days of this run are planned now; another pot may have been mixed. */
function by_days(hand: AtHand, vessel: Vessel): TemplateResult {
  const { days, complaint, is_old } = days_now("run");
  if (complaint) return html`<p>The days of this run cannot be told yet: Days says why.</p>`;
  if (!days || is_old) return html`<p>Asking for the days of this run ...</p>`;
  const lye = pot_of(days, hand.number, vessel);
  if (!lye)
    return html`<p>
      By the days of this run as planned now, <b>this batch is mixed by itself</b>. In an order, the order's days hold.
    </p>`;
  return html`<p>
      By the days of this run as planned now, out of the pot mixed on the evening of ${weekday(lye.made)} for
      ${days_in_words(lye.for)}:
    </p>
    ${shares_of(lye, hand.number, vessel)}
    <p>If another pot was mixed, as for an order, what stands at that one holds.</p>`;
}

const lye_of = ({ vessel, batter }: Vessel): DayLye["lye_of"] =>
  vessel === "lye_pot" ? "all" : batter === "pipe" ? "topping" : "base";

const pot_of = ({ lyes }: Days, number: number, vessel: Vessel): DayLye | undefined =>
  lyes.find((one) => one.lye_of === lye_of(vessel) && one.batches.some(({ batch }) => batch === number));

function shares_of({ batches, pot }: DayLye, number: number, vessel: Vessel): TemplateResult {
  const places = batches.filter(({ batch }) => batch === number).flatMap(({ shares }) => shares);
  const into = vessel.rows.filter(({ role }) => !["water", "ice", "alkali"].includes(role)).map(({ name }) => name);
  return html`<ul>
      ${places.map((place) => {
        const share = pot.shares[place];
        const water = share.top_up_g > 0 ? both(weight(state.units, weighed_as(share, "top_up_"))) : "";
        return html`<li>
          ${share.batter}: <b>${both(weight(state.units, weighed_as(share, "lye_"), "down"))}</b> of the lye
          solution${water ? html`, and <b>${water}</b> of plain water` : nothing}
        </li>`;
      })}
    </ul>
    ${into.length ? html`<p>Into the share, as below: ${listed(into)}.</p>` : nothing}`;
}
