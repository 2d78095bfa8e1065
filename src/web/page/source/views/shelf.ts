// The lye, with what is left unsaponified.
import { html, nothing, svg, type TemplateResult } from "lit";
import { value_at } from "../documents/editing";
import type { Slot } from "../documents/file_types";
import { state } from "../documents/state";
import { in_one_batch, whipping_called, type Bench } from "../figures/batches";
import { danger_beside, dangers_of } from "../figures/dangers";
import { figure, how } from "../figures/figure";
import { field } from "../forms/field";
import { bottles_form, lye_pot_form } from "../forms/run_extras";
import type { Batter, Heat, LyePot, Superfat } from "../program/answers";
import {
  both,
  duration,
  is_below_zero,
  per_cent,
  trimmed,
  warmth,
  weighed_as,
  weight,
  type Shown,
} from "../program/numbers";
import { whipping_key, whipping_place } from "./pipe_lane";
import { set_up_part, told } from "./set_up_part";

/** The lye: how strong, what is left unsaponified, how warm; and what is shared. */
export function lye_part(bench?: Bench): TemplateResult {
  return set_up_part({
    name: "lye",
    title: "Lye",
    drawing: jug_drawing,
    result: bench ? lyes(bench).map(headline) : told("Not yet with figures."),
    about: [
      ["run", "/lye_pot"],
      ["run", "/bottles"],
    ],
    form: () =>
      html`${bench ? html`<div class="more jugs">${lyes(bench).map(told_of_lye)} ${common_pot(bench)}</div>` : nothing}
        <div class="more">${lye_pot_form()} ${bottles_form(bench)}</div>`,
  });
}

interface Lye {
  slot: Slot;
  title: string;
  batter: Batter; // of one batch, or of one of its whippings
  place: string; // of the batter in the plan
  pieces: number; // of the batch
  key: string; // that of the batter's figures
}

function lyes(plan: Bench): Lye[] {
  const { pieces } = plan.batch;
  const base: Lye = {
    slot: "pour",
    title: plan.pipe ? "Lye for the base" : "Lye",
    batter: plan.pour,
    place: `${plan.place}.pour`,
    pieces,
    key: "pour",
  };
  const whipped = plan.whippings.map((one, i): Lye => {
    const called = whipping_called(plan, one);
    return {
      slot: "pipe",
      title: `Lye for the topping${called && `, ${called}`}`,
      batter: one,
      place: whipping_place(plan, i),
      pieces,
      key: whipping_key(i),
    };
  });
  return [base, ...whipped];
}

function headline({ title, batter, slot, pieces }: Lye): TemplateResult {
  const sign = dangers_of(slot, pieces).length ? " ⚠" : "";
  return told(
    html`${title}: ${trimmed(batter.lye_strength_percent, 1)} % strong; superfat as weighed
      <b>${per_cent(batter.superfat_percent.effective)}${sign}</b>.`,
  );
}

/** No more than a sign for it: what is in it stands beside. */
const jug_drawing = (): TemplateResult =>
  html`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${svg`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;

function told_of_lye({ slot, title, batter, place, pieces, key }: Lye): TemplateResult {
  const { effective } = batter.superfat_percent;
  const is_dangerous = dangers_of(slot, pieces).length > 0;
  const danger_id = `danger-set-up-${key.replaceAll(".", "-")}`;
  const is_first = key === slot; // the others are of the same formula
  return html`<div class="jug">
    <h3>${title} <small>${batter.formula}</small></h3>
    ${figure({
      key: `set-up.${key}.strength`,
      label: "Lye strength",
      note: `water ${trimmed(batter.water_to_pure_alkali, 2)} : 1 to alkali; water ${trimmed(
        batter.water_percent_of_fats,
        1,
      )} % of the fats`,
      shown: [`${trimmed(batter.lye_strength_percent, 1)} %`, ""],
      of: `${place}.lye_strength_percent`,
    })}
    ${figure({
      key: `set-up.${key}.superfat`,
      label: "Superfat as weighed",
      shown: [`${per_cent(effective)}${is_dangerous ? " ⚠" : ""}`, ""],
      of: `${place}.superfat_percent.effective`,
      term: key === "pour" ? "superfat_as_weighed" : undefined,
    })}
    ${danger_beside(slot, danger_id, pieces)} ${interval(batter.superfat_percent)} ${heat(batter, place, key)}
    ${
      !is_first || value_at(slot, "/superfat") === undefined
        ? nothing
        : field({
            label: "Planned superfat",
            of: slot,
            at: "/superfat",
            unit: "%",
            described_by: is_dangerous ? danger_id : undefined,
            hint: state.formulas[slot]?.shipped
              ? "Typing here makes a copy of the formula beside your run."
              : undefined,
          })
    }
  </div>`;
}

function interval(superfat: Superfat): TemplateResult {
  const { low, high, likely_low, likely_high, uncertainties } = superfat;
  const span = `It lies between ${per_cent(low)} and ${per_cent(high)}, as lots, purity and scales may fall`;
  const likely =
    likely_low === undefined || likely_high === undefined
      ? "."
      : `; nineteen batches in twenty between ${per_cent(likely_low)} and ${per_cent(likely_high)}.`;
  const doubt = uncertainties[0];
  const most = doubt ? html` Most of the doubt is ${doubt.cause}: ${doubt.remedy}.` : nothing;
  if (!is_below_zero(low))
    return html`<p class="aside of-plan">${span}${likely} Some fat is left over even at the lowest.${most}</p>`;
  return html`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${span}${likely}
    ${doubt ? most : "Use a finer scale, a larger batch or a higher superfat."}
  </p>`;
}

export function heat(batter: Batter, place: string, key: string): TemplateResult | typeof nothing {
  if (!batter.heat) return nothing;
  return html`${heat_words(batter.heat)} ${how(`${key}.heat`, "How the heat is worked out", `${place}.heat`)}`;
}

function heat_words(found: Heat): TemplateResult {
  const warm = (celsius: number) => both(warmth(state.units, celsius));
  const cooling = found.cooling.map(
    (one) =>
      `${
        one.shortest_min * 60 ? duration(one.shortest_min * 60) : "at once"
      } to ${duration(one.longest_min * 60)} in ${one.in}`,
  );
  const peak =
    found.peak_c === null
      ? "The KOH solution warms as it is diluted; how far is not known."
      : `Water at ${warm(found.water_at_c)}: the lye may reach ${warm(found.peak_c)}; it boils at ${warm(found.boils_at_c)}.`;
  return html`<p class="aside of-plan">
    ${peak}${cooling.length ? ` To cool: ${cooling.join("; ")}.` : ""}${
      found.at_pour_c === null ? "" : ` Lye and fats meet at about ${warm(found.at_pour_c)}.`
    }
  </p>`;
}

/** One pot for both batters: each takes its own share by weight, never half. */
function common_pot(plan: Bench): TemplateResult | typeof nothing {
  const pot = plan.lye_pot;
  if (!pot) return nothing;
  const { units } = state;
  const weigh = (key: string, label: string, shown: Shown, of: string, note = "") =>
    figure({ key: `pot.${key}`, label, note, shown, size: "weigh", of: `${plan.place}.lye_pot.${of}` });
  return html`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${trimmed(pot.strength_percent, 1)} %${in_one_batch(plan) && `; ${in_one_batch(plan)}`}</small>
    </h3>
    ${weigh("water", "In the pot: water, distilled", weight(units, weighed_as(pot, "water_")), "water_g")}
    ${pot.alkalis.map((one, i) =>
      weigh(`alkali.${i}`, `In the pot: ${one.name}`, weight(units, weighed_as(one, ""), "down"), `alkalis.${i}.g`),
    )}
    ${weigh("lye", "Lye solution in the pot", weight(units, weighed_as(pot, "lye_")), "lye_g", full_pot(pot))}
    ${pot.shares.map(
      (one, i) =>
        html`${weigh(
          `share.${i}`,
          `Out of it for ${one.batter}`,
          weight(units, weighed_as(one, "lye_"), "down"),
          `shares.${i}.lye_g`,
          `superfat then ${per_cent(one.superfat_percent)}`,
        )}
        ${
          one.top_up_g > 0
            ? weigh(
                `top_up.${i}`,
                `and plain water to ${one.batter}`,
                weight(units, weighed_as(one, "top_up_")),
                `shares.${i}.top_up_g`,
              )
            : nothing
        }
        ${danger_beside(i === 0 ? "pour" : "pipe", "", plan.batch.pieces)}
        ${one.superfat ? interval(one.superfat) : nothing}`,
    )}
    ${
      pot.left_g
        ? html`<p class="aside of-plan">
            ${both(weight(state.units, { g: pot.left_g, g_text: pot.left_g_text, oz_text: pot.left_oz_text }))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`
        : nothing
    }
    ${pot.heat ? heat_words(pot.heat) : nothing}
  </div>`;
}

function full_pot(pot: LyePot): string {
  if (pot.full_pot_g === null) return "";
  const { g_text, oz_text, ...rest } = weighed_as(pot, "lye_");
  const full = weight(state.units, {
    ...rest,
    g: pot.full_pot_g,
    g_text: pot.full_pot_g_text,
    oz_text: pot.full_pot_oz_text,
  });
  return `${both(full)} with the pot: make up with water to that after cooling`;
}
