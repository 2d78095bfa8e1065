// Numbers of pieces as columns: what a piece costs, part by part, and what to ask for it by each way of selling.
import { html, nothing, type TemplateResult } from "lit";
import { state, toggle } from "../documents/state";
import { explained } from "../figures/explained";
import type { AskedBy, Quote, QuoteCash, QuotedNumber, QuotedPrice } from "../program/answers";
import { trimmed } from "../program/numbers";

type Row = (name: unknown, cell: (one: QuotedNumber) => unknown, kind?: string) => TemplateResult;

export function side_by_side(quote: Quote, is_old: boolean): TemplateResult {
  const { numbers, currency, has_tax } = quote;
  const row: Row = (name, cell, kind = "") =>
    html`<tr class=${kind}>
      <th scope="row">${name}</th>
      ${numbers.map((one) => html`<td><b>${cell(one)}</b></td>`)}
    </tr>`;
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
          ${group("A piece costs", numbers)} ${parts_of(quote).map((part) => part_rows(quote, part, row))}
          ${row("Cost of a piece", (one) => one.cost_each, "sum-of")} ${row("The whole run", (one) => one.cost)}
        </tbody>
        <tbody>
          ${cash_rows(quote, row)}
        </tbody>
        ${ways_of(quote).map((first, k) => way_rows(quote, first, k === 0, row))}
      </table>
    </div>`;
}

const group = (title: unknown, numbers: QuotedNumber[]): TemplateResult =>
  html`<tr class="group">
    <th scope="rowgroup" colspan=${numbers.length + 1}>${title}</th>
  </tr>`;

const parts_of = ({ numbers }: Quote): string[] => [
  ...new Set(numbers.flatMap(({ parts }) => parts.map(({ part }) => part))),
];

/** Where nothing in it has a price, its cost is not nothing. */
function cost_of({ parts, items }: QuotedNumber, part: string): string {
  const found = parts.find((one) => one.part === part);
  if (!found) return "–";
  return items.some((one) => one.part === part && one.cost !== null) ? found.each : "unpriced";
}

/** Tapped, it tells how it comes about, in the run. */
const part_rows = (quote: Quote, part: string, row: Row): TemplateResult =>
  opened_row(
    quote,
    part,
    row,
    (one) => cost_of(one, part),
    (one) => items_of(one, part),
  );

/** Another sum than what is used: whole packs, less what is on the shelf. */
const cash_rows = (quote: Quote, row: Row): TemplateResult =>
  opened_row(
    quote,
    "To lay out now, in whole packs",
    row,
    ({ cash }) => cash?.total ?? "nothing",
    ({ sell, cash }) => html`${packs_of(sell, cash)} ${left_of(cash)}`,
  );

type Cell = (one: QuotedNumber) => unknown;

function opened_row(quote: Quote, words: string, row: Row, cell: Cell, inside: Cell): TemplateResult {
  const key = `quote ${words}`;
  const is_open = state.open.has(key);
  const id = `quote-${words.replaceAll(/\W/g, "-")}`;
  const name = html`<button
    type="button"
    class="line"
    aria-expanded=${is_open ? "true" : "false"}
    aria-controls=${is_open ? id : nothing}
    @click=${() => toggle("open", key)}
  >
    ${words}<span class="how" aria-hidden="true">${is_open ? "–" : "="}</span>
  </button>`;
  return html`${row(name, cell)}
  ${
    is_open
      ? html`<tr class="opened">
          <td colspan=${quote.numbers.length + 1} id=${id}>${quote.numbers.map(inside)}</td>
        </tr>`
      : nothing
  }`;
}

const sum_table = (caption: string, rows: TemplateResult[]): TemplateResult =>
  html`<div class="sum">
    <table>
      <caption>
        ${caption}
      </caption>
      <tbody>
        ${rows}
      </tbody>
    </table>
  </div>`;

const packs_of = (sell: number, cash?: QuoteCash): TemplateResult =>
  html`${sum_table(
    `Packs to buy, ${sell} to sell`,
    (cash?.packs ?? []).map(
      ({ shown_as, count, holds, sum, seller }) =>
        html`<tr>
          <th scope="row">${shown_as}</th>
          <td>${sum}</td>
          <td>${count} × ${holds}${seller ? `, ${seller}` : ""}</td>
        </tr>`,
    ),
  )}
  ${cash?.unpriced.length ? html`<p class="alarm">No pack is listed, and not in the sum: ${cash.unpriced.join(", ")}.</p>` : nothing}
  ${cash && !cash.proved_cheapest ? html`<p class="hint">Not proved to be the least that is possible.</p>` : nothing}`;

const left_of = (cash?: QuoteCash): TemplateResult =>
  sum_table(
    "Left of them when all is made",
    (cash?.left ?? []).map(
      ({ shown_as, left }) =>
        html`<tr>
          <th scope="row">${shown_as}</th>
          <td>${left}</td>
        </tr>`,
    ),
  );

function items_of({ sell, items }: QuotedNumber, part: string): TemplateResult {
  return sum_table(
    `${part} of the whole run, ${sell} to sell`,
    items
      .filter((one) => one.part === part)
      .map(
        ({ name, amount, cost, how }) =>
          html`<tr>
            <th scope="row">${name}</th>
            <td>${cost ?? "unpriced"}</td>
            <td>${how || amount}</td>
          </tr>`,
      ),
  );
}

/** Each way of selling once, by the first number that has a price by it. */
function ways_of({ numbers }: Quote): QuotedPrice[] {
  const all = numbers.flatMap(({ prices }) => prices);
  return all.filter((one, i) => all.findIndex(({ way }) => way === one.way) === i);
}

const per_cent = (value: number): string => `${trimmed(value, 1)} %`;

function asked_by(by: AskedBy): string {
  if ("margin_percent" in by) return `margin ${trimmed(by.margin_percent, 2)} %`;
  if ("markup_percent" in by) return `markup ${trimmed(by.markup_percent, 2)} %`;
  return "price as set";
}

function way_rows({ numbers, has_tax }: Quote, { way, by, ask, with_tax }: QuotedPrice, is_first: boolean, row: Row) {
  const has_it = ask === with_tax;
  const of = (tell: (price: QuotedPrice) => unknown) => (one: QuotedNumber) => {
    const price = one.prices.find((each) => each.way === way);
    return price ? tell(price) : "–";
  };
  const share = (name: "margin" | "markup", words: string) => (is_first ? html`${words} ${explained(name)}` : words);
  return html`<tbody>
    ${group(html`<span class="way">${way}</span>, ${asked_by(by)}`, numbers)}
    ${row(has_tax ? (has_it ? "Ask, with tax" : "Ask, without tax") : "Ask", of(asked_for), "ask")}
    ${
      has_tax
        ? row(
            "tax in it",
            of(({ tax }) => (has_it ? tax : "none")),
          )
        : nothing
    }
    ${row(
      "fees",
      of(({ fees }) => fees),
    )}
    ${row(
      "left for you",
      of(({ profit }) => profit),
    )}
    ${row(
      share("margin", "margin, of the price"),
      of((price) => per_cent(price.margin_percent)),
    )}
    ${row(
      share("markup", "markup, on the cost"),
      of((price) => per_cent(price.markup_percent)),
    )}
  </tbody>`;
}

const asked_for = ({ ask, is_below_cost }: QuotedPrice): unknown =>
  is_below_cost ? html`<span class="below">${ask}<small>below cost</small></span>` : ask;

/** A price that loses money is shouted, above all of them. */
export function below_cost(quote: Quote): TemplateResult[] {
  const at_a_loss = (way: string) =>
    quote.numbers.filter(({ prices }) => prices.some((one) => one.way === way && one.is_below_cost));
  return ways_of(quote)
    .map(({ way }) => ({ way, sold: at_a_loss(way).map(({ sell }) => sell) }))
    .filter(({ sold }) => sold.length)
    .map(
      ({ way, sold }) =>
        html`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${way}: each piece sold loses money, at
          ${sold.join(", ")} to sell.
        </p>`,
    );
}
