// What tables of costs and prices are made of: a column for each number of pieces, or of times that an order is made.
import { html, nothing, type TemplateResult } from "lit";
import { state, toggle } from "../documents/state";
import { explained } from "../figures/explained";
import type { AskedBy, QuoteCash, QuotedNumber, QuotedPrice } from "../program/answers";
import { trimmed } from "../program/numbers";

export type Cell<Column> = (one: Column) => unknown;
export type Row<Column> = (name: unknown, cell: Cell<Column>, kind?: string) => TemplateResult;

export const row_over =
  <Column>(columns: readonly Column[]): Row<Column> =>
  (name, cell, kind = "") =>
    html`<tr class=${kind}>
      <th scope="row">${name}</th>
      ${columns.map((one) => html`<td><b>${cell(one)}</b></td>`)}
    </tr>`;

export const group = (title: unknown, columns: readonly unknown[]): TemplateResult =>
  html`<tr class="group">
    <th scope="rowgroup" colspan=${columns.length + 1}>${title}</th>
  </tr>`;

/** Tapped, it tells how it comes about. */
export function opened_row<Column>(
  columns: readonly Column[],
  words: string,
  cell: Cell<Column>,
  inside: Cell<Column>,
): TemplateResult {
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
  return html`${row_over(columns)(name, cell)}
  ${
    is_open
      ? html`<tr class="opened">
          <td colspan=${columns.length + 1} id=${id}>${columns.map(inside)}</td>
        </tr>`
      : nothing
  }`;
}

export const sum_table = (caption: string, rows: TemplateResult[]): TemplateResult =>
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

/** Where nothing in it has a price, its cost is not nothing. */
export function cost_of_part({ parts, items }: QuotedNumber, part: string): string {
  const found = parts.find((one) => one.part === part);
  if (!found) return "–";
  return items.some((one) => one.part === part && one.cost !== null && !one.from_tap) ? found.each : "unpriced";
}

export const items_of = (caption: string, { items }: QuotedNumber, part: string): TemplateResult =>
  sum_table(
    caption,
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

interface WithCash {
  cash?: QuoteCash;
}

/** Another sum than what is used: whole packs, less what is on the shelf. */
export const cash_rows = <Column extends WithCash>(
  columns: readonly Column[],
  called: (one: Column) => string,
): TemplateResult =>
  opened_row(
    columns,
    "To lay out now, in whole packs",
    ({ cash }) => cash?.total ?? "nothing",
    (one) => html`${packs_of(called(one), one.cash)} ${left_of(one.cash)}`,
  );

const packs_of = (called: string, cash?: QuoteCash): TemplateResult =>
  html`${sum_table(
    `Packs to buy, ${called}`,
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

interface WithPrices {
  prices: QuotedPrice[];
}

/** Each way of selling once, by the first column that has a price by it. */
export function ways_of(columns: readonly WithPrices[]): QuotedPrice[] {
  const all = columns.flatMap(({ prices }) => prices);
  return all.filter((one, i) => all.findIndex(({ way }) => way === one.way) === i);
}

const per_cent = (value: number): string => `${trimmed(value, 1)} %`;

function asked_by(by: AskedBy): string {
  if ("margin_percent" in by) return `margin ${trimmed(by.margin_percent, 2)} %`;
  if ("markup_percent" in by) return `markup ${trimmed(by.markup_percent, 2)} %`;
  return "price as set";
}

export const of_way =
  <Column extends WithPrices>(way: string, tell: (price: QuotedPrice) => unknown): Cell<Column> =>
  ({ prices }) => {
    const price = prices.find((each) => each.way === way);
    return price ? tell(price) : "–";
  };

/** What is asked by that way, and what comes of it; `each` are rows before that. */
export function way_rows<Column extends WithPrices>(
  columns: readonly Column[],
  has_tax: boolean,
  { way, by, ask, with_tax }: QuotedPrice,
  is_first: boolean,
  each: unknown = nothing,
): TemplateResult {
  const has_it = ask === with_tax;
  const row = row_over(columns);
  const of = (tell: (price: QuotedPrice) => unknown) => of_way<Column>(way, tell);
  const share = (name: "margin" | "markup", words: string) => (is_first ? html`${words} ${explained(name)}` : words);
  return html`<tbody>
    ${group(html`<span class="way">${way}</span>, ${asked_by(by)}`, columns)} ${each}
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

export const asked_for = ({ ask, is_below_cost }: QuotedPrice): unknown =>
  is_below_cost ? html`<span class="below">${ask}<small>below cost</small></span>` : ask;

/** A price that loses money is shouted, above all of them. */
export function below_cost<Column extends WithPrices>(
  columns: readonly Column[],
  words: (at_a_loss: Column[]) => string,
): TemplateResult[] {
  const at_a_loss = (way: string) =>
    columns.filter(({ prices }) => prices.some((one) => one.way === way && one.is_below_cost));
  return ways_of(columns)
    .map(({ way }) => ({ way, sold: at_a_loss(way) }))
    .filter(({ sold }) => sold.length)
    .map(
      ({ way, sold }) =>
        html`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${way}: ${words(sold)}
        </p>`,
    );
}
