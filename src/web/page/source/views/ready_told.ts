// What of an order is with the customer, what it takes of pieces that are made, and what is made and not taken.
import { html, nothing, type TemplateResult } from "lit";
import { take_batches } from "../forms/ready_choice";
import type { OrderQuote, ReadyOfLine } from "../program/answers";
import { is_of_records, often } from "./order_costs";

export function ready_told({ times }: OrderQuote): TemplateResult | typeof nothing {
  const told = times.flatMap(({ times: count, ready }) =>
    ready.lines.filter(({ text }) => text).map(({ text }) => (times.length === 1 ? text : `${often(count)}: ${text}`)),
  );
  const [{ ready }] = times;
  const notes = [...new Set(ready.notes.map(({ text }) => text))];
  if (!told.length && !notes.length) return nothing;
  return html`<div class="ready" role="group" aria-label="Pieces that are made already">
    ${told.map((text) => html`<p><b>${text}</b></p>`)} ${notes.map((text) => html`<p>${text}</p>`)}
    ${ready.lines.map((line, i) => otherwise(line, i))}
    ${is_of_records(times) ? html`<p class="hint">${what_is_what}</p>` : nothing}
  </div>`;
}

const what_is_what =
  "What a piece costs and is asked for goes by all pieces made anew; to lay out is what the rest takes, and what " +
  "packing all that is not delivered takes.";

/** What changed since makes another soap; she may take it all the same, and the line then names its batches. */
const otherwise = ({ batches, made_otherwise }: ReadyOfLine, i: number): TemplateResult[] =>
  made_otherwise.map(
    ({ batch, pieces, files }) =>
      html`<p>
        <button type="button" @click=${() => take_batches(i, [...batches.map((one) => one.batch), batch])}>
          Take the ${pieces} of batch ${batch} all the same
        </button>
        <small>Made by another ${files.join(", ")}.</small>
      </p>`,
  );
