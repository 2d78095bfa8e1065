// Numbers of pieces as columns: what a piece costs, part by part, and what to ask for it by each way of selling.
import { html, nothing, type TemplateResult } from "lit";
import type { Quote, QuotedNumber } from "../program/answers";
import {
  below_cost,
  cash_rows,
  cost_of_part,
  group,
  items_of,
  opened_row,
  row_over,
  way_rows,
  ways_of,
} from "./quote_rows";

const to_sell = ({ sell }: QuotedNumber): string => `${sell} to sell`;

export function side_by_side({ numbers, currency, has_tax }: Quote, is_old: boolean): TemplateResult {
  const row = row_over(numbers);
  return html`<p class="aside">Money in ${currency}${has_tax ? "; costs are without tax" : ""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${is_old ? "old" : ""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${numbers.map((one) => html`<th scope="col"><b>${one.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${row("to make", (one) => one.make)} ${row("fillings", (one) => one.fillings)}
          ${row("batches", (one) => one.batches)}
          ${numbers.some((one) => one.to_stock) ? row("beyond those, at no cost", (one) => one.to_stock) : nothing}
        </tbody>
        <tbody>
          ${group("A piece costs", numbers)} ${parts_of(numbers).map((part) => part_rows(numbers, part))}
          ${row("Cost of a piece", (one) => one.cost_each, "sum-of")} ${row("The whole run", (one) => one.cost)}
        </tbody>
        <tbody>
          ${cash_rows(numbers, to_sell)}
        </tbody>
        ${ways_of(numbers).map((first, k) => way_rows(numbers, has_tax, first, k === 0))}
      </table>
    </div>`;
}

const parts_of = (numbers: QuotedNumber[]): string[] => [
  ...new Set(numbers.flatMap(({ parts }) => parts.map(({ part }) => part))),
];

/** Tapped, it tells how it comes about, in the run. */
const part_rows = (numbers: QuotedNumber[], part: string): TemplateResult =>
  opened_row(
    numbers,
    part,
    (one) => cost_of_part(one, part),
    (one) => items_of(`${part} of the whole run, ${to_sell(one)}`, one, part),
  );

export const sold_at_a_loss = ({ numbers }: Quote): TemplateResult[] =>
  below_cost(numbers, (sold) => `each piece sold loses money, at ${sold.map(({ sell }) => sell).join(", ")} to sell.`);
