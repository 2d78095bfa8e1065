// What goes to paper of costs and prices: the offer for the customer, all of it for herself, and what is to be bought.
import { html, nothing, type TemplateResult } from "lit";
import { amend, state } from "../documents/state";
import { choice } from "../forms/form_parts";
import type { QuotedPrice } from "../program/answers";
import { keep, paper_button, paper_buttons, stem_of, told_of_papers } from "./papers";

interface Quoted {
  file: string; // of the run or the order
  question: object;
  prices: QuotedPrice[]; // by each way of selling; none where something is unpriced
  is_old: boolean; // they are not of what is typed now
}

/** One price is offered, and it is she who says which. */
function way_offered(prices: QuotedPrice[]): string | undefined {
  if (prices.length < 2) return prices[0]?.way;
  return prices.find(({ way }) => way === state.printing.way)?.way;
}

export function quote_papers({ file, question, prices, is_old }: Quoted): TemplateResult {
  const stem = stem_of(file);
  const way = way_offered(prices);
  const offered = { quote: prices.length > 1 && way ? { ...question, way } : question };
  const ways = prices.map((one): [string, string] => [one.way, one.way]);
  const bought = { buy: { files: [file] } };
  return html`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${
      ways.length > 1
        ? html`<p class="question">The price that is offered</p>
            ${choice("The price that is offered", way, ways, (to) => amend(state.printing, { way: to }))}`
        : nothing
    }
    <div class="choice">
      ${
        prices.length
          ? paper_buttons({
              words: "Offer",
              kind: "offer",
              file: `${stem} offer`,
              of: offered,
              is_asleep: is_old || !way,
            })
          : nothing
      }
      ${paper_buttons({ words: "All of it, for you", kind: "quote", file: `${stem} costs`, of: { quote: question } })}
      ${
        state.files?.studios.length
          ? html`${paper_buttons({ words: "Shopping list", kind: "list", file: `${stem} to buy`, of: bought })}
            ${paper_button("Shopping list, table", keep(`${stem} to buy.csv`, { kind: "list-csv", ...bought }))}`
          : nothing
      }
    </div>
    ${
      prices.length
        ? way
          ? nothing
          : html`<p class="hint">An offer has one price: choose which.</p>`
        : html`<p class="hint">Nothing can be offered before there is a price for it.</p>`
    }
    <p role="status">${told_of_papers()}</p>
  </section>`;
}
