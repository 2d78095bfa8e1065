// A fat of her own, as its supplier's document describes it: it stands in the file of own fats that the formula names.
import { html, nothing, type TemplateResult } from "lit";
import { open_own_fats } from "../documents/beside";
import { list_at, text_at, value_at } from "../documents/editing";
import type { FormulaSlot } from "../documents/file_types";
import { own_fats } from "../documents/own_fats";
import { state } from "../documents/state";
import type { Document, Json } from "../program/json";
import { escaped } from "../program/pointer";
import { field } from "./field";
import { change, choice_field, folded, go_on, said_at, to_id, unfold, one_of } from "./form_parts";
import { within } from "./wanted";

/** What must be said of it, unsaid. */
export const blank_fat: Document = {
  kind: "",
  inci: "",
  inci_sodium_soap: "",
  saponification_value: { low: "", high: "" },
  source: "",
};

/** The form of the fat of that id, where it is one of hers. */
export function own_fat_form(slot: FormulaSlot, id: string): TemplateResult | typeof nothing {
  const own = own_fats(slot);
  if (!Array.isArray(own) || !own.some((one) => one.id === id)) return nothing;
  const rows = list_at("own_fats", "/fats") as Document[];
  const i = rows.findIndex((one) => one.id === id);
  const is_open = i >= 0 && state.beside.own_fats !== undefined;
  if (!is_open)
    return html`<button type="button" @click=${() => void open_form(slot, id)}>Change this fat of my own</button>`;
  const here = `/fats/${i}`;
  return folded({
    of: "own_fats",
    name: id,
    pointers: [here],
    summary: `My own fat, in ${state.beside.own_fats!.file}`,
    body: () => within({ part: text_at("own_fats", `${here}/name`) || "Your own fat" }, () => fat_questions(here)),
  });
}

async function open_form(slot: FormulaSlot, id: string): Promise<void> {
  await open_own_fats(slot);
  unfold("own_fats", id);
  const i = (list_at("own_fats", "/fats") as Document[]).findIndex((one) => one.id === id);
  go_on(to_id(`f-own_fats-fats-${i}-name`));
}

const kinds: [string, string][] = [
  ["triglyceride", "Oil, fat or butter"],
  ["wax_ester", "Wax"],
  ["free_fatty_acid", "Fatty acid"],
];

export function fat_questions(here: string): TemplateResult {
  const text = (key: string, label: string, hint?: string, optional = false) =>
    field({ of: "own_fats", label, at: `${here}/${key}`, hint, optional });
  return html`${said_at("own_fats", here)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${text("name", "Name of the fat")} ${text("source", "The document", "Supplier, name, date.")}
      ${text("lot", "Lot", undefined, true)}
    </div>
    ${choice_field({
      of: "own_fats",
      question: "What it is",
      at: `${here}/kind`,
      chosen: text_at("own_fats", `${here}/kind`) || undefined,
      answers: kinds,
      puts: (to) => to,
      hint: "Jojoba is a wax; beeswax and lanolin are waxes too.",
    })}
    ${saponification(`${here}/saponification_value`)}
    <div class="row">
      ${text("inci", "INCI name")}
      ${text("inci_sodium_soap", "INCI name of its sodium soap", "Such as Sodium Olivate.")}
      ${text("inci_potassium_soap", "INCI name of its potassium soap", "Left out, it is formed from the other.", true)}
    </div>
    ${folded({
      of: "own_fats",
      name: `${here} more`,
      pointers: ["iodine_value", "density", "melting_range", "unsaponifiable", "fatty_acids", "note"].map(
        (key) => `${here}/${key}`,
      ),
      summary: "Iodine value, density, fatty acids",
      body: () => more(here),
    })}`;
}

type Way = "one" | "range";

/** The value that the formulas count with, and its range where the document gives one. */
function saponification(at: string): TemplateResult {
  const value = value_at("own_fats", at);
  const way: Way = value !== null && typeof value === "object" ? "range" : "one";
  const number = (pointer: string, label: string, optional = false) =>
    field({ of: "own_fats", label, at: pointer, number: true, short: true, optional, unit: "mg KOH/g" });
  return html`${choice_field({
      of: "own_fats",
      question: "Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",
      at,
      is_told_elsewhere: true,
      chosen: way,
      answers: [
        ["range", "Lowest and highest"],
        ["one", "One value"],
      ],
      puts: (to): Json => (to === "one" ? "" : { low: "", high: "" }),
    })}
    <div class="row">
      ${
        way === "one"
          ? number(at, "Saponification value")
          : html`${number(`${at}/low`, "Lowest")} ${number(`${at}/typical`, "Typical", true)}
            ${number(`${at}/high`, "Highest")}`
      }
    </div>`;
}

function more(here: string): TemplateResult {
  const pair = (key: string, label: string, blank: Json, body: () => unknown) => {
    const at = `${here}/${key}`;
    const has = value_at("own_fats", at) !== undefined;
    const turn = () => change("own_fats", `${label}: ${has ? "left out" : "added"}`, at, has ? undefined : blank);
    return html`<div class="part" role="group" aria-label=${label}>
      <div class="part-head">
        <p class="part-title">${label}</p>
        <button type="button" aria-label="${has ? "Leave out" : "Add"} ${label.toLowerCase()}" @click=${turn}>
          ${has ? "Leave out" : "Add"}
        </button>
      </div>
      ${has ? html`${said_at("own_fats", at)}${body()}` : nothing}
    </div>`;
  };
  const one = (pointer: string, label: string, unit: string, number = false) =>
    field({ of: "own_fats", label, at: `${here}/${pointer}`, unit, number, short: true });
  return html`<div class="items">
      ${pair("iodine_value", "Iodine value", { low: "", high: "" }, () => {
        const is_range = typeof value_at("own_fats", `${here}/iodine_value`) === "object";
        return is_range
          ? html`<div class="row">
              ${one("iodine_value/low", "Lowest iodine value", "g/100 g", true)}
              ${one("iodine_value/high", "Highest iodine value", "g/100 g", true)}
            </div>`
          : one("iodine_value", "Iodine value", "g/100 g", true);
      })}
      ${pair(
        "density",
        "Density when molten",
        { at: "", low: "", high: "" },
        () =>
          html`<div class="row">
            ${one("density/at", "Measured at", "°C")} ${one("density/low", "Lowest density", "g/ml")}
            ${one("density/high", "Highest density", "g/ml")}
          </div>`,
      )}
      ${pair(
        "melting_range",
        "Melting range",
        { low: "", high: "" },
        () =>
          html`<div class="row">
            ${one("melting_range/low", "Melts from", "°C")} ${one("melting_range/high", "Melts up to", "°C")}
          </div>`,
      )}
    </div>
    ${fatty_acids(`${here}/fatty_acids`)}
    <div class="row">
      ${field({
        of: "own_fats",
        label: "Unsaponifiable, at most",
        at: `${here}/unsaponifiable`,
        unit: "%",
        optional: true,
        short: true,
      })}
      ${field({ of: "own_fats", label: "Note on the fat", at: `${here}/note`, optional: true })}
    </div>`;
}

/** As a document lists them, by chain or by name. */
const acids: [string, string][] = [
  ["C8:0", "Caprylic, C8:0"],
  ["C10:0", "Capric, C10:0"],
  ["C12:0", "Lauric, C12:0"],
  ["C14:0", "Myristic, C14:0"],
  ["C16:0", "Palmitic, C16:0"],
  ["C16:1", "Palmitoleic, C16:1"],
  ["C18:0", "Stearic, C18:0"],
  ["C18:1", "Oleic, C18:1"],
  ["C18:2", "Linoleic, C18:2"],
  ["C18:3", "Linolenic, C18:3"],
  ["C20:0", "Arachidic, C20:0"],
  ["C20:1", "Gondoic, C20:1"],
  ["C22:0", "Behenic, C22:0"],
  ["C22:1", "Erucic, C22:1"],
];

function fatty_acids(at: string): TemplateResult {
  const there = Object.keys((value_at("own_fats", at) ?? {}) as Document);
  const free = acids.filter(([acid]) => !there.includes(acid));
  const named = (acid: string) => acids.find(([one]) => one === acid)?.[1] ?? acid;
  const place = (acid: string) => `${at}/${escaped(acid)}`;
  const share = (acid: string) => {
    const is_range = Array.isArray(value_at("own_fats", place(acid)));
    const end = (i: 0 | 1, words: string) =>
      field({ of: "own_fats", label: `${named(acid)}, ${words}`, at: `${place(acid)}/${i}`, unit: "%", short: true });
    return html`<div class="row">
      ${
        is_range
          ? html`${end(0, "lowest")} ${end(1, "highest")}`
          : field({ of: "own_fats", label: named(acid), at: place(acid), unit: "%", short: true })
      }
      <button
        type="button"
        aria-label="Remove ${named(acid)}"
        @click=${() => change("own_fats", `${named(acid)} removed`, there.length > 1 ? place(acid) : at, undefined)}
      >
        ×
      </button>
    </div>`;
  };
  return html`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${said_at("own_fats", at)} ${there.map(share)}
    <div class="row">
      ${one_of({
        label: "Add a fatty acid",
        of: "own_fats",
        at: `${at}/`,
        answers: free,
        unsaid: "choose ...",
        optional: true,
        chosen: "",
        take: (acid) => acid && change("own_fats", `${named(acid)} added`, place(acid), ["", ""]),
      })}
    </div>`;
}
