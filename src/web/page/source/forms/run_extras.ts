// What a run may say besides: one pot of lye for both batters, bottles to use up, a draft of the label.
import { html, nothing, type TemplateResult } from "lit";
import { value_at, without } from "../documents/editing";
import { state } from "../documents/state";
import { in_one_batch, type Bench } from "../figures/batches";
import { figure } from "../figures/figure";
import type { Document, Json } from "../program/json";
import { trimmed, weighed_as, weight } from "../program/numbers";
import { field } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of } from "./form_lists";
import { choice_field, folded, on_off, part, said_at } from "./form_parts";
import { has_topping } from "./topping_form";

/** Only where there are two batters; switched off it is left out, for a tare belongs to a pot. */
export function lye_pot_form(): TemplateResult | typeof nothing {
  const here = "/lye_pot";
  const is_on = value_at("run", here) !== undefined;
  if (!is_on && !has_topping()) return nothing;
  return html`${on_off(here, "Make one pot of lye solution for both", is_on, {})}
  ${
    is_on
      ? field({
          label: "The empty pot weighs",
          at: `${here}/pot_tare`,
          unit: "g",
          optional: true,
          hint: "If you know it, you are told what the full pot is to weigh.",
        })
      : nothing
  }`;
}

/** All of it, where there is no plan whose figures it could stand beside. */
export function extras_questions(): TemplateResult {
  return html`<section class="shelf" aria-labelledby="extras-title">
    <h2 id="extras-title">Pot, bottles, label</h2>
    ${lye_pot_form()} ${bottles_form()} ${label_form()}
  </section>`;
}

export function bottles_form(plan?: Bench): TemplateResult {
  const list = { at: "/bottles" };
  const there = rows_of(list) as Document[];
  return folded({
    name: "bottles",
    pointers: [list.at],
    summary: "Bottles of fragrance to use up",
    is_needed: there.length > 0,
    body: () =>
      html` <p class="hint">
          A whole bottle is shared over the batters at one rate, never by
          halves.${plan && in_one_batch(plan) ? ` Weights are of ${in_one_batch(plan)}.` : ""}
        </p>
        ${there.map((bottle, i) => {
          const here = `${list.at}/${i}`;
          const name = String(bottle.name) || `bottle ${i + 1}`;
          return html`<div class="part" id=${item_id(list, i)} role="group" aria-label=${name}>
            <div class="part-head">
              <p class="part-title">${name}</p>
              ${item_buttons(list, i, name)}
            </div>
            ${said_at("run", here)}
            <div class="row">
              ${field({ label: "Fragrance, as in the formulas", at: `${here}/name` })}
              ${field({ label: "The bottle holds", at: `${here}/holds`, unit: "g", short: true })}
            </div>
            ${plan ? out_of_bottle(plan, i, name) : nothing}
          </div>`;
        })}
        ${add_button(list, "Use up a bottle", () => add_to(list, { name: "", holds: "" }, "bottle"))}`,
  });
}

function out_of_bottle(plan: Bench, i: number, name: string): TemplateResult[] | typeof nothing {
  const bottle = plan.bottles?.[i];
  if (bottle?.name !== name) return nothing;
  return bottle.parts.map((one, k) =>
    figure({
      key: `bottle.${i}.${k}`,
      label: `Into the ${one.part.toLowerCase()}`,
      note: `${trimmed(one.percent_of_batter, 2)} % of the batter`,
      shown: weight(state.units, weighed_as(one, "")),
      size: "weigh",
      of: `${plan.place}.bottles.${i}.parts.${k}.g`,
    }),
  );
}

export function label_form(): TemplateResult {
  const here = "/label";
  return part({
    at: here,
    name: "the label",
    title: "For the label",
    add: "Draft the label",
    blank: { market: "" },
    body: label_questions,
  });
}

type Way = "weighed" | "said";

function label_questions(): TemplateResult {
  const market = value_at("run", "/label/market") as string;
  const way: Way = value_at("run", "/label/weighed_pieces") === undefined ? "said" : "weighed";
  return html`${choice_field({
    question: "Where it is sold",
    at: "/label",
    asked_at: "/label/market",
    chosen: market,
    answers: [
      ["EU", "In the EU"],
      ["US", "In the US"],
    ],
    puts: with_market,
  })}
  ${choice_field({
    question: "How much pieces differ",
    at: "/label",
    is_told_elsewhere: true,
    chosen: way,
    answers: [
      ["weighed", "I have weighed finished pieces"],
      ["said", "I say how much they differ"],
    ],
    puts: with_way,
  })}
  ${
    way === "weighed"
      ? weighed_pieces()
      : html`<div class="row">
          ${field({
            label: "Heavier or lighter by",
            at: "/label/weight_spread",
            optional: true,
            short: true,
            hint: "Such as 2 g or 3 %.",
          })}
          ${field({
            label: "Pour line higher or lower by",
            at: "/label/pour_line_off_by",
            unit: "mm",
            optional: true,
            short: true,
          })}
        </div>`
  }
  ${field({
    label: "Your labels already say",
    at: "/label/printed_weight",
    unit: "g",
    optional: true,
    hint: "It is checked against your pieces.",
  })}
  ${
    market === "EU" || value_at("run", e_mark) !== undefined
      ? on_off(e_mark, "With the e mark", value_at("run", e_mark) === true, true)
      : nothing
  }`;
}

const e_mark = "/label/e_mark";

/** The e mark belongs to the EU alone. */
function with_market(to: string): Json {
  return { ...without("run", "/label", to === "EU" ? [] : ["e_mark"]), market: to };
}

function with_way(to: Way): Json {
  const kept = without("run", "/label", ["weighed_pieces", "weight_spread", "pour_line_off_by"]);
  return to === "weighed" ? { ...kept, weighed_pieces: ["", "", ""] } : kept;
}

function weighed_pieces(): TemplateResult {
  const list = { at: "/label/weighed_pieces", least: 3 };
  return html`<div class="trials">
      ${rows_of(list).map(
        (_, i) =>
          html`<div class="row" id=${item_id(list, i)}>
            ${field({ label: `Piece ${i + 1}`, at: `${list.at}/${i}`, unit: "g", short: true })}
            ${item_buttons(list, i, `piece ${i + 1}`)}
          </div>`,
      )}
    </div>
    ${add_button(list, "One more piece", () => add_to(list, "", "piece"))}`;
}
