// Decorate: decorations cast ahead, and the dust; or Cut, for loaves and slabs.
import { html, nothing, type TemplateResult } from "lit";
import { text_at, value_at } from "../documents/editing";
import { state } from "../documents/state";
import { side_view, small_view } from "../drawings/side_view";
import { in_one_batch, is_of_several, type Bench } from "../figures/batches";
import { figure, how } from "../figures/figure";
import { cut_form } from "../forms/cut_form";
import { called, decorations } from "../forms/decoration";
import { decoration_form } from "../forms/decoration_form";
import { dust_form, dusts, powder_called } from "../forms/dust_form";
import { item_buttons, item_id, rows_of, type List } from "../forms/form_lists";
import { within } from "../forms/wanted";
import type { Cut, Decoration } from "../program/answers";
import { both, duration, length, mass, trimmed, weighed_as, weight } from "../program/numbers";
import { set_up_part, told } from "./set_up_part";

export const has_decorations = (): boolean => rows_of(decorations).length > 0;
export const has_dust = (): boolean => rows_of(dusts).length > 0;

/** What is planned of each decoration and powder that the run names; old figures are found by their name. */
function planned<T extends { name: string }>(
  figures: T[] | undefined,
  all: unknown[],
  name: string,
  i: number,
): T | undefined {
  return figures?.length === all.length ? figures[i] : figures?.find((one) => one.name === name);
}

/** What is cast ahead and set on or in it. */
export function decorate_part(bench?: Bench): TemplateResult {
  const known = bench ? rows_of(decorations).flatMap((_, i) => figures_of(bench, i) ?? []) : [];
  return set_up_part({
    name: "decorate",
    title: "Decorate",
    drawing: bench && (() => small_view("decorate", bench)),
    result: known.length ? known.map((one) => cast_order(bench!, one)) : told(names_of(decorations, called)),
    about: [["run", decorations.at]],
    form: () =>
      html`${bench ? html`<div class="side">${side_view("decorate", bench)}</div>` : nothing}
        <div class="weights">${bench ? rows_of(decorations).map((_, i) => figures_at(bench, i)) : nothing}</div>
        ${questions(decorations, called, decoration_form)}`,
  });
}

const names_of = (list: List, name: (i: number) => string): string =>
  `${rows_of(list)
    .map((_, i) => name(i))
    .join(", ")}, not yet with figures.`;

function figures_at(bench: Bench, i: number): TemplateResult | typeof nothing {
  const one = figures_of(bench, i);
  return one ? weights(bench, one, i) : nothing;
}

/** Powder over what is still tacky. */
export function dust_part(bench?: Bench): TemplateResult {
  const known = bench?.dust?.length ? rows_of(dusts).map((_, i) => dust_order(bench, i)) : undefined;
  return set_up_part({
    name: "dust",
    title: "Dust",
    drawing: bench && (() => small_view("dust", bench)),
    result: known ?? told(names_of(dusts, powder_called)),
    about: [["run", dusts.at]],
    form: () =>
      html`<div class="side">${bench ? side_view("dust", bench) : nothing}</div>
        <div class="weights">${bench ? rows_of(dusts).map((_, i) => dust_figure(bench, i)) : nothing}</div>
        ${questions(dusts, powder_called, dust_form)}`,
  });
}

const figures_of = (plan: Bench, i: number): Decoration | undefined =>
  planned(plan.decorations, rows_of(decorations), text_at("run", `/decorations/${i}/name`), i);

/** All that is asked about each of them. */
function questions(list: List, name: (i: number) => string, form: (i: number) => TemplateResult): TemplateResult {
  return html`<div class="all-questions">
    ${rows_of(list).map(
      (_, i) =>
        html`<section class="questions" id=${item_id(list, i)} aria-labelledby="${item_id(list, i)}-title">
          <div class="part-head">
            <h3 id="${item_id(list, i)}-title">${name(i)}</h3>
            ${item_buttons(list, i, name(i))}
          </div>
          ${within({ part: name(i) }, () => form(i))}
        </section>`,
    )}
  </div>`;
}

/** Of all batches together, for it is made ahead. */
/** What is bought is only counted. */
function bought_weights(one: Decoration, i: number): TemplateResult {
  return html`<h3>${one.name}</h3>
    ${figure({
      key: `decorations.${i}.count`,
      label: "Bought, spares included",
      shown: [String(one.casts), ""],
      of: `decorations.${i}.casts`,
    })}`;
}

function cast_order(plan: Bench, one: Decoration): TemplateResult {
  if (one.bought) return told(html`<b>${one.casts}</b> × ${one.name}, bought.`);
  const fills = one.tray_fills > 0 ? `, in ${one.tray_fills} tray ${one.tray_fills === 1 ? "fill" : "fills"}` : "";
  const melt = both(weight(state.units, weighed_as(one, "make_")));
  return told(
    html`Cast <b>${one.casts}</b> of ${one.name} ahead${fills}, from <b>${melt}</b> of
      ${one.material}${is_of_several(plan.whole) ? ", for the whole run" : ""}.`,
  );
}

function weights(plan: Bench, one: Decoration, i: number): TemplateResult {
  if (one.bought) return bought_weights(one, i);
  return html`<h3>${one.name} ${is_of_several(plan.whole) ? html`<small>for the whole run</small>` : nothing}</h3>
    ${figure({
      key: `set-up.decorations.${i}.make`,
      label: `Melt of ${one.material}`,
      shown: weight(state.units, weighed_as(one, "make_")),
      of: `decorations.${i}.make_g`,
    })}
    ${figure({
      key: `decorations.${i}.each`,
      label: "Each weighs",
      note: `${trimmed(one.volume_each_ml, 2)} ml`,
      shown: mass(state.units, one.mass_each_g ?? 0, 2),
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
    return known.length ? both(length(state.units, Math.min(...known))) : "nothing near";
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

function dust_order(plan: Bench, i: number): TemplateResult | typeof nothing {
  const one = dust_of(plan, i);
  if (!one) return nothing;
  const whose = in_one_batch(plan);
  return told(
    html`<b>${both(weight(state.units, weighed_as(one, "")))}</b> of ${one.name}${whose ? ` for ${whose}` : ""}.`,
  );
}

const dust_of = (plan: Bench, i: number) => planned(plan.dust, rows_of(dusts), text_at("run", `/dust/${i}/name`), i);

function dust_figure(plan: Bench, i: number): TemplateResult | typeof nothing {
  const one = dust_of(plan, i);
  if (!one) return nothing;
  const by_piece = value_at("run", `/dust/${i}/per_piece`) !== undefined;
  const has_none = one.exposed_cm2 === 0 && !by_piece;
  const shown = figure({
    key: `set-up.dust.${i}`,
    label: one.name,
    note: in_one_batch(plan),
    shown: weight(state.units, weighed_as(one, "")),
    of: `${plan.place}.dust.${i}.g`,
  });
  return html`${shown}${
    has_none
      ? html`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`
      : nothing
  }`;
}

/** A loaf or slab, cut into bars. */
export function cut_part(bench?: Bench): TemplateResult {
  const cut = bench?.cut;
  return set_up_part({
    name: "cut",
    title: "Cut",
    drawing: bench && (() => small_view("cut", bench)),
    result: cut ? cut_order(bench, cut) : told("Cut into bars, not yet with figures."),
    about: [
      ["run", "/cut"],
      ["studio", "/kerf"],
    ],
    form: () =>
      html`${cut ? cut_figures(bench, cut) : nothing}
        <div class="all-questions">${cut_form()}</div>`,
  });
}

const cut_order = (plan: Bench, cut: Cut): TemplateResult =>
  told(
    html`Cut <b>${cut.bars_each} bars</b> from each, ${cut.columns} by ${cut.rows}; a bar is
      ${both(mass(state.units, plan.piece.fresh_g))} on average, fresh.`,
  );

function cut_figures(plan: Bench, cut: Cut): TemplateResult {
  return html`<div class="side">${side_view("cut", plan)}</div>
    <div class="weights">
      ${figure({
        key: "cut.bar",
        label: "A bar on average, fresh",
        note: bar_range(cut),
        shown: mass(state.units, plan.piece.fresh_g),
        of: "cut.bars_each",
      })}
      ${figure({
        key: "cut.offcuts",
        label: "Offcuts",
        shown: mass(state.units, cut.offcuts_g),
        of: "cut.offcuts_g",
      })}
      ${one_more(cut)}
    </div>`;
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
    ${cut.one_more.map((one) => html`<li>Cut to ${one.size_text} along ${one.direction}: ${one.bars} bars from each.</li>`)}
  </ul>`;
}
