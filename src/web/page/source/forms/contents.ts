// What is inside of something stirred in: fat and acid, which take alkali.
import { html, nothing, type TemplateResult } from "lit";
import { value_at } from "../documents/editing";
import type { FormulaSlot } from "../documents/file_types";
import { known_fats } from "../documents/own_fats";
import type { Json } from "../program/json";
import { field } from "./field";
import { choice_field, one_of } from "./form_parts";

/** As the program knows them; it refuses any other. */
const acids = [
  "citric acid, anhydrous",
  "citric acid monohydrate",
  "lactic acid (100 %)",
  "acetic acid (100 %)",
  "ascorbic acid",
  "malic acid",
  "tartaric acid",
  "potassium hydrogen tartrate",
  "oxalic acid, anhydrous",
  "oxalic acid dihydrate",
  "glycolic acid (100 %)",
  "salicylic acid",
  "benzoic acid",
  "phosphoric acid (100 %)",
  "vinegar, 5 g acetic acid per 100 g",
  "lactic acid 88 % (of which part is lactate ester, titrated as total acid)",
  "sodium bicarbonate",
  "potassium bicarbonate",
];

export const fat_answers = (of: FormulaSlot): [string, string][] => known_fats(of).map((one) => [one.id, one.name]);

type Held = "unsaid" | "none" | "some";
const not_said: [Held, string] = ["unsaid", "Not given"];
const holds_none: [Held, string] = ["none", "Holds none"];

const held_now = (value: Json | undefined): Held =>
  value === undefined ? "unsaid" : value === "none" ? "none" : "some";
const put_held = (some: Json) => (to: Held) => (to === "some" ? some : to === "none" ? "none" : undefined);

/** Fat in it takes its share of the alkali. */
export function fat_in_it(of: FormulaSlot, row: string): TemplateResult {
  return held_fat(of, `${row}/contains_fat`, [not_said, holds_none, ["some", "Holds fat"]], fat_answers(of));
}

export function held_fat(
  of: FormulaSlot,
  at: string,
  answers: [Held, string][],
  fats: [string, string][],
): TemplateResult {
  const now = held_now(value_at(of, at));
  const chosen = answers.some(([one]) => one === now) ? now : undefined;
  return html`${choice_field({ of, question: "Fat in it", at, chosen, answers, puts: put_held({ fat: "", share: "" }) })}
  ${
    now === "some"
      ? html`<div class="row">
          ${one_of({ label: "Which fat", of, at: `${at}/fat`, answers: fats, unsaid: "choose ..." })}
          ${field({ label: "Fat in what is weighed", of, at: `${at}/share`, unit: "%", short: true })}
        </div>`
      : nothing
  }`;
}

type Acid = Held | "typed";
const acid_answers: [Acid, string][] = [not_said, holds_none, ["some", "Holds acid"], ["typed", "By what it takes up"]];
const acid_starts: Record<Acid, Json | undefined> = {
  unsaid: undefined,
  none: "none",
  some: { acid: "", share: "" },
  typed: { takes_up: "" },
};

/** Acid in it uses up alkali. */
export function acid_in_it(of: FormulaSlot, row: string): TemplateResult {
  const at = `${row}/contains_acid`;
  const chosen: Acid = value_at(of, `${at}/takes_up`) !== undefined ? "typed" : held_now(value_at(of, at));
  return html`${choice_field({ of, question: "Acid in it", at, chosen, answers: acid_answers, puts: (to) => acid_starts[to] })}
  ${
    chosen === "some"
      ? html`<div class="row">
          ${one_of({
            label: "Which acid",
            of,
            at: `${at}/acid`,
            answers: acids.map((one) => [one, one]),
            unsaid: "choose ...",
          })}
          ${field({ label: "Of that acid in what is weighed", of, at: `${at}/share`, unit: "%", short: true })}
        </div>`
      : nothing
  }
  ${
    chosen === "typed"
      ? html`<div class="row">
          ${field({
            label: "Taken up by 1 g of it",
            of,
            at: `${at}/takes_up`,
            unit: "mg KOH/g",
            hint: "From its supplier's document.",
          })}
        </div>`
      : nothing
  }
  ${
    chosen === "some" || chosen === "typed"
      ? confirmed(of, `${at}/confirmed`, "An essence or concentrate, stronger than a juice, vinegar, wine or sour milk")
      : nothing
  }`;
}

/** What the program would refuse as a slip. */
export function confirmed(of: FormulaSlot, at: string, question: string): TemplateResult {
  const chosen = value_at(of, at) === true ? "yes" : "no";
  return choice_field({
    of,
    question,
    at,
    chosen,
    answers: [
      ["no", "No"],
      ["yes", "Yes"],
    ],
    puts: (to) => (to === "yes" ? true : undefined),
  });
}
