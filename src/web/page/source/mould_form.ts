// The form of a mould, of whatever parts its file has: measures, a mesh, weighed water, and what else it says.
import { html, nothing, type TemplateResult } from "lit";
import type { Document, Json } from "./api";
import { choice } from "./form_parts";
import {
  bring_back_mine,
  draft,
  half_points,
  has,
  kind_of,
  list_at,
  set,
  shows_cavities,
  take_their_mould,
  wanted,
} from "./mould_draft";
import { keep_it } from "./keep_it";
import { complaint_at, draft_field } from "./mould_fields";
import { keep_mould, keep_over, name_taken_by, type Taken } from "./mould_keeping";
import { found } from "./mould_views";
import { blank_points, point_rows } from "./point_rows";
import { at } from "./pointer";
import { measures, point_list, shape_names } from "./shapes";
import { changed } from "./state";

const water: Document = { weighings: [""] };
export const says_its_unit = /\.(3mf|gltf|glb)$/i;

/** Each shape keeps its measures while another is looked at. */
const measured: Record<string, Json> = {};

export function blank_shape(kind: string): Document {
  const points = point_list(kind);
  return points ? { kind, points: blank_points(points) } : { kind };
}

export function add_water(): void {
  set("/water", water);
}

export function mould_form(taken: Taken): TemplateResult {
  return html`${conflict(taken)}
    ${
      has("shape") && has("mesh")
        ? html`<p class="hint">The mesh is measured; its measures are a second opinion.</p>`
        : nothing
    }
    ${has("shape") ? choice("Shape", kind_of(), Object.entries(shape_names), change_shape) : nothing}
    <div class="beside ${point_list(kind_of()) ? "rows" : ""}">
      <div>
        ${name_field()} ${has("shape") ? shape_fields() : nothing} ${has("mesh") ? mesh_fields() : nothing}
        ${about_fields()} ${has("water") ? water_fields() : nothing} ${parts()}
      </div>
      <div class="stays">${found(draft.answer, draft.is_old, still_wanted())} ${keeping(taken)}</div>
    </div>`;
}

function change_shape(to: string): void {
  measured[kind_of()] = at(draft.document, "/shape")!;
  draft.answer = undefined;
  set("/shape", measured[to] ?? blank_shape(to));
}

export function forget_shapes(): void {
  for (const kind of Object.keys(measured)) delete measured[kind];
}

export function name_field(): TemplateResult {
  const { from_name } = draft.paper;
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
export function about_fields(has_count = shows_cavities()): TemplateResult {
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
  const text = (name: string) => String(at(draft.document, `/mesh/${name}`) ?? "");
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
        pointer: "/mesh/group",
        count: true,
        optional: true,
        hint: "Only where they differ in size.",
      })}
      ${draft_field({
        label: "Straight up, if it leans",
        pointer: "/mesh/leaning_up",
        optional: true,
        hint: "x,y,z, such as 0.0523,0,0.9986",
      })}
    </div>`;
}

function board(): TemplateResult {
  const stands = at(draft.document, "/mesh/on_board") === true ? "yes" : "no";
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
  const to = at(draft.document, "/water/to");
  const filled =
    to === undefined ? undefined : to === "brim" ? "brim" : at(to, "/depth") !== undefined ? "depth" : "below_brim";
  const set_to = (value: string) => set("/water/to", value === "brim" ? "brim" : { [value]: "" });
  const of = at(draft.document, "/water/of");
  const said_to = filled === undefined || filled === "brim" ? complaint_at("/water/to") : undefined;
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
        ? draft_field({ label: "Depth of the water", pointer: "/water/to/depth", unit: "mm" })
        : nothing
    }
    ${
      filled === "below_brim"
        ? draft_field({ label: "Water below the brim", pointer: "/water/to/below_brim", unit: "mm" })
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
      (value) => set("/water/of", value),
    )}
    <div class="row">
      ${list_at("/water/weighings").map((_, i) =>
        draft_field({ label: `Water, round ${i + 1}`, pointer: `/water/weighings/${i}`, unit: "g" }, next_round(i)),
      )}
    </div>
    ${draft.complaint?.field === "/water/weighings" ? html`<p class="complaint">${draft.complaint.line}</p>` : nothing}
    <button type="button" @click=${one_more_round}>One more round</button>`;
}

function one_more_round(): void {
  const place = list_at("/water/weighings").length;
  set(`/water/weighings/${place}`, "");
  queueMicrotask(() => document.getElementById(`d-water-weighings-${place}`)?.focus());
}

const next_round = (i: number) => (event: KeyboardEvent) => {
  if (event.key !== "Enter") return;
  if (i + 1 === list_at("/water/weighings").length) one_more_round();
  else document.getElementById(`d-water-weighings-${i + 1}`)?.focus();
};

/** What a mould may have more, and what of it may go. */
function parts(): TemplateResult {
  const button = (words: string, act: () => void) => html`<button type="button" @click=${act}>${words}</button>`;
  return html`<div class="choice">
    ${has("shape") ? nothing : button("Add measures, as a second opinion", () => set("/shape", blank_shape("block")))}
    ${has("shape") && has("mesh") ? button("Leave the measures out", () => set("/shape", undefined)) : nothing}
    ${
      has("water")
        ? button("Leave the water out", () => set("/water", undefined))
        : button("Add weighed water", add_water)
    }
  </div>`;
}

function still_wanted(): string[] {
  const numbers = half_points().length;
  return numbers
    ? [...wanted(), numbers === 1 ? "the other number of a point" : `the other numbers of ${numbers} points`]
    : wanted();
}

function keeping(taken: Taken): TemplateResult {
  const name = String(draft.document.name ?? "").trim();
  const twin = name_taken_by(name);
  const is_ready = draft.answer && !draft.is_old && !draft.complaint && !still_wanted().length && name && !twin;
  const { file } = draft.paper;
  return html`<button type="button" class="strong" ?disabled=${!is_ready} @click=${() => void keep_mould(taken)}>
      ${file ? "Save the change" : "Use this mould"}
    </button>
    ${file ? html`<p class="aside">It stays in ${file}.</p>` : nothing}
    ${name ? nothing : html`<p class="hint">Give it a name first.</p>`} ${name_taken(name, twin)}
    ${
      draft.complaint
        ? html`<p class="alarm" role="status">${words_for(draft.complaint.field)}${draft.complaint.line}</p>
            ${keep_it(draft.document, draft.complaint.field, draft.complaint.line, set)}`
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

function conflict(taken: Taken): TemplateResult | typeof nothing {
  const there = draft.conflict;
  if (!there) return draft.mine ? typed_before() : nothing;
  const is_gone = there.text === null;
  const theirs = () => {
    if (!take_their_mould()) complain_of_theirs();
  };
  return html`<section class="banner" aria-labelledby="conflict-title" role="alert">
    <h2 id="conflict-title">${draft.paper.file} has ${is_gone ? "been taken away" : "changed"} underneath</h2>
    <p>
      Another hand or tab wrote the file since you opened it here. Nothing of yours was written yet. Which is to stay?
    </p>
    <div class="choice">
      ${is_gone ? nothing : html`<button type="button" @click=${theirs}>Take what is in the file</button>`}
      <button type="button" @click=${() => void keep_over(there.version, taken)}>Keep what is on this page</button>
    </div>
  </section>`;
}

function complain_of_theirs(): void {
  draft.complaint = { field: "", line: `What is in ${draft.paper.file} now is no mould: keep what is on this page.` };
  changed();
}

const typed_before = (): TemplateResult =>
  html`<section class="banner" aria-label="What you typed">
    <p>This is what another hand wrote. What you typed is still here.</p>
    <button type="button" @click=${bring_back_mine}>Change to the other text</button>
  </section>`;
