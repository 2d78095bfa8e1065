// What was weighed where it was not what was planned: lots lose what was used, and more lye is asked about.
import { html, nothing, type TemplateResult } from "lit";
import { state, toggle } from "../documents/state";
import { note_of } from "../documents/record_acts";
import type { NotedRow } from "../program/answers";
import type { Blank, RecordedBatch } from "../program/record";
import { blank_field } from "./blank_field";

const part = "record weights";

export function weights(batch: RecordedBatch): TemplateResult | typeof nothing {
  const { rows = [] } = batch;
  if (!rows.length) return nothing;
  const is_open = state.open.has(part);
  const shown = rows.filter((one) => is_open || one.noted !== undefined || note_of(batch.begun.id, one.key));
  return html`<section class="record-part" aria-labelledby="record-weights">
    <h2 id="record-weights" tabindex="-1">Really weighed</h2>
    <p class="aside">Only where it was not what was planned: its lot then loses what was used.</p>
    ${shown.map((one) => html`${heading(one, shown)} ${blank_field(batch, as_blank(one))}`)}
    <p>
      <button type="button" aria-expanded=${is_open ? "true" : "false"} @click=${() => toggle("open", part)}>
        ${is_open ? "Fold the weights away" : "Another weight than planned"}
      </button>
    </p>
  </section>`;
}

/** Before the first of each vessel. */
const heading = (one: NotedRow, all: NotedRow[]): TemplateResult | typeof nothing =>
  all.find(({ of }) => of === one.of) === one ? html`<h3>${one.of}</h3>` : nothing;

const as_blank = (row: NotedRow): Blank => ({ ...row, kind: "mass", when: "base_mixed" });
