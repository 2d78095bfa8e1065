// What an order costs, line by line, and what to ask for it; made once, or several times side by side.
import { html, nothing, type TemplateResult } from "lit";
import { state } from "../documents/state";
import { counted, listed } from "../figures/batches";
import { danger_sign } from "../figures/dangers";
import type { OrderQuote, OrderTimes, QuotedNumber, ReadyOfOrder } from "../program/answers";
import { both, mass } from "../program/numbers";
import {
  asked_for,
  below_cost,
  cash_rows,
  cost_of_part,
  group,
  items_of,
  of_way,
  opened_row,
  row_over,
  sum_table,
  way_rows,
  ways_of,
} from "./quote_rows";

export const often = (times: number): string => (times === 1 ? "once" : `${times} times`);

export function order_costs({ times, currency, has_tax }: OrderQuote, is_old: boolean): TemplateResult {
  const row = row_over(times);
  return html`<p class="aside">Money in ${currency}${has_tax ? "; costs are without tax" : ""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${is_old ? "old" : ""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${times.map((one) => html`<th scope="col"><b>${often(one.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${row("pieces", ({ pieces }) => pieces)}
        </tbody>
        ${ready_rows(times)}
        <tbody>
          ${group(is_of_records(times) ? "All made anew it would cost" : "It costs", times)}
          ${times[0].lines.map((_, i) => line_row(times, i))} ${row("The whole order", ({ cost }) => cost, "sum-of")}
        </tbody>
        <tbody>
          ${cash_rows(times, (one) => `made ${often(one.times)}`)}
        </tbody>
        ${ways_of(times).map((first, k) => way_rows(times, has_tax, first, k === 0, pieces_by(times, first.way)))}
      </table>
    </div>`;
}

/** Anything of it is delivered, or taken of what is made already. */
export const is_of_records = (times: OrderTimes[]): boolean =>
  times.some(({ ready }) => ready.lines.some(({ text }) => text !== ""));

/** Of anything delivered or taken, what is left and what the one and the other cost: two sums, never one. */
function ready_rows(times: OrderTimes[]): TemplateResult | typeof nothing {
  if (!is_of_records(times)) return nothing;
  const row = row_over(times);
  const sum =
    (key: "delivered" | "taken" | "to_make") =>
    ({ ready }: OrderTimes) =>
      ready.lines.reduce((all, line) => all + line[key], 0);
  return html`<tbody>
    ${row("delivered", sum("delivered"))} ${row("made already", sum("taken"))} ${row("to make", sum("to_make"))}
    ${row("What is left to make costs", ({ rest }) => (rest ? rest.cost : "nothing"))}
    ${row("Materials of what is made already did cost", ({ ready }) => paid(ready))}
  </tbody>`;
}

/** By lots; what is unpriced or of unknown lots is in no sum, and the words beneath say of what. */
function paid({ cost, costs_unknown }: ReadyOfOrder): string {
  if (!cost) return "nothing is taken";
  if (!cost.materials.length) return "not known";
  const sum = cost.materials.map(({ amount, currency }) => `${amount} ${currency}`).join(" + ");
  return cost.unpriced.length || costs_unknown.length ? `more than ${sum}` : sum;
}

const name_of = ({ run, sell }: QuotedNumber): string => `${run ?? ""}, ${sell} ${sell === 1 ? "piece" : "pieces"}`;

/** Tapped, it tells part by part what a piece of it costs, and what that is made of. */
const line_row = (times: OrderTimes[], i: number): TemplateResult =>
  opened_row(
    times,
    name_of(times[0].lines[i]),
    ({ lines }) => lines[i].cost,
    ({ lines }) => html`${parts_of(lines[i])} ${lines[i].parts.map(({ part }) => items_in(lines[i], part))}`,
  );

const parts_of = (line: QuotedNumber): TemplateResult =>
  sum_table(
    `A piece of ${name_of(line)}, ${line.make} made`,
    [...line.parts.map(({ part }) => [part, cost_of_part(line, part)]), ["Cost of a piece", line.cost_each]].map(
      ([name, cost]) =>
        html`<tr>
          <th scope="row">${name}</th>
          <td>${cost}</td>
        </tr>`,
    ),
  );

const items_in = (line: QuotedNumber, part: string): TemplateResult =>
  items_of(`${part} of all of them, ${name_of(line)}`, line, part);

/** What one piece of each line is asked for, above what the order is. */
const pieces_by = (times: OrderTimes[], way: string): TemplateResult[] =>
  times[0].lines.map(({ run }, i) =>
    row_over(times)(`${run ?? ""}, a piece`, ({ lines }) => of_way<QuotedNumber>(way, asked_for)(lines[i])),
  );

export const orders_at_a_loss = ({ times }: OrderQuote): TemplateResult[] =>
  below_cost(times, (made) => `the order loses money, made ${made.map((one) => often(one.times)).join(", ")}.`);

/** What is the same of several lines or numbers, once. */
export function order_dangers({ times }: OrderQuote): TemplateResult | typeof nothing {
  const of_bases = times.flatMap(({ together }) => together.flatMap(({ cautions }) => cautions));
  const all = times.flatMap(({ lines }) =>
    lines.flatMap(({ run, dangers }) => dangers.map((text) => `${run ?? ""}: ${text}`)),
  );
  all.push(...of_bases.filter(({ severity }) => severity === "danger").map(({ text }) => text));
  if (!all.length) return nothing;
  return html`<div class="dangers">
    ${[...new Set(all)].map((text) => html`<p class="danger"><strong>${danger_sign}</strong> ${text}</p>`)}
  </div>`;
}

/** Lines whose base is mixed as one, and what goes with that; made once, or as often as is asked about first. */
export function poured_together({ times, remarks = [] }: OrderQuote): TemplateResult | typeof nothing {
  const [{ together, lines }] = times;
  const told = together.flatMap(({ cautions }) => cautions).filter(({ severity }) => severity !== "danger");
  if (!together.length && !remarks.length) return nothing;
  return html`<ul class="limits">
    ${together.map(
      (one) =>
        html`<li>
          <b
            >Poured together (${one.word}): ${listed(one.lines.map((i) => lines[i].run ?? ""))} from one base,
            "${one.formula}", ${both(mass(state.units, one.make_g))} in
            ${counted(
              one.batches.reduce((sum, { count }) => sum + count, 0),
              "batch",
              "batches",
            )}.</b
          >
        </li>`,
    )}
    ${told.map(({ text }) => html`<li>${text}</li>`)} ${remarks.map((text) => html`<li>${text}</li>`)}
  </ul>`;
}
