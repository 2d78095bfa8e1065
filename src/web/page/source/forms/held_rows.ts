// Fats and tips as they stand in a file of her own, each folded.
import { html, nothing, type TemplateResult } from "lit";
import { list_at, text_at, value_at } from "../documents/editing";
import type { OpenFile } from "../documents/file_types";
import { state } from "../documents/state";
import { tip_picture } from "../drawings/tip_picture";
import type { Document } from "../program/json";
import { own_tip } from "./bead_form";
import { set_aside, which_is_to_stay } from "./conflict";
import { free_id } from "./fat_ids";
import { add_to, item_buttons, item_id, type List } from "./form_lists";
import { folded, go_on, id_at, to_field, to_first_in, unfold } from "./form_parts";
import { blank_fat, fat_questions } from "./own_fat_form";
import { touches } from "./used_by";

const fats: List = { of: "own_fats", at: "/fats", least: 1 };
const tips: List = { of: "own_tips", at: "/tips", least: 1 };

const rows = ({ of, at }: List): Document[] => list_at(of!, at) as Document[];

export function fats_in_file(file: OpenFile): TemplateResult {
  return in_file(file, fats, "fats", (i) => {
    const here = `/fats/${i}`;
    return folded({
      of: "own_fats",
      name: String(rows(fats)[i].id),
      pointers: [here],
      summary: html`<span
        >${text_at("own_fats", `${here}/name`) || "Without a name"}<small
          >${value_words(`${here}/saponification_value`)}</small
        ></span
      >`,
      body: () => fat_questions(here),
    });
  });
}

/** As the document has it. */
function value_words(at: string): string {
  const value = value_at("own_fats", at);
  const range = value !== null && typeof value === "object" && !Array.isArray(value) ? value : undefined;
  const words = range ? [range.low, range.high].filter((one) => one !== "").join(" to ") : String(value ?? "");
  return words ? `${words} mg KOH/g` : "saponification value not given";
}

export function tips_in_file(file: OpenFile): TemplateResult {
  return in_file(file, tips, "tips", (i) => {
    const here = `/tips/${i}`;
    return html`<div class="tip-row">
      ${tip_picture(rows(tips)[i])}
      ${folded({
        of: "own_tips",
        name: `tip ${i}`,
        pointers: [here],
        summary: text_at("own_tips", `${here}/name`) || "Without a name",
        body: () => own_tip({ of: "own_tips", at: here }),
      })}
    </div>`;
  });
}

function in_file(file: OpenFile, list: List, what: "fats" | "tips", one: (i: number) => unknown): TemplateResult {
  const listed = state.files?.[what].find(({ file: name }) => name === file.file);
  const name = (i: number) => String(rows(list)[i].name || `number ${i + 1}`);
  return html`${which_is_to_stay(file)} ${set_aside(file)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${file.file}</h2>
      ${touches(listed)}
      ${file.shipped ? html`<p class="aside">Built-in: your first change is saved as a copy.</p>` : nothing}
      <div class="items">
        ${rows(list).map(
          (_, i) =>
            html`<div class="held" id=${item_id(list, i)} role="group" aria-label=${name(i)}>
              ${one(i)} ${item_buttons(list, i, name(i))}
            </div>`,
        )}
      </div>
    </section>`;
}

export const new_fat = (name: string, taken: readonly { id?: unknown }[]): Document => ({
  ...blank_fat,
  id: free_id(name, taken as readonly { id?: string }[]),
  name,
});

/** To the file that lies open. */
export function add_fat(name: string): void {
  const fat = new_fat(name, [...state.fats, ...rows(fats)]);
  add_to(fats, fat, name);
  unfold("own_fats", String(fat.id));
  go_on(to_field("own_fats", `/fats/${rows(fats).length - 1}/source`));
}

export const new_tip = (name: string): Document => ({ name });

export function add_tip(name: string): void {
  add_to(tips, new_tip(name), name);
  const i = rows(tips).length - 1;
  unfold("own_tips", `tip ${i}`);
  go_on(to_first_in(id_at("own_tips", `/tips/${i}`, "own")));
}
