// The mould of the run: what it holds at each depth, and how it looks.
import { html, nothing, type TemplateResult } from "lit";
import { state } from "../documents/state";
import { ways_of_run } from "../documents/ways";
import { level_curve } from "../drawings/curve";
import type { SolidView } from "../drawings/solid_panel";
import { figure } from "../figures/figure";
import type { Plan } from "../program/answers";
import { both, length, volume } from "../program/numbers";
import { mould_ways } from "../moulds/mould_ways";
import "../drawings/solid_panel";

export function mould_view(plan: Plan): TemplateResult {
  const { measured } = state;
  if (!measured) return html`<p role="status">${state.measuring_failed ?? "Measuring the mould ..."}</p>`;
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
    ${mould_ways(ways_of_run(measured.mould))}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
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

/** The piece first, where it is more than what fills the mould. */
function solid_views(plan: Plan, mould_file: string): SolidView[] {
  const filled = {
    words: "The mould, filled",
    of: { gauge: { file: mould_file, "below-brim": `${plan.pour.below_brim_mm} mm` } },
  };
  const whole = { words: "The whole piece", of: { plan: { file: state.run.file, run: state.run.now } } };
  return plan.pipe || plan.decorations?.length || plan.pour.layers?.length ? [whole, filled] : [filled, whole];
}
