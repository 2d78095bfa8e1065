// The layers of the pour, lowest first: how much of each, its colours, and how the mould is propped for it.
import { html, nothing, type TemplateResult } from "lit";
import type { Document, Json } from "./api";
import { add_button, add_to, change, id_at, item_buttons, list_at, part, said_at } from "./adding";
import { edit } from "./editing";
import { choice, field, id_of, value_at } from "./field";
import { figure } from "./figure";
import { decimals_of, first, length, mass, trimmed } from "./numbers";
import type { Ingredient, Layer, Plan } from "./plan";
import { state } from "./state";
import * as sums from "./sums";
import { supplier_form } from "./supplier_form";

const here = "/pour/layers";
const still_there = () => document.activeElement;

type Way = "parts" | "depth" | "mass";
const ways: [Way, string][] = [["parts", "Parts"], ["depth", "Thickness"], ["mass", "Weight in one"]];

const layer_docs = (): Document[] => list_at(here) as Document[];

/** All layers are given in one way; with a depth or a mass, one of them takes the rest. */
function way_of_all(): Way {
  const is_used = (key: string) => layer_docs().some((layer) => key in layer);
  return ways.map(([way]) => way).find(is_used) ?? (is_used("rest") ? "depth" : "parts");
}

export function layers_form(plan?: Plan): TemplateResult {
  const listed = layer_docs();
  const way = way_of_all();
  if (!listed.length)
    return html`<p class="choice"><button type="button" id=${id_at(here, "add")} @click=${() => add_to(here, { name: "Layer 1", parts: 1 }, "layer")}>Pour it in layers</button></p>`;
  return html`<h3>Layers, lowest first</h3>
    ${said_at(here)}
    <p class="hint">All of them by</p>
    ${choice("Layers by", way, ways, (to) => set_way(to, way, plan))}
    <div class="items">${listed.map((layer, i) => layer_form(layer, i, way, plan))}</div>
    ${add_button(here, "One more layer on top", { name: free_name(listed), [way]: "" }, "layer")}`;
}

function free_name(listed: Document[]): string {
  for (let i = listed.length + 1; ; ++i) if (!listed.some((one) => one.name === `Layer ${i}`)) return `Layer ${i}`;
}

/** The plan's layer, if it is still the one that is written there. */
function planned(plan: Plan | undefined, layer: Document, i: number): Layer | undefined {
  const one = plan?.pour.layers?.[i];
  return one?.name === layer.name ? one : undefined;
}

/** The program's own figures of the layers as they are, where it has them; the uppermost takes what is left. */
function set_way(to: Way, from: Way, plan: Plan | undefined): void {
  if (to === from) return;
  const listed = layer_docs();
  const known = state.is_old ? undefined : plan;
  const amount = (layer: Document, i: number): Json => {
    const one = planned(known, layer, i);
    if (to === "parts" || !one || (to === "depth" && "propped" in layer)) return "";
    return to === "depth" ? `${trimmed(one.to_mm - one.from_mm, 3)} mm` : `${trimmed(one.mass_each_g, 3)} g`;
  };
  const changed = listed.map((layer, i) => {
    const { parts: _, depth: __, mass: ___, rest: ____, ...kept } = layer;
    const is_rest = to !== "parts" && listed.length > 1 && i === listed.length - 1;
    return { ...kept, ...(is_rest ? { rest: true } : { [to]: amount(layer, i) }) };
  });
  change(`layers by ${to}`, here, changed, still_there);
}

function layer_form(layer: Document, i: number, way: Way, plan: Plan | undefined): TemplateResult {
  const place = `${here}/${i}`;
  const name = String(layer.name) || `Layer ${i + 1}`;
  const one = planned(plan, layer, i);
  return html`<div class="part" id=${id_at(place, "item")} role="group" aria-label="Layer ${name}">
    ${one && plan ? layer_figure(plan, one, i) : html`<p class="part-title">${name}</p>`}
    ${said_at(place)} ${amount_form(layer, i, way, name)}
    ${plan && one ? one.colours.map((colour, j) => colour_figure(plan, one, colour, i, j)) : nothing}
    <details><summary>Name, colours, prop</summary>
      ${field({ label: "Name of the layer", at: `${place}/name` })}
      ${colours(place, name)} ${propped(place, i)}
      ${item_buttons(here, i, name)}</details></div>`;
}

function layer_figure(plan: Plan, one: Layer, i: number): TemplateResult {
  return figure({
    key: `pour.layer.${i}`,
    label: one.name,
    note: `${first(length(state.units, one.to_mm - one.from_mm))} thick, ${first(mass(state.units, one.mass_each_g))} each`,
    shown: mass(state.units, one.g),
    size: "weigh",
    sum: sums.sum_of_layer(plan.pour, one),
  });
}

function colour_figure(plan: Plan, layer: Layer, colour: Ingredient, i: number, j: number): TemplateResult {
  return figure({
    key: `pour.layer.${i}.${j}`,
    label: colour.name,
    note: colour.teaspoons ? `about ${trimmed(colour.teaspoons, 1)} tsp` : "",
    shown: mass(state.units, colour.g, decimals_of(colour.scale_step_g)),
    size: "weigh",
    sum: sums.sum_of_layer_colour(plan.pour, layer, colour, `${here}/${i}/colours/${j}`),
  });
}

function amount_form(layer: Document, i: number, way: Way, name: string): TemplateResult {
  if (way === "parts") return parts_stepper(layer, i, name);
  const takes_rest = "rest" in layer;
  return html`${takes_rest ? nothing : field({ label: `${name}, ${way}`, at: `${here}/${i}/${way}`, unit: way === "depth" ? "mm" : "g" })}
    <button type="button" aria-pressed=${takes_rest ? "true" : "false"} aria-label="${name} takes what is left" @click=${() => (takes_rest ? say_amount(i, way) : take_rest(i, way))}>takes what is left</button>`;
}

function parts_stepper(layer: Document, i: number, name: string): TemplateResult {
  const place = `${here}/${i}/parts`;
  const set = (by: number) => () => {
    state.typed = undefined;
    edit(place, Math.max(1, (Number(layer.parts) || 0) + by));
  };
  return html`<div class="stepper parts-of"><button type="button" @click=${set(-1)} aria-label="One part less of ${name}">−</button>
    ${field({ label: "Parts", at: place, number: true })}
    <button type="button" @click=${set(1)} aria-label="One part more of ${name}">+</button></div>`;
}

/** Only one layer can: the one that did is asked for its amount. */
function take_rest(i: number, way: Way): void {
  const changed = layer_docs().map((layer, at) => {
    const { parts: _, depth: __, mass: ___, rest, ...kept } = layer;
    if (at === i) return { ...kept, rest: true };
    return rest ? { ...kept, [way]: "" } : layer;
  });
  change("takes what is left", here, changed, still_there);
}

function say_amount(i: number, way: Way): void {
  const { rest: _, ...kept } = layer_docs()[i]!;
  const place = `${here}/${i}`;
  change("amount of the layer", place, { ...kept, [way]: "" }, () => document.getElementById(id_of("run", `${place}/${way}`)));
}

function colours(place: string, layer: string): TemplateResult {
  const pointer = `${place}/colours`;
  return html`${list_at(pointer).map((colour, j) => {
      const one = `${pointer}/${j}`;
      const name = String((colour as Document).name) || `colour ${j + 1}`;
      return html`<div class="part" id=${id_at(one, "item")} role="group" aria-label="${name} in ${layer}">
        <div class="part-head"><p class="part-title">Colour: ${name}</p>${item_buttons(pointer, j, name)}</div>
        ${said_at(one)}
        <div class="row">${field({ label: "Colour", at: `${one}/name` })}
          ${field({ label: "Rate", at: `${one}/rate`, hint: "Such as 4 g/kg of batter, 1 tsp/lb of fats." })}
          ${field({ label: "Weight of a loose ml", at: `${one}/bulk_density`, unit: "g/ml", optional: true, short: true, hint: "Bulk density; needed for spoons." })}</div>
        ${supplier_form(one, name)}</div>`;
    })}
    ${add_button(pointer, "Add a colour", { name: "", rate: "" }, "colour")}`;
}

const sides: [string, string][] = [["+x", "+x, right in the drawing"], ["-x", "−x, left in the drawing"], ["+y", "+y, behind it"], ["-y", "−y, before it"]];

function propped(place: string, i: number): TemplateResult {
  const pointer = `${place}/propped`;
  const side = value_at("run", `${pointer}/low_side`) as string;
  const is_last = i === list_at(here).length - 1;
  if (is_last && value_at("run", pointer) === undefined) return html`<p class="hint">The last layer is poured level.</p>`;
  return part({
    at: pointer, name: "the prop", title: "The mould is propped up", add: "Prop the mould up for this layer", blank: { angle: "", low_side: "" },
    body: () => html`${field({ label: "Leans by", at: `${pointer}/angle`, unit: "°", short: true })}
      ${choice("Low side", side, sides, (to) => edit(`${pointer}/low_side`, to))}
      ${field({ label: "Low side, or its direction", at: `${pointer}/low_side`, unit: "°", short: true, hint: "In degrees from +x towards +y, seen from above." })}
      <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`,
  });
}
