// What lines of an order are poured from is recorded as a whole, beneath the order: begun, and filled in as at a run.
import { html, nothing, type TemplateResult } from "lit";
import { amend_record, batch_looked_at, follow_to_record, newest_record } from "../documents/record";
import { choose_word, open_record, word_looked_at } from "../documents/record_opening";
import { show_trail } from "../documents/stock";
import { state } from "../documents/state";
import { go_on, to_id } from "../forms/form_parts";
import type { PouredLine } from "../program/answers";
import type { RecordedBatch } from "../program/record";
import { counted } from "../figures/batches";
import { asked_or_not, came_up } from "./begin_part";
import { code_part } from "./code_part";
import { makings, which } from "./makings";
import { is_beside_shelf, told, what_is_noted } from "./record_view";

type Drawn = TemplateResult | typeof nothing;

/** Of the base, with what is poured from it in words. */
export interface PlannedBatch {
  number: number;
  lines: string[];
}

interface BaseRecord {
  order: string; // its file
  words: string[]; // that its lines share
  planned: (word: string) => PlannedBatch[] | undefined; // none before that is known
  is_old: boolean; // that is not of what is typed now
}

const title_id = "base-title";

export function base_record({ order, words, planned, is_old }: BaseRecord): TemplateResult {
  const word = word_looked_at(order, words);
  follow_to_record({ run: order, together: word });
  lead_to_it();
  const batch = batch_looked_at();
  return html`<section class="record of-base out" aria-labelledby=${title_id}>
    <h2 id=${title_id} tabindex="-1">What really happened: poured together (${word})</h2>
    <p class="aside">
      One base is mixed for these lines, and recorded as a whole. What becomes of their pieces is noted with each run.
    </p>
    ${words.length > 1 ? choice_of(order, words, word) : nothing} ${told()}
    ${state.record.version === undefined ? reading() : html`${to_begin(planned(word), is_old)} ${makings()}`}
    ${batch ? of_batch(batch) : nothing}
  </section>`;
}

const reading = (): Drawn => (state.record.failed === undefined ? html`<p class="hint">Reading ...</p>` : nothing);

function lead_to_it(): void {
  if (!state.record.is_led_to) return;
  requestAnimationFrame(() => {
    amend_record({ is_led_to: undefined });
    go_on(to_id(title_id));
  });
}

const choice_of = (order: string, words: string[], chosen: string): TemplateResult =>
  html`<div class="choice" role="group" aria-label="Poured together">
    ${words.map(
      (one) =>
        html`<button
          type="button"
          aria-pressed=${one === chosen ? "true" : "false"}
          @click=${() => choose_word(order, one)}
        >
          ${one}
        </button>`,
    )}
  </div>`;

function to_begin(planned: PlannedBatch[] | undefined, is_old: boolean): TemplateResult {
  if (!planned)
    return html`<p class="hint">Which batches there are to begin is known once the order can be planned.</p>`;
  if (!planned.length) return html`<p class="aside">Fewer than two of these lines are left to make.</p>`;
  return html`<ul class="to-begin">
    ${[...planned].sort((a, b) => a.number - b.number).map((one) => planned_part(one, planned.length, is_old))}
  </ul>`;
}

function planned_part({ number, lines }: PlannedBatch, in_all: number, is_old: boolean): TemplateResult {
  const words = in_all > 1 ? `batch ${number} of ${in_all}` : "the base";
  const before = newest_record(number);
  const show = () => go_on(to_id("base-head"));
  return html`<li>
    <p><b>${words[0].toUpperCase()}${words.slice(1)}</b>, for ${lines.join(", ")}${before ? nothing : ": not begun"}</p>
    ${asked_or_not(
      { number, words, is_struck: is_old, show },
      before ? html`Another making than <b>${before.begun.code}</b>` : "Lye is mixed: begin the record",
    )}
  </li>`;
}

function of_batch(batch: RecordedBatch): TemplateResult {
  const { begun, lines } = batch;
  return html`<div class="record-head" id="base-head" tabindex="-1">
      ${code_part(batch)}
      <p>${which(batch)}</p>
      ${is_beside_shelf() ? html`<button type="button" @click=${() => show_trail(`batch ${begun.code}`)}>What is in it</button>` : nothing}
    </div>
    ${came_up(batch)}
    <h3>Poured from it</h3>
    <ul class="poured-lines">
      ${lines.map(line_part)}
    </ul>
    ${what_is_noted(batch)}`;
}

/** To its own record, where its run is there still. */
function line_part({ id, code, run, file, pieces }: PouredLine): TemplateResult {
  const { run: order } = state.record;
  const its = order.slice(0, order.lastIndexOf("/") + 1) + file;
  const is_there = state.files?.runs.some((one) => one.file === its);
  return html`<li>
    <span><b>${code}</b> ${run}, ${counted(pieces, "piece")}</span>
    ${
      is_there
        ? html`<button type="button" aria-label="Its record: ${code}" @click=${() => void open_record(its, id)}>
            Its record
          </button>`
        : nothing
    }
  </li>`;
}
