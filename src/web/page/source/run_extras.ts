// What a run may say besides: one pot of lye for both batters, bottles to use up, a draft of the label.
import { html, nothing, type TemplateResult } from "lit";
import type { Document, Json } from "./api";
import { add_button, change, id_at, item_buttons, list_at, part, said_at, take_from } from "./adding";
import { edit } from "./editing";
import { choice, field, value_at } from "./field";
import { figure } from "./figure";
import { decimals_in, mass, trimmed } from "./numbers";
import type { Plan } from "./plan";
import { at } from "./pointer";
import { state } from "./state";
import * as sums from "./sums";

/** Only where there are two batters; switched off it is left out, for a tare belongs to a pot. */
export function lye_pot_form(): TemplateResult | typeof nothing {
  const here = "/lye_pot";
  const is_on = value_at("run", `${here}/shared`) === true;
  if (!is_on && at(state.run, "/pipe") === undefined) return nothing;
  const there = () => document.getElementById(id_at(here, "on"));
  const turn = () => change(is_on ? "Each batter has its own lye" : "One pot of lye for both", here, is_on ? undefined : { shared: true }, there);
  return html`<div class="choice"><button type="button" id=${id_at(here, "on")} aria-pressed=${is_on ? "true" : "false"} @click=${turn}>Make one lye pot for both</button></div>
    ${said_at(here)}
    ${is_on ? field({ label: "The empty pot weighs", at: `${here}/pot_tare`, unit: "g", optional: true, hint: "If you know it, you are told what the full pot is to weigh." }) : nothing}`;
}

/** All of it, where there is no plan whose figures it could stand beside. */
export function extras_questions(): TemplateResult {
  return html`<section class="shelf" aria-labelledby="extras-title"><h2 id="extras-title">Pot, bottles, label</h2>
    ${lye_pot_form()} ${bottles_form()} ${label_form()}</section>`;
}

export function bottles_form(plan?: Plan): TemplateResult {
  const here = "/bottles";
  const listed = list_at(here) as Document[];
  return html`<details ?open=${listed.length > 0}><summary>Bottles of fragrance to use up</summary>
    <p class="hint">A whole bottle is shared over the batters at one rate, never by halves.</p>
    ${listed.map((bottle, i) => {
      const name = String(bottle.name) || `bottle ${i + 1}`;
      return html`<div class="part" id=${id_at(`${here}/${i}`, "item")} role="group" aria-label=${name}>
        <div class="part-head"><p class="part-title">${name}</p>${item_buttons(here, i, name, false)}</div>
        ${said_at(`${here}/${i}`)} ${said_at(`${here}/${i}/shared`)}
        <div class="row">${field({ label: "Fragrance, as in the formulas", at: `${here}/${i}/name` })}
          ${field({ label: "The bottle holds", at: `${here}/${i}/holds`, unit: "g", short: true })}</div>
        ${plan ? out_of_bottle(plan, i, name) : nothing}</div>`;
    })}
    ${add_button(here, "Use up a bottle", { name: "", holds: "", shared: "by rate" }, "bottle")}</details>`;
}

function out_of_bottle(plan: Plan, i: number, name: string): TemplateResult[] | typeof nothing {
  const bottle = plan.bottles?.[i];
  if (bottle?.name !== name) return nothing;
  return bottle.parts.map((one, k) =>
    figure({
      key: `bottle.${i}.${k}`,
      label: `Into the ${one.part.toLowerCase()}`,
      note: `${trimmed(one.percent_of_batter, 2)} % of the batter`,
      shown: mass(state.units, one.g, decimals_in([one.g])),
      size: "weigh",
      sum: sums.sum_of_bottle(plan, i, k),
    }),
  );
}

export function label_form(): TemplateResult {
  const here = "/label";
  return part({ at: here, name: "the label", title: "For the label", add: "Draft the label", blank: { market: "" }, body: label_questions });
}

function label_questions(): TemplateResult {
  const market = value_at("run", "/label/market") as string;
  const is_weighed = value_at("run", "/label/weighed") !== undefined;
  return html`${choice("Where it is sold", market, [["EU", "In the EU"], ["US", "In the US"]], set_market)}
    ${said_at("/label/market")}
    ${choice("How much pieces differ", is_weighed ? "weighed" : "said", [["weighed", "I have weighed finished pieces"], ["said", "I say how much they differ"]], set_way)}
    ${is_weighed
      ? weighed_pieces()
      : html`<div class="row">${field({ label: "Heavier or lighter by", at: "/label/spread", optional: true, short: true, hint: "Such as 2 g or 3 %." })}
          ${field({ label: "Pour line higher or lower by", at: "/label/pour_line", unit: "mm", optional: true, short: true })}</div>`}
    ${field({ label: "Your labels already say", at: "/label/states", unit: "g", optional: true, hint: "It is held against the pieces." })}
    ${market === "EU" || value_at("run", "/label/e_mark") !== undefined ? e_mark() : nothing}`;
}

/** The e mark belongs to the EU alone. */
function set_market(to: string): void {
  const { e_mark, ...label } = value_at("run", "/label") as Document;
  const kept = to === "EU" && e_mark !== undefined ? { ...label, e_mark } : label;
  change(`sold in the ${to}`, "/label", { ...kept, market: to }, () => document.activeElement);
}

function set_way(to: "weighed" | "said"): void {
  const { weighed, spread: _, pour_line: __, ...kept } = value_at("run", "/label") as Record<string, Json>;
  if ((to === "weighed") === (weighed !== undefined)) return;
  change("how much pieces differ", "/label", to === "weighed" ? { ...kept, weighed: ["", "", ""] } : kept, () => document.activeElement);
}

function weighed_pieces(): TemplateResult {
  const here = "/label/weighed";
  return html`${said_at(here)}<div class="trials">${list_at(here).map(
      (_, i, all) => html`<div class="row" id=${id_at(`${here}/${i}`, "item")}>${field({ label: `Piece ${i + 1}`, at: `${here}/${i}`, unit: "g", short: true })}
        ${all.length > 3 ? html`<button type="button" class="drop" id=${id_at(`${here}/${i}`, "drop")} aria-label="Leave out piece ${i + 1}" @click=${() => take_from(here, i, `piece ${i + 1}`)}>×</button>` : nothing}</div>`,
    )}</div>
    ${add_button(here, "One more piece", "", "piece")}`;
}

function e_mark(): TemplateResult {
  const here = "/label/e_mark";
  const is_on = value_at("run", here) === true;
  return html`<div class="choice"><button type="button" aria-pressed=${is_on ? "true" : "false"} @click=${() => edit(here, is_on ? undefined : true)}>With the e mark</button></div>${said_at(here)}`;
}
