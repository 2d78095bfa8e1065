// When the batter is poured, what it weighs, and what the cure takes from it.
import { html, nothing, type TemplateResult } from "lit";
import { text_at, value_at, without } from "../documents/editing";
import type { FormulaSlot } from "../documents/file_types";
import type { Document, Json } from "../program/json";
import { field } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of } from "./form_lists";
import { choice_field, folded } from "./form_parts";

export function pouring_part(of: FormulaSlot): TemplateResult {
  const density = text_at(of, "/measured_density");
  return html`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${field({
        label: "Temperature at the pour",
        of,
        at: "/pour_temperature",
        hint: "The batter's, with its unit: 38 °C, 100 °F.",
        term: "batter",
      })}
      ${field({ label: "Cure", of, at: "/cure", unit: "days", optional: true, hint: "Such as 35 days.", term: "cure" })}
    </div>
    <div class="row">
      ${field({
        label: "Unmould after",
        of,
        at: "/unmould_after",
        unit: "h",
        optional: true,
        hint: "From the pour on, whatever the mould's own hours are: 18 h.",
      })}
      ${field({
        label: "Cut within",
        of,
        at: "/cut_within",
        unit: "h",
        optional: true,
        hint: "From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h.",
      })}
    </div>
    ${drying(of)}
    ${folded({
      of,
      name: "density",
      pointers: ["/measured_density"],
      summary: `Measured density${density && `: ${density}`}`,
      body: () =>
        field({
          label: "Of the plain, unwhipped batter, by weigh-cup",
          of,
          at: "/measured_density",
          unit: "g/ml",
          optional: true,
          hint: "Taken in place of the computed one, and compared with it.",
        }),
    })}
  </section>`;
}

type Way = "unsaid" | "share" | "law" | "weighed";

const ways: [Way, string][] = [
  ["unsaid", "Not given"],
  ["share", "As a share"],
  ["law", "As a course in time"],
  ["weighed", "From my weighings"],
];

const no_weighing: Document = { after: "", mass: "" };
const least_weighings = 3; // the program refuses fewer

const starts: Record<Way, Document> = {
  unsaid: {},
  share: { water_lost_in_cure: "" },
  law: { drying: { water_lost_in_the_end: "", time_to_63_percent: "" } },
  weighed: { drying: { weighings: Array.from({ length: least_weighings }, () => no_weighing) } },
};

function way_of(of: FormulaSlot): Way {
  if (value_at(of, "/drying/weighings") !== undefined) return "weighed";
  if (value_at(of, "/drying") !== undefined) return "law";
  return value_at(of, "/water_lost_in_cure") === undefined ? "unsaid" : "share";
}

function drying(of: FormulaSlot): TemplateResult {
  const chosen = way_of(of);
  const puts = (to: Way): Json => ({ ...without(of, "", ["drying", "water_lost_in_cure"]), ...starts[to] });
  return html`${choice_field({
    of,
    question: "Water that leaves in the cure",
    at: "",
    asked_at: "/drying",
    chosen,
    answers: ways,
    puts,
  })}
  ${
    chosen === "share"
      ? html`<div class="row">
          ${field({ label: "Of the batter's water, gone when it is sold", of, at: "/water_lost_in_cure", unit: "%" })}
        </div>`
      : nothing
  }
  ${
    chosen === "law"
      ? html`<div class="row">
          ${field({ label: "Of the batter's water, gone in the end", of, at: "/drying/water_lost_in_the_end", unit: "%" })}
          ${field({ label: "After this, 63 % of that is gone", of, at: "/drying/time_to_63_percent", unit: "days" })}
        </div>`
      : nothing
  }
  ${chosen === "weighed" ? weighings(of) : nothing}`;
}

function weighings(of: FormulaSlot): TemplateResult {
  const list = { of, at: "/drying/weighings", least: least_weighings };
  return html`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${rows_of(list).map(
      (_, i) =>
        html`<div class="row named" id=${item_id(list, i)}>
          ${field({ label: "Time since the pour", of, at: `${list.at}/${i}/after`, unit: "days", short: true })}
          ${field({ label: "Mass", of, at: `${list.at}/${i}/mass`, unit: "g", short: true })}
          ${item_buttons(list, i, `weighing ${i + 1}`)}
        </div>`,
    )}
    ${add_button(list, "One more weighing", () => add_to(list, no_weighing, "weighing"))}`;
}
