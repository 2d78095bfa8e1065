// One figure that batches tell: how sure it is, what the files say, what it would change, and taking it.
import { html, nothing, svg, type TemplateResult } from "lit";
import { take_back, take_figure } from "../documents/learned";
import { state } from "../documents/state";
import type { Learned, LearnedEffect, LearnedFigure, LearnedTaking } from "../program/answers";
import { both, day, length, mass, plain, trimmed, volume } from "../program/numbers";

type Drawn = TemplateResult | typeof nothing;

/** A value in its unit, as all figures of the page are shown. */
export function amount(unit: string, value: number): string {
  const { units } = state;
  if (unit === "mm") return `${value > 0 ? "+" : ""}${both(length(units, value))}`;
  if (unit === "ml") return both(volume(units, value));
  if (unit === "g") return both(mass(units, value));
  if (unit === "g/ml") return `${plain(value, 3)} g/ml`;
  if (unit === "%") return `${trimmed(value, 1)} %`;
  if (unit === "min") return value < 5 ? `${plain(value * 60, 0)} s` : `${plain(value, 0)} min`;
  return trimmed(value, 3);
}

const batches = (count: number): string => (count === 1 ? "1 batch" : `${count} batches`);
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

export const nothing_yet = ({ figures, batches: count }: Learned): string =>
  figures.length
    ? `From ${batches(count)} recorded beside this run. Only a batch's own notes tell a figure.`
    : `${batches(count)} recorded beside this run: a figure is shown once three of them tell it.`;

export function learned_figure(figure: LearnedFigure, is_asleep: boolean): TemplateResult {
  const id = `learned-${figure.name.replaceAll(/\W/g, "-")}`;
  const { unit, value, low, high, values } = figure;
  return html`<article class="learned-figure" data-name=${figure.name} aria-labelledby=${id}>
    <h3 id=${id}>${capital(figure.words)}</h3>
    <div class="learned-told">
      <p class="learned-value"><b>${amount(unit, value)}</b></p>
      <p>
        between <span class="low">${amount(unit, low)}</span> and <span class="high">${amount(unit, high)}</span>, from
        <span class="count">${batches(values.length)}</span>
      </p>
      <p>
        ${figure.used_now === null ? now_without(figure) : html`The plan uses <b class="used">${amount(unit, figure.used_now)}</b>.`}
      </p>
    </div>
    ${strip(figure)} ${stands(figure)} ${effects(figure)} ${taking(figure, id, is_asleep)} ${said(figure)}
    ${each(figure)}
  </article>`;
}

const now_without = ({ unit }: LearnedFigure): string =>
  unit === "min" ? "The studio says nothing of it yet." : "The plan uses none.";

/** Batch by batch, with the range and what the plan uses. */
function strip({ values, low, high, value, used_now }: LearnedFigure): TemplateResult {
  const all = [...values.map((one) => one.value), low, high, ...(used_now === null ? [] : [used_now])];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const wide = most - least || 1;
  const x = (number: number) => 6 + (288 * (number - least)) / wide;
  return html`<svg class="learned-strip" viewBox="0 0 300 30" aria-hidden="true">
    ${svg`<rect class="range" x=${x(low)} y="6" width=${Math.max(1, x(high) - x(low))} height="18" />
      <path class="told" d="M${x(value)} 3v24" />
      ${used_now === null ? nothing : svg`<path class="used" d="M${x(used_now)} 1v28" />`}
      ${values.map((one) => svg`<circle cx=${x(one.value)} cy="15" r="3" />`)}`}
  </svg>`;
}

/** Whether there is reason to take it, in words. */
function stands({ standing, in_file }: LearnedFigure): Drawn {
  if (in_file?.is_taken) return nothing;
  if (standing === "stands nowhere" || !in_file)
    return html`<p class="aside">For you to know: no file has a place for it.</p>`;
  if (standing === "too few")
    return html`<p class="aside">Too few batches yet to tell it from chance: it can be taken from six on.</p>`;
  if (standing === "as planned")
    return html`<p class="aside">What the plan uses lies between these: no reason to change it.</p>`;
  return in_file.refused
    ? html`<p class="minded">
        <strong>Cannot be taken:</strong> it ${in_file.refused.problem}. ${capital(in_file.refused.remedy)}.
      </p>`
    : nothing;
}

const effect = ({ of, unit, now, then }: LearnedEffect): TemplateResult =>
  html`<li>
    ${of}: ${amount(unit, now)} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
    <b>${amount(unit, then)}</b>
  </li>`;

function effects({ with_it, no_plan_with_it, in_file }: LearnedFigure): Drawn {
  if (in_file?.is_taken) return nothing;
  if (no_plan_with_it !== undefined)
    return html`<p class="minded"><strong>With it there would be no plan:</strong> ${no_plan_with_it}.</p>`;
  return with_it.length
    ? html`<p>With it:</p>
        <ul class="learned-effects">
          ${with_it.map(effect)}
        </ul>`
    : nothing;
}

function taking(figure: LearnedFigure, id: string, is_asleep: boolean): Drawn {
  const { in_file, standing } = figure;
  if (!in_file) return nothing;
  const { file, says, would_say, is_taken, taken, refused } = in_file;
  const may_take = !is_taken && !refused && standing === "suggested";
  const is_off = is_asleep || state.learned.doing !== undefined;
  return html`${taken ? taken_told(taken, in_file) : nothing}
    ${
      may_take
        ? html`<p class="in-file">
            In ${file}: ${says ?? "nothing yet"} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
            <b>${would_say}</b>
          </p>`
        : nothing
    }
    <div class="row">
      ${
        may_take
          ? html`<button
              type="button"
              class="strong"
              ?disabled=${is_off}
              aria-describedby=${id}
              @click=${() => void take_figure(figure)}
            >
              Take it
            </button>`
          : nothing
      }
      ${
        taken
          ? html`<button
              type="button"
              ?disabled=${is_off}
              aria-describedby=${id}
              @click=${() => void take_back(figure)}
            >
              Take back
            </button>`
          : nothing
      }
    </div>`;
}

const taken_told = (
  { on, batches: count, before, steps }: LearnedTaking,
  { file, says }: { file: string; says: string | null },
): TemplateResult =>
  html`<p class="taken">
    <strong><span aria-hidden="true">✓</span> Taken</strong> on ${day(on)} from ${batches(count)}: <b>${says}</b> in
    ${file}, and the plan uses it. Before: ${before ?? "nothing"}${steps > 1 ? `, which was taken as well` : ""}.
  </p>`;

function said({ name }: LearnedFigure): Drawn {
  const { said: it } = state.learned;
  if (it?.name !== name) return nothing;
  return html`<p class=${it.is_refused ? "complaint" : "hint"} role="status">${it.words}</p>`;
}

const each = ({ values, unit, name }: LearnedFigure): TemplateResult =>
  html`<details>
    <summary>Batch by batch</summary>
    <ul class="learned-batches" data-of=${name}>
      ${values.map((one) => html`<li>${one.batch}, ${day(one.date)}: <b>${amount(unit, one.value)}</b></li>`)}
    </ul>
  </details>`;
