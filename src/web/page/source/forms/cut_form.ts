// What a run says of the cutting of its loaf or slab.
import { html, nothing, type TemplateResult } from "lit";
import { text_at, value_at } from "../documents/editing";
import { open_up, state } from "../documents/state";
import type { Document } from "../program/json";
import { at } from "../program/pointer";
import { field } from "./field";
import { choice_field, change, to_field, to_id } from "./form_parts";
import { has_studio, shared_field, who_says, type Shared } from "./shared";

// No single piece of soap is that large, so what holds as much is a loaf or slab: common practice, no source.
export const least_loaf_ml = 500;

/** Whether the run's mould makes something that is cut. */
const may_be_cut = (): boolean => at(state.run.now, "/cut") === undefined && brimful_ml() >= least_loaf_ml;

/** The mould is measured before there are figures. */
const brimful_ml = (): number => state.plan?.pour.brimful_ml ?? state.measured?.gauge.pockets[0]?.brimful_ml ?? 0;

/** What the cutter takes away is the same in every run; in the run or the studio, a silent 0 is wrong for a saw. */
export const kerf: Shared = { run: "/cut/kerf", studio: "/kerf" };

/** The kerf and the size of a bar are left blank. */
function cut_it(way: Way): void {
  open_up("set-up cut");
  change(
    "run",
    "Cut",
    "/cut",
    { bar: way_keys[way], ...(has_studio() ? {} : { kerf: "" }) },
    to_field("run", `/cut/bar/${Object.keys(way_keys[way])[0]}`),
  );
}

function leave_whole(): void {
  change("run", "Left whole", "/cut", undefined, to_id("cut-into-bars"));
}

export function cut_button(): TemplateResult | typeof nothing {
  if (!may_be_cut()) return nothing;
  return html`<button type="button" id="cut-into-bars" @click=${() => cut_it("loaf")}>Cut it into slices</button>
    <button type="button" @click=${() => cut_it("slab")}>Cut it into bars</button>`;
}

type Way = "loaf" | "slab";

const way_keys: Record<Way, Document> = { loaf: { thickness: "" }, slab: { length: "", width: "" } };

function way_of(): Way | undefined {
  const bar = (value_at("run", "/cut/bar") ?? {}) as Document;
  return "thickness" in bar ? "loaf" : "length" in bar || "width" in bar ? "slab" : undefined;
}

const directions: Record<Way, [string, string][]> = {
  loaf: [
    ["", "Along the longer side"],
    ["x", "Along x, across the drawing"],
    ["y", "Along y, away from you"],
    ["z", "Upwards: rounds off a column"],
  ],
  slab: [
    ["", "Whichever gives more bars"],
    ["x", "Along x, across the drawing"],
    ["y", "Along y, away from you"],
  ],
};

export function cut_form(): TemplateResult {
  const way = way_of();
  const trim = (label: string, name: string) =>
    field({ label, at: `/cut/${name}`, unit: "mm", short: true, optional: true });
  const along = text_at("run", "/cut/along");
  return html` ${choice_field({
      question: "What is cut?",
      at: "/cut/bar",
      chosen: way,
      answers: [
        ["loaf", "A loaf, into slices"],
        ["slab", "A slab, into bars"],
      ],
      puts: (to) => way_keys[to],
    })}
    <div class="row">
      ${
        way === "loaf" ? field({ label: "Bar, thickness", at: "/cut/bar/thickness", unit: "mm", short: true }) : nothing
      }
      ${
        way === "slab"
          ? ["length", "width"].map((name) =>
              field({ label: `Bar, ${name}`, at: `/cut/bar/${name}`, unit: "mm", short: true }),
            )
          : nothing
      }
      ${shared_field(kerf, { label: "Kerf of each cut", unit: "mm", short: true, term: "kerf" })}
      ${trim("Off each end", "end_trim")} ${trim("Off each side", "side_trim")}
      ${trim("Planed off the top", "top_planing")}
      ${trim(way === "slab" ? "Planed off each side of a bar" : "Planed off both faces", "face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${who_says("Kerf", [kerf])}</p>
    ${
      way
        ? choice_field({
            question: way === "loaf" ? "Slices are cut along" : "Bars lie along",
            at: "/cut/along",
            chosen: along,
            answers: directions[way],
            puts: (to) => to || undefined,
          })
        : nothing
    }
    <button type="button" @click=${leave_whole}>Leave it whole</button>`;
}
