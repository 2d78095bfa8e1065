// A run on the bench: its order, the lanes, the shelf, what to watch.
import { html, nothing, type TemplateResult } from "lit";
import { all_conflicts, conflict_of } from "../documents/conflicts";
import { edit } from "../documents/editing";
import type { Slot } from "../documents/file_types";
import { open_formula } from "../documents/formula_opening";
import { redo, undo } from "../documents/history";
import { is_changed } from "../documents/open_file";
import { plan_soon } from "../documents/planning";
import { save_now } from "../documents/saving";
import { state, toggle, update } from "../documents/state";
import { level_curve } from "../drawings/curve";
import type { SolidView } from "../drawings/solid_panel";
import { bench_of, counted, fillings_of, is_of_several, is_weighed_in_parts, type Bench } from "../figures/batches";
import { figure } from "../figures/figure";
import { batch_form } from "../forms/batch_form";
import { which_is_to_stay } from "../forms/conflict";
import { cut_form } from "../forms/cut_form";
import { is_cut } from "../forms/decoration";
import { field, is_about, wanting_field } from "../forms/field";
import { file_choice, reach } from "../forms/form_parts";
import { keep_it } from "../forms/keep_it";
import { extras_questions } from "../forms/run_extras";
import { add_topping, has_topping, topping_back } from "../forms/topping_form";
import type { Plan } from "../program/answers";
import { wording } from "../program/api";
import { both, length, volume, type Units } from "../program/numbers";
import { batches_told } from "./batches_told";
import { files_out } from "./files_out";
import { is_in_danger } from "./foremost";
import { cut_lane, has_decorations, decorate_lane, decorate_questions, unused_decorate } from "./decorate_lane";
import { pipe_lane, pipe_questions } from "./pipe_lane";
import { pour_lane, pour_questions } from "./pour_lane";
import { run_needs } from "./run_needs";
import { losses_and_scales, piece, shelf, watch_list } from "./shelf";

export function head(open_start: () => void): TemplateResult {
  const units = (to: Units) => () => {
    update({ units: to });
    localStorage.setItem("units", to);
  };
  return html`<header>
    <p class="mark" aria-hidden="true">▽ Brimwright</p>
    ${
      state.view === "run" || state.view === "formula"
        ? html`<div class="tools" role="group" aria-label="Tools">
              <button type="button" @click=${open_start}>Runs and moulds</button>
              <button type="button" ?disabled=${!state.past.length} @click=${undo}>Undo</button>
              <button type="button" ?disabled=${!state.future.length} @click=${redo}>Redo</button>
            </div>
            <div class="tools" role="group" aria-label="Units">
              ${(["metric", "both", "us"] as const).map(
                (one) =>
                  html`<button
                    type="button"
                    aria-pressed=${state.units === one ? "true" : "false"}
                    @click=${units(one)}
                  >
                    ${{ metric: "g, mm", both: "both", us: "oz, in" }[one]}
                  </button>`,
              )}
            </div>
            <p class="saving" role="status">${saving_words()}</p>`
        : nothing
    }
  </header>`;
}

function saving_words(): string {
  const formula = unsaved_formula();
  if (formula) return formula;
  const { run } = state;
  const is_run_still = state.formula_of === "apart" || !(is_changed(run) || run.theirs || run.failed);
  if (state.view === "formula" && is_run_still) return kept_formula_words();
  if (run.theirs) return "Not saved: say which is to stay.";
  if (run.failed) return `Not saved: ${run.failed}`;
  if (is_changed(run)) return "Saving ...";
  return run.shipped ? "An example: your first change is saved as a copy." : `Saved in ${run.file}`;
}

/** Of what is typed in a formula and not in its file. */
function unsaved_formula(): string {
  const what = state.formulas.apart ? "apart" : "run";
  const conflict = conflict_of(what);
  if (conflict) return `Not saved: ${conflict.file} was changed outside this page; say which is to stay.`;
  const open = what === "apart" ? [state.formulas.apart] : [state.formulas.pour, state.formulas.pipe];
  if (!open.some((file) => file && is_changed(file))) return "";
  return state.complaint && state.complaint.file === "" ? `Not saved: ${state.complaint.problem}` : "Saving ...";
}

function kept_formula_words(): string {
  const file = state.formulas[state.formula_of];
  if (!file) return "";
  return file.shipped ? "Came with the program: your first change is saved as a copy." : `Saved in ${file.file}`;
}

export function bench(): TemplateResult {
  const { plan } = state;
  const of_one = plan && bench_of(plan);
  return html`
    ${all_conflicts().map((file) => which_is_to_stay(file))} ${complaint()}
    ${plan ? order(plan) : html`<h1>${String(state.run.now.name ?? "")}</h1>`}
    ${
      plan && of_one
        ? html`${lanes(of_one)} ${shelf(of_one)}
            <div class="beside">${watch_list(plan)} ${piece(plan)}</div>
            ${run_needs(of_one)} ${losses_and_scales(of_one)} ${mould(plan)} ${files_out(plan)} ${parts(of_one)}`
        : html`<p class="hint">${state.complaint ? "Correct this to see the figures." : "Reading the run ..."}</p>
            ${unplanned()}`
    }
  `;
}

/** Leads from any place to any part; by focus, so that the keyboard goes on from there. */
function parts(bench: Bench): TemplateResult {
  const go = (id: string) => () => {
    const title = document.getElementById(id)!;
    title.tabIndex = -1;
    title.focus({ preventScroll: true });
    title.scrollIntoView({ block: "start" });
  };
  const there: [string, string][] = [
    ["run-title", "Top"],
    ["lane-pour", "Pour"],
    ["lane-pipe", "Pipe"],
    ["lane-decorate", "Decorate"],
    ["lane-cut", "Cut"],
    ["shelf-title", "Lye"],
    ...(is_in_danger() ? [] : [["watch-title", "Cautions"] as [string, string]]),
    ["piece-title", "Piece"],
    ["needs-title", "Needs"],
    ["mould-title", "Mould"],
    ["out-title", "Print"],
  ];
  const has = {
    "lane-pipe": has_topping(),
    "lane-cut": is_cut(),
    "lane-decorate": has_decorations(),
    "needs-title": is_weighed_in_parts(bench),
  } as Record<string, boolean>;
  return html`<nav class="parts" aria-label="Parts of this run">
    ${
      is_in_danger()
        ? html`<button type="button" class="danger" @click=${go("watch-title")}>
            <span aria-hidden="true">⚠</span> Danger
          </button>`
        : nothing
    }${there
      .filter(([id]) => has[id] ?? true)
      .map(([id, words]) => html`<button type="button" @click=${go(id)}>${words}</button>`)}
  </nav>`;
}

/** Without a plan there are no lanes, yet what is wrong must be within reach. */
function unplanned(): TemplateResult {
  return html`<div class="row">
      ${field({ label: "Pieces to sell", at: "/sell", count: true, short: true })}
      ${field({ label: "Spoilage", at: "/spoilage", unit: "%", short: true })}
    </div>
    ${batch_form()} ${state.complaint ? unplanned_parts() : nothing}`;
}

function unplanned_parts(): TemplateResult {
  const has_pipe = has_topping();
  return html`<div class="row">
      ${file_choice("Mould", "/pour/mould", state.files?.moulds)}
      ${file_choice("Base", "/pour/formula", state.files?.formulas)}
      ${has_pipe ? file_choice("Topping", "/pipe/formula", state.files?.formulas) : nothing}
    </div>
    <div class="lanes">
      ${lane("pour", "Pour", pour_questions())} ${has_pipe ? lane("pipe", "Pipe", pipe_questions()) : nothing}
      ${has_decorations() ? lane("decorate", "Decorate", decorate_questions()) : nothing}
      ${is_cut() ? lane("cut", "Cut", cut_form()) : nothing}
    </div>
    ${extras_questions()}`;
}

export function complaint(): TemplateResult {
  const said = state.complaint;
  return html`<div class="complaints" role="status">
    ${
      said
        ? html`<p class="alarm">
              <strong>${state.plan ? "The figures below are out of date." : "No figures yet."}</strong>
              ${said.field ? html`<code>${said.field}</code>: ` : nothing}${wording(said)}
            </p>
            ${said.is_fault ? html`<button type="button" @click=${ask_again}>Ask again</button>` : nothing}
            ${
              is_about("run")
                ? keep_it(state.run.now, said.keep, (pointer, value) => edit("run", pointer, value))
                : nothing
            }
            ${
              (wanting_field() && document.activeElement !== wanting_field()) || formula_wanting()
                ? html`<button type="button" @click=${go_to_field}>Go to the field</button>`
                : nothing
            }`
        : nothing
    }
  </div>`;
}

/** After a fault of the program's own: it is up again, and what was typed is still here. */
export function ask_again(): void {
  plan_soon();
  if (state.run.failed) void save_now();
}

/** What is wrong in a formula is mended where the whole formula stands. */
const formula_wanting = (): Slot | undefined =>
  (["pour", "pipe"] as const).find((one) => state.complaint?.file && state.complaint.field && is_about(one));

/** Opens a formula to mend the place that the program complains of. */
function mend_formula(slot: Slot): void {
  open_formula(slot);
  requestAnimationFrame(() => requestAnimationFrame(() => wanting_field()?.focus()));
}

function go_to_field(): void {
  const wanted = wanting_field();
  const slot = formula_wanting();
  if (wanted) reach(wanted);
  else if (slot) mend_formula(slot);
}

function order(plan: Plan): TemplateResult {
  const { sell, make, fillings, cavities, casts, batches } = plan.pieces;
  const fills = is_of_several(plan)
    ? `${batches} batches, ${counted(fillings, "filling")}`
    : fillings_of(fillings, cavities);
  return html`<section class="order-of" aria-labelledby="run-title">
    <div>
      <h1 id="run-title">${plan.run}</h1>
      ${typeof state.run.now.note === "string" ? html`<p class="aside">${state.run.now.note}</p>` : nothing}
      ${plan.from_studio ? html`<p class="aside">From the studio: ${plan.from_studio.text}.</p>` : nothing}
    </div>
    <div class="row">
      ${field({ label: "Pieces to sell", at: "/sell", count: true, short: true })}
      ${field({ label: "Spoilage", at: "/spoilage", unit: "%", short: true })}
      ${file_choice("Mould", "/pour/mould", state.files?.moulds)}
      ${file_choice("Base", "/pour/formula", state.files?.formulas)}
      ${has_topping() ? file_choice("Topping", "/pipe/formula", state.files?.formulas) : nothing}
      ${figure({
        key: "pieces.make",
        label: plan.cut ? "Bars to make" : "Pieces to make",
        note: casts !== make ? `${casts} casts, ${fills}` : fills,
        shown: [String(make), sell === make ? "" : `for ${sell}`],
        size: "weigh",
        of: "pieces.make",
      })}
    </div>
    <div class="batches">${batches_told(plan)} ${batch_form()}</div>
    <p class="aside">Tap a figure marked = to see how it is calculated.</p>
  </section>`;
}

function lanes(plan: Bench): TemplateResult {
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

/** The piece first, where it is more than what fills the mould. */
function solid_views(plan: Plan, mould_file: string): SolidView[] {
  const filled = {
    words: "The mould, filled",
    of: { gauge: { file: mould_file, "below-brim": `${plan.pour.below_brim_mm} mm` } },
  };
  const whole = { words: "The whole piece", of: { plan: { file: state.run.file, run: state.run.now } } };
  return plan.pipe || plan.decorations?.length || plan.pour.layers?.length ? [whole, filled] : [filled, whole];
}

function mould(plan: Plan): TemplateResult | typeof nothing {
  const { measured } = state;
  if (!measured) return nothing;
  const pocket = measured.gauge.pockets[0];
  const notes = measured.gauge.notes;
  return html`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${plan.pour.mould}</small></h2>
    ${figure({
      key: "mould.brimful",
      label: "To the brim",
      note: `${both(
        length(state.units, pocket.brim_mm - pocket.floor_mm),
      )} deep, ${measured.gauge.pockets.length} ${measured.gauge.pockets.length === 1 ? "cavity" : "cavities"}`,
      shown: volume(state.units, pocket.brimful_ml),
      of: "pockets.0.brimful_ml",
      working: measured.gauge.how.find((one) => one.of === "pockets.0.brimful_ml"),
    })}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the broken line is the pour line</figcaption>
        ${level_curve(pocket.levels, plan.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${solid_views(plan, measured.mould)}></solid-panel>
      </figure>
    </div>
    ${
      notes.length
        ? html`<ul class="limits">
            ${notes.map((one) => html`<li>${one.text}</li>`)}
          </ul>`
        : nothing
    }
  </section>`;
}
