// What really happened to a batch: every blank of its sheet, in the order of the hands, then its cure and its test.
import { html, nothing, type TemplateResult } from "lit";
import { batch_looked_at, follow_run_to_record, is_cup_of_topping } from "../documents/record";
import { open_base_of } from "../documents/record_opening";
import { show_trail } from "../documents/stock";
import { state } from "../documents/state";
import type { Blank, RecordedBatch } from "../program/record";
import { blank_field } from "./blank_field";
import { weights } from "./weights";
import { code_part } from "./code_part";
import { cure } from "./cure";
import { for_sale, makings, which } from "./makings";
import { weigh_cup_read } from "./weigh_cup_read";

type Drawn = TemplateResult | typeof nothing;

interface Ways {
  to_weights: () => void;
  to_learned: () => void;
}

export function record_view({ to_weights, to_learned }: Ways): TemplateResult {
  follow_run_to_record();
  const batch = batch_looked_at();
  return html`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${state.plan?.run ?? String(state.run.now.name ?? "")}</h1>
    ${state.record.batches.length ? html`<p><button type="button" @click=${to_learned}>What your batches say</button></p>` : nothing}
    ${told()} ${makings()} ${batch ? of_batch(batch) : none_yet(to_weights)}
  </section>`;
}

/** What stands between her and the program. */
export function told(): TemplateResult {
  const { failed, unsent, acts } = state.record;
  const is_unsent = unsent !== undefined && acts.some((one) => !one.refused);
  return html`<div role="status">
    ${
      failed !== undefined
        ? html`<p class="alarm"><strong>What is recorded could not be read:</strong> ${failed}.</p>`
        : nothing
    }
    ${
      is_unsent
        ? html`<p class="alarm">
            <strong>Not kept yet:</strong> ${unsent}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`
        : nothing
    }
  </div>`;
}

function none_yet(to_weights: () => void): TemplateResult {
  if (state.record.version === undefined)
    return html`<p class="hint">${state.record.failed === undefined ? "Reading ..." : ""}</p>`;
  return html`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${to_weights}>To the weights</button></p>`;
}

function of_batch(batch: RecordedBatch): TemplateResult {
  return html`<div class="record-head">
      ${code_part(batch)}
      <p>${which(batch)}</p>
      <p class="sale ${batch.for_sale ? "is" : ""}">
        <span aria-hidden="true">${batch.for_sale ? "✓" : "✗"}</span> <b>${for_sale(batch)}</b>
      </p>
      ${poured_from(batch)}
      ${is_beside_shelf() ? html`<button type="button" @click=${() => show_trail(`batch ${batch.begun.code}`)}>What is in it</button>` : nothing}
    </div>
    ${what_is_noted(batch)}`;
}

export function what_is_noted(batch: RecordedBatch): TemplateResult {
  const { blanks, as_weighed = [] } = batch;
  return html`${as_weighed.map(
    ({ severity, text }) =>
      html`<p class=${severity === "danger" ? "alarm" : "aside"}>
        ${severity === "danger" ? html`<strong aria-hidden="true">⚠</strong> ` : nothing}${text}
      </p>`,
  )}
  ${blanks ? all_blanks(batch, blanks) : html`<p class="hint">Reading ...</p>`}`;
}

/** Its fats and its lye are noted there. */
function poured_from({ poured_from: code }: RecordedBatch): Drawn {
  if (code === null) return nothing;
  const words = html`Poured from the base <b>${code}</b>`;
  return is_beside_shelf() && state.files?.orders.length
    ? html`<button type="button" @click=${() => void open_base_of(code)}>${words}</button>`
    : html`<p>${words}</p>`;
}

/** The shelf is that of the folder itself; a run in a folder within it has records of its own. */
export const is_beside_shelf = (): boolean => !state.record.run.includes("/");

interface Part {
  title: string;
  of: string;
  blanks: Blank[];
}

const titles: Record<Blank["when"], string> = {
  day_before: "Cast beforehand",
  base_mixed: "Mixing",
  poured: "Pouring",
  topping_mixed: "Mixing",
  whipped: "Whipping",
  piped: "Piping",
  afterwards: "Pieces and time",
};

/** From there on it is about the cure, the test and the sale. */
const first_of_cure = "unmoulded_on";
const cure_title = "Cure and test";

function parts_of(blanks: Blank[]): Part[] {
  const parts: Part[] = [];
  for (const blank of blanks) {
    const last = parts.at(-1);
    const is_cure = blank.key === first_of_cure || last?.title === cure_title;
    const title = is_cure ? cure_title : titles[blank.when];
    const of = blank.of ?? "";
    if (last?.title === title && last.of === of) last.blanks.push(blank);
    else parts.push({ title, of, blanks: [blank] });
  }
  return parts;
}

function all_blanks(batch: RecordedBatch, blanks: Blank[]): TemplateResult {
  const parts = parts_of(blanks);
  const ways = html`<nav class="parts-of-record" aria-label="Parts of the record">
    ${parts.map((one, i) => html`<button type="button" @click=${() => go_to_part(i)}>${called(one)}</button>`)}
  </nav>`;
  return html`${parts.length > 1 ? ways : nothing} ${parts.map((one, i) => part(batch, one, i))} ${weights(batch)}`;
}

const called = ({ title, of }: Part): string => (of ? `${title}: ${of}` : title);
const part_id = (i: number): string => `record-part-${i}`;

function go_to_part(i: number): void {
  const title = document.getElementById(part_id(i));
  title?.focus({ preventScroll: true });
  title?.scrollIntoView({ block: "start" });
}

const part = (batch: RecordedBatch, one: Part, i: number): TemplateResult =>
  html`<section class="record-part" aria-labelledby=${part_id(i)}>
    <h2 id=${part_id(i)} tabindex="-1">${called(one)}</h2>
    ${one.title === cure_title ? before_sale(batch) : nothing} ${one.blanks.map((blank) => drawn(batch, blank))}
  </section>`;

const before_sale = ({ for_sale: is }: RecordedBatch): Drawn =>
  is
    ? nothing
    : html`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`;

const drawn = (batch: RecordedBatch, blank: Blank): TemplateResult =>
  blank.kind === "weighing"
    ? cure(batch, blank)
    : html`${blank_field(batch, blank)} ${is_cup_of_topping(blank) ? weigh_cup_read(batch, blank) : nothing}`;
