// What the studio has standing ready: lye solutions and melted blends of fats, each by a name of its own, which prices,
// packs and shelf go by.
import { html, nothing, type TemplateResult } from "lit";
import { edit_several, text_at, value_at } from "../documents/editing";
import { state } from "../documents/state";
import type { Document, Json } from "../program/json";
import { at, escaped, with_value } from "../program/pointer";
import { field, type FieldOptions } from "./field";
import { add_to, item_buttons, item_id, rows_of, type List } from "./form_lists";
import { choice_field, folded, part, said_at, to_field, to_id } from "./form_parts";
import { called, material_finder } from "./material_finder";
import { name_adder, name_field, names_in, remove_named, with_key } from "./named_rows";
import { total_words } from "./rates";

const studio_field = (options: Omit<FieldOptions, "of">): TemplateResult => field({ ...options, of: "studio" });

export function stands_ready(): TemplateResult {
  const fold = (place: string, title: string, body: () => TemplateResult) =>
    folded({
      of: "studio",
      name: `ready ${place}`,
      pointers: [place],
      summary: html`<span>${title}<small>${names_in("studio", place).join(", ")}</small></span>`,
      body,
    });
  return html`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${fold("/lye_solutions", "Lye solutions", solutions)} ${fold("/blends", "Melted blends of fats", blends)}
    </div>
  </section>`;
}

// Where the studio's own lists go by such a name.
const by_name = ["/prices", "/packs", "/have", "/waste"];

/** What goes by the name elsewhere in the studio goes by the new one. */
const known_as =
  (name: string) =>
  (studio: Document, to: string): Document =>
    by_name.reduce(
      (now, place) => (at(now, `${place}/${escaped(name)}`) === undefined ? now : with_key(now, place, name, to)),
      studio,
    );

/** So does the run that lies open. */
function rename_in_run(name: string, to: string): (run: Document) => Document {
  const renamed = (value: Json | undefined): Json | undefined => {
    if (value === name) return to;
    if (Array.isArray(value)) return value.map((one) => (one === name ? to : one));
    return value && typeof value === "object" && value.name === name ? { ...value, name: to } : value;
  };
  const places = ["/pour/lye_from", "/pipe/lye_from", "/pour/blend", "/pipe/blend"];
  return (run) =>
    places.reduce((now, place) => {
      const value = at(now, place);
      return value === undefined ? now : with_value(now, place, renamed(value));
    }, run);
}

interface Ready {
  at: string; // where all of the kind stand
  name: string;
  label: string; // of its name
  body: unknown;
}

function one_ready({ at: place, name, label, body }: Ready): TemplateResult {
  const rename = (change: (studio: Document) => Document, to: string) =>
    edit_several([
      ["studio", change],
      ["run", rename_in_run(name, to)],
    ]);
  const more = `${place}/${escaped(name)}`;
  return html`<div class="part" role="group" aria-label=${name}>
    <div class="part-head">
      <p class="part-title">${name}</p>
      ${remove_named("studio", place, name)}
    </div>
    ${said_at("studio", more)}
    <div class="row">${name_field({ of: "studio", at: place, name, label, also: known_as(name), put: rename })}</div>
    ${body}
    <div class="row">
      ${studio_field({ label: "Made on", at: `${more}/made_on`, date: true, optional: true, short: true })}
      ${studio_field({ label: "Made by", at: `${more}/from`, optional: true, short: true })}
      ${studio_field({ label: "Note", at: `${more}/note`, optional: true })}
    </div>
  </div>`;
}

const solutions_at = "/lye_solutions";

const solutions = (): TemplateResult =>
  html`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${names_in("studio", solutions_at).map((name) => one_ready({ at: solutions_at, name, label: "What you call it", body: solution(name) }))}
    ${name_adder({
      of: "studio",
      at: solutions_at,
      label: "Another solution, such as Lye jug A",
      add: "Add the solution",
      blank: { strength: "", strength_range: ["", ""], kept_at: "" },
      then: (name) => to_field("studio", `${solutions_at}/${escaped(name)}/alkali`),
    })}`;

/** Its strength is of the whole solution: a share of pure alkali, never a ratio of two. */
function solution(name: string): TemplateResult {
  const here = `${solutions_at}/${escaped(name)}`;
  const alkali = text_at("studio", `${here}/alkali`);
  const what = alkali || "alkali";
  const strength = text_at("studio", `${here}/strength`);
  return html`${choice_field({
      of: "studio",
      question: "Which alkali is dissolved in it?",
      at: `${here}/alkali`,
      chosen: alkali || undefined,
      answers: [
        ["NaOH", "NaOH, sodium hydroxide"],
        ["KOH", "KOH, potassium hydroxide"],
      ],
      puts: (to) => to,
      then: () => `${here}/strength`,
    })}
    <div class="row">
      ${studio_field({
        label: `Strength: pure ${what} in 100 g of the solution`,
        at: `${here}/strength`,
        unit: "%",
      })}
      ${studio_field({
        label: "Coldest it stands",
        at: `${here}/kept_at`,
        hint: "With its unit: 18 °C, 64 °F. Strong lye crystallises in the cold.",
      })}
    </div>
    <p role="status">${strength_words(strength, what)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${studio_field({ label: "as weak as", at: `${here}/strength_range/0`, unit: "%", short: true })}
      ${studio_field({ label: "or as strong as", at: `${here}/strength_range/1`, unit: "%", short: true })}
    </div>
    ${said_at("studio", `${here}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${part({
      of: "studio",
      at: `${here}/made_from`,
      name: `what ${name} is dissolved of`,
      title: "Dissolved by yourself",
      add: "I dissolve it myself",
      blank: { purity: "" },
      body: () =>
        html`<div class="row">
            ${studio_field({ label: `Purity of the dry ${what}`, at: `${here}/made_from/purity`, unit: "%", short: true })}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`,
    })}`;
}

/** What the figure means at the jug, so that a ratio typed as a share is seen. */
function strength_words(strength: string, what: string): string {
  const share = /^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(strength)?.[1];
  const of_100 = Number(share?.replace(",", "."));
  if (!share || of_100 >= 100) return `As much ${what} as water is 50 %.`;
  const plain = (value: number) => String(Math.round(value * 100) / 100);
  return `So ${plain(of_100)} g of pure ${what} and ${plain(100 - of_100)} g of water in 100 g.`;
}

const blends_at = "/blends";

const blends = (): TemplateResult =>
  html`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${names_in("studio", blends_at).map((name) => one_ready({ at: blends_at, name, label: "What you call it", body: blend(name) }))}
    ${name_adder({
      of: "studio",
      at: blends_at,
      label: "Another blend, such as Hard fats",
      add: "Add the blend",
      blank: { fats: [] },
      then: (name) => to_id(`find-blend ${name}`),
    })}`;

function blend(name: string): TemplateResult {
  const list: List = { of: "studio", at: `${blends_at}/${escaped(name)}/fats`, stays: true };
  const rows = rows_of(list) as Document[];
  const has = (fat: string) => rows.some((one) => one.fat === fat);
  return html`${said_at("studio", list.at)}
  ${rows.map(
    (one, i) =>
      html`<div class="row" id=${item_id(list, i)}>
        ${studio_field({ label: called(String(one.fat)), at: `${list.at}/${i}/share`, unit: "%", short: true })}
        ${item_buttons(list, i, called(String(one.fat)))} ${said_at("studio", `${list.at}/${i}/fat`)}
      </div>`,
  )}
  ${
    rows.length
      ? html`<p class="total" role="status">
          ${total_words(
            "Its fats",
            rows.map((one) => one.share),
          )}
        </p>`
      : nothing
  }
  ${material_finder({
    key: `blend ${name}`,
    label: rows.length ? "Another fat of it" : "Which fats are in it?",
    offers: fats_of_run(),
    among: "fats",
    taken: has,
    take: (fat) => add_to(list, { fat, share: "" }, called(fat)),
  })}`;
}

/** Of the formulas of the run that lies open, each once. */
const fats_of_run = (): string[] => [
  ...new Set(
    (["pour", "pipe"] as const).flatMap((slot) => {
      const fats = state.formulas[slot]?.now.fats;
      return Array.isArray(fats) ? fats.map((one) => String(at(one, "/fat") ?? "")).filter(Boolean) : [];
    }),
  ),
];

export const fats_in_blend = (name: string): string[] =>
  (rows_of({ of: "studio", at: `${blends_at}/${escaped(name)}/fats` }) as Document[]).map(({ fat }) => String(fat));

export const solution_called = (name: string): { alkali: string; words: string } => {
  const one = (value_at("studio", `${solutions_at}/${escaped(name)}`) ?? {}) as Document;
  const [alkali, strength] = [one.alkali, one.strength].map((text) => String(text ?? ""));
  return { alkali, words: [name, [alkali, strength].filter(Boolean).join(" ")].filter(Boolean).join(": ") };
};
