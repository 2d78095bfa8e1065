// The views, always at hand: lists of what there is, the run that lies open, undo, and whether it is saved.
import { html, nothing, svg, type TemplateResult } from "lit";
import { refused_of } from "../documents/record";
import { state, update } from "../documents/state";
import { list_views, run_views, type ListView, type RailView, type View } from "../documents/views";
import type { Units } from "../program/numbers";
import { is_in_danger } from "./foremost";
import { saving } from "./saving_words";
import { steps } from "./steps";
import { show } from "./where";

const lists: Record<ListView, string> = {
  runs: "Runs",
  orders: "Orders",
  formulas: "Formulas",
  moulds: "Moulds",
  fats: "Fats",
  tips: "Tips",
  shelf: "Shelf",
};

/** Each with its sign, a line drawn on a square of 24. */
const views: Record<RailView, [words: string, sign: string]> = {
  weigh: ["Weigh", "M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],
  record: ["Record", "M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],
  "set-up": ["Set up", "M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],
  watch: ["Cautions", "M12 4l9 16H3zM12 10v5M12 17v1"],
  money: ["Piece", "M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],
  days: ["Days", "M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],
  mould: ["Mould", "M5 6h3l1 12h6l1-12h3M9.5 12h5"],
  print: ["Print", "M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"],
};

const back_sign = "M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2";
const on_sign = "M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2";

const drawn = (sign: string): TemplateResult =>
  html`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${svg`<path d=${sign} />`}</svg>`;

export function rail(): TemplateResult {
  const is_reading = state.view === "reading";
  return html`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${
        is_reading
          ? nothing
          : html`<nav class="rail-lists" aria-label="Lists">
                ${list_views.map((one) => to_view(one, lists[one], html`${lists[one]}`))}
              </nav>
              ${units()}`
      }
    </div>
    ${is_reading ? nothing : bar()}
  </header>`;
}

const units_words: Record<Units, TemplateResult> = {
  metric: html`g<span class="wide">, mm</span>`,
  both: html`both`,
  us: html`oz<span class="wide">, in</span>`,
};

const all_units = ["metric", "both", "us"] as const;
const units_short: Record<Units, string> = { metric: "g", both: "both", us: "oz" };

const take_units = (to: Units) => () => {
  update({ units: to });
  localStorage.setItem("units", to);
};

/** Side by side; where there is no room for that, one that leads on to the next. */
function units(): TemplateResult {
  const next = all_units[(all_units.indexOf(state.units) + 1) % all_units.length];
  return html`<div class="tools units" role="group" aria-label="Units">
      ${all_units.map(
        (one) =>
          html`<button type="button" aria-pressed=${state.units === one ? "true" : "false"} @click=${take_units(one)}>
            ${units_words[one]}
          </button>`,
      )}
    </div>
    <button type="button" class="next-units" @click=${take_units(next)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${units_short[state.units]}<span
        class="unseen"
        >. Change to ${units_short[next]}</span
      >
    </button>`;
}

/** At the side where there is room, else at the foot. */
function bar(): TemplateResult {
  const { undo, redo } = steps();
  return html`<div class="bar">
    ${state.run.file ? views_of_run() : nothing}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!undo} @click=${undo}>${drawn(back_sign)}<span>Undo</span></button>
      <button type="button" ?disabled=${!redo} @click=${redo}>${drawn(on_sign)}<span>Redo</span></button>
    </div>
    ${state.run.file || state.view === "order" ? saved() : nothing}
  </div>`;
}

function views_of_run(): TemplateResult {
  return html`<nav aria-label="Views of this run">
    <p class="rail-name">${String(state.run.now.name ?? state.run.file)}</p>
    <div class="rail-views">${run_views.map(view_button)}</div>
  </nav>`;
}

function view_button(one: RailView): TemplateResult {
  const [words, sign] = views[one];
  const mark = mark_of(one);
  return to_view(
    one,
    mark ? `${words}, ${mark.words}` : words,
    html`${drawn(sign)}<span>${words}</span>${
      mark
        ? html`<small class=${mark.is_danger ? "danger" : ""}
            ><span aria-hidden="true">${mark.sign}</span> ${mark.words}</small
          >`
        : nothing
    }`,
  );
}

interface Mark {
  sign: string;
  words: string;
  is_danger?: boolean;
}

/** What calls her there. */
function mark_of(view: RailView): Mark | undefined {
  if (view === "watch" && is_in_danger()) return { sign: "⚠", words: "Danger", is_danger: true };
  if (view === "record" && is_not_noted()) return { sign: "✗", words: "refused" };
  if (view === "set-up" && is_missing()) return { sign: "○", words: "missing" };
  return undefined;
}

const is_not_noted = (): boolean =>
  state.record.run === state.run.file && state.record.batches.some(({ begun }) => refused_of(begun.id) > 0);

const is_missing = (): boolean => state.complaint !== undefined && !state.complaint.is_fault;

function to_view(view: View, name: string, inside: TemplateResult): TemplateResult {
  const is_here =
    state.view === view ||
    (state.view === "order" && view === "orders") ||
    (state.view === "trail" && view === "shelf") ||
    (state.view === "learned" && view === "record");
  return html`<button
    type="button"
    aria-label=${name}
    aria-current=${is_here ? "page" : nothing}
    @click=${() => void show(view)}
  >
    ${inside}
  </button>`;
}

function saved(): TemplateResult {
  const { words, is_kept, is_failed } = saving();
  return html`<p class="saving ${is_failed ? "failed" : is_kept ? "kept" : ""}" role="status">${words}</p>`;
}
