// A mould of her own: by measures, from a mesh file, or with water weighed in it; or one that is there, changed.
import { html, type TemplateResult } from "lit";
import { sets_out } from "../documents/goings";
import { begin_draft, go_on_with, leave_draft, open_draft } from "../documents/mould_draft";
import { state } from "../documents/state";
import type { UnsavedCopy } from "../documents/unsaved";
import type { Document } from "../program/json";
import { mesh_form } from "./mesh_form";
import { blank_shape, blank_water, mould_form } from "./mould_form";
import type { Taken } from "./mould_keeping";

export const mould_ways = {
  measures: "By its inside measures",
  mesh: "From a mesh file",
  water: "By measures and weighed water",
};
export type MouldWay = keyof typeof mould_ways;

const blank: Document = { schema: "brimwright.mould/2", name: "", cavities: 1, owned: 1 };

export function begin_mould(way: MouldWay): void {
  sets_out();
  leave_draft();
  const measured = { ...blank, shape: blank_shape("block") };
  if (way === "mesh") begin_draft(blank, "mesh", mould_ways[way]);
  else begin_draft(way === "water" ? { ...measured, water: blank_water } : measured, "form", mould_ways[way]);
  focus_title();
}

/** Her own is changed in its file, the catalogue's becomes a copy; unless she has gone elsewhere meanwhile. */
export async function change_mould(file: string, is_shipped: boolean): Promise<boolean> {
  leave_draft();
  const is_open = await open_draft(file, is_shipped);
  if (is_open) focus_title();
  return is_open;
}

export async function go_on_with_draft(left: UnsavedCopy): Promise<void> {
  leave_draft();
  if (await go_on_with(left)) focus_title();
}

/** A mesh that has come, and what is not yet said about it. */
function tell_more(mould: Document): void {
  begin_draft(mould, "form", "More about this mould");
  focus_title();
}

function focus_title(): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>("#mould-form")?.focus());
}

export function new_mould(taken: Taken): TemplateResult | undefined {
  if (!state.mould) return undefined;
  const { way, title } = state.mould;
  return html`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${title}</h2>
    ${way === "mesh" ? mesh_form(taken, tell_more) : mould_form(taken)}
  </section>`;
}
