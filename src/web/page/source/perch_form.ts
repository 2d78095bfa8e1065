// The questions about a run's decorations: how many, what each is and how it is made.
import { html, nothing, type TemplateResult } from "lit";
import type { Document, Listed } from "./api";
import { add_to, asked, complaint_just_at, drop_from, focus_soon, list_at, part, text_at } from "./asking";
import { called, count_key, is_cut, pointer_of, way_of, without, type CountKey, type Way } from "./decoration";
import { add_dust } from "./dust_form";
import { edit, edit_run } from "./editing";
import { field, file_choice, id_of, value_at } from "./field";
import { label_form } from "./label_form";
import { with_value } from "./pointer";
import { state } from "./state";
import { where_it_goes } from "./where_form";

/** Everything is left blank: the program asks for one thing after the other, and nothing is guessed. */
export function add_decoration(): void {
  const i = list_at("/perch").length;
  const count: Document = is_cut() ? {} : { per_piece: "" }; // of a loaf it is asked whether bar or loaf is meant
  for (const name of ["made", "where"]) state.open.add(`${pointer_of(i)} ${name}`);
  add_to("/perch", "decoration", { name: "", material: "", ...count, density: "", spares: "", melt_loss: "", jug_film: "" });
  focus_soon(id_of("run", `${pointer_of(i)}/name`));
}

function remove_decoration(i: number): void {
  const name = called(i);
  drop_from("/perch", "decoration", i);
  state.said = `${name} is removed. Undo brings it back.`;
  focus_soon("add-decoration");
}

export function add_buttons(): TemplateResult {
  const [more, more_dust] = [list_at("/perch").length > 0, list_at("/dust").length > 0];
  return html`<div class="choice">
    <button type="button" id="add-decoration" @click=${add_decoration}>${more ? "Add another decoration" : "Add a decoration"}</button>
    <button type="button" id="add-dust" @click=${add_dust}>${more_dust ? "Add another dust" : "Add a dust"}</button></div>`;
}

/** The questions of one decoration; what seldom changes is folded away once it is said. */
export function decoration_form(i: number): TemplateResult {
  const here = pointer_of(i);
  const complaint = complaint_just_at(here);
  return html`
    ${complaint ? html`<p class="complaint" id=${id_of("run", here)} tabindex="-1">${complaint}</p>` : nothing}
    ${what_it_is(here)}
    <div class="row">
      ${count(here)}
      ${field({ label: "Spares", at: `${here}/spares`, unit: "%", short: true })}
      ${field({ label: "Melt lost", at: `${here}/melt_loss`, unit: "%", short: true })}
      ${field({ label: "Film in the jug", at: `${here}/jug_film`, unit: "g", short: true })}
      ${field({ label: "Density when set", at: `${here}/density`, unit: "g/ml", short: true })}
    </div>
    ${where_it_goes(here, i)} ${label_form(here, called(i))}
    <button type="button" @click=${() => remove_decoration(i)}>Remove ${called(i)}</button>`;
}

/** Bar and loaf are told apart only where there are both. Places said by hand are counted, not asked for. */
function count(here: string): TemplateResult {
  const key = count_key(here);
  const said = list_at(`${here}/buried/places`).length;
  if (said && said === value_at("run", `${here}/${key}`) && !(is_cut() && key === "per_piece")) return html``;
  const label = key === "per_cast" ? (is_cut() ? "In each loaf" : "In each cast") : is_cut() ? "On each bar" : "On each piece";
  const swap = (to: CountKey) => {
    if (to === key) return;
    const value = key ? value_at("run", `${here}/${key}`)! : "";
    edit_run("count", (run) => with_value(key ? with_value(run, `${here}/${key}`, undefined) : run, `${here}/${to}`, value));
  };
  return html`${is_cut() ? asked("Counted by", undefined, key, [["per_piece", "Bar"], ["per_cast", "Whole loaf"]], swap) : nothing}
    ${key ? field({ label, at: `${here}/${key}`, count: true, short: true }) : nothing}`;
}

const way_keys: Record<Way, Document> = {
  mould: { mould: "", fill: { below_brim: "" } },
  rod: { rod: { diameter: "", length: "" } },
  drizzle: { drizzle: { area: "", thickness: "" } },
};

function take_way(here: string, way: Way): void {
  if (way === way_of(here)) return;
  const old = value_at("run", here) as Document;
  const others = ["mould", "fill", "made_of", "rod", "drizzle", ...(way === "drizzle" ? ["on_top", "buried"] : [])];
  edit_run("way it is made", (run) => with_value(run, here, { ...without(old, others), ...way_keys[way] }));
}

function what_it_is(here: string): TemplateResult {
  const way = way_of(here);
  if (!way) state.open.add(`${here} made`);
  const pointers = ["name", "material", "mould", "fill", "made_of", "rod", "drizzle", "each_fill"].map((key) => `${here}/${key}`);
  return part(`${here} made`, "What it is and how it is made", pointers, html`
    <div class="row">${field({ label: "What it is called", at: `${here}/name` })}
      ${field({ label: "What is melted for it", at: `${here}/material` })}</div>
    <p class="hint">The price goes by what is melted.</p>
    ${asked("How is it made?", undefined, way, [["mould", "Cast in a mould"], ["rod", "A round rod, cut to length"], ["drizzle", "Drizzled over"]], (to) => take_way(here, to))}
    ${way === "mould" ? cast(here) : nothing}
    ${way === "rod"
      ? html`<div class="row">${field({ label: "Rod, across", at: `${here}/rod/diameter`, unit: "mm", short: true })}
          ${field({ label: "Rod, long", at: `${here}/rod/length`, unit: "mm", short: true })}</div>`
      : nothing}
    ${way === "drizzle"
      ? html`<div class="row">${field({ label: "Area covered", at: `${here}/drizzle/area`, unit: "cm2", short: true })}
          ${field({ label: "Thick", at: `${here}/drizzle/thickness`, unit: "mm", short: true })}</div>`
      : nothing}
    ${field({ label: "To fill all trays once, setting included", at: `${here}/each_fill`, unit: "min", optional: true })}`);
}

function moulds_to_choose(here: string): Listed[] | undefined {
  const none = { file: "", name: "Choose a mould", note: "", shipped: false };
  return text_at(`${here}/mould`) === "" ? [none, ...(state.files?.moulds ?? [])] : state.files?.moulds;
}

type Level = "below_brim" | "depth";

function cast(here: string): TemplateResult {
  const level: Level = value_at("run", `${here}/fill/depth`) === undefined ? "below_brim" : "depth";
  const take_level = (to: Level) => to !== level && edit(`${here}/fill`, { [to]: "" });
  type Form = "one cast" | "two halves";
  return html`${file_choice("Cast in", `${here}/mould`, moulds_to_choose(here))}
    ${asked("Filled to a line", `${here}/fill`, level, [["below_brim", "below the brim"], ["depth", "above the floor"]], take_level)}
    ${level === "below_brim"
      ? field({ label: "Filled to, below the brim", at: `${here}/fill/below_brim`, unit: "mm", hint: "0 mm is level full." })
      : field({ label: "Filled to, above the floor", at: `${here}/fill/depth`, unit: "mm" })}
    ${asked("What makes one?", `${here}/made_of`, value_at("run", `${here}/made_of`) as Form | undefined, [["one cast", "One cast"], ["two halves", "Two halves, joined at the flat"]], (to) => edit(`${here}/made_of`, to))}`;
}
