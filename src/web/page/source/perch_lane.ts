// Perch: decorations cast ahead, and the dust; or Cut, for loaves and slabs.
import { html, nothing, type TemplateResult } from "lit";
import { field, value_at } from "./field";
import { figure } from "./figure";
import { both, duration, length, mass, trimmed } from "./numbers";
import type { Cut, Perch, Plan } from "./plan";
import { side_view } from "./side_view";
import { state } from "./state";
import * as sums from "./sums";

export function perch_lane(plan: Plan): TemplateResult {
  const perch = plan.perch ?? [];
  const wanted = value_at("run", "/perch");
  if (Array.isArray(wanted) && wanted.length > perch.length)
    return html`<div class="side"></div><div class="weights">${wanted.map((_, i) => questions(i))}</div>`;
  return html`<div class="side">${perch[0] ? cast_order(perch[0]) : nothing} ${side_view("perch", plan)}</div>
    <div class="weights">${perch.map((one, i) => decoration(one, i))} ${dust(plan)}</div>`;
}

function cast_order(one: Perch): TemplateResult {
  const fills = one.tray_fills > 0 ? `, in ${one.tray_fills} tray ${one.tray_fills === 1 ? "fill" : "fills"}` : "";
  return html`<p class="order ${state.is_old ? "old" : ""}">Cast <b>${one.casts}</b> of ${one.name} ahead${fills}.</p>`;
}

function decoration(one: Perch, i: number): TemplateResult {
  return html`
    ${i > 0 ? cast_order(one) : nothing}
    ${figure({ key: `perch.${i}.make`, label: `Melt of ${one.material}`, shown: mass(state.units, one.make_g), size: "weigh", sum: sums.sum_of_perch(one, i) })}
    ${figure({ key: `perch.${i}.each`, label: "Each weighs", note: `${trimmed(one.volume_each_ml, 2)} ml`, shown: mass(state.units, one.mass_each_g, 2), sum: sums.sum_of_perch(one, i) })}
    ${one.casting_s ? html`<p>${duration(one.casting_s)} of casting.</p>` : nothing} ${fit(one)}
    ${questions(i)}
  `;
}

function questions(i: number): TemplateResult {
  const here = `/perch/${i}`;
  return html`
    ${value_at("run", `${here}/name`) === "Decoration" ? field({ label: "What it is called", at: `${here}/name` }) : nothing}
    <div class="row">
      ${value_at("run", `${here}/per_piece`) !== undefined ? field({ label: "On each piece", at: `${here}/per_piece`, count: true, short: true }) : nothing}
      ${field({ label: "Spares", at: `${here}/spares`, unit: "%", short: true })}
      ${field({ label: "Melt lost", at: `${here}/melt_loss`, unit: "%", short: true })}
      ${field({ label: "Film in the jug", at: `${here}/jug_film`, unit: "g", short: true })}
      ${field({ label: "Density when set", at: `${here}/density`, unit: "g/ml", short: true })}
    </div>
    ${value_at("run", `${here}/on_top/sinks`) !== undefined ? field({ label: "Pressed into the top", at: `${here}/on_top/sinks`, unit: "mm" }) : nothing}
    ${value_at("run", `${here}/buried/cover`) !== undefined ? field({ label: "Cover wanted all round", at: `${here}/buried/cover`, unit: "mm" }) : nothing}
  `;
}

function fit(one: Perch): TemplateResult | typeof nothing {
  const { on_top, buried } = one;
  if (!on_top && !buried) return nothing;
  const mm = (value: number | null) => (value === null ? "not known" : both(length(state.units, value)));
  const least = (pick: (embed: NonNullable<Perch["buried"]>["embeds"][number]) => number | null) => {
    const known = (buried?.embeds ?? []).map(pick).filter((value): value is number => value !== null);
    return known.length ? both(length(state.units, Math.min(...known))) : "none near";
  };
  return html`<h3>Fit of ${one.name}</h3>
    <dl class="facts">
      ${on_top
        ? html`<div><dt>Rests on a circle of</dt><dd>${mm(on_top.contact_mm)}</dd></div>
            <div><dt>Flat of the peak</dt><dd>${mm(on_top.peak_flat_mm)}</dd></div>
            <div><dt>Stands proud by</dt><dd>${mm(on_top.stands_proud_mm)}</dd></div>`
        : nothing}
      ${buried
        ? html`<div><dt>In each</dt><dd>${buried.embeds.length}</dd></div>
            <div><dt>Least cover to the floor</dt><dd>${least((embed) => embed.floor_cover_mm)}</dd></div>
            <div><dt>to the wall</dt><dd>${least((embed) => embed.wall_cover_mm)}</dd></div>
            <div><dt>to the pour line</dt><dd>${least((embed) => embed.pour_line_cover_mm)}</dd></div>
            <div><dt>to the next one</dt><dd>${least((embed) => embed.apart_mm)}</dd></div>
            <div><dt>Batter pushed aside</dt><dd>${trimmed(buried.displaced_ml, 1)} ml</dd></div>`
        : nothing}
    </dl>`;
}

function dust(plan: Plan): TemplateResult | typeof nothing {
  if (!plan.dust?.length) return nothing;
  return html`<h3>Dust while still tacky</h3>
    ${plan.dust.map((one, i) => {
      const says = (name: string) => String(value_at("run", `/dust/${i}/${name}`) ?? "");
      const by_piece = value_at("run", `/dust/${i}/per_piece`) !== undefined;
      return html`${figure({
          key: `dust.${i}`,
          label: one.name,
          shown: mass(state.units, one.g, 2),
          size: "weigh",
          sum: {
            formula: by_piece ? "powder = on one piece × pieces to make" : "powder = on the surface × surface covered ÷ share that lands × pieces to make",
            with: by_piece
              ? [["on one piece", says("per_piece"), "the run"], ["to make", String(plan.pieces.make)]]
              : [["on the surface", says("on_surface"), "the run"], ["covered", says("covered")], ["lands", says("lands")], ["to make", String(plan.pieces.make)]],
          },
        })}
        ${by_piece ? field({ label: `${one.name}, for one piece`, at: `/dust/${i}/per_piece`, unit: "g" }) : nothing}`;
    })}`;
}

export function cut_lane(plan: Plan): TemplateResult {
  const cut = plan.cut!;
  return html`<div class="side">
    <p class="order ${state.is_old ? "old" : ""}">Cut <b>${cut.bars_each} bars</b> from each, ${cut.columns} by ${cut.rows}.</p>
    ${side_view("cut", plan)}</div><div class="weights">
    ${figure({ key: "cut.bar", label: "One bar holds", note: `${trimmed(cut.bar_ml.least, 1)} to ${trimmed(cut.bar_ml.greatest, 1)} ml`, shown: [`${trimmed(cut.bar_ml.mean, 1)} ml`, ""], size: "weigh", sum: sums.sum_of_cut(cut) })}
    ${figure({ key: "cut.offcuts", label: "Offcuts", shown: [`${trimmed(cut.offcuts_ml, 0)} ml`, ""], sum: sums.sum_of_cut(cut) })}
    ${one_more(cut)}
    <div class="row">
      ${["thickness", "length", "width"].map((name) =>
        value_at("run", `/cut/bar/${name}`) === undefined ? nothing : field({ label: `Bar, ${name}`, at: `/cut/bar/${name}`, unit: "mm", short: true }),
      )}
      ${field({ label: "Kerf of each cut", at: "/cut/kerf", unit: "mm", short: true })}
      ${field({ label: "Off each end", at: "/cut/end_trim", unit: "mm", short: true, optional: true })}
      ${field({ label: "Off each side", at: "/cut/side_trim", unit: "mm", short: true, optional: true })}
      ${field({ label: "Planed off the top", at: "/cut/top_planing", unit: "mm", short: true, optional: true })}
    </div></div>`;
}

function one_more(cut: Cut): TemplateResult | typeof nothing {
  if (!cut.one_more?.length) return nothing;
  return html`<ul class="limits">${cut.one_more.map(
    (one) => html`<li>At ${both(length(state.units, one.size_mm))} ${one.direction} it gives ${one.bars} bars.</li>`,
  )}</ul>`;
}
