// The topping as beads from a tip: which tip, how far the bead swells, and what the tip does, move by move.
import { html, nothing, type TemplateResult } from "lit";
import { edit, value_at, without } from "../documents/editing";
import { state } from "../documents/state";
import { shipped_tips, tips_of } from "../documents/tips";
import { figure } from "../figures/figure";
import type { Tip } from "../program/api";
import type { Json } from "../program/json";
import { trimmed, volume } from "../program/numbers";
import type { Topping } from "../program/topping";
import { complaint_on, field, id_of, said_beneath } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of, type List } from "./form_lists";
import { choice_field, change, folded, id_at, one_of, said_at, to_first_in } from "./form_parts";

const here = "/pipe/beads";
const tip_at = `${here}/tip`;
const moves: List = { at: `${here}/moves`, in_order: true };
const her_own = "\u0000own"; // no tip is called that

export const blank_beads: Json = { tip: "", bead_to_opening: "", moves: [] };

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
  dollop: {
    words: "Dollop",
    does: "A heap in the middle.",
    measures: [long("diameter", "Across"), long("height", "High")],
  },
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
  shells: {
    words: "Shells",
    does: "Strokes lying outward from a circle.",
    measures: [how_many, circle, long("length", "Long")],
  },
  bead: {
    words: "Straight bead",
    does: "Along the mould.",
    measures: [
      long("length", "Long"),
      { name: "aside", label: "Beside the middle by", kind: "signed", optional: true },
    ],
  },
};

export function bead_form(pipe?: Topping): TemplateResult {
  return html`${tip_choice()} ${is_own() ? own_tip() : nothing}
    ${field({
      label: "Bead ÷ tip opening",
      at: `${here}/bead_to_opening`,
      number: true,
      hint: "Section of the bead ÷ opening of the tip: 1 if they are the same.",
    })}
    <h4>What the tip does, in order</h4>
    <div class="items">${rows_of(moves).map((move, i) => move_form(move as Record<string, Json>, i, pipe))}</div>
    ${new_move()}`;
}

const is_own = (): boolean => typeof value_at("run", tip_at) === "object";

function known_tips(): Tip[] {
  const file = value_at("run", `${here}/own_tips`);
  return file === undefined ? shipped_tips() : tips_of(String(file));
}

function tip_choice(): TemplateResult {
  const take = (name: string) =>
    name === her_own
      ? change("run", "a tip of your own", tip_at, { name: "", round: { radius: "" } }, first_of_tip)
      : edit("run", tip_at, name);
  const answers = known_tips().map((tip): [string, string] => [
    tip.name,
    tip.opening ? `${tip.name} (${tip.opening})` : tip.name,
  ]);
  return html`${one_of({
    label: "Tip",
    at: tip_at,
    answers: [...answers, [her_own, "My own, measured"]],
    unsaid: "Which tip?",
    take,
    chosen: is_own() ? her_own : undefined,
  })}
  ${
    is_own()
      ? nothing
      : folded({
          name: "tips",
          pointers: [`${here}/own_tips`],
          summary: "Tips of a file of your own",
          body: () =>
            field({
              label: "File of tips",
              at: `${here}/own_tips`,
              optional: true,
              hint: "Beside your run, such as studio.tips.json. Emptied, the tips that ship are offered.",
            }),
        })
  }`;
}

const own_id = id_at("run", tip_at, "own");
const first_of_tip = to_first_in(own_id);

type Opening = "round" | "star" | "outline";
const openings: [Opening, string][] = [
  ["round", "Round"],
  ["star", "Star"],
  ["outline", "Another outline"],
];
const blank_corner = { x: "", y: "" };
const blank_openings: Record<Opening, Json> = {
  round: { radius: "" },
  star: { points: "", outer_radius: "", inner_radius: "" },
  outline: [blank_corner, blank_corner, blank_corner],
};

function own_tip(): TemplateResult {
  const chosen = openings.map(([one]) => one).find((one) => value_at("run", `${tip_at}/${one}`) !== undefined);
  const puts = (to: Opening) => ({
    ...without(
      "run",
      tip_at,
      openings.map(([one]) => one),
    ),
    [to]: blank_openings[to],
  });
  return html`<div class="part" id=${own_id} role="group" aria-label="My own tip">
    ${said_at("run", tip_at)} ${field({ label: "What you call the tip", at: `${tip_at}/name` })}
    ${choice_field({ question: "Opening of the tip", at: tip_at, is_told_elsewhere: true, chosen, answers: openings, puts })}
    ${chosen ? opening_fields(chosen) : nothing}
    ${folded({ name: "hand", pointers: [hand_at, `${tip_at}/note`], summary: "Correction for your hand", body: hand })}
  </div>`;
}

const hand_at = `${tip_at}/hand`;

function hand(): TemplateResult {
  const has = (pointer: string) => value_at("run", pointer) !== undefined;
  return html`<div class="row">
      ${field({
        label: "Correction for your hand",
        at: `${hand_at}/correction`,
        number: true,
        short: true,
        hint: "What your toppings weigh ÷ what the moves come to.",
      })}
      ${
        has(`${hand_at}/correction`)
          ? field({ label: "From so many trials", at: `${hand_at}/trials`, count: true, optional: true, short: true })
          : nothing
      }
    </div>
    ${
      has(hand_at)
        ? html`<button
            type="button"
            @click=${() => change("run", "correction removed", hand_at, undefined, first_of_tip)}
          >
            Leave the correction out
          </button>`
        : nothing
    }
    ${field({ label: "Note on the tip", at: `${tip_at}/note`, optional: true })}`;
}

function opening_fields(kind: Opening): TemplateResult {
  if (kind === "outline") return outline_fields();
  const mm = (name: string, label: string) =>
    field({ label, at: `${tip_at}/${kind}/${name}`, unit: "mm", short: true });
  return html`<div class="row">
    ${
      kind === "round"
        ? mm("radius", "Radius of the opening")
        : html`${field({ label: "Points", at: `${tip_at}/star/points`, count: true, short: true })}
          ${mm("outer_radius", "Radius to the points")} ${mm("inner_radius", "Radius to the notches")}`
    }
  </div>`;
}

function outline_fields(): TemplateResult {
  const corners = { at: `${tip_at}/outline` };
  return html`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${rows_of(corners).map(
      (_, i) =>
        html`<div class="row" id=${item_id(corners, i)}>
          ${field({ label: `Corner ${i + 1}, x`, at: `${corners.at}/${i}/x`, unit: "mm", short: true })}
          ${field({ label: `Corner ${i + 1}, y`, at: `${corners.at}/${i}/y`, unit: "mm", short: true })}
          ${item_buttons(corners, i, `corner ${i + 1}`)}
        </div>`,
    )}
    ${add_button(corners, "One more corner", () => add_to(corners, blank_corner, "corner"))}`;
}

function move_form(move: Record<string, Json>, i: number, pipe: Topping | undefined): TemplateResult {
  const kind = move_kinds[String(move.move)];
  const place = `${moves.at}/${i}`;
  const name = `${i + 1}. ${kind?.words ?? String(move.move)}`;
  return html`<div class="part" id=${item_id(moves, i)} role="group" aria-label=${name}>
    <div class="part-head">
      <p class="part-title">${name}</p>
      ${item_buttons(moves, i, name)}
    </div>
    ${said_at("run", place)}
    <div class="row">
      ${(kind?.measures ?? []).map((measure) => measured(place, measure))}
      ${field({ label: "Starts at height", at: `${place}/at_height`, unit: "mm", optional: true, short: true })}
    </div>
    ${laid(i, pipe)}
  </div>`;
}

function measured(place: string, { name, label, kind, optional }: Measure): TemplateResult {
  const hint = kind === "signed" ? "−12 mm is to the other side." : undefined;
  const unit = kind === "length" || kind === "signed" ? "mm" : undefined;
  return field({
    label,
    at: `${place}/${name}`,
    unit,
    hint,
    optional,
    short: true,
    count: kind === "count",
    number: kind === "number",
  });
}

function laid(i: number, pipe: Topping | undefined): TemplateResult | typeof nothing {
  const laid_down = pipe?.visible_by?.moves ?? [];
  const one = laid_down[i];
  if (!one || laid_down.length !== rows_of(moves).length) return nothing;
  const path = one.length_mm > 0 ? `${trimmed(one.length_mm / 10, 1)} cm of bead` : "";
  return figure({
    key: `pipe.move.${i}`,
    label: "Lays down",
    note: path,
    shown: volume(state.units, one.volume_ml),
    of: `pipe.visible_by.moves.${i}.volume_ml`,
  });
}

function new_move(): TemplateResult {
  const blank = (kind: string): Json => ({
    move: kind,
    ...Object.fromEntries(move_kinds[kind].measures.filter((one) => !one.optional).map((one) => [one.name, ""])),
  });
  const id = id_of("run", moves.at);
  const complaint = complaint_on("run", moves.at);
  return html`${said_beneath(id, complaint)}
    <div
      class="choice words"
      role="group"
      id=${id}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${complaint ? `${id}-said` : nothing}
    >
      ${Object.entries(move_kinds).map(
        ([kind, { words, does }]) =>
          html`<button type="button" @click=${() => add_to(moves, blank(kind), words)}>
            <b>+ ${words}</b> <small>${does}</small>
          </button>`,
      )}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`;
}
