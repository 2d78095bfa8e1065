// The form of a mould, of whatever parts its file has: measures, a mesh, weighed water, and what else it says.
import { html, nothing, type TemplateResult } from "lit";
import { draft, mould_now, set } from "../documents/mould_draft";
import { half_points, has_cavities_shown, has_part, rows_at, shape_of, wanted_of } from "../documents/mould_text";
import { measures, point_list, shape_names } from "../documents/shapes";
import { amend, state } from "../documents/state";
import { set_aside, which_is_to_stay } from "../forms/conflict";
import { touches } from "../forms/used_by";
import { choice } from "../forms/form_parts";
import { keep_it } from "../forms/keep_it";
import type { Document } from "../program/json";
import { at } from "../program/pointer";
import { complaint_at, draft_field } from "./mould_fields";
import { keep_mould, name_taken_by, type Taken } from "./mould_keeping";
import { found } from "./mould_views";
import { blank_points, point_rows } from "./point_rows";

export const blank_water: Document = { weighings: [""] };
export const says_its_unit = /\.(3mf|gltf|glb)$/i;

export function blank_shape(kind: string): Document {
  const points = point_list(kind);
  return points ? { kind, points: blank_points(points) } : { kind };
}

const add_water = (): void => set("/water", blank_water);

const has = (part: "shape" | "mesh" | "water"): boolean => has_part(mould_now(), part);
const kind_of = (): string => shape_of(mould_now());

export function mould_form(taken: Taken): TemplateResult {
  const { open, answer, is_old } = draft();
  return html`${which_is_to_stay(open, () => void keep_mould(taken))} ${set_aside(open)}
    ${open.shipped ? nothing : touches(state.files?.moulds.find((one) => one.file === open.file))}
    ${has("shape") && has("mesh") ? html`<p class="hint">The mesh is measured; its measures are a check.</p>` : nothing}
    ${has("shape") ? choice("Shape", kind_of(), Object.entries(shape_names), change_shape) : nothing}
    <div class="beside ${point_list(kind_of()) ? "rows" : ""}">
      <div>
        ${name_field()} ${has("shape") ? shape_fields() : nothing} ${has("mesh") ? mesh_fields() : nothing}
        ${about_fields()} ${has("water") ? water_fields() : nothing} ${parts()}
      </div>
      <div class="stays">${found(answer, is_old, still_wanted())} ${keeping(taken)}</div>
    </div>`;
}

function change_shape(to: string): void {
  const shapes = { ...draft().shapes, [kind_of()]: mould_now().shape as Document };
  amend(draft(), { shapes, answer: undefined });
  set("/shape", shapes[to] ?? blank_shape(to));
}

/** What the mould is called that this becomes a copy of. */
function name_copied(): string | undefined {
  const { shipped, file } = draft().open;
  return shipped ? (state.files?.moulds.find((one) => one.file === file)?.name ?? file) : undefined;
}

export function name_field(): TemplateResult {
  const from_name = name_copied();
  return draft_field({
    label: "What you call it",
    pointer: "/name",
    wide: true,
    hint: from_name
      ? `${from_name} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`
      : undefined,
  });
}

function shape_fields(): TemplateResult {
  const kind = kind_of();
  const points = point_list(kind);
  return html`${
    measures(kind).length
      ? html`<div class="row">
          ${measures(kind).map((one) => draft_field({ ...one, pointer: `/shape/${one.name}` }))}
        </div>`
      : nothing
  }
  ${points ? point_rows(points) : nothing}`;
}

/** What a mould has beside its measures; how many cavities only where the mesh does not show them. */
export function about_fields(has_count = has_cavities_shown(mould_now())): TemplateResult {
  return html`<div class="row">
      ${has_count ? nothing : draft_field({ label: "Cavities in one mould", pointer: "/cavities", count: true })}
      ${draft_field({ label: "Moulds you own", pointer: "/owned", count: true, optional: true })}
      ${draft_field({ label: "Unmould after", pointer: "/unmould_after", unit: "h", optional: true })}
    </div>
    ${draft_field({ label: "Note", pointer: "/note", optional: true, wide: true })}`;
}

export const roles: [string, string][] = [
  ["cavity", "What is filled, or the piece"],
  ["body", "The mould with its pockets"],
  ["skin", "The mould's inner surface"],
];
export const ups: [string, string][] = [
  ["", "As it is"],
  ["+z", "+z"],
  ["+y", "+y"],
  ["-z", "-z"],
  ["-y", "-y"],
  ["+x", "+x"],
  ["-x", "-x"],
];

function mesh_fields(): TemplateResult {
  const text = (name: string) => String(at(mould_now(), `/mesh/${name}`) ?? "");
  const pick = (label: string, name: string, choices: [string, string][]) => {
    const said = complaint_at(`/mesh/${name}`);
    return html`<h4>${label}</h4>
      ${choice(label, text(name), choices, (value) => set(`/mesh/${name}`, value || undefined))}
      ${said ? html`<p class="complaint">${said}</p>` : nothing}`;
  };
  const said = complaint_at("/mesh/file");
  return html`<h3>Its mesh <small>${text("file")}</small></h3>
    ${said ? html`<p class="complaint">${said}</p>` : nothing}
    ${
      says_its_unit.test(text("file")) && !text("unit")
        ? nothing
        : pick(
            "Unit of the file's numbers",
            "unit",
            ["mm", "cm", "m", "in"].map((unit) => [unit, unit]),
          )
    }
    ${pick("What it shows", "role", roles)} ${pick("Which way is up", "up", ups)}
    ${text("role") === "body" ? board() : nothing}
    <div class="row">
      ${draft_field({
        label: "Hollows to fill, by number",
        pointer: "/mesh/cavity_size_number",
        count: true,
        optional: true,
        hint: "Only where they differ in size.",
      })}
      ${draft_field({
        label: "Direction that points up, if the mesh is tilted",
        pointer: "/mesh/straight_up",
        optional: true,
        hint: "x,y,z, such as 0.0523,0,0.9986",
      })}
    </div>`;
}

function board(): TemplateResult {
  const stands = at(mould_now(), "/mesh/on_board") === true ? "yes" : "no";
  return html`<h4>Open below, and stood on a board?</h4>
    ${choice(
      "Stood on a board",
      stands,
      [
        ["no", "No"],
        ["yes", "Yes, the board closes it"],
      ],
      (value) => set("/mesh/on_board", value === "yes" ? true : undefined),
    )}`;
}

function water_fields(): TemplateResult {
  const to = at(mould_now(), "/water/filled_to");
  const filled =
    to === undefined ? undefined : to === "brim" ? "brim" : at(to, "/depth") !== undefined ? "depth" : "below_brim";
  const set_to = (value: string) => set("/water/filled_to", value === "brim" ? "brim" : { [value]: "" });
  const of = at(mould_now(), "/water/weighed_in");
  const said_to = filled === undefined || filled === "brim" ? complaint_at("/water/filled_to") : undefined;
  return html`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${draft_field({ label: "Temperature of the water", pointer: "/water/temperature", unit: "°C" })}
    <h4>Filled to</h4>
    ${choice(
      "Filled to",
      filled,
      [
        ["brim", "The brim"],
        ["depth", "A depth"],
        ["below_brim", "Below the brim"],
      ],
      set_to,
    )}
    ${said_to ? html`<p class="complaint">${said_to}</p>` : nothing}
    ${
      filled === "depth"
        ? draft_field({ label: "Depth of the water", pointer: "/water/filled_to/depth", unit: "mm" })
        : nothing
    }
    ${
      filled === "below_brim"
        ? draft_field({ label: "Water below the brim", pointer: "/water/filled_to/below_brim", unit: "mm" })
        : nothing
    }
    <h4>Weighed in</h4>
    ${choice(
      "Weighed in",
      of === undefined ? undefined : String(of),
      [
        ["each cavity", "One cavity"],
        ["all cavities", "The whole mould"],
      ],
      (value) => set("/water/weighed_in", value),
    )}
    <div class="row">
      ${rows_at(mould_now(), "/water/weighings").map((_, i) =>
        draft_field({ label: `Water, round ${i + 1}`, pointer: `/water/weighings/${i}`, unit: "g" }, next_round(i)),
      )}
    </div>
    ${draft().complaint?.field === "/water/weighings" ? html`<p class="complaint">${draft().complaint!.line}</p>` : nothing}
    <button type="button" @click=${one_more_round}>One more round</button>`;
}

function one_more_round(): void {
  const place = rows_at(mould_now(), "/water/weighings").length;
  set(`/water/weighings/${place}`, "");
  queueMicrotask(() => document.getElementById(`d-water-weighings-${place}`)?.focus());
}

const next_round = (i: number) => (event: KeyboardEvent) => {
  if (event.key !== "Enter") return;
  if (i + 1 === rows_at(mould_now(), "/water/weighings").length) one_more_round();
  else document.getElementById(`d-water-weighings-${i + 1}`)?.focus();
};

/** What a mould may have more, and what of it may go. */
function parts(): TemplateResult {
  const button = (words: string, act: () => void) => html`<button type="button" @click=${act}>${words}</button>`;
  return html`<div class="choice">
    ${has("shape") ? nothing : button("Add measures, as a check", () => set("/shape", blank_shape("block")))}
    ${has("shape") && has("mesh") ? button("Leave the measures out", () => set("/shape", undefined)) : nothing}
    ${
      has("water")
        ? button("Leave the water out", () => set("/water", undefined))
        : button("Add weighed water", add_water)
    }
  </div>`;
}

function still_wanted(): string[] {
  const numbers = half_points(mould_now()).length;
  return numbers
    ? [
        ...wanted_of(mould_now()),
        numbers === 1 ? "the other number of a point" : `the other numbers of ${numbers} points`,
      ]
    : wanted_of(mould_now());
}

function keeping(taken: Taken): TemplateResult {
  const name = String(mould_now().name ?? "").trim();
  const twin = name_taken_by(name);
  const { open, answer, is_old, complaint } = draft();
  const is_ready = answer && !is_old && !complaint && !still_wanted().length && name && !twin;
  const file = open.shipped ? "" : open.file;
  return html`<button type="button" class="strong" ?disabled=${!is_ready} @click=${() => void keep_mould(taken)}>
      ${file ? "Save the change" : "Use this mould"}
    </button>
    ${file ? html`<p class="aside">It stays in ${file}.</p>` : nothing}
    ${name ? nothing : html`<p class="hint">Give it a name first.</p>`} ${name_taken(name, twin)}
    ${
      complaint
        ? html`<p class="alarm" role="status">${words_for(complaint.field)}${complaint.line}</p>
            ${keep_it(mould_now(), complaint.keep, set)}`
        : nothing
    }`;
}

export const name_taken = (name: string, twin: string | undefined): TemplateResult | typeof nothing =>
  twin
    ? html`<p class="complaint" role="status">
        Another mould is called ${name} already (${twin}); give this one a name of its own.
      </p>`
    : nothing;

/** Whose complaint it is, in the words that stand at the field. */
function words_for(field: string): string {
  const [, point] = /^\/shape\/points\/(\d+)/.exec(field) ?? [];
  if (point) return `Point ${Number(point) + 1}: `;
  if (field === "/shape/points") return ""; // it names its points itself
  const measure = measures(kind_of()).find(({ name }) => field === `/shape/${name}`);
  if (measure) return `${measure.label}: `;
  const input = document.getElementById(`d${field.replaceAll("/", "-")}`) as HTMLInputElement | null;
  const label = input?.labels?.[0]?.textContent?.trim();
  return label ? `${label}: ` : field ? `${field.slice(1).replaceAll("/", ", ").replaceAll("_", " ")}: ` : "";
}
