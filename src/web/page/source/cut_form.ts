// What a run says of the cutting of its loaf or slab.
import { html, nothing, type TemplateResult } from "lit";
import type { Document } from "./api";
import { asked, focus_soon } from "./asking";
import { edit, edit_run } from "./editing";
import { field, id_of, value_at } from "./field";
import { at, with_value } from "./pointer";
import { state } from "./state";

// No single piece of soap is that large, so what holds as much is a loaf or slab: common practice, no source.
const least_loaf_ml = 500;

/** Whether the run's mould makes something that is cut. */
export const may_be_cut = (): boolean =>
  at(state.run, "/cut") === undefined && (state.plan?.pour.brimful_ml ?? 0) >= least_loaf_ml;

/** The kerf and the size of a bar are left blank: a silent 0 is wrong for a saw. */
export function cut_into_bars(): void {
  edit_run("cut", (run) => with_value(run, "/cut", { bar: {}, kerf: "" }));
  focus_soon(id_of("run", "/cut/bar"));
}

function leave_whole(): void {
  state.typed = undefined;
  edit_run("cut", (run) => with_value(run, "/cut", undefined));
  state.said = "It is left whole. Undo brings the cut back.";
  focus_soon("cut-into-bars");
}

export function cut_button(): TemplateResult | typeof nothing {
  if (!may_be_cut()) return nothing;
  return html`<div class="choice"><button type="button" id="cut-into-bars" @click=${cut_into_bars}>Cut it into bars</button></div>`;
}

type Way = "loaf" | "slab";

const way_keys: Record<Way, Document> = { loaf: { thickness: "" }, slab: { length: "", width: "" } };

function way_of(): Way | undefined {
  const bar = (value_at("run", "/cut/bar") ?? {}) as Document;
  return "thickness" in bar ? "loaf" : "length" in bar || "width" in bar ? "slab" : undefined;
}

const directions: Record<Way, [string, string][]> = {
  loaf: [["", "Along the longer side"], ["x", "Along x, across the drawing"], ["y", "Along y, away from you"], ["z", "Upwards: rounds off a column"]],
  slab: [["", "Whichever gives more bars"], ["x", "Along x, across the drawing"], ["y", "Along y, away from you"]],
};

export function cut_form(): TemplateResult {
  const way = way_of();
  const trim = (label: string, name: string) => field({ label, at: `/cut/${name}`, unit: "mm", short: true, optional: true });
  const along = String(value_at("run", "/cut/along") ?? "");
  return html`
    ${asked("What is cut?", "/cut/bar", way, [["loaf", "A loaf, into slices"], ["slab", "A slab, into bars"]], (to) => to !== way && edit("/cut/bar", way_keys[to]))}
    <div class="row">
      ${way === "loaf" ? field({ label: "Bar, thickness", at: "/cut/bar/thickness", unit: "mm", short: true }) : nothing}
      ${way === "slab" ? ["length", "width"].map((name) => field({ label: `Bar, ${name}`, at: `/cut/bar/${name}`, unit: "mm", short: true })) : nothing}
      ${field({ label: "Kerf of each cut", at: "/cut/kerf", unit: "mm", short: true })}
      ${trim("Off each end", "end_trim")} ${trim("Off each side", "side_trim")} ${trim("Planed off the top", "top_planing")}
      ${trim(way === "slab" ? "Planed off each side of a bar" : "Planed off both faces", "face_planing")}
    </div>
    <p class="hint">The kerf is what each cut wastes: 0 mm for a wire.</p>
    ${way ? asked(way === "loaf" ? "Slice follows slice" : "The bars' length lies", "/cut/along", along, directions[way], (to) => edit("/cut/along", to || undefined)) : nothing}
    <button type="button" @click=${leave_whole}>Leave it whole</button>`;
}
