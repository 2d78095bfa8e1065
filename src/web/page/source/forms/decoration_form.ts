// The questions about a run's decorations: how many, what each is and how it is made.
import { html, nothing, type TemplateResult } from "lit";
import { list_at, value_at, without } from "../documents/editing";
import { open_up, state } from "../documents/state";
import type { Document, Json } from "../program/json";
import { type CountKey, type Way, called, count_key, decorations, is_cut, pointer_of, way_of } from "./decoration";
import { add_dust, dusts } from "./dust_form";
import { field } from "./field";
import { add_button, add_to, rows_of } from "./form_lists";
import { choice_field, file_choice, folded, said_at, unfold } from "./form_parts";
import { supplier_form } from "./supplier_form";
import { where_it_goes } from "./where_form";

const made = (here: string): string => `${here} made`;

/** Everything is left blank, and nothing is guessed. */
function add_decoration(): void {
  const here = pointer_of(rows_of(decorations).length);
  const count: Document = is_cut() ? {} : { per_piece: "" }; // of a loaf it is asked whether bar or loaf is meant
  open_up("set-up decorate");
  for (const name of [made(here), `${here} where`]) unfold("run", name);
  add_to(
    decorations,
    { name: "", material: "", ...count, density: "", spares: "", melt_loss: "", left_in_jug: "" },
    "Decoration",
  );
}

export function add_buttons(): TemplateResult {
  const [more, more_dust] = [rows_of(decorations).length > 0, rows_of(dusts).length > 0];
  return html`${add_button(decorations, more ? "Add another decoration" : "Add a decoration", add_decoration)}
  ${add_button(dusts, more_dust ? "Add another dust" : "Add a dust", add_dust)}`;
}

/** The questions of one decoration; what seldom changes is folded away once it is said. */
export function decoration_form(i: number): TemplateResult {
  const here = pointer_of(i);
  return html` ${said_at("run", here)} ${what_it_is(here)}
    <div class="row">
      ${count(here)} ${field({ label: "Spares", at: `${here}/spares`, unit: "%", short: true })}
      ${way_of(here) === "bought" ? nothing : melting(here)}
    </div>
    ${where_it_goes(here, i)} ${supplier_form("run", here, called(i))}`;
}

const melting = (here: string): TemplateResult =>
  html`${field({ label: "Lost in melting", at: `${here}/melt_loss`, unit: "%", short: true })}
  ${field({ label: "Left in the jug per tray fill", at: `${here}/left_in_jug`, unit: "g", short: true })}
  ${field({ label: "Density when set", at: `${here}/density`, unit: "g/ml", short: true })}`;

/** Bar and loaf are told apart only where there are both. Places said by hand are counted, not asked for. */
function count(here: string): TemplateResult {
  const key = count_key(here);
  const said = list_at("run", `${here}/buried/places`).length;
  if (said && said === value_at("run", `${here}/${key}`) && !(is_cut() && key === "per_piece")) return html``;
  const label =
    key === "per_cast" ? (is_cut() ? "In each loaf" : "In each cast") : is_cut() ? "On each bar" : "On each piece";
  const swapped = (to: CountKey): Json => ({
    ...without("run", here, ["per_piece", "per_cast"]),
    [to]: key ? value_at("run", `${here}/${key}`)! : "",
  });
  return html`${
    is_cut()
      ? choice_field({
          question: "Counted by",
          at: here,
          is_told_elsewhere: true,
          chosen: key,
          answers: [
            ["per_piece", "Bar"],
            ["per_cast", "Whole loaf"],
          ],
          puts: swapped,
        })
      : nothing
  }
  ${key ? field({ label, at: `${here}/${key}`, count: true, short: true }) : nothing}`;
}

const way_keys: Record<Way, Document> = {
  mould: { mould: "", fill: { below_brim: "" } },
  rod: { rod: { diameter: "", length: "" } },
  drizzle: { drizzle: { area: "", thickness: "" } },
  bought: { bought: {} },
};
const melted: Document = { density: "", melt_loss: "", left_in_jug: "" };

function with_way(here: string, way: Way): Json {
  const others = [
    "mould",
    "moulds_owned",
    "fill",
    "cast_as",
    "rod",
    "drizzle",
    "bought",
    ...(way === "drizzle" || way === "bought" ? ["on_top", "buried"] : []),
    ...(way === "bought" ? [...Object.keys(melted), "time_per_tray_fill"] : []),
  ];
  const asked = way_of(here) === "bought" && way !== "bought" ? melted : {};
  return { ...without("run", here, others), ...asked, ...way_keys[way] };
}

function what_it_is(here: string): TemplateResult {
  const way = way_of(here);
  const pointers = [
    "name",
    "material",
    "mould",
    "moulds_owned",
    "fill",
    "cast_as",
    "rod",
    "drizzle",
    "bought",
    "time_per_tray_fill",
  ].map((key) => `${here}/${key}`);
  return folded({
    name: made(here),
    pointers,
    summary: "What it is and how it is made",
    is_needed: !way,
    body: () =>
      html` <div class="row">
          ${field({ label: "What it is called", at: `${here}/name` })}
          ${field({
            label: way === "bought" ? "What is bought" : "What is melted for it",
            at: `${here}/material`,
          })}
        </div>
        <p class="hint">${way === "bought" ? "It has a price by the piece." : "The price goes by what is melted."}</p>
        ${choice_field({
          question: "How is it made?",
          at: here,
          is_told_elsewhere: true,
          chosen: way,
          answers: [
            ["mould", "Cast in a mould"],
            ["rod", "A round rod, cut to length"],
            ["drizzle", "Drizzled over"],
            ["bought", "Bought, and only counted"],
          ],
          puts: (to) => with_way(here, to),
        })}
        ${way ? measures[way](here) : nothing}
        ${
          way === "bought"
            ? nothing
            : field({
                label: "To fill all trays once, setting included",
                at: `${here}/time_per_tray_fill`,
                unit: "min",
                optional: true,
              })
        }`,
  });
}

const measures: Record<Way, (here: string) => TemplateResult> = {
  mould: cast,
  rod: (here) =>
    html`<div class="row">
      ${field({ label: "Rod, diameter", at: `${here}/rod/diameter`, unit: "mm", short: true })}
      ${field({ label: "Rod, length", at: `${here}/rod/length`, unit: "mm", short: true })}
    </div>`,
  drizzle: (here) =>
    html`<div class="row">
      ${field({ label: "Area covered", at: `${here}/drizzle/area`, unit: "cm2", short: true })}
      ${field({ label: "Thickness", at: `${here}/drizzle/thickness`, unit: "mm", short: true })}
    </div>`,
  bought: (here) =>
    field({
      label: "One weighs",
      at: `${here}/bought/weighs`,
      unit: "g",
      optional: true,
      short: true,
      hint: "Weigh ten. A label needs it.",
    }),
};

type Level = "below_brim" | "depth";
type Form = "one cast" | "two halves";

function cast(here: string): TemplateResult {
  const level: Level = value_at("run", `${here}/fill/depth`) === undefined ? "below_brim" : "depth";
  return html`${file_choice("Cast in", `${here}/mould`, state.files?.moulds)}
  ${choice_field({
    question: "Filled to a line",
    at: `${here}/fill`,
    chosen: level,
    answers: [
      ["below_brim", "below the brim"],
      ["depth", "above the floor"],
    ],
    puts: (to) => ({ [to]: "" }),
  })}
  ${
    level === "below_brim"
      ? field({
          label: "Filled to, below the brim",
          at: `${here}/fill/below_brim`,
          unit: "mm",
          hint: "0 mm is level full.",
        })
      : field({ label: "Filled to, above the floor", at: `${here}/fill/depth`, unit: "mm" })
  }
  ${choice_field({
    question: "What makes one?",
    at: `${here}/cast_as`,
    chosen: value_at("run", `${here}/cast_as`) as Form | undefined,
    answers: [
      ["one cast", "One cast"],
      ["two halves", "Two halves, joined at the flat"],
    ],
    puts: (to) => to,
  })}`;
}
