// The batches of the run whose records have begun, and where each stands.
import { html, nothing, type TemplateResult } from "lit";
import { batch_looked_at, choose_record, refused_of } from "../documents/record";
import { state } from "../documents/state";
import { counted } from "../figures/batches";
import { day, days_in_words } from "../program/numbers";
import type { RecordedBatch } from "../program/record";

/** What was begun last stands first. */
export function makings(): TemplateResult | typeof nothing {
  const { batches } = state.record;
  if (batches.length < 2) return nothing;
  const shown = batch_looked_at();
  return html`<ul
    class="makings"
    aria-label=${state.record.together === undefined ? "Batches of this run" : "Batches of this base"}
  >
    ${[...batches].reverse().map((one) => making(one, one.begun.id === shown?.begun.id))}
  </ul>`;
}

function making(one: RecordedBatch, is_shown: boolean): TemplateResult {
  const { id, code } = one.begun;
  const lost = refused_of(id);
  return html`<li>
    <button type="button" aria-pressed=${is_shown ? "true" : "false"} @click=${() => choose_record(id)}>
      <b>${code}</b> <span>${which(one)}</span>
      <small>${how_it_is(one)}; ${counted(one.noted, "blank")} noted${lost ? `; ${lost} not taken` : ""}</small>
    </button>
  </li>`;
}

export function which({ number, begun, lines }: RecordedBatch): string {
  const { of = 1 } = state.record;
  const batch = of > 1 || number > 1 ? `batch ${number} of ${Math.max(of, number)}, ` : "";
  const pieces = lines.length ? "" : `${counted(begun.pieces, "piece")}, `; // a base has none
  return `${batch}${pieces}begun ${day(begun.begun_on)}`;
}

/** In the program's words. */
export const for_sale = ({ for_sale: is, not_for_sale_because: why = "" }: RecordedBatch): string =>
  is ? "For sale" : `Not for sale: ${days_in_words(why)}`;

export const how_it_is = (batch: RecordedBatch): string =>
  batch.lines.length ? `poured into ${batch.lines.map(({ code }) => code).join(", ")}` : for_sale(batch);
