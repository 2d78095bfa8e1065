// Pour: the line, what each takes, the base's weights, the layers.
import { html, nothing, type TemplateResult } from "lit";
import type { Document } from "./api";
import { edit } from "./editing";
import { field, value_at } from "./field";
import { figure } from "./figure";
import { both, decimals_of, first, length, mass, millimetres, plain, trimmed, volume } from "./numbers";
import type { Batter, Ingredient, Plan } from "./plan";
import { at } from "./pointer";
import { share_of_height, side_view } from "./side_view";
import { state, type Slot } from "./state";
import * as sums from "./sums";

const line_key = (): "below_brim" | "depth" => (at(state.run, "/pour/line/depth") !== undefined ? "depth" : "below_brim");
export const is_lye = (one: Ingredient): boolean => one.goes_into === "lye";

/** The line as drawn or stepped, in whole or half millimetres. */
function set_line(plan: Plan, below_mm: number): void {
  const deep = plan.pour.depth_mm + plan.pour.below_brim_mm;
  const below = Math.min(Math.max(0, Math.round(below_mm * 2) / 2), Math.floor(deep * 2) / 2 - 0.5);
  const value = line_key() === "depth" ? deep - below : below;
  state.typed = undefined;
  edit(`/pour/line/${line_key()}`, `${trimmed(value, 2)} mm`);
}

/** What is typed now, ahead of the program's answer, so that a second tap counts. */
function line_now(plan: Plan): number {
  const deep = plan.pour.depth_mm + plan.pour.below_brim_mm;
  const typed = millimetres(at(state.run, `/pour/line/${line_key()}`));
  if (typed === undefined) return plan.pour.below_brim_mm;
  return line_key() === "depth" ? deep - typed : typed;
}

function handle(plan: Plan): TemplateResult | typeof nothing {
  if (!state.measured) return nothing;
  const deep = plan.pour.depth_mm + plan.pour.below_brim_mm;
  const below = line_now(plan);
  const { share, h } = share_of_height(plan, deep - below);
  const drag = (down: PointerEvent) => {
    const knob = down.currentTarget as HTMLElement;
    const drawing = knob.parentElement!.querySelector("svg")!.getBoundingClientRect();
    knob.setPointerCapture(down.pointerId);
    const move = (event: PointerEvent) => set_line(plan, below + ((event.clientY - down.clientY) / drawing.height) * h);
    const up = () => {
      knob.removeEventListener("pointermove", move);
      knob.removeEventListener("pointerup", up);
      knob.removeEventListener("pointercancel", up);
    };
    knob.addEventListener("pointermove", move);
    knob.addEventListener("pointerup", up);
    knob.addEventListener("pointercancel", up);
  };
  const press = (event: KeyboardEvent) => {
    const by = { ArrowUp: -1, ArrowDown: 1, PageUp: -5, PageDown: 5 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    set_line(plan, below + by);
  };
  // Its height on the drawing is set by script: the page's rules allow no style in what is written.
  const place = (node?: Element) => node && ((node as HTMLElement).style.top = `${100 * share}%`);
  queueMicrotask(() => place(document.querySelector(".line-handle") ?? undefined));
  return html`<div class="line-handle" role="slider" tabindex="0" aria-label="Pour line below the brim" aria-valuemin="0"
    aria-valuemax=${Math.floor(deep)} aria-valuenow=${trimmed(below, 1)} aria-orientation="vertical"
    aria-valuetext="${both(length(state.units, below))} below the brim" @pointerdown=${drag} @keydown=${press}><span aria-hidden="true">↕</span></div>`;
}

export function headline(plan: Plan): TemplateResult {
  const { pour } = plan;
  const where = both(length(state.units, pour.below_brim_mm));
  const words = pour.below_brim_mm < 0.05 ? "Pour to the brim" : `Pour to ${where} below the brim`;
  const each = plan.cut ? "the loaf" : "each";
  return html`<p class="order ${state.is_old ? "old" : ""}">${words}, <b>${both(mass(state.units, pour.mass_each_g))}</b> ${each}.</p>`;
}

export function pour_lane(plan: Plan): TemplateResult {
  const { pour } = plan;
  const step = (by: number) => () => set_line(plan, line_now(plan) + by);
  return html`<div class="side">
    ${headline(plan)} ${side_view("pour", plan, handle(plan))}
    <div class="stepper">
      <button type="button" @click=${step(-1)} aria-label="Pour line 1 mm higher">+ 1 mm</button>
      ${field({ label: line_key() === "depth" ? "Deep" : "Below brim", at: `/pour/line/${line_key()}`, unit: "mm" })}
      <button type="button" @click=${step(1)} aria-label="Pour line 1 mm lower">− 1 mm</button>
    </div>
    ${figure({ key: "pour.mm", label: "1 mm is", shown: volume(state.units, pour.ml_per_mm, 2), note: `${plain(pour.ml_per_mm * pour.density_g_per_ml, 1)} g at the line`, sum: sums.sum_of_mm(pour) })}
    ${figure({ key: "pour.each", label: "Weigh into each", shown: mass(state.units, pour.mass_each_g), size: "weigh", note: `${trimmed(pour.volume_each_ml, 1)} ml`, sum: sums.sum_of_pour_each(pour) })}
    ${layers(plan)}
    </div><div class="weights">
    <h3>Weigh for the base <small>${pour.formula}</small></h3>
    ${ingredients("pour", pour)}
    ${figure({ key: "pour.make", label: "Base to make", shown: mass(state.units, pour.make_g), size: "weigh", sum: sums.sum_of_batter("pour", pour) })}
    ${figure({ key: "pour.density", label: "Density", shown: [`${pour.density_g_per_ml} g/ml`, ""], sum: sums.sum_of_density("pour", pour) })}
  </div>`;
}

function layers(plan: Plan): TemplateResult | typeof nothing {
  const listed = plan.pour.layers ?? [];
  if (!listed.length) return nothing;
  return html`<h3>Layers, lowest first</h3>
    ${listed.map(
      (layer, i) => html`
        ${figure({
          key: `pour.layer.${i}`,
          label: layer.name,
          note: `${first(length(state.units, layer.to_mm - layer.from_mm))} thick, ${first(mass(state.units, layer.mass_each_g))} each`,
          shown: mass(state.units, layer.g),
          size: "weigh",
          sum: sums.sum_of_layer(plan.pour, layer),
        })}
        ${layer_fields(i)}
        ${layer.colours.map((one, j) => figure({ key: `pour.layer.${i}.${j}`, label: one.name, note: spoons(one), shown: mass(state.units, one.g, decimals_of(one.scale_step_g)), size: "weigh" }))}
      `,
    )}`;
}

function layer_fields(i: number): TemplateResult | typeof nothing {
  const layer = value_at("run", `/pour/layers/${i}`) as Document | undefined;
  if (!layer) return nothing;
  const kind = ["parts", "depth", "mass"].find((name) => name in layer);
  if (!kind) return nothing;
  if (kind === "parts") {
    const set = (by: number) => () => edit(`/pour/layers/${i}/parts`, Math.max(1, Number(layer.parts) + by));
    return html`<div class="stepper small"><button type="button" @click=${set(-1)} aria-label="One part less of ${String(layer.name)}">−</button>
      <p>${String(layer.parts)} ${layer.parts === 1 ? "part" : "parts"}</p>
      <button type="button" @click=${set(1)} aria-label="One part more of ${String(layer.name)}">+</button></div>`;
  }
  return field({ label: `${String(layer.name)}, ${kind}`, at: `/pour/layers/${i}/${kind}`, unit: kind === "depth" ? "mm" : "g" });
}

function spoons(one: Ingredient): string {
  return one.teaspoons ? `about ${trimmed(one.teaspoons, 1)} tsp` : "";
}

function note_of(one: Ingredient): string {
  const aside = one.set_aside_for_colours_g ? `${plain(one.set_aside_for_colours_g, 1)} g of it for the colours` : "";
  return [spoons(one), aside].filter(Boolean).join(", ");
}

/** All but what goes into the lye, which stands on the shelf. */
export function ingredients(slot: Slot, batter: Batter): TemplateResult {
  const listed = batter.ingredients.map((one, i) => ({ one, i })).filter(({ one }) => !is_lye(one));
  return html`${listed.map(({ one, i }) => weighed(slot, batter, one, i))}`;
}

export function weighed(slot: Slot, batter: Batter, one: Ingredient, i: number): TemplateResult {
  return figure({
    key: `${slot}.${i}`,
    label: one.name,
    note: note_of(one),
    shown: mass(state.units, one.g, decimals_of(one.scale_step_g)),
    size: "weigh",
    sum: sums.sum_of_ingredient(slot, batter, one),
  });
}

