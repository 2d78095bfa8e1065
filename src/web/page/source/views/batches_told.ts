// What is told of all batches of a run.
import { html, nothing, type TemplateResult } from "lit";
import { counted, fillings_of, has_sizes, is_of_several, listed, pieces_of } from "../figures/batches";
import type { Plan } from "../program/answers";

/** For the run: how many batches, what sets their size, and what one piece more or fewer does. */
export function batches_told(plan: Plan): TemplateResult {
  const { batches, fillings, cavities, to_stock } = plan.pieces;
  const sizes = plan.batches.map((one) => `${has_sizes(plan) ? `${one.count} of ` : ""}${pieces_of(plan, one)}`);
  const made = `Made in ${batches} batches${
    has_sizes(plan) ? ": " : " of "
  }${listed(sizes)}; ${fillings_of(fillings, cavities)}.`;
  const sets = plan.batch_limits.filter((one) => one.sets);
  return html`<div class="batches-told of-plan">
    ${is_of_several(plan) ? html`<p><b>${made}</b></p>` : nothing}
    ${
      to_stock > 0
        ? html`<p>
            ${counted(to_stock, plan.cut ? "bar" : "piece")} beyond those to sell ${to_stock === 1 ? "goes" : "go"} to
            stock.
          </p>`
        : nothing
    }
    ${
      sets.length
        ? html`<p><span class="called">What sets a batch:</span> ${sets.map((one) => one.text).join(" ")}</p>`
        : nothing
    }
    ${
      plan.around.length
        ? html`<p><span class="called">One fewer, one more:</span> ${plan.around.map((one) => one.text).join(" ")}</p>`
        : nothing
    }
  </div>`;
}
