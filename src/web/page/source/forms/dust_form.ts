// What a run says of the powders dusted on: each by the piece, or by the surface it is to cover.
import { html, nothing, type TemplateResult } from "lit";
import { text_at, value_at, without } from "../documents/editing";
import { open_up } from "../documents/state";
import type { Document } from "../program/json";
import { field } from "./field";
import { type List, add_to } from "./form_lists";
import { choice_field } from "./form_parts";
import { supplier_form } from "./supplier_form";

type Way = "piece" | "surface";

const way_keys: Record<Way, Document> = {
  piece: { per_piece: "" },
  surface: { on_covered_surface: "", coverage: "", share_that_sticks: "" },
};

export const dusts: List = { at: "/dust" };

export const powder_called = (i: number): string => text_at("run", `/dust/${i}/name`).trim() || `Dust ${i + 1}`;

export function add_dust(): void {
  open_up("set-up dust");
  add_to(dusts, { name: "" }, "Dust");
}

function way_of(here: string): Way | undefined {
  if (value_at("run", `${here}/per_piece`) !== undefined) return "piece";
  return value_at("run", `${here}/on_covered_surface`) === undefined ? undefined : "surface";
}

export function dust_form(i: number): TemplateResult {
  const here = `/dust/${i}`;
  const way = way_of(here);
  const name = powder_called(i);
  const with_way = (to: Way) => ({
    ...without("run", here, ["per_piece", "on_covered_surface", "coverage", "share_that_sticks"]),
    ...way_keys[to],
  });
  return html` ${field({ label: "Which powder", at: `${here}/name` })}
  ${choice_field({
    question: "How much of it?",
    at: here,
    chosen: way,
    answers: [
      ["piece", "Weighed for one piece"],
      ["surface", "By the surface it covers"],
    ],
    puts: with_way,
  })}
  ${
    way === "piece"
      ? field({ label: `${name}, for one piece`, at: `${here}/per_piece`, unit: "g", hint: "What misses it included." })
      : nothing
  }
  ${
    way === "surface"
      ? html`<div class="row">
            ${field({ label: "Powder on the covered surface", at: `${here}/on_covered_surface`, unit: "mg/cm2", short: true })}
            ${field({ label: "Share of the surface covered", at: `${here}/coverage`, unit: "%", short: true })}
            ${field({ label: "Share of the powder that sticks", at: `${here}/share_that_sticks`, unit: "%", short: true })}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`
      : nothing
  }
  ${supplier_form("run", here, name)}`;
}
