// A formula, all that it may say, with the figures that come of it always in sight.
import { html, nothing, type TemplateResult } from "lit";
import { all_conflicts, all_taken } from "../documents/conflicts";
import type { FormulaSlot } from "../documents/file_types";
import { use_in_run } from "../documents/formula_opening";
import { state } from "../documents/state";
import { bench_of, is_of_several, pieces_of, whipped_for, type Bench } from "../figures/batches";
import { dangers_of } from "../figures/dangers";
import { explained } from "../figures/explained";
import type { TermName } from "../figures/terms";
import { for_lye, shown_weight } from "../figures/weights";
import { set_aside, which_is_to_stay } from "../forms/conflict";
import { pouring_part } from "../forms/curing_part";
import { fat_rows } from "../forms/fat_rows";
import { is_of_blank, still_needed } from "../forms/still_needed";
import { field, is_about, wanting_field } from "../forms/field";
import { folded } from "../forms/form_parts";
import { lye_part } from "../forms/lye_part";
import { stirred_in } from "../forms/stirred_in";
import { has_topping } from "../forms/topping_form";
import type { Batter } from "../program/answers";
import { wording } from "../program/api";
import { both, mass, per_cent } from "../program/numbers";
import { ask_again, complaint, place_words } from "./complaint";
import { touches } from "../forms/used_by";
import { go_back_to } from "./where";

const conflicts = () => [...all_conflicts().map((file) => which_is_to_stay(file)), ...all_taken().map(set_aside)];

export function formula_view(): TemplateResult {
  const of = state.formula_of;
  const file = state.formulas[of];
  if (!file)
    return html`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${conflicts()}${complaint()}
      <p>Reading the formula ...</p>
      ${back(of)}`;
  const bench = state.plan && bench_of(state.plan);
  const batter = of === "pipe" ? bench?.whippings[0] : bench?.pour;
  return html`${conflicts()}
    <h1 id="formula-title" tabindex="-1">${String(file.now.name || "Unnamed formula")}</h1>
    <p class="aside">${where(of)}</p>
    <div class="choice">${back(of)}${of === "apart" ? in_run() : nothing}</div>
    ${touches(state.files?.formulas.find((one) => one.file === file.file))} ${strip(of, batter, bench)} ${named(of)}
    ${fat_rows(of)} ${lye_part(of, batter)} ${stirred_in(of)} ${pouring_part(of)}
    <div class="choice">${back(of)}</div>`;
}

/** All that is asked about it. */
export const formula_questions = (of: FormulaSlot): unknown => [
  named(of),
  fat_rows(of),
  lye_part(of, undefined),
  stirred_in(of),
  pouring_part(of),
];

const run_name = (): string => String(state.run.now.name ?? state.run.file);

function where(of: FormulaSlot): string {
  const file = state.formulas[of]!;
  const copied = file.shipped ? " Built-in: your first change is saved as a copy." : "";
  const both_use = state.formulas.pour === file && state.formulas.pipe === file;
  if (of === "apart") return `Opened on its own; the figures are for a base of "${run_name()}".${copied}`;
  if (both_use) return `Base and topping of "${run_name()}" are both made of it.${copied}`;
  return `${of === "pour" ? "Base" : "Topping"} of "${run_name()}".${copied}`;
}

function back(of: FormulaSlot): TemplateResult {
  const is_apart = of === "apart";
  const go = () => go_back_to(is_apart ? { name: "formulas" } : { name: state.came_from, file: state.run.file });
  return html`<button type="button" class="strong" @click=${go}>
    ${is_apart ? "Close the formula" : "Back to the run"}
  </button>`;
}

function in_run(): TemplateResult {
  return html`<button type="button" @click=${() => void use_in_run("pour")}>Use it as the base</button> ${
      has_topping()
        ? html`<button type="button" @click=${() => void use_in_run("pipe")}>Use it as the topping</button>`
        : nothing
    }`;
}

/** In short what comes of it. Struck through where it is not of what is typed now. */
function strip(of: FormulaSlot, batter: Batter | undefined, bench: Bench | undefined): TemplateResult {
  return html`<section class="strip" aria-label="What comes of it">
    ${
      batter && bench
        ? html`<dl>
            ${[...amount_of(of, bench), ...figures(of, batter)].map(
              ([name, shown, term]) =>
                html`<div class=${state.is_old ? "old" : ""}>
                  <dt>${name} ${term ? explained(term) : nothing}</dt>
                  <dd><b>${shown}</b></dd>
                </div>`,
            )}
          </dl>`
        : nothing
    }
    ${asks(of)}
  </section>`;
}

/** FormulaSlot weights they are, where a run has more than those. */
function amount_of(of: FormulaSlot, bench: Bench): Short[] {
  const whipping = of === "pipe" ? whipped_for(bench, bench.whippings[0]) : "";
  if (whipping) return [["For one whipping", whipping]];
  return is_of_several(bench.whole) ? [["For one batch", pieces_of(bench.whole, bench.batch)]] : [];
}

type Short = [name: string, shown: string, term?: TermName];

function figures(of: FormulaSlot, batter: Batter): Short[] {
  const sign = dangers_of(of).length ? " ⚠" : "";
  return [
    ["Fats", both(mass(state.units, batter.fats_g))],
    ["Superfat as weighed", `${per_cent(batter.superfat_percent.effective)}${sign}`, "superfat_as_weighed"],
    ...for_lye(batter).map(({ one }) => [one.name, both(shown_weight(state.units, one))] as Short),
  ];
}

function asks(of: FormulaSlot): TemplateResult {
  const said = is_of_blank() ? undefined : state.complaint;
  if (!said)
    return html`<div role="status"></div>
      ${still_needed()}`;
  const is_here = is_about(of);
  const is_found = is_here && said.field !== "" && document.activeElement !== wanting_field();
  return html`<div role="status" class="asks">
      <p class="alarm">
        <strong>${state.plan ? "These figures are out of date." : "No figures yet."}</strong>
        ${is_here ? "" : "Not about this formula: "}${place_words(said.field)}${wording(said)}
      </p>
      ${said.is_fault ? html`<button type="button" @click=${ask_again}>Ask again</button>` : nothing}
      ${
        is_found
          ? html`<button type="button" @click=${() => wanting_field()?.focus()}>Go to the field</button>`
          : nothing
      }
    </div>
    ${still_needed()}`;
}

function named(of: FormulaSlot): TemplateResult {
  return html`<section class="card" aria-label="Name">
    ${field({ label: "Name", of, at: "/name", wide: true })}
    ${folded({
      of,
      name: "note",
      pointers: ["/note"],
      summary: "Your note",
      body: () => field({ label: "Note", of, at: "/note", optional: true, wide: true }),
    })}
  </section>`;
}
