// What the whole run takes, to have it ready: sums over its batches, told apart from what is weighed for one.
import { html, nothing, type TemplateResult } from "lit";
import type { Slot } from "../documents/file_types";
import { state } from "../documents/state";
import { type Bench, counted, is_of_several, is_weighed_in_parts, times } from "../figures/batches";
import { figure } from "../figures/figure";
import { for_batter, for_lye, shown_weight } from "../figures/weights";
import { type Input, working_over_batches } from "../figures/workings";
import type { Batch, Batter, Dust, Ingredient } from "../program/answers";
import { type Shown, both, mass, weighed_as, weight } from "../program/numbers";

/** Nothing where all of it is one weighing. */
export function run_needs(bench: Bench): TemplateResult | typeof nothing {
  if (!is_weighed_in_parts(bench)) return nothing;
  const { whole } = bench;
  const { batches } = whole.pieces;
  const small = is_of_several(whole) ? `${counted(batches, "batch", "batches")} together` : "all whippings together";
  return html`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${small}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${of_batter(bench, "pour", "The base, whole run")}
      ${whole.pipe ? of_batter(bench, "pipe", "The topping, whole run") : nothing} ${besides(bench)}
    </div>
  </section>`;
}

const same = (one: Ingredient) => (other: Ingredient) => other.name === one.name && other.goes_into === one.goes_into;

/** Each weighing of a batch that has some of it. */
function in_batch(batch: Batch, slot: Slot, one: Ingredient): Input[] {
  const weighings =
    slot === "pour"
      ? [{ batter: batch.pour as Batter, words: "" }]
      : (batch.pipe?.whippings ?? []).map((whipping) => ({
          batter: whipping,
          words:
            batch.pipe!.whippings.length > 1 || whipping.count > 1
              ? `, whipping of ${whipping.pieces}, ${times(whipping.count)}`
              : "",
        }));
  return weighings.flatMap(({ batter, words }): Input[] => {
    const found = batter.ingredients.find(same(one));
    return found ? [[words, both(shown_weight(state.units, found))]] : [];
  });
}

function of_batter(bench: Bench, slot: Slot, title: string): TemplateResult {
  const { whole } = bench;
  const batter: Batter = slot === "pour" ? whole.pour : whole.pipe!;
  const all = [...for_batter(batter), ...for_lye(batter)];
  return html`<div class="jug">
    <h3>${title} <small>${batter.formula}</small></h3>
    ${all.map(({ one, i }) =>
      needed(`${slot}.${i}`, one.name, shown_weight(state.units, one), bench, (batch) => in_batch(batch, slot, one)),
    )}
    ${needed(
      `${slot}.make`,
      slot === "pour" ? "Base in all" : "Topping in all",
      mass(state.units, batter.make_g),
      bench,
      (batch) => [["", both(mass(state.units, batch[slot]!.make_g))]],
    )}
  </div>`;
}

const needed = (
  key: string,
  label: string,
  shown: Shown,
  bench: Bench,
  of: (batch: Batch) => Input[],
): TemplateResult => figure({ key: `needs.${key}`, label, shown, sum: working_over_batches(bench.whole, of) });

/** Colours of layers and dust. */
function besides(bench: Bench): TemplateResult | typeof nothing {
  const { whole } = bench;
  const colours = (whole.pour.layers ?? []).flatMap((layer, i) =>
    layer.colours.map((one, j) => ({ layer, one, i, j })),
  );
  const dusts = whole.dust ?? [];
  if (!colours.length && !dusts.length) return nothing;
  const shown = (one: Dust) => weight(state.units, weighed_as(one, ""));
  return html`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${colours.map(({ layer, one, i, j }) =>
      needed(`colour.${i}.${j}`, `${one.name}, for ${layer.name}`, shown_weight(state.units, one), bench, (batch) => {
        const found = batch.pour.layers?.[i]?.colours[j];
        return found ? [["", both(shown_weight(state.units, found))]] : [];
      }),
    )}
    ${dusts.map((one, i) =>
      needed(`dust.${i}`, one.name, shown(one), bench, (batch) => {
        const found = batch.dust?.[i];
        return found ? [["", both(shown(found))]] : [];
      }),
    )}
  </div>`;
}
