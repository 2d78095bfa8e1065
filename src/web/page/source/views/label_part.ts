// The label: its net weight, and a draft of what stands on it.
import { html, nothing, svg, type TemplateResult } from "lit";
import { state } from "../documents/state";
import { label_form } from "../forms/run_extras";
import type { Plan } from "../program/answers";
import { both, mass } from "../program/numbers";
import { label_draft } from "./money_view";
import { set_up_part, told } from "./set_up_part";

export function label_part(plan?: Plan): TemplateResult {
  return set_up_part({
    name: "label",
    title: "Label",
    drawing: tag_drawing,
    result: told(headline(plan)),
    about: [["run", "/label"]],
    form: () => html`<div class="more">${label_form()} ${plan ? label_draft(plan) : nothing}</div>`,
  });
}

function headline(plan?: Plan): unknown {
  const net = plan?.piece.label_g;
  if (!plan?.label || net === null || net === undefined) return "A draft of the label, not yet with figures.";
  return html`Net weight for the label <b>${both(mass(state.units, net, 0))}</b>, sold in the ${plan.label.market}.`;
}

/** No more than a sign for it. */
const tag_drawing = (): TemplateResult =>
  html`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${svg`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;
