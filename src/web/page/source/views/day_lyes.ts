// Lye solutions that are made for several batches of a day at once, as they are weighed.
import { html, nothing, type TemplateResult } from "lit";
import { state } from "../documents/state";
import type { DayLye, Days } from "../program/answers";
import { both, days_in_words, per_cent, trimmed, weekday, weighed_as, weight, type Shown } from "../program/numbers";

/** Worst first; what is danger stands above all else instead. */
const cautions = ({ cautions: all }: DayLye): TemplateResult[] =>
  all
    .filter(({ severity }) => severity !== "danger")
    .map(({ severity, text }) =>
      severity === "note"
        ? html`<p>${days_in_words(text)}</p>`
        : html`<p class="minded"><strong>Caution</strong> ${days_in_words(text)}</p>`,
    );

const row = (name: string, shown: Shown, more = ""): TemplateResult =>
  html`<tr>
    <th scope="row">${name}</th>
    <td><b>${both(shown)}</b></td>
    <td>${more}</td>
  </tr>`;

function one_lye(lye: DayLye): TemplateResult {
  const { units } = state;
  const { made, for: batches, lye_of, pot } = lye;
  const full =
    pot.full_pot_g === null
      ? ""
      : `with its pot ${both(weight(units, { g: pot.full_pot_g, g_text: pot.full_pot_g_text, oz_text: pot.full_pot_oz_text }))}`;
  return html`<h3>One pot of lye solution, made on the evening of ${weekday(made)}</h3>
    <p>
      For ${lye_of === "topping" ? "the toppings of " : ""}${days_in_words(batches)};
      ${trimmed(pot.strength_percent, 1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${row("Water, distilled", weight(units, weighed_as(pot, "water_")))}
        ${pot.alkalis.map((one) => row(one.name, weight(units, weighed_as(one, ""), "down")))}
        ${row("Lye solution in the pot", weight(units, weighed_as(pot, "lye_")), full)}
        ${pot.shares.map(
          (one) =>
            html`${row(
              `Out of it for ${one.batter}`,
              weight(units, weighed_as(one, "lye_"), "down"),
              `superfat then ${per_cent(one.superfat_percent)}`,
            )}
            ${one.top_up_g > 0 ? row(`and plain water to ${one.batter}`, weight(units, weighed_as(one, "top_up_"))) : nothing}`,
        )}
      </tbody>
    </table>
    ${cautions(lye)}`;
}

export const day_lyes = ({ lyes }: Days): TemplateResult[] => lyes.map(one_lye);

/** Of the days and of the lyes that are weighed for them, each once. */
export const dangers_in = ({ lyes, notes }: Days): string[] => [
  ...new Set(
    [...lyes.flatMap(({ cautions: all }) => all), ...notes]
      .filter(({ severity }) => severity === "danger")
      .map(({ text }) => text),
  ),
];
