// What one piece weighs, costs and is labelled, and what the whole run takes.
import { html, nothing, type TemplateResult } from "lit";
import { state } from "../documents/state";
import { bench_of } from "../figures/batches";
import { figure } from "../figures/figure";
import type { Plan } from "../program/answers";
import { mass, trimmed } from "../program/numbers";
import { quote_panel } from "./quote_panel";
import { run_needs } from "./run_needs";

export function money_view(plan: Plan): TemplateResult {
  const { cost, fresh_g, cured_g, label_g, lightest, size } = plan.piece;
  const which = lightest ? "A bar on average, " : "";
  const named = (how: string) => (which ? which + how.toLowerCase() : how);
  return html`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${figure({ key: "piece.fresh", label: named("Fresh"), shown: mass(state.units, fresh_g), of: "piece.fresh_g" })}
      ${
        cured_g === null
          ? nothing
          : figure({
              key: "piece.cured",
              label: named("Cured"),
              shown: mass(state.units, cured_g),
              of: "piece.cured_g",
            })
      }
      ${
        lightest
          ? figure({
              key: "piece.lightest",
              label: "The lightest bar",
              note: lightest.cured_g === null ? "fresh" : "cured",
              shown: mass(state.units, lightest.cured_g ?? lightest.fresh_g),
              of: lightest.cured_g === null ? "piece.fresh_g" : "piece.cured_g",
            })
          : nothing
      }
      ${
        label_g === null
          ? nothing
          : figure({
              key: "piece.label",
              label: "Net weight for the label",
              shown: mass(state.units, label_g, 0),
              of: "piece.label_g",
            })
      }
      ${
        size
          ? figure({
              key: "piece.size",
              label: "Size for its box, w × d × h",
              shown: [
                `${[size.width_mm, size.depth_mm, size.height_mm].map((mm) => trimmed(mm, 0)).join(" × ")} mm`,
                "",
              ],
              of: "piece.size",
            })
          : nothing
      }
      ${
        cost && cost.amount !== null
          ? html`${figure({
              key: "piece.cost",
              label: "Material cost of one piece",
              shown: [`${cost.amount} ${cost.currency}`, ""],
              size: "weigh",
              note: `${cost.total} ${cost.currency} for the run`,
              of: "piece.cost.amount",
            })}
            ${
              cost.unpriced.length
                ? html`<p class="alarm">Unpriced, and not in this figure: ${cost.unpriced.join(", ")}.</p>`
                : nothing
            }`
          : html`<p class="aside">No price of anything in it is given, so there is no cost.</p>`
      }
      ${label_draft(plan)}
    </section>
    ${quote_panel()} ${run_needs(bench_of(plan))}`;
}

export function label_draft(plan: Plan): TemplateResult | typeof nothing {
  const draft = plan.label;
  if (!draft) return nothing;
  const named = (draft.allergens ?? []).filter((one) => one.named).map((one) => one.name);
  const part = (title: string, text: string | undefined) =>
    text
      ? html`<h3>${title}</h3>
          <p>${text}</p>`
      : nothing;
  return html`<details>
    <summary>Label draft, ${draft.market}</summary>
    ${part("Net quantity", draft.net_quantity ? `${draft.net_quantity.statement}: ${draft.net_quantity.because}.` : "")}
    ${part("Ingredients, as saponified", draft.as_saponified?.text)}
    ${part("Ingredients, as charged", draft.as_charged?.text)} ${part("Allergens to name", named.join(", "))}
    <ul class="limits">
      ${(draft.remarks ?? []).map((one) => html`<li>${one.text}</li>`)}
    </ul>
  </details>`;
}
