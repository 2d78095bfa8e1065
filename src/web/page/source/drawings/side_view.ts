// The piece from the side, to scale, with one part shaded. The same view stands over every lane.
import { html, nothing, svg, type TemplateResult } from "lit";
import { state } from "../documents/state";
import type { Layer, Decoration, Plan } from "../program/answers";
import { both, length, millimetres } from "../program/numbers";
import { reach_at, type Loop, type Outline } from "../program/outline";
import { at } from "../program/pointer";
import type { Topping } from "../program/topping";

/** What is seen of a piece is the same in each batch. */
type Seen = Pick<Plan, "pour" | "decorations" | "cut" | "piece"> & { pipe?: Topping };
type Part = "pour" | "pipe" | "decorate" | "dust" | "cut";

interface Heights {
  brim: number;
  line: number;
  topping: number; // above the brim
  ball: number; // radius of what is set on it
  proud: number; // how far that stands out
  top: number;
}

const d_of = (loops: Loop[]): string =>
  loops.map((loop) => `M${loop.map(([x, y]) => `${x.toFixed(2)} ${(-y).toFixed(2)}`).join("L")}Z`).join("");

/**
 * What stands out of the mould. The program's own height of the piece counts where it knows one; else a topping
 * of which only the volume is known is drawn as a dome of that volume. A ball is drawn as large as its volume.
 */
function heights_of(plan: Seen, outline: Outline): Heights {
  const brim = outline.brim - outline.floor;
  const line = plan.pour.poured_to_mm ?? plan.pour.depth_mm;
  const ball_on_it = plan.decorations?.find((one) => !one.buried && one.cavity_fills > 0);
  const ball = ball_on_it ? ball_of(ball_on_it) : 0;
  const proud = ball_on_it ? (ball_on_it.on_top?.stands_proud_mm ?? 1.9 * ball) : 0;
  const topping = plan.pipe ? topping_of(plan, outline, brim, proud) : 0;
  return { brim, line, topping, ball, proud, top: Math.max(brim, (plan.pipe ? brim : line) + topping + proud) };
}

function topping_of(plan: Seen, outline: Outline, brim: number, proud: number): number {
  const said = millimetres(at(state.run.now, "/pipe/envelope/height"));
  if (said !== undefined) return said;
  const high = (plan.piece.size?.height_mm ?? 0) - brim - proud;
  if (high > 1) return high;
  const [left, right] = reach_at(outline, outline.brim - 0.01);
  const round = (Math.PI / 4) * (right - left) ** 2;
  return (1500 * plan.pipe!.visible_each_ml) / round; // half an ellipsoid: 2/3 of base times height
}

/** Three turns of a rope within the dome, each narrower than the one beneath. */
function topping_path(outline: Outline, heights: Heights): string {
  const [left, right] = reach_at(outline, outline.brim - 0.01);
  const middle = (left + right) / 2;
  const turns = 3;
  const half = (i: number) => ((right - left) / 2) * Math.sqrt(1 - (i / (turns + 0.3)) ** 2);
  const level = (i: number) => -(heights.brim + (heights.topping * i) / turns);
  const rope = (from: number, to: number, side: 1 | -1) => {
    const out = middle + side * (Math.max(half(from), half(to)) + (right - left) * 0.035);
    return `C${out} ${level(from)} ${out} ${level(to)} ${middle + side * half(to) * (to ? 0.94 : 1)} ${level(to)}`;
  };
  let path = `M${left} ${level(0)}`;
  for (let i = 0; i < turns; ++i) path += rope(i, i + 1, -1);
  path += `L${middle + half(turns) * 0.94} ${level(turns)}`;
  for (let i = turns; i > 0; --i) path += rope(i, i - 1, 1);
  return `${path}Z`;
}

const fill_of = (part: Part, own: Part): string => (part === own ? `shaded ${own}` : "plain");

/** With its words beside it, and something laid over it. */
export function side_view(part: Part, plan: Seen, extra: TemplateResult | typeof nothing = nothing): TemplateResult {
  return html`${drawn(part, plan, extra)}
  ${part === "decorate" && stand_ins(plan) ? html`<p class="hint">${stand_ins(plan)}</p>` : nothing}`;
}

/** Beside a line of words. */
export const small_view = (part: Part, plan: Seen): TemplateResult =>
  html`<div class="small-view">${drawn(part, plan, nothing)}</div>`;

function drawn(part: Part, plan: Seen, extra: TemplateResult | typeof nothing): TemplateResult {
  const outline = state.measured?.outline;
  if (!outline) return html`<p class="drawing hint">${state.measuring_failed ?? "Reading the mould ..."}</p>`;
  const heights = heights_of(plan, outline);
  const wide = outline.right - outline.left;
  const margin = Math.max(6, wide * 0.1);
  const box = { x: outline.left - margin, y: -heights.top - margin, w: wide + 2 * margin, h: heights.top + 2 * margin };
  return html`<div class="drawing">
    <svg viewBox="${box.x} ${box.y} ${box.w} ${box.h}" role="img" aria-label=${words_for(part, plan)}>
      ${patterns(part)} ${layers(part, plan, outline, heights)} ${recess(part, plan, outline, heights)} ${walls()}
      ${on_top(part, plan, outline, heights)} ${cuts(part, plan, outline, heights)}
      ${svg`<line class="pour-line" x1=${box.x + 1} x2=${box.x + box.w - 1} y1=${-heights.line} y2=${-heights.line} />
        <line class="brim" x1=${box.x + 1} x2=${outline.left - 1} y1=${-heights.brim} y2=${-heights.brim} />
        <line class="brim" x1=${outline.right + 1} x2=${box.x + box.w - 1} y1=${-heights.brim} y2=${-heights.brim} />`}
    </svg>
    ${extra}
  </div>`;
}

/** Where the drawing's heights lie, for a handle that is laid over it: shares of its height, 0 at the top. */
export function share_of_height(plan: Seen, mm: number): { share: number; per_mm: number; w: number; h: number } {
  const outline = state.measured!.outline;
  const heights = heights_of(plan, outline);
  const wide = outline.right - outline.left;
  const margin = Math.max(6, wide * 0.1);
  const high = heights.top + 2 * margin;
  return { share: (heights.top + margin - mm) / high, per_mm: 1 / high, w: wide + 2 * margin, h: high };
}

function patterns(part: Part) {
  return svg`<defs>
    <pattern id="hatch-${part}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${part}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${part}"><path clip-rule="evenodd" d=${d_of(floored())} /></clipPath>
  </defs>`;
}

/** With the floor at 0, as depths are counted. */
function floored(): Loop[] {
  const outline = state.measured!.outline;
  return outline.loops.map((loop) => loop.map(([x, y]) => [x, y - outline.floor]));
}

function layers(part: Part, plan: Seen, outline: Outline, heights: Heights) {
  const own = part === "cut" ? "pour" : part;
  const layers = plan.pour.layers ?? [];
  const bands = (
    layers.length ? layers.map((layer) => upper_edge(layer, outline)) : [[heights.line, heights.line] as const]
  ).map(([left, right]) => `M${outline.left} 0V${-left}L${outline.right} ${-right}V0Z`);
  // The last first: each covers what lies above it, however the ones beneath it slope.
  return svg`<g clip-path="url(#cavity-${part})">${bands
    .map(
      (d, i) =>
        svg`<path class="whole" d=${d} /><path class="${fill_of(own, "pour")} band${i % 3}" d=${d} />${
          own === "pour" && i % 2 === 0 ? svg`<path fill="url(#hatch-${part})" d=${d} />` : nothing
        }`,
    )
    .reverse()}</g>`;
}

/** How high a layer's surface stands at the left and at the right end of the cut. */
function upper_edge(layer: Layer, outline: Outline): readonly [number, number] {
  const { surface, to_mm } = layer;
  if (!surface) return [to_mm, to_mm];
  const at_x = (x: number) => surface.over_origin_mm + surface.rise_x * x + surface.rise_y * outline.cut_y;
  return [at_x(outline.left), at_x(outline.right)];
}

function recess(part: Part, plan: Seen, outline: Outline, heights: Heights) {
  if (!plan.pipe || heights.line >= heights.brim) return nothing;
  const share = Math.min(
    1,
    (parseFloat(String(at(state.run.now, "/pipe/fills_headspace")).replace(",", ".")) || 0) / 100,
  );
  const wide = (outline.right - outline.left) * share;
  const middle = (outline.left + outline.right) / 2;
  return svg`<g clip-path="url(#cavity-${part})"><rect class=${fill_of(part, "pipe")} x=${middle - wide / 2} width=${wide}
    y=${-heights.brim} height=${heights.brim - heights.line} /></g>`;
}

function walls() {
  return svg`<path class="wall" fill-rule="evenodd" d=${d_of(floored())} />`;
}

function on_top(part: Part, plan: Seen, outline: Outline, heights: Heights) {
  const middle = (outline.left + outline.right) / 2;
  const under = plan.pipe ? heights.brim : heights.line;
  const embeds =
    plan.decorations?.flatMap((one, i) => (one.buried?.embeds ?? []).map((embed) => ({ embed, one, i }))) ?? [];
  return svg`
    ${
      plan.pipe
        ? svg`<path class=${fill_of(part, "pipe")} d=${topping_path(outline, heights)} />${
            part === "pipe" ? svg`<path fill="url(#dots-pipe)" d=${topping_path(outline, heights)} />` : nothing
          }`
        : nothing
    }
    ${part === "dust" ? dusted(plan, outline, heights) : nothing}
    ${
      heights.ball
        ? svg`<circle class=${fill_of(part, "decorate")} cx=${middle} cy=${-(
            under +
            heights.topping +
            heights.proud -
            heights.ball
          )} r=${heights.ball} />`
        : nothing
    }
    ${embeds.map(({ embed, one, i }) => embedded(fill_of(part, "decorate"), middle, embed, one, i))}`;
}

/** What lies open to the air, where powder may fall. */
function dusted(plan: Seen, outline: Outline, heights: Heights) {
  const level = `M${outline.left} ${-heights.line}H${outline.right}`;
  return svg`<path class="powder" d=${plan.pipe ? topping_path(outline, heights) : level} />`;
}

type Embed = NonNullable<Decoration["buried"]>["embeds"][number];

/**
 * A rod as it lies, its ends seen as ellipses where it is turned; all else is a ball of its volume. Of a rod's
 * axis, which is x before it is turned, the view shows the part across and the part upward.
 */
function embedded(look: string, middle: number, embed: Embed, one: Decoration, i: number) {
  const [x, z] = [middle + embed.middle_mm[0], embed.middle_mm[2]];
  const thick = millimetres(at(state.run.now, `/decorations/${i}/rod/diameter`));
  const long = millimetres(at(state.run.now, `/decorations/${i}/rod/length`));
  if (!thick || !long) return svg`<circle class=${look} cx=${x} cy=${-z} r=${ball_of(one)} />`;
  const [across, up] = [embed.turn[0][0], embed.turn[2][0]];
  const seen = Math.min(1, Math.hypot(across, up));
  const end = (thick / 2) * Math.sqrt(1 - seen * seen);
  const wide = long * seen + 2 * end;
  const lean = (-180 / Math.PI) * Math.atan2(up, across);
  return svg`<rect class=${look} x=${-wide / 2} y=${-thick / 2} width=${wide} height=${thick} rx=${end} ry=${end ? thick / 2 : 0}
    transform="translate(${x} ${-z}) rotate(${lean})" />`;
}

const ball_of = (one: Decoration): number => Math.cbrt((3000 * one.volume_each_ml) / (4 * Math.PI));

/** What is drawn as a ball of its volume and may have another shape. */
function stand_ins(plan: Seen): string {
  const names = (plan.decorations ?? [])
    .filter(
      (one, i) => at(state.run.now, `/decorations/${i}/rod`) === undefined && (one.buried || one.cavity_fills > 0),
    )
    .map((one) => one.name);
  return names.length ? `Drawn as a ball of its volume, whatever its shape: ${names.join(", ")}.` : "";
}

function cuts(part: Part, plan: Seen, outline: Outline, heights: Heights) {
  if (part !== "cut" || !plan.cut) return nothing;
  const many = Math.max(plan.cut.rows, plan.cut.columns);
  return svg`${Array.from({ length: many - 1 }, (_, i) => {
    const x = outline.left + ((outline.right - outline.left) * (i + 1)) / many;
    return svg`<line class="knife" x1=${x} x2=${x} y1=${-heights.line} y2="0" />`;
  })}`;
}

function words_for(part: Part, plan: Seen): string {
  const line = both(length(state.units, plan.pour.below_brim_mm));
  const shaded = {
    pour: "the pour",
    pipe: "the topping",
    decorate: "the decoration",
    dust: "what powder may fall on",
    cut: "the loaf with its cuts",
  }[part];
  return `The piece from the side, to scale; ${shaded} is shaded. Pour line ${line} below the brim. ${stand_ins(plan)}`.trim();
}
