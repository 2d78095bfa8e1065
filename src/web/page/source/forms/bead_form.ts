// The topping as beads from a tip: which tip, how far the bead swells, and what the tip does, move by move.
import { html, nothing, type TemplateResult } from "lit";
import { open_own_tips } from "../documents/beside";
import { edit, edit_several, list_at, text_at, value_at, without } from "../documents/editing";
import type { DocumentId } from "../documents/file_types";
import { beside_run } from "../documents/run_names";
import { announce, state } from "../documents/state";
import { shipped_tips, tips_of } from "../documents/tips";
import { figure } from "../figures/figure";
import type { Tip } from "../program/api";
import type { Document, Json } from "../program/json";
import { trimmed, volume } from "../program/numbers";
import { escaped, with_value } from "../program/pointer";
import type { Topping } from "../program/topping";
import { complaint_on, field, id_of, said_beneath } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of, type List } from "./form_lists";
import { choice_field, change, folded, id_at, one_of, said_at, to_first_in } from "./form_parts";
import { name_input, with_key } from "./named_rows";
import { want } from "./wanted";

const here = "/pipe/beads";
const tip_at = `${here}/tip`;
/** Described in the run itself, as long as it is not kept for all runs. */
const tip_of_run: TipPlace = { of: "run", at: tip_at };
const moves: List = { at: `${here}/moves`, in_order: true };
interface TipPlace {
  of: "run" | "own_tips";
  at: string;
}

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
    measures: [long("diameter", "Diameter"), long("height", "Height")],
  },
  ring: { words: "Ring", does: "One closed turn.", measures: [long("radius", "Radius, to the bead's middle")] },
  spiral: {
    words: "Spiral",
    does: "Turns that climb, wider or narrower.",
    measures: [
      { name: "turns", label: "Turns", kind: "number" },
      long("start_radius", "Radius at the start"),
      long("end_radius", "Radius at the end"),
      long("rise", "Rise"),
    ],
  },
  tail: { words: "Tail", does: "Drawn straight up to a point.", measures: [long("length", "Length")] },
  dots: { words: "Dots", does: "Upright dabs on a circle.", measures: [how_many, circle, long("height", "Height")] },
  shells: {
    words: "Shells",
    does: "Strokes lying outward from a circle.",
    measures: [how_many, circle, long("length", "Length")],
  },
  bead: {
    words: "Straight bead",
    does: "Along the mould.",
    measures: [
      long("length", "Length"),
      { name: "aside", label: "Distance from the middle", kind: "signed", optional: true },
    ],
  },
};

export function bead_form(pipe?: Topping): TemplateResult {
  return html`${tip_choice()} ${is_own() ? own_tip(tip_of_run) : tip_of_file()}
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

const tips_file = (): string => String(value_at("run", `${here}/own_tips`) ?? value_at("studio", "/own_tips") ?? "");

/** Her own are there besides those that are built in, where her studio names them; else in their stead. */
function known_tips(): Tip[] {
  const file = tips_file();
  const own = file ? tips_of(file) : [];
  return value_at("run", `${here}/own_tips`) === undefined ? [...own, ...shipped_tips()] : own;
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
              hint: "Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered.",
            }),
        })
  }`;
}

const own_id = id_at("run", tip_at, "own");
const first_of_tip = to_first_in(own_id);

/** Kept in a file, it is there for all runs. */
async function keep_tip(): Promise<void> {
  const tip = value_at("run", tip_at) as Document;
  if (!(await open_own_tips())) return;
  const rows = list_at("own_tips", "/tips") as Document[];
  const name = free_tip_name(String(tip.name).trim() || "My tip", rows);
  edit_several([
    ["own_tips", (file) => with_value(file, `/tips/${rows.length}`, { ...tip, name })],
    ["run", (run) => with_value(run, tip_at, name)],
  ]);
  announce(`${name} kept in ${state.beside.own_tips!.file}`);
}

function free_tip_name(wanted: string, rows: Document[]): string {
  for (let i = 1; ; ++i) {
    const name = i === 1 ? wanted : `${wanted} ${i}`;
    if (![...rows, ...shipped_tips()].some((one) => one.name === name)) return name;
  }
}

/** The one that was chosen, where it stands in her own file. */
function tip_of_file(): TemplateResult | typeof nothing {
  const name = text_at("run", tip_at);
  const file = tips_file();
  if (!name || !file || !tips_of(file).some((one) => one.name === name)) return nothing;
  const i = (list_at("own_tips", "/tips") as Document[]).findIndex((one) => one.name === name);
  if (i < 0) return html`<button type="button" @click=${() => void open_own_tips()}>Change this tip of my own</button>`;
  return own_tip({ of: "own_tips", at: `/tips/${i}` });
}

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

export function own_tip({ of, at }: TipPlace): TemplateResult {
  const keys = openings.map(([one]) => one);
  const chosen = keys.find((one) => value_at(of, `${at}/${one}`) !== undefined);
  const puts = (to: Opening) => ({ ...without(of, at, keys), [to]: blank_openings[to] });
  return html`<div class="part" id=${id_at(of, at, "own")} role="group" aria-label="My own tip">
    ${said_at(of, at)} ${tip_name({ of, at })}
    ${choice_field({ of, question: "Opening of the tip", at, is_told_elsewhere: true, chosen, answers: openings, puts })}
    ${chosen ? opening_fields({ of, at }, chosen) : nothing}
    ${folded({
      of,
      name: of === "run" ? "hand" : `hand ${at}`,
      pointers: [`${at}/hand`, `${at}/note`],
      summary: "Correction for your hand",
      body: () => hand({ of, at }),
    })}
    ${
      of === "run"
        ? html`<button type="button" @click=${() => void keep_tip()}>Keep this tip for all my runs</button>`
        : html`<p class="hint">It stands in ${state.beside.own_tips!.file}, for every run that names this file.</p>`
    }
  </div>`;
}

/** In a file its name is what runs know it by. */
const tip_name = ({ of, at }: TipPlace): TemplateResult =>
  of === "run"
    ? field({ label: "What you call the tip", at: `${at}/name` })
    : name_input({
        id: id_of(of, `${at}/name`),
        name: text_at(of, `${at}/name`),
        label: "What you call the tip",
        taken: (list_at("own_tips", "/tips") as Document[]).map(({ name }) => String(name)),
        take: (to) => rename_tip(at, to),
        hint: "The run that lies open and the studio follow; other runs that name it choose it anew.",
      });

/** Where it is named by the run that lies open, and by the studio for her hand. */
function rename_tip(at: string, to: string): void {
  const name = text_at("own_tips", `${at}/name`);
  const hands = "/hand";
  const is_theirs = beside_run(tips_file()) === state.beside.own_tips?.file;
  const is_of_run = is_theirs && value_at("run", tip_at) === name;
  const has_hand = is_theirs && value_at("studio", `${hands}/${escaped(name)}`) !== undefined;
  edit_several([
    ["own_tips", (file) => with_value(file, `${at}/name`, to)],
    ...(is_of_run ? [["run", (run: Document) => with_value(run, tip_at, to)] as Change] : []),
    ...(has_hand ? [["studio", (studio: Document) => with_key(studio, hands, name, to)] as Change] : []),
  ]);
}

type Change = [DocumentId, (document: Document) => Document];

function hand({ of, at }: TipPlace): TemplateResult {
  const hand_at = `${at}/hand`;
  const has = (pointer: string) => value_at(of, pointer) !== undefined;
  return html`<div class="row">
      ${field({
        of,
        label: "Correction for your hand",
        at: `${hand_at}/correction`,
        number: true,
        short: true,
        optional: true,
        takes_part: true,
        hint: "What your toppings weigh ÷ what the moves come to.",
      })}
      ${
        has(`${hand_at}/correction`)
          ? field({
              of,
              label: "From so many trials",
              at: `${hand_at}/trials`,
              count: true,
              optional: true,
              short: true,
            })
          : nothing
      }
    </div>
    ${
      has(hand_at)
        ? html`<button
            type="button"
            @click=${() => change(of, "correction removed", hand_at, undefined, to_first_in(id_at(of, at, "own")))}
          >
            Leave the correction out
          </button>`
        : nothing
    }
    ${field({ of, label: "Note on the tip", at: `${at}/note`, optional: true })}`;
}

function opening_fields(place: TipPlace, kind: Opening): TemplateResult {
  if (kind === "outline") return outline_fields(place);
  const { of, at } = place;
  const mm = (name: string, label: string) =>
    field({ of, label, at: `${at}/${kind}/${name}`, unit: "mm", short: true });
  return html`<div class="row">
    ${
      kind === "round"
        ? mm("radius", "Radius of the opening")
        : html`${field({ of, label: "Points", at: `${at}/star/points`, count: true, short: true })}
          ${mm("outer_radius", "Radius to the points")} ${mm("inner_radius", "Radius to the notches")}`
    }
  </div>`;
}

function outline_fields({ of, at }: TipPlace): TemplateResult {
  const corners = { of, at: `${at}/outline` };
  return html`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${rows_of(corners).map(
      (_, i) =>
        html`<div class="row" id=${item_id(corners, i)}>
          ${field({ of, label: `Corner ${i + 1}, x`, at: `${corners.at}/${i}/x`, unit: "mm", short: true })}
          ${field({ of, label: `Corner ${i + 1}, y`, at: `${corners.at}/${i}/y`, unit: "mm", short: true })}
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
  if (!rows_of(moves).length) want("run", moves.at, id, "What the tip does");
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
