// How a run is set up: its order, then part by part what is asked about it, and last what is the same in every run.
import { html, nothing, type TemplateResult } from "lit";
import { state } from "../documents/state";
import { bench_of, counted, fillings_of, is_of_several, type Bench } from "../figures/batches";
import { figure } from "../figures/figure";
import { batch_form } from "../forms/batch_form";
import { cut_button } from "../forms/cut_form";
import { is_cut } from "../forms/decoration";
import { add_buttons } from "../forms/decoration_form";
import { field } from "../forms/field";
import { file_choice } from "../forms/form_parts";
import { packaging_form } from "../forms/packaging_form";
import { add_label, has_label } from "../forms/run_extras";
import { add_topping, has_topping, topping_back } from "../forms/topping_form";
import { wants_from, within } from "../forms/wanted";
import type { Plan } from "../program/answers";
import { batches_told } from "./batches_told";
import { cut_part, decorate_part, dust_part, has_decorations, has_dust } from "./decorate_lane";
import { formula_questions } from "./formula_view";
import { label_part } from "./label_part";
import { pipe_part } from "./pipe_lane";
import { pour_part } from "./pour_lane";
import { lye_part } from "./shelf";
import { my_studio } from "./studio";

export function set_up_view(plan?: Plan): TemplateResult {
  const bench = plan && bench_of(plan);
  return html`${order(plan)}
    <div class="set-up">${parts(bench)} ${unused()} ${my_studio(bench)}</div>`;
}

function parts(bench?: Bench): TemplateResult {
  return html`${pour_part(bench)} ${has_topping() ? pipe_part(bench) : nothing}
  ${has_decorations() ? decorate_part(bench) : nothing} ${has_dust() ? dust_part(bench) : nothing}
  ${is_cut() ? cut_part(bench) : nothing} ${lye_part(bench)} ${has_label() ? label_part(bench?.whole) : nothing}`;
}

/** What the run has not, and may have. */
function unused(): TemplateResult {
  return html`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${
        has_topping()
          ? nothing
          : html`<button type="button" @click=${add_topping}>Add a topping</button>${topping_back()}`
      }
      ${add_buttons()} ${cut_button()}
      ${has_label() ? nothing : html`<button type="button" @click=${add_label}>Draft the label</button>`}
    </div>
  </section>`;
}

function asked(more: unknown = nothing): TemplateResult {
  return html`<div class="row">
    ${field({ label: "Pieces to sell", at: "/sell", count: true, short: true })}
    ${file_choice("Mould", "/pour/mould", state.files?.moulds)}
    ${file_choice("Base", "/pour/formula", state.files?.formulas)}
    ${has_topping() ? file_choice("Topping", "/pipe/formula", state.files?.formulas) : nothing} ${more}
  </div>`;
}

export function order(plan?: Plan): TemplateResult {
  return html`<section class="order-of" aria-labelledby="run-title">
    ${typeof state.run.now.note === "string" ? html`<p class="aside">${state.run.now.note}</p>` : nothing}
    ${asked(plan ? to_make(plan) : nothing)}
    <div class="batches">${plan ? batches_told(plan) : nothing} ${batch_form()} ${packaging_form()}</div>
  </section>`;
}

function to_make(plan: Plan): TemplateResult {
  const { sell, make, fillings, cavities, casts, batches } = plan.pieces;
  const fills = is_of_several(plan)
    ? `${batches} batches, ${counted(fillings, "filling")}`
    : fillings_of(fillings, cavities);
  return figure({
    key: "pieces.make",
    label: plan.cut ? "Bars to make" : "Pieces to make",
    note: casts !== make ? `${casts} ${plan.cut ? "loaves" : "casts"}, ${fills}` : fills,
    shown: [String(make), sell === make ? "" : `for ${sell}`],
    size: "weigh",
    of: "pieces.make",
  });
}

/** Everything that is asked about what the figures are made of. */
function all_questions(): unknown {
  const slots = state.formulas.apart ? (["apart"] as const) : (["pour", "pipe"] as const);
  const formulas = slots.filter((slot) => state.formulas[slot]).filter(is_first_of_file);
  return [
    within({ part: "Run" }, () => [asked(), batch_form(), packaging_form()]),
    ...formulas.map((slot) =>
      within({ part: String(state.formulas[slot]!.now.name || "Formula") }, () => formula_questions(slot)),
    ),
    parts(),
    my_studio(),
  ];
}

/** One file may be the formula of both batters. */
const is_first_of_file = (slot: "apart" | "pour" | "pipe", i: number, all: readonly ("apart" | "pour" | "pipe")[]) =>
  all.findIndex((one) => state.formulas[one] === state.formulas[slot]) === i;

wants_from(all_questions);
