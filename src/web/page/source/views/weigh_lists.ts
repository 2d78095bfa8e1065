// What is weighed for one batch, batter by batter, and its lye.
import { html, nothing, type TemplateResult } from "lit";
import type { Slot } from "../documents/file_types";
import { open_formula } from "../documents/formula_opening";
import { state } from "../documents/state";
import { is_of_several, whipping_called, type Bench } from "../figures/batches";
import { danger_beside, dangers_of } from "../figures/dangers";
import { figure } from "../figures/figure";
import { for_batter, for_lye, shown_weight } from "../figures/weights";
import type { Batter, Ingredient, Whipping } from "../program/answers";
import { both, mass, per_cent, trimmed, weighed_as, weight } from "../program/numbers";
import { batch_head } from "./batches_told";
import { whipping_key, whipping_place, whipping_title } from "./pipe_lane";
import { common_pot, heat, interval } from "./shelf";

export function weigh_lists(plan: Bench): TemplateResult {
  const place = `${plan.place}.pour`;
  return html`<div class="lanes">
      <section class="lane pour" aria-label="Base">
        <div class="weights">
          ${batch_head(plan)} ${weigh_title("pour", "Weigh for the base", plan.pour.formula)}
          ${ingredients(plan.pour, place, "pour")}
          ${figure({
            key: "pour.make",
            label: "Base to make",
            shown: mass(state.units, plan.pour.make_g),
            size: "weigh",
            of: `${place}.make_g`,
          })}
        </div>
      </section>
      ${
        plan.pipe
          ? html`<section class="lane pipe" aria-label="Topping">
              <div class="weights">
                ${batch_head(plan)} ${weigh_title("pipe", "Weigh for the topping", plan.pipe.formula)}
                ${plan.whippings.map((one, i) => whipping(plan, one, i))}
              </div>
            </section>`
          : nothing
      }
      ${besides(plan)}
    </div>
    ${shelf(plan)}`;
}

function besides(plan: Bench): TemplateResult | typeof nothing {
  if (!plan.decorations?.length && !plan.dust?.length) return nothing;
  return html`<section class="lane decorate" aria-label="Decorations and dust">
    <div class="weights">
      ${(plan.decorations ?? []).map((one, i) =>
        figure({
          key: `decorations.${i}.make`,
          label: `Melt of ${one.material}`,
          note: is_of_several(plan.whole) ? "for the whole run" : undefined,
          shown: weight(state.units, weighed_as(one, "make_")),
          size: "weigh",
          of: `decorations.${i}.make_g`,
        }),
      )}
      ${plan.dust?.length && is_of_several(plan.whole) ? batch_head(plan) : nothing}
      ${(plan.dust ?? []).map((one, i) =>
        figure({
          key: `dust.${i}`,
          label: one.name,
          shown: weight(state.units, weighed_as(one, "")),
          size: "weigh",
          of: `${plan.place}.dust.${i}.g`,
        }),
      )}
    </div>
  </section>`;
}

function whipping(bench: Bench, one: Whipping, i: number): TemplateResult {
  const key = whipping_key(i);
  return html`${whipping_title(bench, one)} ${ingredients(one, whipping_place(bench, i), key)}
  ${figure({
    key: `${key}.make`,
    label: "Topping to make",
    note: whipping_called(bench, one),
    shown: mass(state.units, one.make_g),
    size: "weigh",
    of: `${whipping_place(bench, i)}.make_g`,
  })}`;
}

function shelf(plan: Bench): TemplateResult {
  return html`<section class="shelf" aria-labelledby="shelf-title">
    <h2 id="shelf-title">Lye</h2>
    ${batch_head(plan)}
    <div class="jugs">
      ${jug({
        slot: "pour",
        title: plan.pipe ? "Lye for the base" : "Lye",
        batter: plan.pour,
        place: `${plan.place}.pour`,
        pieces: plan.batch.pieces,
        key: "pour",
      })}
      ${plan.whippings.map((one, i) => {
        const called = whipping_called(plan, one);
        return jug({
          slot: "pipe",
          title: `Lye for the topping${called && `, ${called}`}`,
          batter: one,
          place: whipping_place(plan, i),
          pieces: plan.batch.pieces,
          key: whipping_key(i),
        });
      })}
    </div>
    ${common_pot(plan)}
  </section>`;
}

interface Jug {
  slot: Slot;
  title: string;
  batter: Batter; // of one batch, or of one of its whippings
  place: string; // of the batter in the plan
  pieces: number; // of the batch
  key: string; // that of the batter's figures
}

function jug({ slot, title, batter, place, pieces, key }: Jug): TemplateResult {
  const { effective } = batter.superfat_percent;
  const is_dangerous = dangers_of(slot, pieces).length > 0;
  const danger_id = `danger-${key.replaceAll(".", "-")}`;
  return html`<div class="jug">
    <h3>${title} <small>${batter.formula}</small></h3>
    ${for_lye(batter).map(({ one, i }) => weighed(one, i, place, key))}
    ${figure({
      key: `${key}.strength`,
      label: "Lye strength",
      note: `water ${trimmed(batter.water_to_pure_alkali, 2)} : 1 to alkali; water ${trimmed(
        batter.water_percent_of_fats,
        1,
      )} % of the fats`,
      shown: [`${trimmed(batter.lye_strength_percent, 1)} %`, ""],
      of: `${place}.lye_strength_percent`,
    })}
    ${figure({
      key: `${key}.superfat`,
      label: "Superfat as weighed",
      shown: [`${per_cent(effective)}${is_dangerous ? " ⚠" : ""}`, ""],
      of: `${place}.superfat_percent.effective`,
    })}
    ${danger_beside(slot, danger_id, pieces)} ${interval(batter.superfat_percent)} ${heat(batter, place, key)}
  </div>`;
}

function spoons(one: Ingredient): string {
  return one.teaspoons ? `about ${trimmed(one.teaspoons, 1)} tsp` : "";
}

function note_of(one: Ingredient): string {
  const aside = one.set_aside_for_colours_g
    ? `${both(
        weight(state.units, { g: one.set_aside_for_colours_g, scale_step_g: one.scale_step_g }),
      )} of it for the colours`
    : "";
  return [spoons(one), aside].filter(Boolean).join(", ");
}

function weigh_title(slot: Slot, words: string, formula: string): TemplateResult {
  return html`<div class="weigh-head">
    <h3>${words} <small>${formula}</small></h3>
    <button
      type="button"
      @click=${() => open_formula(slot)}
      aria-label="Change the formula ${slot === "pour" ? "of the base" : "of the topping"}"
    >
      Change the formula
    </button>
  </div>`;
}

/** All but what goes into the lye, which stands on the shelf. */
function ingredients(batter: Batter, place: string, key: string): TemplateResult {
  return html`${for_batter(batter).map(({ one, i }) => weighed(one, i, place, key))}`;
}

/** `place` is that of its batter in the plan, `key` that of the batter's figures, which no other has. */
function weighed(one: Ingredient, i: number, place: string, key: string): TemplateResult {
  return figure({
    key: `${key}.${i}`,
    label: one.name,
    note: note_of(one),
    shown: shown_weight(state.units, one),
    size: "weigh",
    of: `${place}.ingredients.${i}.g`,
  });
}
