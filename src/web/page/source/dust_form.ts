// What a run says of the powders dusted on: each by the piece, or by the surface it is to cover.
import { html, nothing, type TemplateResult } from "lit";
import type { Document } from "./api";
import { add_to, asked, drop_from, focus_soon, list_at, text_at } from "./asking";
import { edit_run } from "./editing";
import { field, id_of, value_at } from "./field";
import { label_form } from "./label_form";
import { with_value } from "./pointer";
import { state } from "./state";

type Way = "piece" | "surface";

const way_keys: Record<Way, Document> = {
  piece: { per_piece: "" },
  surface: { on_surface: "", covered: "", lands: "" },
};

export const powder_called = (i: number): string => text_at(`/dust/${i}/name`).trim() || `Dust ${i + 1}`;

export function add_dust(): void {
  const i = list_at("/dust").length;
  add_to("/dust", "dust", { name: "" });
  focus_soon(id_of("run", `/dust/${i}/name`));
}

function remove_dust(i: number): void {
  const name = powder_called(i);
  drop_from("/dust", "dust", i);
  state.said = `${name} is removed. Undo brings it back.`;
  focus_soon("add-dust");
}

function way_of(here: string): Way | undefined {
  if (value_at("run", `${here}/per_piece`) !== undefined) return "piece";
  return value_at("run", `${here}/on_surface`) === undefined ? undefined : "surface";
}

function take_way(here: string, way: Way): void {
  if (way === way_of(here)) return;
  const old = Object.entries(value_at("run", here) as Document);
  const kept = Object.fromEntries(old.filter(([key]) => !["per_piece", "on_surface", "covered", "lands"].includes(key)));
  edit_run("way of dusting", (run) => with_value(run, here, { ...kept, ...way_keys[way] }));
}

export function dust_form(i: number): TemplateResult {
  const here = `/dust/${i}`;
  const way = way_of(here);
  const name = powder_called(i);
  return html`
    ${field({ label: "Which powder", at: `${here}/name` })}
    ${asked("How much of it?", here, way, [["piece", "Weighed for one piece"], ["surface", "By the surface it covers"]], (to) => take_way(here, to))}
    ${way === "piece" ? field({ label: `${name}, for one piece`, at: `${here}/per_piece`, unit: "g", hint: "What misses it included." }) : nothing}
    ${way === "surface"
      ? html`<div class="row">${field({ label: "Lies where it covers", at: `${here}/on_surface`, unit: "mg/cm2", short: true })}
          ${field({ label: "Covered, of the surface", at: `${here}/covered`, unit: "%", short: true })}
          ${field({ label: "Lands, of what is dusted", at: `${here}/lands`, unit: "%", short: true })}</div>
        <p class="hint">The surface is that of topping and decoration, as far as the air sees it.</p>`
      : nothing}
    ${label_form(here, name)}
    <button type="button" @click=${() => remove_dust(i)}>Remove ${name}</button>`;
}
