// What is stirred in beside fats, lye and water: additives and salts, liquids in place of water, fragrances, colours.
import { html, nothing, type TemplateResult } from "lit";
import { value_at, without } from "../documents/editing";
import type { FormulaSlot } from "../documents/file_types";
import type { Document, Json } from "../program/json";
import { acid_in_it, fat_answers, fat_in_it, held_fat } from "./contents";
import { complaint_on, field } from "./field";
import { type List, add_button, add_to, item_buttons, item_id, rows_of } from "./form_lists";
import { choice_field, folded, one_of } from "./form_parts";
import { limit_units, rate_field, rate_units } from "./rates";
import { supplier_form } from "./supplier_form";

interface Kind {
  list: "additives" | "liquids" | "fragrances" | "colours";
  title: string;
  add: string;
  aside: string;
  row: (of: FormulaSlot, at: string, row: Document) => TemplateResult;
}

const kinds: Kind[] = [
  {
    list: "liquids",
    title: "Liquids in place of water",
    add: "Add a liquid",
    aside: "Milk, coconut milk, purées, brine.",
    row: liquid,
  },
  {
    list: "additives",
    title: "Additives, salts and acids",
    add: "Add an additive",
    aside: "Whatever goes in beside fats, lye, fragrance and colour.",
    row: additive,
  },
  {
    list: "fragrances",
    title: "Fragrances",
    add: "Add a fragrance",
    aside: "Essential and fragrance oils.",
    row: fragrance,
  },
  {
    list: "colours",
    title: "Colours",
    add: "Add a colour",
    aside: "Micas, pigments and other colours. Those of layers stand in the run.",
    row: colour,
  },
];

export function stirred_in(of: FormulaSlot): TemplateResult[] {
  return kinds.map((kind) => {
    const list = { of, at: `/${kind.list}` };
    const rows = rows_of(list) as Document[];
    const row = (one: Document, i: number) =>
      html`<li class="formula-row" id=${item_id(list, i)}>
        ${head(of, kind, list, one, i)} ${kind.row(of, `${list.at}/${i}`, one)}
      </li>`;
    return html`<section class="card" aria-labelledby="${kind.list}-title">
      <h2 id="${kind.list}-title">${kind.title}</h2>
      ${
        rows.length
          ? html`<ol class="formula-rows">
              ${rows.map(row)}
            </ol>`
          : html`<p class="aside">${kind.aside}</p>`
      }
      ${add_button(list, kind.add, () => add_to(list, blank(kind), kind.add.replace("Add ", "")))}
    </section>`;
  });
}

/** Nothing of it is guessed; what must be said the program asks for. */
function blank(kind: Kind): Json {
  return kind.list === "liquids" ? { name: "", goes_into: "", composition: "" } : { name: "", rate: "" };
}

function head(of: FormulaSlot, kind: Kind, list: List, row: Document, i: number): TemplateResult {
  const at = `/${kind.list}/${i}`;
  const complaint = complaint_on(of, at);
  const name = String(row.name || `number ${i + 1} of the ${kind.list}`);
  return html`${complaint ? html`<p class="complaint">${complaint}</p>` : nothing}
    <div class="row named">
      ${field({ label: "Name", of, at: `${at}/name` })}
      ${kind.list === "liquids" ? nothing : rate_field(of, `${at}/rate`, "How much", rate_units)}
      ${item_buttons(list, i, name)}
    </div>`;
}

function goes_into(of: FormulaSlot, at: string, places: [string, string][], is_needed: boolean): TemplateResult {
  const pointer = `${at}/goes_into`;
  const now = value_at(of, pointer) as string | undefined;
  const hint = is_needed || now ? undefined : "The batter, unless you name another place.";
  const optional = !is_needed;
  const chosen = now || undefined;
  return choice_field({
    of,
    question: "Goes into",
    at: pointer,
    chosen,
    answers: places,
    puts: (to) => to,
    hint,
    optional,
  });
}

/** Where it goes in, and when, of what goes into the lye. */
function place(of: FormulaSlot, at: string, is_needed: boolean): TemplateResult {
  const when = value_at(of, `${at}/stirred_in`);
  return html`${goes_into(of, at, any_place, is_needed)}
  ${
    value_at(of, `${at}/goes_into`) === "lye" || when !== undefined
      ? choice_field({
          of,
          question: "Stirred into the lye",
          at: `${at}/stirred_in`,
          chosen: String(when ?? ""),
          answers: times_in_lye,
          puts: (to) => to || undefined,
          hint: when === undefined ? "Before the alkali; sodium lactate once the lye has cooled." : undefined,
        })
      : nothing
  }`;
}

const times_in_lye: [string, string][] = [
  ["", "As usual"],
  ["before the alkali", "Before the alkali"],
  ["once the lye has cooled", "Once the lye has cooled"],
];

const any_place: [string, string][] = [
  ["lye", "The lye"],
  ["fats", "The fats"],
  ["batter", "The batter"],
];

function densities(of: FormulaSlot, at: string, row: Document): TemplateResult {
  const words = (value: Json | undefined, before: string, after: string) =>
    value ? `${before}${String(value)}${after}` : "";
  const said = [
    words(row.bulk_density, "", " in the spoon"),
    words(row.density, "", " in the batter"),
    words(row.limit, "at most ", ""),
  ]
    .filter(Boolean)
    .join(", ");
  const pointers = ["bulk_density", "density", "limit"].map((one) => `${at}/${one}`);
  return folded({
    of,
    name: `${at} densities`,
    pointers,
    summary: `Densities and limit${said && `: ${said}`}`,
    body: () =>
      html` <div class="row">
          ${field({
            label: "Bulk density (for spoons)",
            of,
            at: `${at}/bulk_density`,
            unit: "g/ml",
            optional: true,
            hint: "A level cup weighed, by the cup's volume. Needed for spoons.",
          })}
          ${field({
            label: "True density (in the batter)",
            of,
            at: `${at}/density`,
            unit: "g/ml",
            optional: true,
            hint: "Once it is in the batter. Left out, water's is taken, and that is said.",
          })}
        </div>
        ${rate_field(of, `${at}/limit`, "The most that the supplier's document allows", limit_units, true)}`,
  });
}

function holds(of: FormulaSlot, at: string, row: Document, has_acid: boolean): TemplateResult {
  const words = (value: Json | undefined, what: string) =>
    value === undefined ? "" : value === "none" ? `no ${what}` : what;
  const said = [words(row.contains_fat, "fat"), has_acid ? words(row.contains_acid, "acid") : ""]
    .filter(Boolean)
    .join(", ");
  return folded({
    of,
    name: `${at} holds`,
    pointers: [`${at}/contains_fat`, `${at}/contains_acid`],
    summary: `${has_acid ? "Fat or acid" : "Fat"} in it${said && `: ${said}`}`,
    body: () => html`${fat_in_it(of, at)} ${has_acid ? acid_in_it(of, at) : nothing}`,
  });
}

const label = (of: FormulaSlot, at: string, row: Document): TemplateResult =>
  supplier_form(of, at, String(row.name || "it"));

function additive(of: FormulaSlot, at: string, row: Document): TemplateResult {
  return html`${place(of, at, true)}
    <div class="folds">${holds(of, at, row, true)} ${densities(of, at, row)} ${label(of, at, row)}</div>`;
}

function place_folded(of: FormulaSlot, at: string, row: Document): TemplateResult {
  return folded({
    of,
    name: `${at} place`,
    pointers: [`${at}/goes_into`, `${at}/stirred_in`],
    summary: `Goes into the ${String(row.goes_into ?? "batter")}`,
    body: () => place(of, at, false),
  });
}

function fragrance(of: FormulaSlot, at: string, row: Document): TemplateResult {
  return html`<div class="folds">
    ${densities(of, at, row)} ${label(of, at, row)} ${place_folded(of, at, row)} ${holds(of, at, row, false)}
  </div>`;
}

function colour(of: FormulaSlot, at: string, row: Document): TemplateResult {
  return html`${dispersed(of, at)}
    <div class="folds">
      ${densities(of, at, row)} ${label(of, at, row)} ${place_folded(of, at, row)} ${holds(of, at, row, true)}
    </div>`;
}

const oil_from: ["formula" | "extra", string][] = [
  ["formula", "taken out of the formula's"],
  ["extra", "put on top, and counted as fat"],
];

function dispersed(of: FormulaSlot, row: string): TemplateResult {
  const at = `${row}/dispersed_in`;
  const has = value_at(of, at) !== undefined;
  const from = value_at(of, `${at}/from`) as "formula" | "extra" | undefined;
  const puts = (to: "dry" | "oil") => (to === "oil" ? { fat: "", oil_per_colour: "" } : undefined);
  return html`${choice_field({
    of,
    question: "Stirred into oil first",
    at,
    chosen: has ? "oil" : "dry",
    answers: [
      ["dry", "No"],
      ["oil", "Yes"],
    ],
    puts,
  })}
  ${
    has
      ? html`<div class="row">
            ${one_of({ label: "Which oil", of, at: `${at}/fat`, answers: fat_answers(of), unsaid: "choose ..." })}
            ${field({
              label: "Oil for 1 g of colour",
              of,
              at: `${at}/oil_per_colour`,
              number: true,
              unit: "g",
              hint: "Or as you measure it: 1 tsp in 1 tbsp of oil.",
            })}
          </div>
          ${choice_field({
            of,
            question: "That oil is",
            at: `${at}/from`,
            chosen: from,
            answers: oil_from,
            puts: (to) => to,
            optional: true,
            hint: from ? undefined : "Taken out of the formula's own, unless you say so.",
          })}`
      : nothing
  }`;
}

/** As the program knows them; it refuses any other. */
const compositions = [
  "coconut milk, canned",
  "goat milk",
  "cow's milk, whole",
  "cream, heavy",
  "milk, evaporated",
  "carrot, puréed raw",
  "cucumber, puréed with its skin",
  "pumpkin, canned purée",
  "avocado, puréed",
  "brine, saturated at 20 °C",
];

function liquid(of: FormulaSlot, at: string, row: Document): TemplateResult {
  const fold = (name: string, summary: string, body: () => unknown) =>
    folded({ of, name: `${at}/${name}`, pointers: [`${at}/${name}`], summary, body });
  return html`${how_much(of, at, row)}
    ${goes_into(
      of,
      at,
      [
        ["lye", "The lye"],
        ["batter", "The batter"],
      ],
      true,
    )}
    ${composition(of, at)}
    <div class="folds">
      ${fold("frozen", row.frozen === true ? "Goes in as ice" : "Frozen: no", () => frozen(of, `${at}/frozen`))}
      ${fold(
        "acid",
        `Acid in it${row.contains_acid === undefined ? "" : row.contains_acid === "none" ? ": none" : ": some"}`,
        () => acid_in_it(of, at),
      )}
      ${fold("density", `Density${row.density ? `: ${String(row.density)}` : ""}`, () =>
        field({
          label: "Density",
          of,
          at: `${at}/density`,
          unit: "g/ml",
          optional: true,
          hint: "Left out, it is worked out from what is in it.",
        }),
      )}
      ${label(of, at, row)}
    </div>`;
}

function frozen(of: FormulaSlot, at: string): TemplateResult {
  const now = value_at(of, at) === true ? "ice" : "liquid";
  const puts = (to: "ice" | "liquid") => (to === "ice" ? true : undefined);
  return choice_field({
    of,
    question: "Goes in as ice, which keeps the lye cooler",
    at,
    chosen: now,
    answers: [
      ["liquid", "No"],
      ["ice", "Yes"],
    ],
    puts,
  });
}

type Amount = "replaces" | "rate";

function how_much(of: FormulaSlot, at: string, row: Document): TemplateResult {
  const now: Amount | undefined = row.replaces !== undefined ? "replaces" : row.rate !== undefined ? "rate" : undefined;
  const puts = (to: Amount): Json => ({ ...without(of, at, ["replaces", "rate"]), [to]: "" });
  // The program asks for "replaces" where neither is said.
  return html`${choice_field({
    of,
    question: "How much",
    at,
    asked_at: `${at}/replaces`,
    is_told_elsewhere: now !== undefined,
    chosen: now,
    answers: amounts,
    puts,
  })}
  ${
    now === "replaces"
      ? html`<div class="row">
          ${field({
            label: "Of the formula's water",
            of,
            at: `${at}/replaces`,
            unit: "% of water",
            hint: "Its own water stands in for that share.",
          })}
        </div>`
      : nothing
  }
  ${now === "rate" ? rate_field(of, `${at}/rate`, "Rate", rate_units) : nothing}`;
}

const amounts: [Amount, string][] = [
  ["replaces", "In place of so much water"],
  ["rate", "By the fats or the batter"],
];

function composition(of: FormulaSlot, row: string): TemplateResult {
  const at = `${row}/composition`;
  const is_label = typeof value_at(of, at) === "object";
  const from_label: Document = { water: "", sugar: "", salt: "", source: "" };
  const share = (label: string, name: string) => field({ label, of, at: `${at}/${name}`, unit: "%", short: true });
  const puts = (to: "shipped" | "label") => (to === "label" ? from_label : "");
  return html`${choice_field({
    of,
    question: "What 100 g of it holds",
    at,
    is_told_elsewhere: !is_label,
    chosen: is_label ? "label" : "shipped",
    answers: [
      ["shipped", "Built-in figures"],
      ["label", "The label's figures"],
    ],
    puts,
  })}
  ${
    is_label
      ? html`<div class="row">${share("Water", "water")} ${share("Sugar", "sugar")} ${share("Salt", "salt")}</div>
          ${held_fat(
            of,
            `${at}/fat`,
            [
              ["none", "None"],
              ["some", "Holds fat"],
            ],
            [["milk_fat", "Milk fat"], ...fat_answers(of)],
          )}
          <div class="row">
            ${field({ label: "Where the figures are from", of, at: `${at}/source`, hint: "Such as: the tin's label." })}
          </div>`
      : html`<div class="row">
          ${one_of({
            label: "Built-in figures of",
            of,
            at,
            answers: compositions.map((one) => [one, one]),
            unsaid: "choose ...",
          })}
        </div>`
  }`;
}
