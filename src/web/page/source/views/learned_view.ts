// What the batches of the run say for the next plan: each figure apart, taken or taken back by a tap.
import { html, nothing, type TemplateResult } from "lit";
import { learned_again, learned_now } from "../documents/learned";
import { state } from "../documents/state";
import type { Learned, LearnedFigure } from "../program/answers";
import { learned_figure, nothing_yet } from "./learned_figure";
import { learned_pictures } from "./learned_pictures";
import { show } from "./where";

type Drawn = TemplateResult | typeof nothing;

export function learned_view(): TemplateResult {
  const { kept, failed, is_old } = learned_now();
  return html`<section class="learned" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${state.plan?.run ?? String(state.run.now.name ?? "")}</h1>
    <p><button type="button" @click=${() => void show("record")}>Back to the record</button></p>
    <h2>What your batches say</h2>
    ${failed === undefined ? nothing : html`${told_why(failed)}`}
    ${kept ? told(kept.learned, is_old) : failed === undefined ? html`<p class="hint" role="status">Reading ...</p>` : nothing}
  </section>`;
}

const told_why = (failed: string): TemplateResult =>
  html`<p class="alarm" role="status"><strong>What they say could not be read:</strong> ${failed}.</p>
    <button type="button" @click=${learned_again}>Ask again</button>`;

function told(learned: Learned | null, is_old: boolean): TemplateResult {
  if (!learned?.batches) return html`<p>No batch is recorded yet. A figure is shown once three batches tell it.</p>`;
  return html`<div class=${is_old ? "old" : ""}>
    <p class="hint">${nothing_yet(learned)}</p>
    ${learned.figures.map((one) => learned_figure(one, is_old))} ${how_sure(learned.figures)} ${left_out(learned)}
    ${untold(learned)} ${contradictions(learned)} ${learned_pictures(learned)}
  </div>`;
}

/** Of those ranges that are shown. */
function how_sure(figures: LearnedFigure[]): Drawn {
  const has_interval = figures.some(({ level_percent }) => level_percent !== null);
  const has_range = figures.some(({ level_percent }) => level_percent === null);
  if (!figures.length) return nothing;
  return html`<p class="aside">
    Each dot is a batch. The shaded part is the range, the line in it what they say together, the dashed line what the
    plan uses.
    ${
      has_interval
        ? "From six batches on, a range holds the true figure 19 times of 20, unless notes are wrong in the same way each time. "
        : nothing
    }
    ${has_range ? "Below six, it is from the least to the greatest." : nothing}
  </p>`;
}

const left_out = ({ left_out: count }: Learned): Drawn =>
  count
    ? html`<p class="aside">
        ${count === 1 ? "1 batch was" : `${count} batches were`} of another formula, mould or topping under the same
        name, and ${count === 1 ? "is" : "are"} not counted where that matters.
      </p>`
    : nothing;

const untold = (learned: Learned): Drawn =>
  learned.untold.length
    ? html`<h3>What the notes cannot tell</h3>
        <ul class="limits">
          ${learned.untold.map(({ text }) => html`<li>${text}</li>`)}
        </ul>`
    : nothing;

const contradictions = (learned: Learned): Drawn =>
  learned.contradictions.length
    ? html`<h3>Notes that contradict each other</h3>
        <ul class="limits">
          ${learned.contradictions.map(({ text }) => html`<li>${text}</li>`)}
        </ul>`
    : nothing;
