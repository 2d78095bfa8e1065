// When the batter is poured, what it weighs, and what the cure takes from it.
import { html, nothing, type TemplateResult } from "lit";
import type { Document } from "./api";
import { change_formula } from "./editing";
import { complaint_on, field, value_at } from "./field";
import { add_row, asked, drop_button, drop_row, folded, rows_at } from "./formula_field";
import { with_value } from "./pointer";
import type { Whose } from "./state";

export function pouring_part(of: Whose): TemplateResult {
  return html`<section class="part" aria-labelledby="pouring-title"><h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">${field({ label: "Temperature at the pour", of, at: "/pour_temperature", hint: "The batter's, with its unit: 38 °C, 100 °F." })}
      ${field({ label: "Cure", of, at: "/cure", unit: "days", optional: true, hint: "Such as 35 days." })}</div>
    ${drying(of)}
    ${folded(of, "density", ["/measured_density"], `Density measured${value_at(of, "/measured_density") ? `: ${String(value_at(of, "/measured_density"))}` : ""}`, () =>
      field({ label: "Of the plain, unwhipped batter, by weigh-cup", of, at: "/measured_density", unit: "g/ml", optional: true, hint: "Taken in place of the computed one, and compared with it." }))}
  </section>`;
}

type Way = "unsaid" | "share" | "law" | "weighed";

const no_weighing: Document = { after: "", mass: "" };
const least_weighings = 3; // the program refuses fewer

function drying(of: Whose): TemplateResult {
  const now: Way =
    value_at(of, "/drying/weighings") !== undefined ? "weighed" : value_at(of, "/drying") !== undefined ? "law" : value_at(of, "/water_lost_in_cure") !== undefined ? "share" : "unsaid";
  const take = (to: Way) => {
    if (to === now) return;
    change_formula(of, (formula) => {
      const bare = with_value(with_value(formula, "/drying", undefined), "/water_lost_in_cure", undefined);
      if (to === "share") return with_value(bare, "/water_lost_in_cure", "");
      if (to === "law") return with_value(bare, "/drying", { finally_lost: "", time_constant: "" });
      return to === "weighed" ? with_value(bare, "/drying", { weighings: Array.from({ length: least_weighings }, () => no_weighing) }) : bare;
    });
  };
  const answers: [Way, string][] = [["unsaid", "Not said"], ["share", "As a share"], ["law", "As a course in time"], ["weighed", "From my weighings"]];
  return html`${asked(of, "/drying", "Water that leaves in the cure", now, answers, take)}
    ${now === "share" ? html`<div class="row">${field({ label: "Of the batter's water, gone when it is sold", of, at: "/water_lost_in_cure", unit: "%" })}</div>` : nothing}
    ${now === "law"
      ? html`<div class="row">${field({ label: "Of the batter's water, gone in the end", of, at: "/drying/finally_lost", unit: "%" })}
        ${field({ label: "After this, 63 % of that is gone", of, at: "/drying/time_constant", unit: "days" })}</div>`
      : nothing}
    ${now === "weighed" ? weighings(of) : nothing}`;
}

function weighings(of: Whose): TemplateResult {
  const at = "/drying/weighings";
  const rows = rows_at(of, at);
  const complaint = complaint_on(of, at);
  return html`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${complaint ? html`<p class="complaint">${complaint}</p>` : nothing}
    ${rows.map(
      (_, i) => html`<div class="row named">${field({ label: "Time since the pour", of, at: `${at}/${i}/after`, unit: "days", short: true })} ${field({ label: "Mass", of, at: `${at}/${i}/mass`, unit: "g", short: true })}
        ${rows.length > least_weighings ? drop_button(`Leave out weighing ${i + 1}`, () => drop_row(of, at, i)) : nothing}</div>`,
    )}
    <button type="button" @click=${() => add_row(of, at, no_weighing, "/after")}>One more weighing</button>`;
}
