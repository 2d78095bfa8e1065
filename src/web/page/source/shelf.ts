// The shelf beneath the lanes: both lyes, what is left unsaponified, what to watch, what a piece costs.
import { html, nothing, type TemplateResult } from "lit";
import { field, value_at } from "./field";
import { figure } from "./figure";
import { both, mass, plain, trimmed } from "./numbers";
import type { Batter, Plan } from "./plan";
import { is_lye, weighed } from "./pour_lane";
import { state, type Slot } from "./state";
import * as sums from "./sums";

export function shelf(plan: Plan): TemplateResult {
  return html`<section class="shelf" aria-labelledby="shelf-title">
    <h2 id="shelf-title">Lye shelf</h2>
    <div class="jugs">
      ${jug("pour", plan.pipe ? "Lye for the base" : "Lye", plan.pour)}
      ${plan.pipe ? jug("pipe", "Lye for the topping", plan.pipe) : nothing}
    </div>
  </section>`;
}

function jug(slot: Slot, title: string, batter: Batter): TemplateResult {
  const listed = batter.ingredients.map((one, i) => ({ one, i })).filter(({ one }) => is_lye(one));
  const { effective } = batter.superfat_percent;
  return html`<div class="jug">
    <h3>${title} <small>${batter.formula}</small></h3>
    ${listed.map(({ one, i }) => weighed(slot, batter, one, i))}
    <p class="aside">Strength ${trimmed(batter.lye_strength_percent, 1)} %; water ${trimmed(batter.water_to_pure_alkali, 2)} : 1 to alkali; water ${trimmed(batter.water_percent_of_fats, 1)} % of the fats.</p>
    ${figure({ key: `${slot}.superfat`, label: "Effective superfat", shown: [`${plain(effective, 1)} %`, ""], sum: sums.sum_of_superfat(slot, batter) })}
    ${interval(batter)}
    ${value_at(slot, "/superfat") === undefined ? nothing : field({ label: "Superfat aimed at", of: slot, at: "/superfat", unit: "%", hint: state.formulas[slot]?.shipped ? "Typing here makes a copy of the formula beside your run." : undefined })}
  </div>`;
}

function interval(batter: Batter): TemplateResult {
  const { low, high } = batter.superfat_percent;
  const span = `It lies between ${plain(low, 1)} % and ${plain(high, 1)} %, as lots, purity and scale may fall.`;
  if (low >= 0) return html`<p class="aside">${span} Some fat is left over even at the lowest.</p>`;
  return html`<p class="alarm"><strong>At its lowest there is lye left over.</strong> ${span} A finer scale, a larger batch or a higher aim mends it.</p>`;
}

const worst_first = ["danger", "stop", "warning", "caution", "note"];
const word_for: Record<string, string> = { danger: "Danger", stop: "Stop", warning: "Warning", caution: "Mind", note: "Note" };

export function watch_list(plan: Plan): TemplateResult {
  const rank = (severity: string) => {
    const place = worst_first.indexOf(severity);
    return place < 0 ? 0 : place;
  };
  const cautions = [...plan.cautions].sort((a, b) => rank(a.severity) - rank(b.severity));
  return html`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">What to watch <small>worst first</small></h2>
    <ul>${cautions.map(
      (one) => html`<li class=${one.severity}><strong>${word_for[one.severity] ?? one.severity}</strong> ${one.text}</li>`,
    )}</ul>
  </section>`;
}

export function piece(plan: Plan): TemplateResult {
  const { cost, fresh_g, cured_g, size } = plan.piece;
  const sum = sums.sum_of_piece(plan);
  return html`<section class="piece" aria-labelledby="piece-title">
    <h2 id="piece-title">The piece</h2>
    ${figure({ key: "piece.fresh", label: "Fresh", shown: mass(state.units, fresh_g), sum })}
    ${cured_g === null ? nothing : figure({ key: "piece.cured", label: "Cured", shown: mass(state.units, cured_g), sum })}
    ${size ? html`<p class="aside">${[size.width_mm, size.depth_mm, size.height_mm].map((mm) => trimmed(mm, 0)).join(" × ")} mm over all.</p>` : nothing}
    ${cost
      ? html`${figure({ key: "piece.cost", label: "Materials for one", shown: [`${cost.amount} ${cost.currency}`, ""], size: "weigh", note: `${cost.total} ${cost.currency} for the run`, sum: sums.sum_of_cost(plan) })}
          ${cost.unpriced.length ? html`<p class="alarm">Unpriced, and not in this figure: ${cost.unpriced.join(", ")}.</p>` : nothing}`
      : html`<p class="aside">No prices are given, so there is no cost.</p>`}
    ${prices(plan)}
  </section>`;
}

function prices(plan: Plan): TemplateResult | typeof nothing {
  const names = plan.piece.cost?.materials.map((one) => one.name) ?? [];
  if (!names.length) return nothing;
  const at_price = (name: string) => `/money/prices/${name.replaceAll("~", "~0").replaceAll("/", "~1")}`;
  return html`<details><summary>Prices paid</summary>
    ${names.map(
      (name) => html`<div class="row">${field({ label: `${name}, paid`, at: `${at_price(name)}/paid`, optional: true, short: true })}
        ${field({ label: `for (pack of ${name})`, at: `${at_price(name)}/for`, unit: "g", optional: true, short: true })}</div>`,
    )}</details>`;
}

const losses: ["pour" | "pipe", string, string, string, boolean][] = [
  ["pour", "overpour", "Overpour, of what is in the pieces", "%", true],
  ["pour", "pot", "Left in the pot", "g", true],
  ["pour", "jugs", "Left in the jugs", "g", true],
  ["pour", "test_piece", "Test piece", "g", true],
  ["pipe", "bag", "Left in the bag", "g", true],
  ["pipe", "bowl_and_whisk", "Left in bowl and whisk", "g", true],
  ["pipe", "tip", "Left in the tip", "g", false],
  ["pipe", "each_bag_change", "Lost at each bag change", "g", false],
];

export function losses_and_scales(plan: Plan): TemplateResult {
  const shown = losses.filter(
    ([slot, name, , , always]) =>
      (slot === "pour" || plan.pipe) && (always || value_at("run", `/losses/${slot}/${name}`) !== undefined),
  );
  return html`<section class="losses" aria-labelledby="losses-title">
    <h2 id="losses-title">Losses and scales</h2>
    <p class="aside">In the pieces ${both(mass(state.units, plan.pour.in_pieces_g))} of base, lost ${both(mass(state.units, plan.pour.lost_g))}${plan.pipe
      ? `; of topping ${both(mass(state.units, plan.pipe.in_pieces_g))}, lost ${both(mass(state.units, plan.pipe.lost_g))}`
      : ""}.</p>
    <div class="row">${shown.map(([slot, name, label, unit]) =>
      field({ label: plan.pipe ? `${slot === "pour" ? "Base" : "Topping"}: ${label.toLowerCase()}` : label, at: `/losses/${slot}/${name}`, unit, short: true }),
    )}</div>
    <div class="row">
      ${field({ label: "Large scale reads", at: "/scales/large/reads", unit: "g", short: true })}
      ${field({ label: "Large scale holds", at: "/scales/large/holds", unit: "g", short: true })}
      ${field({ label: "Fine scale reads", at: "/scales/fine/reads", unit: "g", short: true })}
      ${field({ label: "Fine scale holds", at: "/scales/fine/holds", unit: "g", short: true })}
    </div>
  </section>`;
}
