// Pour: the line, what each takes, the base's weights, the layers.
import { html, nothing, type TemplateResult } from "lit";
import { edit } from "../documents/editing";
import type { Slot } from "../documents/file_types";
import { open_formula } from "../documents/formula_opening";
import { state, update } from "../documents/state";
import { share_of_height, side_view } from "../drawings/side_view";
import type { Bench } from "../figures/batches";
import { figure } from "../figures/figure";
import { for_batter, shown_weight } from "../figures/weights";
import { field } from "../forms/field";
import { change, choice, said_at } from "../forms/form_parts";
import { layers_form } from "../forms/layer_form";
import { warmth_form } from "../forms/warmth_form";
import type { Batter, Ingredient } from "../program/answers";
import { both, length, mass, millimetres, plain, trimmed, volume, weight } from "../program/numbers";
import { at } from "../program/pointer";
import { batch_head } from "./batches_told";

const line_key = (): "below_brim" | "depth" =>
  at(state.run.now, "/pour/line/depth") !== undefined ? "depth" : "below_brim";

/** The line as drawn or stepped, in whole or half millimetres. */
function set_line(plan: Bench, below_mm: number): void {
  const deep = plan.pour.depth_mm + plan.pour.below_brim_mm;
  const below = Math.min(Math.max(0, Math.round(below_mm * 2) / 2), Math.floor(deep * 2) / 2 - 0.5);
  const value = line_key() === "depth" ? deep - below : below;
  update({ typed: undefined });
  edit("run", `/pour/line/${line_key()}`, `${trimmed(value, 2)} mm`);
}

/** What is typed now, ahead of the program's answer, so that a second tap counts. */
function line_now(plan: Bench): number {
  const deep = plan.pour.depth_mm + plan.pour.below_brim_mm;
  const typed = millimetres(at(state.run.now, `/pour/line/${line_key()}`));
  if (typed === undefined) return plan.pour.below_brim_mm;
  return line_key() === "depth" ? deep - typed : typed;
}

/** Until it is lifted; `moved` is told how far down it has gone, as a share of the drawing. */
function follow_finger(down: PointerEvent, moved: (share: number) => void): void {
  const knob = down.currentTarget as HTMLElement;
  const drawing = knob.parentElement!.querySelector("svg")!.getBoundingClientRect();
  knob.setPointerCapture(down.pointerId);
  const move = (event: PointerEvent) => moved((event.clientY - down.clientY) / drawing.height);
  const up = () => {
    knob.removeEventListener("pointermove", move);
    for (const end of ["pointerup", "pointercancel"]) knob.removeEventListener(end, up);
  };
  knob.addEventListener("pointermove", move);
  for (const end of ["pointerup", "pointercancel"]) knob.addEventListener(end, up);
}

function handle(plan: Bench): TemplateResult | typeof nothing {
  if (!state.measured) return nothing;
  const deep = plan.pour.depth_mm + plan.pour.below_brim_mm;
  const below = line_now(plan);
  const { share, h } = share_of_height(plan, deep - below);
  const drag = (down: PointerEvent) =>
    follow_finger(down, (share_of_drawing) => set_line(plan, below + share_of_drawing * h));
  const press = (event: KeyboardEvent) => {
    const by = { ArrowUp: -1, ArrowDown: 1, PageUp: -5, PageDown: 5 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    set_line(plan, below + by);
  };
  // Its height on the drawing is set by script: the page's rules allow no style in what is written.
  const place = (node?: Element) => node && ((node as HTMLElement).style.top = `${100 * share}%`);
  queueMicrotask(() => place(document.querySelector(".line-handle") ?? undefined));
  return html`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(deep)}
    aria-valuenow=${trimmed(below, 1)}
    aria-orientation="vertical"
    aria-valuetext="${both(length(state.units, below))} below the brim"
    @pointerdown=${drag}
    @keydown=${press}
  >
    <span aria-hidden="true">↕</span>
  </div>`;
}

function headline(plan: Bench): TemplateResult {
  const { pour } = plan;
  const where = both(length(state.units, pour.below_brim_mm));
  const words = pour.below_brim_mm < 0.05 ? "Pour to the brim" : `Pour to ${where} below the brim`;
  const each = plan.cut ? "the loaf" : "each";
  return html`<p class="order ${state.is_old ? "old" : ""}">
    ${words}, <b>${both(mass(state.units, pour.mass_each_g))}</b> ${each}.
  </p>`;
}

export function pour_lane(plan: Bench): TemplateResult {
  const { pour } = plan;
  const place = `${plan.place}.pour`;
  const step = (by: number) => () => set_line(plan, line_now(plan) + by);
  return html`<div class="side">
      ${headline(plan)} ${side_view("pour", plan, handle(plan))} ${line_kinds(plan)}
      <div class="stepper">
        <button type="button" @click=${step(-1)} aria-label="Pour line 1 mm higher">+ 1 mm</button>
        ${field({ label: line_key() === "depth" ? "Deep" : "Below brim", at: `/pour/line/${line_key()}`, unit: "mm" })}
        <button type="button" @click=${step(1)} aria-label="Pour line 1 mm lower">− 1 mm</button>
      </div>
      ${figure({
        key: "pour.mm",
        label: "1 mm is",
        shown: volume(state.units, pour.ml_per_mm, 2),
        note: `${plain(pour.ml_per_mm * pour.density_g_per_ml, 1)} g at the line`,
        of: `${place}.ml_per_mm`,
      })}
      ${figure({
        key: "pour.each",
        label: "Weigh into each",
        shown: mass(state.units, pour.mass_each_g),
        size: "weigh",
        note: `${trimmed(pour.volume_each_ml, 1)} ml`,
        of: `${place}.mass_each_g`,
      })}
    </div>
    <div class="weights">
      ${batch_head(plan)} ${weigh_title("pour", "Weigh for the base", pour.formula)} ${ingredients(pour, place, "pour")}
      ${figure({
        key: "pour.make",
        label: "Base to make",
        shown: mass(state.units, pour.make_g),
        size: "weigh",
        of: `${place}.make_g`,
      })}
      ${figure({
        key: "pour.density",
        label: "Density",
        shown: [`${pour.density_g_per_ml} g/ml`, ""],
        of: `${place}.density_g_per_ml`,
      })}
    </div>
    <div class="more">${layers_form(plan)} ${warmth_form("pour")}</div>`;
}

/** What can be said before there is a plan. */
export function pour_questions(): TemplateResult {
  const kind = line_key();
  return html`<div class="side">
      ${line_kinds()} ${said_at("run", "/pour/line")}
      ${field({ label: kind === "depth" ? "Deep" : "Below brim", at: `/pour/line/${kind}`, unit: "mm" })}
    </div>
    <div class="more">${layers_form()} ${warmth_form("pour")}</div>`;
}

/** The same line, said the other way: by the program's own figure, if it stands for what is typed. */
function line_kinds(plan?: Bench): TemplateResult {
  const take = (kind: "below_brim" | "depth") => {
    if (kind === line_key()) return;
    const known = plan && !state.is_old ? plan.pour[kind === "depth" ? "depth_mm" : "below_brim_mm"] : undefined;
    change("run", "pour line", "/pour/line", { [kind]: known === undefined ? "" : `${trimmed(known, 3)} mm` });
  };
  return choice(
    "The pour line is measured",
    line_key(),
    [
      ["below_brim", "From the brim"],
      ["depth", "From the floor"],
    ],
    take,
  );
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

export function weigh_title(slot: Slot, words: string, formula: string): TemplateResult {
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
export function ingredients(batter: Batter, place: string, key: string): TemplateResult {
  return html`${for_batter(batter).map(({ one, i }) => weighed(one, i, place, key))}`;
}

/** `place` is that of its batter in the plan, `key` that of the batter's figures, which no other has. */
export function weighed(one: Ingredient, i: number, place: string, key: string): TemplateResult {
  return figure({
    key: `${key}.${i}`,
    label: one.name,
    note: note_of(one),
    shown: shown_weight(state.units, one),
    size: "weigh",
    of: `${place}.ingredients.${i}.g`,
  });
}
