// The topping as beads from a tip: which tip, how far the bead swells, and what the tip does, move by move.
import { html, nothing, type TemplateResult } from "lit";
import type { Json } from "./api";
import { add_to, change, id_at, item_buttons, list_at, pick, said_at } from "./adding";
import { edit } from "./editing";
import { choice, field, value_at } from "./field";
import { figure } from "./figure";
import { trimmed, volume } from "./numbers";
import type { Pipe } from "./plan";
import { state } from "./state";
import * as sums from "./sums";
import { shipped_tips, tips_of, type Tip } from "./tips";

const here = "/pipe/beads";
const tip_at = `${here}/tip`;
const moves_at = `${here}/moves`;
const her_own = "\u0000own"; // no tip is called that

export const blank_beads: Json = { tip: "", swell: "", moves: [] };

interface Measure {
  name: string;
  label: string;
  kind: "length" | "signed" | "count" | "number";
  optional?: boolean;
}

const long = (name: string, label: string): Measure => ({ name, label, kind: "length" });
const how_many: Measure = { name: "count", label: "How many", kind: "count" };
const circle = long("circle_radius", "Radius of their circle");

interface Move {
  words: string;
  does: string;
  measures: Measure[];
}

const move_kinds: Record<string, Move> = {
  dollop: { words: "Dollop", does: "A heap in the middle.", measures: [long("diameter", "Across"), long("height", "High")] },
  ring: { words: "Ring", does: "One closed turn.", measures: [long("radius", "Radius, to the bead's middle")] },
  spiral: {
    words: "Spiral",
    does: "Turns that climb, wider or narrower.",
    measures: [
      { name: "turns", label: "Turns", kind: "number" },
      long("start_radius", "Radius at the start"),
      long("end_radius", "Radius at the end"),
      long("rise", "Climbs by"),
    ],
  },
  tail: { words: "Tail", does: "Drawn straight up to a point.", measures: [long("length", "Long")] },
  dots: { words: "Dots", does: "Upright dabs on a circle.", measures: [how_many, circle, long("height", "High")] },
  shells: { words: "Shells", does: "Strokes lying outward from a circle.", measures: [how_many, circle, long("length", "Long")] },
  bead: { words: "Straight bead", does: "Along the mould.", measures: [long("length", "Long"), { name: "aside", label: "Beside the middle by", kind: "signed", optional: true }] },
};

export function bead_form(pipe?: Pipe): TemplateResult {
  return html`${tip_choice()} ${is_own() ? own_tip() : nothing}
    ${field({ label: "Swell of the bead", at: `${here}/swell`, number: true, hint: "Section of the bead ÷ opening of the tip: 1 if they are the same." })}
    <h4>What the tip does, in order</h4>
    ${said_at(moves_at)} <div class="items">${list_at(moves_at).map((move, i) => move_form(move as Record<string, Json>, i, pipe))}</div> ${new_move()}`;
}

const is_own = (): boolean => typeof value_at("run", tip_at) === "object";

function known_tips(): Tip[] {
  const file = value_at("run", `${here}/tips_from`);
  return file === undefined ? shipped_tips() : tips_of(String(file));
}

function tip_choice(): TemplateResult {
  const choose = (name: string) => (name === her_own ? change("a tip of your own", tip_at, { name: "", round: { radius: "" } }, first_of_tip) : edit(tip_at, name));
  const choices = known_tips().map((tip): [string, string] => [tip.name, tip.opening ? `${tip.name} (${tip.opening})` : tip.name]);
  return html`${pick({ label: "Tip", at: tip_at, choices: [...choices, [her_own, "My own, measured"]], unsaid: "Which tip?", take: choose, chosen: is_own() ? her_own : undefined })}
    ${is_own()
      ? nothing
      : html`<details><summary>Tips of a file of your own</summary>
          ${field({ label: "File of tips", at: `${here}/tips_from`, optional: true, hint: "Beside your run, such as studio.tips.json. Emptied, the tips that ship are offered." })}</details>`}`;
}

const first_of_tip = () => document.querySelector(`#${id_at(tip_at, "own")} input`);

type Opening = "round" | "star" | "outline";
const blank_openings: Record<Opening, Json> = {
  round: { radius: "" },
  star: { points: "", outer_radius: "", inner_radius: "" },
  outline: [1, 2, 3].map(() => ({ x: "", y: "" })),
};

function own_tip(): TemplateResult {
  const tip = value_at("run", tip_at) as Record<string, Json>;
  const kind = (["round", "star", "outline"] as const).find((one) => one in tip);
  const set = (to: Opening) => {
    if (to === kind) return;
    const { round: _, star: __, outline: ___, ...rest } = tip;
    change("another opening", tip_at, { ...rest, [to]: blank_openings[to] }, first_of_tip);
  };
  return html`<div class="part" id=${id_at(tip_at, "own")} role="group" aria-label="My own tip">
    ${said_at(tip_at)} ${field({ label: "What you call the tip", at: `${tip_at}/name` })}
    ${choice("Opening of the tip", kind, [["round", "Round"], ["star", "Star"], ["outline", "Another outline"]], set)}
    ${kind ? opening_fields(kind) : nothing}
    <details><summary>What your hand adds</summary>
      <div class="row">${field({ label: "Hand's factor", at: `${tip_at}/hand/factor`, number: true, short: true, hint: "What your toppings weigh ÷ what the moves come to." })}
        ${value_at("run", `${tip_at}/hand/factor`) === undefined ? nothing : field({ label: "From so many trials", at: `${tip_at}/hand/trials`, count: true, optional: true, short: true })}</div>
      ${value_at("run", `${tip_at}/hand`) === undefined ? nothing : html`<button type="button" @click=${() => change("hand's factor taken away", `${tip_at}/hand`, undefined, first_of_tip)}>Leave out the hand's factor</button>`}
      ${field({ label: "Note on the tip", at: `${tip_at}/note`, optional: true })}</details></div>`;
}

function opening_fields(kind: Opening): TemplateResult {
  if (kind === "outline") return outline_fields();
  const mm = (name: string, label: string) => field({ label, at: `${tip_at}/${kind}/${name}`, unit: "mm", short: true });
  return html`<div class="row">${kind === "round"
    ? mm("radius", "Radius of the opening")
    : html`${field({ label: "Points", at: `${tip_at}/star/points`, count: true, short: true })} ${mm("outer_radius", "Radius to the points")} ${mm("inner_radius", "Radius to the notches")}`}</div>`;
}

function outline_fields(): TemplateResult {
  const corners = `${tip_at}/outline`;
  return html`<p class="hint">Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.</p>
    ${said_at(corners)} ${list_at(corners).map(
      (_, i) => html`<div class="row" id=${id_at(`${corners}/${i}`, "item")}>
        ${field({ label: `Corner ${i + 1}, x`, at: `${corners}/${i}/x`, unit: "mm", short: true })}
        ${field({ label: `Corner ${i + 1}, y`, at: `${corners}/${i}/y`, unit: "mm", short: true })}
        ${item_buttons(corners, i, `corner ${i + 1}`, false)}</div>`,
    )}
    <button type="button" id=${id_at(corners, "add")} @click=${() => add_to(corners, { x: "", y: "" }, "corner")}>One more corner</button>`;
}

function move_form(move: Record<string, Json>, i: number, pipe: Pipe | undefined): TemplateResult {
  const kind = move_kinds[String(move.move)];
  const place = `${moves_at}/${i}`;
  const name = `${i + 1}. ${kind?.words ?? String(move.move)}`;
  return html`<div class="part" id=${id_at(place, "item")} role="group" aria-label=${name}>
    <div class="part-head"><p class="part-title">${name}</p>${item_buttons(moves_at, i, name)}</div>
    ${said_at(place)}
    <div class="row">${(kind?.measures ?? []).map((measure) => measured(place, measure))}
      ${field({ label: "Starts this high", at: `${place}/at_height`, unit: "mm", optional: true, short: true })}</div>
    ${laid(i, pipe)}</div>`;
}

function measured(place: string, { name, label, kind, optional }: Measure): TemplateResult {
  const hint = kind === "signed" ? "−12 mm is to the other side." : undefined;
  const unit = kind === "length" || kind === "signed" ? "mm" : undefined;
  return field({ label, at: `${place}/${name}`, unit, hint, optional, short: true, count: kind === "count", number: kind === "number" });
}

function laid(i: number, pipe: Pipe | undefined): TemplateResult | typeof nothing {
  const laid_down = pipe?.visible_by?.moves ?? [];
  const one = laid_down[i];
  if (!one || laid_down.length !== list_at(moves_at).length) return nothing;
  const path = one.length_mm > 0 ? `${trimmed(one.length_mm / 10, 1)} cm of bead` : "";
  return figure({ key: `pipe.move.${i}`, label: "Lays down", note: path, shown: volume(state.units, one.volume_ml), sum: sums.sum_of_move(i, one, opening_words()) });
}

function opening_words(): string {
  if (is_own()) return "as measured, above";
  const name = String(value_at("run", tip_at));
  const tip = known_tips().find((one) => one.name === name);
  return tip?.area_mm2 ? `${name}: ${tip.opening}, ${trimmed(tip.area_mm2, 1)} mm²` : name;
}

function new_move(): TemplateResult {
  const blank = (kind: string): Json => ({
    move: kind,
    ...Object.fromEntries(move_kinds[kind]!.measures.filter((one) => !one.optional).map((one) => [one.name, ""])),
  });
  return html`<div class="choice words" role="group" aria-label="Add a move">
    ${Object.entries(move_kinds).map(
      ([kind, { words, does }], i) => html`<button type="button" id=${i ? nothing : id_at(moves_at, "add")} @click=${() => add_to(moves_at, blank(kind), words)}><b>+ ${words}</b> <small>${does}</small></button>`,
    )}</div>
    <p class="hint">Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.</p>`;
}
