// A mould of her own: by measures, from a mesh file, or with water weighed in it; or one that is there, changed.
import { html, type TemplateResult } from "lit";
import { read_kept, type Document } from "./api";
import { add_water, blank_shape, forget_shapes, mould_form } from "./mould_form";
import { take_draft, type Net, type Paper } from "./mould_draft";
import type { Taken } from "./mould_keeping";
import { mesh_form, reset_mesh } from "./mesh_form";
import { changed } from "./state";

export const mould_ways = {
  measures: "By its inside measures",
  mesh: "From a mesh file",
  water: "By measures and weighed water",
};
export type MouldWay = keyof typeof mould_ways;

let way: "form" | "mesh" | undefined;
let title = "";

const blank: Document = { schema: "brimwright.mould/1", name: "", cavities: 1, owned: 1 };

export function begin_mould(chosen: MouldWay | undefined): void {
  if (!chosen) return show(undefined, "");
  take_draft(chosen === "mesh" ? blank : { ...blank, shape: blank_shape("block") }, { version: null });
  if (chosen === "water") add_water();
  show(chosen === "mesh" ? "mesh" : "form", mould_ways[chosen]);
}

/** A mould that is there: her own is changed in its file, the catalogue's becomes a copy. */
export async function change_mould(file: string): Promise<void> {
  const kept = await read_kept(file);
  const mould = JSON.parse(kept.text) as Document;
  const name = String(mould.name ?? file);
  const paper: Paper = kept.shipped ? { version: null, from: file, from_name: name } : { version: kept.version, file };
  take_draft(kept.shipped ? { ...mould, name: "" } : mould, paper);
  show("form", kept.shipped ? `A copy of ${name}` : `Change ${name}`);
}

/** What was typed last time and never reached a file. */
export function go_on_with_draft(left: Net): void {
  take_draft(left.document, left.paper);
  show("form", String(left.document.name ?? "").trim() || "A mould of your own");
}

/** A mesh that has come, and what is not yet said about it. */
export function tell_more(mould: Document): void {
  take_draft(mould, { version: null });
  show("form", "More about this mould");
}

function show(chosen: typeof way, words: string): void {
  way = chosen;
  title = words;
  reset_mesh();
  forget_shapes();
  changed();
  if (chosen) requestAnimationFrame(() => document.querySelector<HTMLElement>("#mould-form")?.focus());
}

export function new_mould(taken: Taken): TemplateResult | undefined {
  if (!way) return undefined;
  return html`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${title}</h2>
    ${way === "mesh" ? mesh_form(taken) : mould_form(taken)}
  </section>`;
}
