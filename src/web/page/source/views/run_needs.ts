// What the whole run takes, to have it ready: sums over its batches, told apart from what is weighed for one.
import { html, nothing, type TemplateResult } from "lit";
import type { Slot } from "../documents/file_types";
import { state } from "../documents/state";
import { counted, is_of_several, is_weighed_in_parts, type Bench } from "../figures/batches";
import { figure } from "../figures/figure";
import { for_batter, for_lye, shown_weight } from "../figures/weights";
import type { Batter, Dust } from "../program/answers";
import { mass, weighed_as, weight, type Shown } from "../program/numbers";

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

function of_batter(bench: Bench, slot: Slot, title: string): TemplateResult {
  const { whole } = bench;
  const batter: Batter = slot === "pour" ? whole.pour : whole.pipe!;
  const all = [...for_batter(batter), ...for_lye(batter)];
  return html`<div class="jug">
    <h3>${title} <small>${batter.formula}</small></h3>
    ${all.map(({ one, i }) => needed(`${slot}.ingredients.${i}.g`, one.name, shown_weight(state.units, one)))}
    ${needed(`${slot}.make_g`, slot === "pour" ? "Base in all" : "Topping in all", mass(state.units, batter.make_g))}
  </div>`;
}

const needed = (of: string, label: string, shown: Shown): TemplateResult =>
  figure({ key: `needs.${of}`, label, shown, of });

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
      needed(`pour.layers.${i}.colours.${j}.g`, `${one.name}, for ${layer.name}`, shown_weight(state.units, one)),
    )}
    ${dusts.map((one, i) => needed(`dust.${i}.g`, one.name, shown(one)))}
  </div>`;
}
