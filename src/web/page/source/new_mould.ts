// A mould of her own: by measures, from a mesh file, or with water weighed in it.
import { html, nothing, type TemplateResult } from "lit";
import { get, put, Refused, type Document, type Files, type Kept } from "./api";
import { choice } from "./field";
import { drawn, gauge_of, type MouldRequest } from "./measuring";
import { mesh_form, reset_mesh } from "./mesh_form";
import { both, length, volume } from "./numbers";
import type { Gauge } from "./plan";
import { file_name } from "./opening";
import type { Outline } from "./outline";
import { at, with_value } from "./pointer";
import { free_name, text_of } from "./saving";
import { measures, shape_names } from "./shapes";
import { changed, state } from "./state";

export const mould_ways = {
  measures: "By its inside measures",
  mesh: "From a mesh file",
  water: "By measures and weighed water",
};
export type MouldWay = keyof typeof mould_ways;

type Taken = (mould: { mould: string; name: string; cavities: number; deep_mm: number }) => void;

let way: MouldWay | undefined;
let draft: Document = {};
let answer: { gauge: Gauge; outline: Outline } | undefined;
let complaint: { field: string; line: string } | undefined;
let timer = 0;
let asked = 0;

const blank = (kind: string): Document => ({
  schema: "brimwright.mould/1",
  name: "",
  cavities: 1,
  owned: 1,
  shape: { kind },
});
const water: Document = { temperature: "20 °C", to: "brim", of: "each cavity", weighings: [""] };

export function begin_mould(chosen: MouldWay | undefined): void {
  way = chosen;
  draft = chosen === "water" ? { ...blank("block"), water } : blank("block");
  answer = complaint = undefined;
  reset_mesh();
  changed();
  if (chosen) requestAnimationFrame(() => document.querySelector<HTMLElement>("#mould-form")?.focus());
}

export function new_mould(taken: Taken): TemplateResult | undefined {
  if (!way) return undefined;
  return html`<section aria-labelledby="mould-form"><h2 id="mould-form" tabindex="-1">${mould_ways[way]}</h2>
    ${way === "mesh" ? mesh_form((mould) => keep_mould(mould, taken)) : by_measures(taken)}</section>`;
}

function set(pointer: string, value: string | number | undefined): void {
  draft = with_value(draft, pointer, value);
  clearTimeout(timer);
  timer = window.setTimeout(() => void ask(), 30);
  changed();
}

/** Nothing is asked for before every measure has something in it. */
const is_filled = (): boolean =>
  measures(kind_of()).every(({ name, optional }) => optional || String(at(draft, `/shape/${name}`) ?? "") !== "") &&
  (way !== "water" || String(at(draft, "/water/weighings/0") ?? "") !== "");

const kind_of = (): string => String(at(draft, "/shape/kind"));
const request = (): MouldRequest => ({ file: "new.mould.json", mould: { ...draft, name: String(draft.name) || "New mould" } });

async function ask(): Promise<void> {
  if (!is_filled()) return;
  const mine = ++asked;
  try {
    const wanted = request();
    const [gauge, drawing] = await Promise.all([gauge_of(wanted), drawn(wanted)]);
    if (mine !== asked) return;
    answer = { gauge, outline: drawing.outline };
    complaint = undefined;
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (mine !== asked) return;
    const { field, problem, remedy } = error.complaint;
    complaint = { field, line: `${problem}; ${remedy}` };
  }
  changed();
}

function draft_field(label: string, pointer: string, unit: string, options: { count?: boolean; optional?: boolean; hint?: string } = {}): TemplateResult {
  const id = `d${pointer.replaceAll("/", "-")}`;
  const value = String(at(draft, pointer) ?? "");
  const said = complaint?.field === pointer ? complaint.line : options.hint;
  const typed = (event: Event) => {
    const text = (event.target as HTMLInputElement).value;
    if (options.optional && !text.trim()) return set(pointer, undefined);
    if (options.count && /^\d{1,6}$/.test(text)) return set(pointer, Number(text));
    set(pointer, unit && /^\s*\d[\d.,/\s]*$/.test(text) ? `${text.trim()} ${unit}` : text);
  };
  return html`<div class="field short ${complaint?.field === pointer ? "wants" : ""}"><label for=${id}>${label}${unit ? ` (${unit})` : ""}</label>
    <input id=${id} value=${value} @input=${typed} autocomplete="off" spellcheck="false" aria-describedby=${said ? `${id}-said` : nothing}
      aria-invalid=${complaint?.field === pointer ? "true" : "false"} />
    ${said ? html`<p id="${id}-said" class=${complaint?.field === pointer ? "complaint" : "hint"}>${said}</p>` : nothing}</div>`;
}

function by_measures(taken: Taken): TemplateResult {
  const kind = kind_of();
  const change = (to: string) => {
    draft = { ...draft, shape: { kind: to } };
    answer = complaint = undefined;
    changed();
  };
  return html`
    ${choice("Shape", kind, Object.entries(shape_names), change)}
    <div class="beside"><div>
      ${draft_field("What you call it", "/name", "")}
      <div class="row">${measures(kind).map((one) => draft_field(one.label, `/shape/${one.name}`, one.unit, one))}</div>
      <div class="row">${draft_field("Cavities in one mould", "/cavities", "", { count: true })}
        ${draft_field("Moulds you own", "/owned", "", { count: true })}
        ${draft_field("Unmould after", "/unmould_after", "h", { optional: true })}</div>
      ${way === "water" ? water_fields() : nothing}
    </div>
    <div>${found(answer)}
      <button type="button" class="strong" ?disabled=${!answer || complaint !== undefined || !String(draft.name).trim()} @click=${() => keep_mould(draft, taken)}>Use this mould</button>
      ${String(draft.name).trim() ? nothing : html`<p class="hint">Give it a name first.</p>`}
      ${complaint ? html`<p class="alarm" role="status">${complaint.field}: ${complaint.line}</p>` : nothing}</div></div>`;
}

function water_fields(): TemplateResult {
  const weighings = at(draft, "/water/weighings") as string[];
  const to = typeof at(draft, "/water/to") === "string" ? "brim" : "depth";
  const set_to = (value: "brim" | "depth") => {
    draft = with_value(draft, "/water/to", value === "brim" ? "brim" : { depth: "" });
    changed();
  };
  return html`<h3>Water weighed in it</h3>
    ${draft_field("Temperature of the water", "/water/temperature", "°C")}
    ${choice("Filled to", to, [["brim", "To the brim"], ["depth", "To a depth"]], set_to)}
    ${to === "depth" ? draft_field("Depth of the water", "/water/to/depth", "mm") : nothing}
    ${choice("Weighed in", String(at(draft, "/water/of")), [["each cavity", "One cavity"], ["all cavities", "The whole mould"]], (of) => set("/water/of", of))}
    <div class="row">${weighings.map((_, i) => draft_field(`Water, round ${i + 1}`, `/water/weighings/${i}`, "g"))}</div>
    <button type="button" @click=${() => set(`/water/weighings/${weighings.length}`, "")}>One more round</button>`;
}

/** What the program found, with its drawing. */
export function found(of: { gauge: Gauge; outline: Outline } | undefined): TemplateResult {
  if (!of) return html`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>`;
  const { gauge, outline } = of;
  const pocket = gauge.pockets[0]!;
  const margin = Math.max(4, (outline.right - outline.left) * 0.06);
  const box = [outline.left - margin, -outline.brim - margin, outline.right - outline.left + 2 * margin, outline.brim - outline.floor + 2 * margin];
  const path = outline.loops.map((loop) => `M${loop.map(([x, y]) => `${x.toFixed(2)} ${(-y).toFixed(2)}`).join("L")}Z`).join("");
  return html`<div class="drawing"><svg viewBox=${box.join(" ")} role="img" aria-label="The cavity from the side, to scale"><path class="shaded pour" fill-rule="evenodd" d=${path} /><path class="wall" fill-rule="evenodd" d=${path} /></svg></div>
    <p class="order" role="status">Holds <b>${both(volume(state.units, pocket.brimful_ml))}</b>${gauge.pockets.length > 1 ? html` in each of ${gauge.pockets.length}, ${both(volume(state.units, gauge.total_ml))} together` : nothing}, ${both(length(state.units, pocket.brim_mm - pocket.floor_mm))} deep.</p>
    ${(gauge.measurements?.length ?? 0) > 1
      ? html`<p class="aside">${gauge.measurements!.map((one) => `By ${one.by} ${both(volume(state.units, one.brimful_ml))}`).join("; ")}.</p>`
      : nothing}
    ${gauge.notes.length ? html`<ul class="limits">${gauge.notes.map((one) => html`<li>${one.text}</li>`)}</ul>` : nothing}`;
}

async function keep_mould(mould: Document, taken: Taken): Promise<void> {
  try {
    const name = String(mould.name).trim();
    const file = free_name(file_name(name, ".json"), [...state.files!.moulds, ...state.files!.runs]);
    await put<Kept>("/api/run", { file, version: null, text: text_of({ ...mould, name }) });
    state.files = await get<Files>("/api/files");
    const gauge = await gauge_of({ file });
    const pocket = gauge.pockets[0]!;
    const owned = Number(mould.owned ?? 1);
    taken({ mould: file, name, cavities: gauge.pockets.length * owned, deep_mm: pocket.brim_mm - pocket.floor_mm });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    complaint = { field: error.complaint.field, line: error.message };
    changed();
  }
}
