// Pour: the line, what each takes, the layers.
import { html, nothing, type TemplateResult } from "lit";
import { edit, text_at } from "../documents/editing";
import type { Slot } from "../documents/file_types";
import { open_formula } from "../documents/formula_opening";
import { state, update } from "../documents/state";
import { share_of_height, side_view, small_view } from "../drawings/side_view";
import { in_one_batch, type Bench } from "../figures/batches";
import { figure } from "../figures/figure";
import { field } from "../forms/field";
import { change, choice, said_at } from "../forms/form_parts";
import { layers_form } from "../forms/layer_form";
import { taken_ready } from "../forms/taken_ready";
import { warmth_form } from "../forms/warmth_form";
import { both, length, mass, millimetres, plain, trimmed, volume } from "../program/numbers";
import { at } from "../program/pointer";
import { set_up_part, told } from "./set_up_part";

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
  const whose = in_one_batch(plan);
  return told(
    html`${words}, <b>${both(mass(state.units, pour.mass_each_g))}</b> ${each}; make
      <b>${both(mass(state.units, pour.make_g))}</b>${whose ? ` for ${whose}` : ""}.`,
  );
}

const shown_deep = (): string => (line_key() === "depth" ? "Depth" : "Below brim");

/** The base: its line, its layers, its formula. */
export function pour_part(bench?: Bench): TemplateResult {
  return set_up_part({
    name: "pour",
    title: "Pour",
    drawing: bench && (() => small_view("pour", bench)),
    result: bench ? headline(bench) : told(`${line_words()}.`),
    about: [["run", "/pour"]],
    form: () =>
      html`${bench ? with_figures(bench) : line_questions()}
        <div class="more">
          ${change_formula("pour")} ${taken_ready("pour")} ${layers_form(bench)} ${warmth_form("pour")}
        </div>`,
  });
}

/** As long as there are no figures. */
function line_words(): string {
  const line = text_at("run", `/pour/line/${line_key()}`);
  return line ? `${line} ${line_key() === "depth" ? "deep" : "below the brim"}` : "No pour line yet";
}

function with_figures(plan: Bench): TemplateResult {
  const { pour } = plan;
  const place = `${plan.place}.pour`;
  const step = (by: number) => () => set_line(plan, line_now(plan) + by);
  return html`<div class="side">
      ${side_view("pour", plan, handle(plan))} ${line_kinds(plan)}
      <div class="stepper">
        <button type="button" @click=${step(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${field({ label: shown_deep(), at: `/pour/line/${line_key()}`, unit: "mm" })}
        <button type="button" @click=${step(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${figure({
        key: "pour.each",
        label: "Weigh into each",
        shown: mass(state.units, pour.mass_each_g),
        note: `${trimmed(pour.volume_each_ml, 1)} ml`,
        of: `${place}.mass_each_g`,
      })}
      ${figure({
        key: "pour.mm",
        label: "1 mm more or less",
        shown: volume(state.units, pour.ml_per_mm, 2),
        note: `${plain(pour.ml_per_mm * pour.density_g_per_ml, 1)} g at the line`,
        of: `${place}.ml_per_mm`,
      })}
      ${figure({
        key: "set-up.pour.make",
        label: "Base to make",
        note: in_one_batch(plan),
        shown: mass(state.units, pour.make_g),
        of: `${place}.make_g`,
      })}
      ${figure({
        key: "pour.density",
        label: "Density",
        shown: [`${pour.density_g_per_ml} g/ml`, ""],
        of: `${place}.density_g_per_ml`,
      })}
    </div>`;
}

/** What can be said before there is a plan. */
const line_questions = (): TemplateResult =>
  html`<div class="side">
    ${line_kinds()} ${said_at("run", "/pour/line")}
    ${field({ label: shown_deep(), at: `/pour/line/${line_key()}`, unit: "mm" })}
  </div>`;

/** To the formula of the batter. */
export const change_formula = (slot: Slot): TemplateResult =>
  html`<button type="button" @click=${() => open_formula(slot)}>
    Change the formula of the ${slot === "pour" ? "base" : "topping"}
  </button>`;

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
