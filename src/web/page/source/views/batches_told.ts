// The heading over one batch's weights, with the choice of another, and what is told of all batches.
import { html, nothing, type TemplateResult } from "lit";
import { announce, state, update } from "../documents/state";
import {
  chosen_batch,
  counted,
  fillings_of,
  has_sizes,
  how_often,
  is_of_several,
  listed,
  pieces_of,
  times,
  type Bench,
} from "../figures/batches";
import { choice } from "../forms/form_parts";
import type { Plan } from "../program/answers";

/** Over all that is weighed for one batch. With two sizes there is one to choose, and both are named. */
export function batch_head(bench: Bench): TemplateResult {
  const { whole, batch } = bench;
  const often = how_often(whole, batch);
  return html`<h3 class="batch-head of-plan ${has_sizes(whole) ? "of-sizes" : ""}">
      One batch: ${pieces_of(whole, batch)}${often ? html`<span>, ${often}</span>` : nothing}
    </h3>
    ${
      has_sizes(whole)
        ? html`<div class="sizes">
            ${choice(
              "Which batch is weighed",
              String(chosen_batch(whole)),
              whole.batches.map((one, i) => [
                String(i),
                pieces_of(whole, one) + (one.count > 1 ? `, ${times(one.count)}` : ""),
              ]),
              choose,
            )}
          </div>`
        : nothing
    }`;
}

function choose(which: string): void {
  const plan = state.plan!;
  update({ batch: Number(which) });
  announce(`One batch: ${pieces_of(plan, plan.batches[state.batch])}`);
}

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
            ${counted(to_stock, plan.cut ? "bar" : "piece")} beyond the order ${to_stock === 1 ? "goes" : "go"} to
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
