// What a run may say besides: one pot of lye for both batters, bottles to use up, a draft of the label.
import { html, nothing, type TemplateResult } from "lit";
import { value_at, without } from "../documents/editing";
import { open_up, state } from "../documents/state";
import { in_one_batch, type Bench } from "../figures/batches";
import { term_button, term_words } from "../figures/explained";
import { figure } from "../figures/figure";
import type { Document, Json } from "../program/json";
import { trimmed, weighed_as, weight } from "../program/numbers";
import { field } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of } from "./form_lists";
import { change, choice_field, folded, on_off, said_at, to_id } from "./form_parts";
import { place_of, said, who_says, type Shared } from "./shared";
import { has_topping } from "./topping_form";

/** Only where there are two batters; switched off it is left out, for a tare belongs to a pot. */
export function lye_pot_form(): TemplateResult | typeof nothing {
  const pot = "/lye_pot";
  const is_on = value_at("run", pot) !== undefined;
  if (!is_on && !has_topping()) return nothing;
  return html`<div class="labelled">
      ${on_off(pot, "Make one pot of lye solution for both", is_on, {})}${term_button("lye_solution")}
    </div>
    ${term_words("lye_solution")}
    ${
      is_on
        ? field({
            label: "The empty pot weighs",
            at: `${pot}/pot_tare`,
            unit: "g",
            optional: true,
            hint: "If you know it, you are told what the full pot is to weigh.",
          })
        : nothing
    }`;
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
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${plan && in_one_batch(plan) ? ` Weights are of ${in_one_batch(plan)}.` : ""}
        </p>
        ${there.map((bottle, i) => {
          const place = `${list.at}/${i}`;
          const name = String(bottle.name) || `bottle ${i + 1}`;
          return html`<div class="part" id=${item_id(list, i)} role="group" aria-label=${name}>
            <div class="part-head">
              <p class="part-title">${name}</p>
              ${item_buttons(list, i, name)}
            </div>
            ${said_at("run", place)}
            <div class="row">
              ${field({ label: "Fragrance, as in the formulas", at: `${place}/name` })}
              ${field({ label: "The bottle holds", at: `${place}/holds`, unit: "g", short: true })}
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

const here = "/label";

export const has_label = (): boolean => value_at("run", here) !== undefined;

/** The market is left to the studio, where it says one. */
export function add_label(): void {
  const knows_market = value_at("studio", market.studio) !== undefined;
  const way: Document = knows_market ? { weight_spread: "" } : { market: "" };
  open_up("set-up label");
  change("run", "Label added", here, way, to_id("lane-label"));
}

export function label_form(): TemplateResult {
  return html`${said_at("run", here)} ${label_questions()}
    <button type="button" @click=${() => change("run", "Label removed", here, undefined)}>Remove the label</button>`;
}

export const market: Shared = { run: "/label/market", studio: "/label/market" };

/** Typed into the run the e mark goes where it belongs to no more. */
export function market_choice(): TemplateResult {
  const { of, at } = place_of(market);
  return html`${choice_field({
    of,
    question: "Where it is sold",
    at: of === "run" ? here : at,
    asked_at: at,
    chosen: (value_at(of, at) || undefined) as string | undefined,
    answers: [
      ["EU", "In the EU"],
      ["US", "In the US"],
    ],
    puts: (to) => (of === "run" ? with_market(to) : to),
  })}
  ${who_says("Where it is sold", [market])}`;
}

type Way = "weighed" | "said";

function label_questions(): TemplateResult {
  const way: Way = value_at("run", "/label/weighed_pieces") === undefined ? "said" : "weighed";
  return html`${market_choice()}
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
    said(market) === "EU" || value_at("run", e_mark) !== undefined
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
