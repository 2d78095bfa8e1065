// Where a decoration goes: pressed into the top, or buried in the pour where the program or the maker finds places.
import { html, nothing, type TemplateResult } from "lit";
import type { Document, Json } from "./api";
import { asked, complaint_just_at, focus_soon, list_at, part } from "./asking";
import { called, count_key, is_cut, way_of, without } from "./decoration";
import { edit, edit_run } from "./editing";
import { field, id_of, value_at } from "./field";
import { with_value } from "./pointer";
import { state } from "./state";

type Where = "by number" | "on_top" | "buried";

function where_of(here: string): Where {
  return (["on_top", "buried"] as const).find((key) => value_at("run", `${here}/${key}`) !== undefined) ?? "by number";
}

function take_where(here: string, where: Where): void {
  if (where === where_of(here)) return;
  const blank: Record<Where, Document> = {
    "by number": {},
    on_top: { on_top: { sinks: "" } },
    buried: { buried: { cover: "" } },
  };
  const old = without(value_at("run", here) as Document, ["on_top", "buried"]);
  edit_run("where it goes", (run) => with_value(run, here, { ...old, ...blank[where] }));
}

export function where_it_goes(here: string, i: number): TemplateResult {
  const where = where_of(here);
  if (way_of(here) === "drizzle") return html`<p class="aside">A drizzle lies on the surface it covers.</p>`;
  return part(`${here} where`, "Where it goes", [`${here}/on_top`, `${here}/buried`], html`
    ${asked("Where does it go?", undefined, where, [["on_top", "On top, pressed in"], ["buried", "Buried in the pour"], ["by number", "Only counted"]], (to) => take_where(here, to))}
    ${where === "on_top" ? on_top(`${here}/on_top`) : where === "buried" ? buried(here, i) : html`<p class="aside">It is counted and weighed; how it sits is not looked at.</p>`}`);
}

function on_top(here: string): TemplateResult {
  return html`<div class="row">${field({ label: "Pressed into the top", at: `${here}/sinks`, unit: "mm" })}
      ${field({ label: "Flat of the peak, across", at: `${here}/peak_flat`, unit: "mm", optional: true })}</div>
    <p class="hint">Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.</p>
    ${turn(here, "It is turned")}`;
}

function turn(here: string, title: string): TemplateResult {
  return part(`${here} turn`, title, [`${here}/turn`], html`<div class="row">${["x", "y", "z"].map((axis) =>
      field({ label: `About ${axis}`, at: `${here}/turn/${axis}`, unit: "deg", optional: true, short: true }),
    )}</div><p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`);
}

type Find = "level" | "layered" | "free" | "said";

function buried(here: string, i: number): TemplateResult {
  const inside = `${here}/buried`;
  type Set = "before the pour" | "pressed in after";
  const find = value_at("run", `${inside}/places`) !== undefined ? "said" : (value_at("run", `${inside}/find`) as Find | undefined);
  const answers: [Find, string][] = [
    ["level", "Find places: upright, at one height"],
    ["layered", "Find places: upright, in several levels"],
    ["free", "Find places: turned any way"],
    ["said", "I say where"],
  ];
  const complaint = complaint_just_at(inside);
  return html`
    ${complaint ? html`<p class="complaint" id=${id_of("run", inside)} tabindex="-1">${complaint}</p>` : nothing}
    ${field({ label: "Cover wanted all round", at: `${inside}/cover`, unit: "mm", hint: "Batter between it and wall, floor, pour line and the next one." })}
    ${asked("When is it set in?", `${inside}/set`, value_at("run", `${inside}/set`) as Set | undefined, [["before the pour", "Before the pour"], ["pressed in after", "Pressed in after"]], (to) => edit(`${inside}/set`, to))}
    ${asked("Where in the pour?", `${inside}/find`, find, answers, (to) => take_find(here, to))}
    ${find === "said" ? places(here, i) : nothing}`;
}

const blank_place = (): Document => ({ x: "", y: "", height: "" });

/** As many blank places as were wanted so far, one at least. */
function take_find(here: string, find: Find): void {
  const inside = value_at("run", `${here}/buried`) as Document;
  const rest = without(inside, ["find", "places"]);
  if (find !== "said") return edit(`${here}/buried`, { ...rest, find });
  if (inside.places !== undefined) return;
  const wanted = Number(value_at("run", `${here}/${count_key(here)}`));
  const places = Array.from({ length: wanted >= 1 && wanted <= 50 ? wanted : 1 }, blank_place);
  edit_run("places", (run) => counted(with_value(run, `${here}/buried`, { ...rest, places }), here, places.length));
}

/** The number follows the places, so that they never disagree. */
function counted(run: Document, here: string, many: number): Document {
  const bare = with_value(with_value(run, `${here}/per_piece`, undefined), `${here}/per_cast`, undefined);
  return with_value(bare, `${here}/${is_cut() ? "per_cast" : (count_key(here) ?? "per_piece")}`, many);
}

function take_places(here: string, places: Json[]): void {
  state.typed = undefined;
  edit_run("places", (run) => counted(with_value(run, `${here}/buried/places`, places), here, places.length));
}

function places(here: string, i: number): TemplateResult {
  const list = `${here}/buried/places`;
  const all = list_at(list);
  const add = () => {
    take_places(here, [...all, blank_place()]);
    focus_soon(id_of("run", `${list}/${all.length}/x`));
  };
  const drop = (which: number) => take_places(here, all.filter((_, j) => j !== which));
  const complaint = complaint_just_at(list);
  return html`<p class="hint">From the cavity's middle to its own: x to the right in the drawing, y away from you, either below zero for the other side. The height is that of its lowest point above the cavity's.</p>
    ${complaint ? html`<p class="complaint">${complaint}</p>` : nothing}
    ${all.map((_, j) => {
      const place = `${list}/${j}`;
      const about = complaint_just_at(place);
      return html`<div class="place" id=${id_of("run", place)} tabindex="-1" role="group" aria-label="Place ${j + 1} of ${called(i)}">
        <div class="row">${field({ label: `Place ${j + 1}: x`, at: `${place}/x`, unit: "mm", short: true })}
          ${field({ label: `Place ${j + 1}: y`, at: `${place}/y`, unit: "mm", short: true })}
          ${field({ label: `Place ${j + 1}: height`, at: `${place}/height`, unit: "mm", short: true })}
          ${all.length > 1 ? html`<button type="button" class="drop" aria-label="Leave out place ${j + 1} of ${called(i)}" @click=${() => drop(j)}>×</button>` : nothing}</div>
        ${about ? html`<p class="complaint">${about}</p>` : nothing}
        ${turn(place, `Place ${j + 1} is turned`)}</div>`;
    })}
    <button type="button" @click=${add}>Add a place</button>
    <p class="aside">${all.length} in each.</p>`;
}
