// What goes round each piece of this run, in place of what the studio packs with.
import { html, nothing, type TemplateResult } from "lit";
import { list_at, value_at } from "../documents/editing";
import type { Document, Json } from "../program/json";
import { field } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of, type List } from "./form_lists";
import { choice_field, folded } from "./form_parts";
import { called } from "./material_finder";

type Packed = "studio" | "own" | "nothing";

const here = "/packaging";
const list: List = { at: here, stays: true };
const blank = { material: "", each_piece: "" };
const puts: Record<Packed, Json | undefined> = { studio: undefined, own: [blank], nothing: [] };

const packed = (): Packed =>
  value_at("run", here) === undefined ? "studio" : rows_of(list).length ? "own" : "nothing";

export function packaging_form(): TemplateResult {
  const now = packed();
  return folded({
    name: "packaging",
    pointers: [here],
    summary: `Packaging${said(now)}`,
    body: () =>
      html`${choice_field<Packed>({
        question: "What goes round each piece",
        at: here,
        is_told_elsewhere: now === "own",
        chosen: now,
        answers: [
          ["studio", "As the studio packs"],
          ["own", "Of this run's own"],
          ["nothing", "Nothing"],
        ],
        puts: (to) => puts[to],
        then: (to) => (to === "own" ? `${here}/0/material` : here),
      })}
      ${now === "own" ? rows() : nothing}`,
  });
}

function said(now: Packed): string {
  if (now === "studio") return "";
  if (now === "nothing") return ": none";
  const names = (list_at("run", here) as Document[])
    .map(({ material }) => called(String(material ?? "")))
    .filter(Boolean);
  return names.length ? `: ${names.join(", ")}` : "";
}

const rows = (): TemplateResult =>
  html`<p class="hint">In place of all that the studio packs with. Its price is that of its pack.</p>
    ${(rows_of(list) as Document[]).map((one, i) => {
      const name = String(one.material || `packaging ${i + 1}`);
      return html`<div class="row" id=${item_id(list, i)}>
        ${field({ label: `Material ${i + 1}`, at: `${here}/${i}/material`, hint: "As its pack or price calls it." })}
        ${field({
          label: `Of it, each piece ${i + 1}`,
          at: `${here}/${i}/each_piece`,
          unit: "pieces",
          short: true,
          hint: "How many, or a mass such as 3 g",
        })}
        ${item_buttons(list, i, name)}
      </div>`;
    })}
    ${add_button(list, "Another material", () => add_to(list, blank, "A material"))}`;
