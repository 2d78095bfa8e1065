// Decorate: decorations cast ahead, and the dust; or Cut, for loaves and slabs.
import { html, nothing, type TemplateResult } from "lit";
import { text_at, value_at } from "../documents/editing";
import { state } from "../documents/state";
import { side_view } from "../drawings/side_view";
import { is_of_several, type Bench } from "../figures/batches";
import { figure, how } from "../figures/figure";
import { cut_button, cut_form, may_be_cut } from "../forms/cut_form";
import { called, decorations } from "../forms/decoration";
import { dust_form, dusts, powder_called } from "../forms/dust_form";
import { item_buttons, item_id, rows_of, type List } from "../forms/form_lists";
import { add_buttons, decoration_form } from "../forms/decoration_form";
import type { Cut, Decoration } from "../program/answers";
import { both, duration, length, mass, trimmed, weighed_as, weight } from "../program/numbers";
import { batch_head } from "./batches_told";

export const has_decorations = (): boolean => rows_of(decorations).length + rows_of(dusts).length > 0;

/** Where nothing is set on it and nothing cut, what could be. */
export function unused_decorate(): TemplateResult {
  return html`<section class="lane unused" aria-label="Decorate">
    <h2>Decorate</h2>
    <p>Nothing is set on or in it${may_be_cut() ? ", and it is left whole" : ""}.</p>
    ${add_buttons()} ${cut_button()}
  </section>`;
}

/** What is planned of each decoration and powder that the run names; old figures are found by their name. */
function planned<T extends { name: string }>(
  figures: T[] | undefined,
  all: unknown[],
  name: string,
  i: number,
): T | undefined {
  return figures?.length === all.length ? figures[i] : figures?.find((one) => one.name === name);
}

export function decorate_lane(plan: Bench): TemplateResult {
  const known = rows_of(decorations).flatMap((_, i) => {
    const one = figures_of(plan, i);
    return one ? [{ one, i }] : [];
  });
  return html`<div class="side">${known.map(({ one }) => cast_order(plan, one))} ${side_view("decorate", plan)}</div>
    <div class="weights">
      ${known.map(({ one, i }) => weights(plan, one, i))}
      ${
        plan.dust?.length && rows_of(dusts).length
          ? html`${is_of_several(plan.whole) ? batch_head(plan) : nothing}
              <h3>Weigh for dusting</h3>`
          : nothing
      }
      ${rows_of(dusts).map((_, i) => dust_figure(plan, i))}
    </div>
    ${decorate_questions()}`;
}

const figures_of = (plan: Bench, i: number): Decoration | undefined =>
  planned(plan.decorations, rows_of(decorations), text_at("run", `/decorations/${i}/name`), i);

/** All that is asked about decorations and powders. */
export function decorate_questions(): TemplateResult {
  const section = (list: List, i: number, name: string, form: TemplateResult) =>
    html`<section class="questions" id=${item_id(list, i)} aria-labelledby="${item_id(list, i)}-title">
      <div class="part-head">
        <h3 id="${item_id(list, i)}-title">${name}</h3>
        ${item_buttons(list, i, name)}
      </div>
      ${form}
    </section>`;
  return html`<div class="all-questions">
    ${rows_of(decorations).map((_, i) => section(decorations, i, called(i), decoration_form(i)))}
    ${rows_of(dusts).map((_, i) => section(dusts, i, powder_called(i), dust_form(i)))} ${add_buttons()} ${cut_button()}
  </div>`;
}

/** Of all batches together, for it is made ahead. */
function cast_order(plan: Bench, one: Decoration): TemplateResult {
  const fills = one.tray_fills > 0 ? `, in ${one.tray_fills} tray ${one.tray_fills === 1 ? "fill" : "fills"}` : "";
  return html`<p class="order ${state.is_old ? "old" : ""}">
    Cast <b>${one.casts}</b> of ${one.name} ahead${fills}${is_of_several(plan.whole) ? ", for the whole run" : ""}.
  </p>`;
}

function weights(plan: Bench, one: Decoration, i: number): TemplateResult {
  return html`<h3>
      Weigh for ${one.name} ${is_of_several(plan.whole) ? html`<small>for the whole run</small>` : nothing}
    </h3>
    ${figure({
      key: `decorations.${i}.make`,
      label: `Melt of ${one.material}`,
      shown: weight(state.units, weighed_as(one, "make_")),
      size: "weigh",
      of: `decorations.${i}.make_g`,
    })}
    ${figure({
      key: `decorations.${i}.each`,
      label: "Each weighs",
      note: `${trimmed(one.volume_each_ml, 2)} ml`,
      shown: mass(state.units, one.mass_each_g, 2),
      of: `decorations.${i}.mass_each_g`,
    })}
    ${one.casting_s ? html`<p>${duration(one.casting_s)} of casting.</p>` : nothing} ${fit(one, i)}`;
}

function fit(one: Decoration, i: number): TemplateResult | typeof nothing {
  const { on_top, buried } = one;
  if (!on_top && !buried) return nothing;
  const mm = (value: number | null) => (value === null ? "not known" : both(length(state.units, value)));
  const least = (pick: (embed: NonNullable<Decoration["buried"]>["embeds"][number]) => number | null) => {
    const known = (buried?.embeds ?? []).map(pick).filter((value): value is number => value !== null);
    return known.length ? both(length(state.units, Math.min(...known))) : "none near";
  };
  return html`<h4>Fit of ${one.name}</h4>
    <dl class="facts">
      ${
        on_top
          ? html`<div>
                <dt>Contact circle</dt>
                <dd>${mm(on_top.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${mm(on_top.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${mm(on_top.stands_proud_mm)}</dd>
              </div>`
          : nothing
      }
      ${
        buried
          ? html`<div>
                <dt>In each</dt>
                <dd>${buried.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${least((embed) => embed.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${least((embed) => embed.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${least((embed) => embed.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${least((embed) => embed.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${trimmed(buried.displaced_ml, 1)} ml</dd>
              </div>`
          : nothing
      }
    </dl>
    ${how(`decorations.${i}.fit`, "How the fit is measured", `decorations.${i}.${on_top ? "on_top" : "buried"}`)}`;
}

function dust_figure(plan: Bench, i: number): TemplateResult | typeof nothing {
  const one = planned(plan.dust, rows_of(dusts), text_at("run", `/dust/${i}/name`), i);
  if (!one) return nothing;
  const by_piece = value_at("run", `/dust/${i}/per_piece`) !== undefined;
  const has_none = one.exposed_cm2 === 0 && !by_piece;
  const shown = figure({
    key: `dust.${i}`,
    label: one.name,
    shown: weight(state.units, weighed_as(one, "")),
    size: "weigh",
    of: `${plan.place}.dust.${i}.g`,
  });
  return html`${shown}${
    has_none
      ? html`<p class="alarm">
          Nothing of a topping or a decoration sees the air, so it comes to nothing: say what is weighed for one piece.
        </p>`
      : nothing
  }`;
}

export function cut_lane(plan: Bench): TemplateResult {
  const { cut } = plan;
  return html`<div class="side">
      ${
        cut
          ? html`<p class="order ${state.is_old ? "old" : ""}">
              Cut <b>${cut.bars_each} bars</b> from each, ${cut.columns} by ${cut.rows}.
            </p>`
          : nothing
      }
      ${side_view("cut", plan)}
    </div>
    <div class="weights">
      ${
        cut
          ? html`${figure({
              key: "cut.bar",
              label: "A bar on average, fresh",
              note: bar_range(cut),
              shown: mass(state.units, plan.piece.fresh_g),
              size: "weigh",
              of: "cut.bars_each",
            })}
            ${figure({
              key: "cut.offcuts",
              label: "Offcuts",
              shown: mass(state.units, cut.offcuts_g),
              of: "cut.offcuts_g",
            })}
            ${one_more(cut)}`
          : nothing
      }
    </div>
    <div class="all-questions">${cut_form()} ${has_decorations() ? nothing : add_buttons()}</div>`;
}

/** The least rounded down and the greatest up. */
function bar_range(cut: Cut): string {
  const weights = cut.bars.map((bar) => bar.fresh_g);
  const least = Math.floor(Math.min(...weights) * 10) / 10,
    greatest = Math.ceil(Math.max(...weights) * 10) / 10;
  return `${trimmed(least, 1)} to ${trimmed(greatest, 1)} g`;
}

function one_more(cut: Cut): TemplateResult | typeof nothing {
  if (!cut.one_more?.length) return nothing;
  return html`<ul class="limits">
    ${cut.one_more.map((one) => html`<li>At ${one.size_text} ${one.direction} it gives ${one.bars} bars.</li>`)}
  </ul>`;
}
