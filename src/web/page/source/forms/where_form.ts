// Where a decoration goes: pressed into the top, or buried in the pour where the program or the maker finds places.
import { html, nothing, svg, type TemplateResult } from "lit";
import { value_at, without } from "../documents/editing";
import type { Document, Json } from "../program/json";
import { with_value } from "../program/pointer";
import { called, count_key, decorations, is_cut, way_of } from "./decoration";
import { field } from "./field";
import { type List, add_button, add_to, item_buttons, item_id, rows_of } from "./form_lists";
import { choice_field, folded, said_at } from "./form_parts";

type Where = "by number" | "on_top" | "buried";

const blank_where: Record<Where, Document> = {
  "by number": {},
  on_top: { on_top: { pressed_in: "" } },
  buried: { buried: { cover: "" } },
};

function where_of(here: string): Where {
  return (["on_top", "buried"] as const).find((key) => value_at("run", `${here}/${key}`) !== undefined) ?? "by number";
}

export function where_it_goes(here: string, i: number): TemplateResult {
  const where = where_of(here);
  const puts = (to: Where) => ({ ...without("run", here, ["on_top", "buried"]), ...blank_where[to] });
  if (way_of(here) === "drizzle") return html`<p class="aside">A drizzle lies on the surface it covers.</p>`;
  if (way_of(here) === "bought")
    return html`<p class="aside">What is bought is counted; where it sits is not checked.</p>`;
  return folded({
    name: `${here} where`,
    pointers: [`${here}/on_top`, `${here}/buried`],
    summary: "Where it goes",
    body: () =>
      html` ${choice_field({
        question: "Where does it go?",
        at: here,
        is_told_elsewhere: true,
        chosen: where,
        answers: [
          ["on_top", "On top, pressed in"],
          ["buried", "Buried in the pour"],
          ["by number", "Not placed, only counted"],
        ],
        puts,
      })}
      ${
        where === "on_top"
          ? on_top(`${here}/on_top`)
          : where === "buried"
            ? buried(here, i)
            : html`<p class="aside">It is counted and weighed; its position is not checked.</p>`
      }`,
  });
}

function on_top(here: string): TemplateResult {
  return html`<div class="row">
      ${field({ label: "Pressed into the top", at: `${here}/pressed_in`, unit: "mm" })}
      ${field({ label: "Flat of the peak, across", at: `${here}/peak_flat`, unit: "mm", optional: true })}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${turn(here, "It is turned")}`;
}

function turn(here: string, summary: string): TemplateResult {
  const about = (axis: string) =>
    field({ label: `About ${axis}`, at: `${here}/turn/${axis}`, unit: "deg", optional: true, short: true });
  return folded({
    name: `${here} turn`,
    pointers: [`${here}/turn`],
    summary,
    body: () =>
      html` <div class="row">${["x", "y", "z"].map(about)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`,
  });
}

type Find = "level" | "layered" | "free" | "said";
type Set = "before the pour" | "pressed in after";

const find_answers: [Find, string][] = [
  ["level", "Find places: upright, at one height"],
  ["layered", "Find places: upright, in several levels"],
  ["free", "Find places: turned any way"],
  ["said", "I say where"],
];

function buried(here: string, i: number): TemplateResult {
  const inside = `${here}/buried`;
  const is_first = i === (rows_of(decorations) as Document[]).findIndex((one) => one.buried !== undefined);
  const find =
    value_at("run", `${inside}/places`) !== undefined
      ? "said"
      : (value_at("run", `${inside}/arrange`) as Find | undefined);
  const set = value_at("run", `${inside}/placed`) as Set | undefined;
  return html`${said_at("run", inside)}
  ${field({
    label: "Cover wanted all round",
    at: `${inside}/cover`,
    unit: "mm",
    hint: "Batter between the embed and wall, floor, pour line and the next one.",
    term: is_first ? "embed" : undefined,
  })}
  ${choice_field({
    question: "When is it set in?",
    at: `${inside}/placed`,
    chosen: set,
    answers: [
      ["before the pour", "Before the pour"],
      ["pressed in after", "Pressed in after"],
    ],
    puts: (to) => to,
    hint: "Pressed in, it stays where it is once the batter is at a firm trace.",
    term: is_first ? "trace" : undefined,
  })}
  ${choice_field({
    question: "Where in the pour?",
    at: here,
    asked_at: `${inside}/arrange`,
    chosen: find,
    answers: find_answers,
    puts: (to) => with_find(here, to),
  })}
  ${find === "said" ? places(here, i) : nothing}`;
}

/** The cavity from above and from the side, with one that lies in it. */
const places_drawn = (): TemplateResult =>
  html`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${svg`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`;

const blank_place: Document = { x: "", y: "", height: "" };

/** Said by hand, there are as many blank places as were wanted so far, one at least. */
function with_find(here: string, find: Find): Json {
  const rest = without("run", `${here}/buried`, ["arrange", "places"]);
  if (find !== "said") return { ...(value_at("run", here) as Document), buried: { ...rest, arrange: find } };
  const wanted = Number(value_at("run", `${here}/${count_key(here)}`));
  const all = Array.from({ length: wanted >= 1 && wanted <= 50 ? wanted : 1 }, () => blank_place);
  return {
    ...without("run", here, ["per_piece", "per_cast"]),
    [key_of_places(here)]: all.length,
    buried: { ...rest, places: all },
  };
}

const key_of_places = (here: string): string => (is_cut() ? "per_cast" : (count_key(here) ?? "per_piece"));

/** The number follows the places, so that they never disagree. */
function places_of(here: string): List {
  const and = (run: Document, many: number) => {
    const bare = ["per_piece", "per_cast"].reduce((left, key) => with_value(left, `${here}/${key}`, undefined), run);
    return with_value(bare, `${here}/${key_of_places(here)}`, many);
  };
  return { at: `${here}/buried/places`, least: 1, and };
}

function places(here: string, i: number): TemplateResult {
  const list = places_of(here);
  const all = rows_of(list);
  return html`${places_drawn()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${all.map((_, j) => {
      const place = `${list.at}/${j}`;
      const part = (name: string) =>
        field({ label: `Place ${j + 1}: ${name}`, at: `${place}/${name}`, unit: "mm", short: true });
      return html`<div class="part" id=${item_id(list, j)} role="group" aria-label="Place ${j + 1} of ${called(i)}">
        ${said_at("run", place)}
        <div class="row">
          ${part("x")} ${part("y")} ${part("height")} ${item_buttons(list, j, `place ${j + 1} of ${called(i)}`)}
        </div>
        ${turn(place, `Place ${j + 1} is turned`)}
      </div>`;
    })}
    ${add_button(list, "Add a place", () => add_to(list, blank_place, "Place"))}
    <p class="aside">${all.length} in each.</p>`;
}
