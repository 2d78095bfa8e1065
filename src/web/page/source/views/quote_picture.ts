// What a piece costs against the number made, and where the money goes: as a picture, and as figures for those who do
// not see it.
import { html, noChange, nothing, type TemplateResult } from "lit";
import "../drawings/cost_picture";
import { question_now } from "../documents/quoting";
import type { Quote } from "../program/answers";

type Cost = Quote["costs"][number];

export function quote_picture(quote: Quote, is_old: boolean): TemplateResult | typeof nothing {
  const { costs, currency } = quote;
  if (!costs.length) return nothing;
  const [first, last] = [costs[0], costs.at(-1)!];
  const at = ({ sell, each }: Cost) => `${each} ${currency} at ${sell}`;
  return html`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${at(first)} to ${at(last)}, and where the money of a piece goes. The figures stand below.`}
        class=${is_old ? "old" : ""}
        .question=${is_old ? noChange : question_now()}
      ></cost-picture>
    </div>
    <details>
      <summary>The same in figures</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Pieces sold</th>
            <th scope="col">A piece costs, ${currency}</th>
          </tr>
        </thead>
        <tbody>
          ${telling(quote).map(
            ({ sell, each }) =>
              html`<tr>
                <th scope="row">${sell}</th>
                <td>${each}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </details>
  </section>`;
}

/** The numbers asked about, both ends, and each step with what is before it. */
function telling({ costs, numbers, steps }: Quote): Cost[] {
  const told = new Set([
    ...numbers.map(({ sell }) => sell),
    ...steps.flatMap(({ sell }) => [sell - 1, sell]),
    costs[0].sell,
    costs.at(-1)!.sell,
  ]);
  return costs.filter(({ sell }) => told.has(sell));
}
