// The layers of the pour, lowest first: how much of each, its colours, and how the mould is tilted for it.
import { html, nothing, type TemplateResult } from "lit";
import { edit, value_at, without } from "../documents/editing";
import { state, update } from "../documents/state";
import { in_one_batch, type Bench } from "../figures/batches";
import { figure } from "../figures/figure";
import { shown_weight } from "../figures/weights";
import type { Ingredient, Layer } from "../program/answers";
import type { Document, Json } from "../program/json";
import { first, length, mass, trimmed, weight } from "../program/numbers";
import { field } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of, type List } from "./form_lists";
import { choice_field, change, folded, part, said_at, to_field } from "./form_parts";
import { supplier_form } from "./supplier_form";

const here = "/pour/layers";
const layers: List = { at: here, in_order: true };

type Way = "parts" | "depth" | "mass";
const ways: [Way, string][] = [
  ["parts", "Parts"],
  ["depth", "Thickness"],
  ["mass", "Weight in one"],
];

const layer_docs = (): Document[] => rows_of(layers) as Document[];

/** All layers are given in one way; with a depth or a mass, one of them takes the rest. */
function way_of_all(): Way {
  const is_used = (key: string) => layer_docs().some((layer) => key in layer);
  return ways.map(([way]) => way).find(is_used) ?? (is_used("rest") ? "depth" : "parts");
}

export function layers_form(plan?: Bench): TemplateResult {
  const listed = layer_docs();
  const way = way_of_all();
  if (!listed.length)
    return html`<p class="choice">
      ${add_button(layers, "Pour it in layers", () => add_to(layers, { name: "Layer 1", parts: 1 }, "layer"))}
    </p>`;
  return html`<h3>
      Layers, lowest first ${plan && in_one_batch(plan) ? html`<small>${in_one_batch(plan)}</small>` : nothing}
    </h3>
    ${choice_field({
      question: "All of them by",
      at: here,
      is_told_elsewhere: true,
      chosen: way,
      answers: ways,
      puts: (to) => by_way(to, plan),
    })}
    <div class="items">${listed.map((layer, i) => layer_form(layer, i, way, plan))}</div>
    ${add_button(layers, "One more layer on top", () =>
      add_to(layers, { name: free_name(listed), [way]: "" }, "layer"),
    )}`;
}

function free_name(listed: Document[]): string {
  for (let i = listed.length + 1; ; ++i) if (!listed.some((one) => one.name === `Layer ${i}`)) return `Layer ${i}`;
}

/** The plan's layer, if it is still the one that is written there. */
function planned(plan: Bench | undefined, layer: Document, i: number): Layer | undefined {
  const one = plan?.pour.layers?.[i];
  return one?.name === layer.name ? one : undefined;
}

/** The program's own figures of the layers as they are, where it has them; the uppermost takes the rest. */
function by_way(to: Way, plan: Bench | undefined): Json {
  const listed = layer_docs();
  const known = state.is_old ? undefined : plan;
  const amount = (layer: Document, i: number): Json => {
    const one = planned(known, layer, i);
    if (to === "parts" || !one || (to === "depth" && "tilted" in layer)) return "";
    return to === "depth" ? `${trimmed(one.to_mm - one.from_mm, 3)} mm` : `${trimmed(one.mass_each_g, 3)} g`;
  };
  return listed.map((layer, i) => {
    const kept = without_amount(i);
    const is_rest = to !== "parts" && listed.length > 1 && i === listed.length - 1;
    return { ...kept, ...(is_rest ? { rest: true } : { [to]: amount(layer, i) }) };
  });
}

const without_amount = (i: number): Document => without("run", `${here}/${i}`, [...ways.map(([way]) => way), "rest"]);

function layer_form(layer: Document, i: number, way: Way, plan: Bench | undefined): TemplateResult {
  const place = `${here}/${i}`;
  const name = String(layer.name) || `Layer ${i + 1}`;
  const one = planned(plan, layer, i);
  return html`<div class="part" id=${item_id(layers, i)} role="group" aria-label="Layer ${name}">
    ${one && plan ? layer_figure(plan, one, i) : html`<p class="part-title">${name}</p>`} ${said_at("run", place)}
    ${amount_form(layer, i, way, name)}
    ${plan && one ? one.colours.map((colour, j) => colour_figure(plan, colour, i, j)) : nothing}
    ${folded({
      name: place,
      pointers: ["name", "colours", "tilted"].map((one) => `${place}/${one}`),
      summary: "Name, colours, tilt",
      body: () =>
        html` ${field({ label: "Name of the layer", at: `${place}/name` })} ${colours(place, name)} ${propped(place, i)}
        ${item_buttons(layers, i, name)}`,
    })}
  </div>`;
}

function layer_figure(plan: Bench, one: Layer, i: number): TemplateResult {
  return figure({
    key: `pour.layer.${i}`,
    label: one.name,
    note: `${first(
      length(state.units, one.to_mm - one.from_mm),
    )} thick, ${first(mass(state.units, one.mass_each_g))} each`,
    shown: one.g_text === undefined ? mass(state.units, one.g) : weight(state.units, one),
    size: "weigh",
    of: `${plan.place}.pour.layers.${i}.g`,
  });
}

function colour_figure(plan: Bench, colour: Ingredient, i: number, j: number): TemplateResult {
  return figure({
    key: `pour.layer.${i}.${j}`,
    label: colour.name,
    note: colour.teaspoons ? `about ${trimmed(colour.teaspoons, 1)} tsp` : "",
    shown: shown_weight(state.units, colour),
    size: "weigh",
    of: `${plan.place}.pour.layers.${i}.colours.${j}.g`,
  });
}

function amount_form(layer: Document, i: number, way: Way, name: string): TemplateResult {
  if (way === "parts") return parts_stepper(layer, i, name);
  const takes_rest = "rest" in layer;
  return html`${
      takes_rest
        ? nothing
        : field({ label: `${name}, ${way}`, at: `${here}/${i}/${way}`, unit: way === "depth" ? "mm" : "g" })
    }
    <button
      type="button"
      aria-pressed=${takes_rest ? "true" : "false"}
      aria-label="${name} takes the rest"
      @click=${() => (takes_rest ? say_amount(i, way) : take_rest(i, way))}
    >
      Takes the rest
    </button>`;
}

function parts_stepper(layer: Document, i: number, name: string): TemplateResult {
  const place = `${here}/${i}/parts`;
  const set = (by: number) => () => {
    update({ typed: undefined });
    edit("run", place, Math.max(1, (Number(layer.parts) || 0) + by));
  };
  return html`<div class="stepper parts-of">
    <button type="button" @click=${set(-1)} aria-label="One part less of ${name}">−</button>
    ${field({ label: "Parts", at: place, number: true })}
    <button type="button" @click=${set(1)} aria-label="One part more of ${name}">+</button>
  </div>`;
}

/** Only one layer can: the one that did is asked for its amount. */
function take_rest(i: number, way: Way): void {
  const all = layer_docs().map((layer, at) =>
    at === i ? { ...without_amount(at), rest: true } : layer.rest ? { ...without_amount(at), [way]: "" } : layer,
  );
  change("run", "takes the rest", here, all);
}

function say_amount(i: number, way: Way): void {
  const place = `${here}/${i}`;
  change("run", "amount of the layer", place, { ...without_amount(i), [way]: "" }, to_field("run", `${place}/${way}`));
}

function colours(place: string, layer: string): TemplateResult {
  const list = { at: `${place}/colours`, in_order: true };
  return html`${rows_of(list).map((colour, j) => {
    const one = `${list.at}/${j}`;
    const name = String((colour as Document).name) || `colour ${j + 1}`;
    return html`<div class="part" id=${item_id(list, j)} role="group" aria-label="${name} in ${layer}">
      <div class="part-head">
        <p class="part-title">Colour: ${name}</p>
        ${item_buttons(list, j, name)}
      </div>
      ${said_at("run", one)}
      <div class="row">
        ${field({ label: "Colour", at: `${one}/name` })}
        ${field({ label: "Rate", at: `${one}/rate`, hint: "Such as 4 g/kg of batter, 1 tsp/lb of fats." })}
        ${field({
          label: "Bulk density (for spoons)",
          at: `${one}/bulk_density`,
          unit: "g/ml",
          optional: true,
          short: true,
          hint: "A level cup weighed, by the cup's volume.",
        })}
      </div>
      ${supplier_form("run", one, name)}
    </div>`;
  })}
  ${add_button(list, "Add a colour", () => add_to(list, { name: "", rate: "" }, "colour"))}`;
}

const sides: [string, string][] = [
  ["+x", "+x, right in the drawing"],
  ["-x", "−x, left in the drawing"],
  ["+y", "+y, back"],
  ["-y", "−y, front"],
];

function propped(place: string, i: number): TemplateResult {
  const pointer = `${place}/tilted`;
  const side = value_at("run", `${pointer}/low_side`) as string;
  const is_last = i === rows_of(layers).length - 1;
  if (is_last && value_at("run", pointer) === undefined)
    return html`<p class="hint">The last layer is poured level.</p>`;
  return part({
    at: pointer,
    name: "the tilt",
    title: "The mould is tilted",
    add: "Tilt the mould for this layer",
    blank: { angle: "", low_side: "" },
    body: () =>
      html`${field({ label: "Tilt", at: `${pointer}/angle`, unit: "°", short: true })}
        ${choice_field({
          question: "Low side",
          at: `${pointer}/low_side`,
          is_told_elsewhere: true,
          chosen: side || undefined,
          answers: sides,
          puts: (to) => to,
        })}
        ${folded({
          name: `${pointer} direction`,
          pointers: [],
          summary: "Another direction",
          is_needed: side !== "" && !sides.some(([one]) => one === side),
          body: () =>
            field({
              label: "Direction of the low side",
              at: `${pointer}/low_side`,
              unit: "°",
              short: true,
              hint: "In degrees from +x towards +y, seen from above.",
            }),
        })}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`,
  });
}
