// How a run is set up: its order, the lanes, the lye, losses and scales.
import { html, nothing, type TemplateResult } from "lit";
import { state, toggle } from "../documents/state";
import { bench_of, counted, fillings_of, is_of_several, type Bench } from "../figures/batches";
import { figure } from "../figures/figure";
import { batch_form } from "../forms/batch_form";
import { cut_form } from "../forms/cut_form";
import { is_cut } from "../forms/decoration";
import { field } from "../forms/field";
import { file_choice } from "../forms/form_parts";
import { extras_questions } from "../forms/run_extras";
import { add_topping, has_topping, topping_back } from "../forms/topping_form";
import type { Plan } from "../program/answers";
import { batches_told } from "./batches_told";
import { cut_lane, decorate_lane, decorate_questions, has_decorations, unused_decorate } from "./decorate_lane";
import { pipe_lane, pipe_questions } from "./pipe_lane";
import { pour_lane, pour_questions } from "./pour_lane";
import { run_needs } from "./run_needs";
import { losses_and_scales, shelf } from "./shelf";

export function set_up_view(plan: Plan): TemplateResult {
  const of_one = bench_of(plan);
  return html`${order(plan)} ${lanes(of_one)} ${shelf(of_one)} ${run_needs(of_one)} ${losses_and_scales(of_one)}`;
}

/** Without a plan there are no lanes, yet what is wrong must be within reach. */
export function unplanned(): TemplateResult {
  const has_pipe = has_topping();
  return html`${asked()} ${batch_form()}
    <div class="lanes">
      ${lane("pour", "Pour", pour_questions())} ${has_pipe ? lane("pipe", "Pipe", pipe_questions()) : nothing}
      ${has_decorations() ? lane("decorate", "Decorate", decorate_questions()) : nothing}
      ${is_cut() ? lane("cut", "Cut", cut_form()) : nothing}
    </div>
    ${extras_questions()}`;
}

function asked(more: unknown = nothing): TemplateResult {
  return html`<div class="row">
    ${field({ label: "Pieces to sell", at: "/sell", count: true, short: true })}
    ${field({ label: "Spoilage", at: "/spoilage", unit: "%", short: true })}
    ${file_choice("Mould", "/pour/mould", state.files?.moulds)}
    ${file_choice("Base", "/pour/formula", state.files?.formulas)}
    ${has_topping() ? file_choice("Topping", "/pipe/formula", state.files?.formulas) : nothing} ${more}
  </div>`;
}

export function order(plan: Plan): TemplateResult {
  const { sell, make, fillings, cavities, casts, batches } = plan.pieces;
  const fills = is_of_several(plan)
    ? `${batches} batches, ${counted(fillings, "filling")}`
    : fillings_of(fillings, cavities);
  const to_make = figure({
    key: "pieces.make",
    label: plan.cut ? "Bars to make" : "Pieces to make",
    note: casts !== make ? `${casts} ${plan.cut ? "loaves" : "casts"}, ${fills}` : fills,
    shown: [String(make), sell === make ? "" : `for ${sell}`],
    size: "weigh",
    of: "pieces.make",
  });
  return html`<section class="order-of" aria-labelledby="run-title">
    <div>
      ${typeof state.run.now.note === "string" ? html`<p class="aside">${state.run.now.note}</p>` : nothing}
      ${plan.from_studio ? html`<p class="aside">From the studio: ${plan.from_studio.text}.</p>` : nothing}
    </div>
    ${asked(to_make)}
    <div class="batches">${batches_told(plan)} ${batch_form()}</div>
    <p class="aside">Tap a figure marked = to see how it is calculated.</p>
  </section>`;
}

export function lanes(plan: Bench): TemplateResult {
  const has_pipe = has_topping();
  return html`<div class="lanes">
    ${lane("pour", "Pour", pour_lane(plan))} ${has_pipe ? lane("pipe", "Pipe", pipe_lane(plan)) : nothing}
    ${has_decorations() ? lane("decorate", "Decorate", decorate_lane(plan)) : nothing}
    ${is_cut() ? lane("cut", "Cut", cut_lane(plan)) : nothing}
    ${has_pipe ? nothing : unused("Pipe", "This run has no topping.", "Add a topping", add_topping, topping_back())}
    ${has_decorations() || is_cut() ? nothing : unused_decorate()}
  </div>`;
}

function lane(name: string, title: string, inside: TemplateResult): TemplateResult {
  const is_folded = state.folded.has(name);
  return html`<section class="lane ${name}" aria-labelledby="lane-${name}">
    <div class="lane-head">
      <h2 id="lane-${name}" tabindex="-1">${title}</h2>
      <button
        type="button"
        aria-expanded=${is_folded ? "false" : "true"}
        aria-label="${is_folded ? "Unfold" : "Fold"} ${title}"
        @click=${() => toggle("folded", name)}
      >
        ${is_folded ? "Unfold" : "Fold"}
      </button>
    </div>
    ${is_folded ? nothing : html`<div class="lane-body">${inside}</div>`}
  </section>`;
}

function unused(
  title: string,
  words: string,
  add: string,
  act: () => void,
  more: TemplateResult | typeof nothing = nothing,
): TemplateResult {
  return html`<section class="lane unused" aria-label=${title}>
    <h2>${title}</h2>
    <p>${words}</p>
    <button type="button" @click=${act}>${add}</button>${more}
  </section>`;
}
