// The days of what is made, to scale: a row for the hours of the making days, and one for each batch, from the pour to
// the end of its cure. Words stand above each row, so that they are as large on a phone as anywhere.
import { html, nothing, svg, type TemplateResult } from "lit";
import type { BatchOnDays, DayAct, Days } from "../program/answers";
import { day_of_month, weekday } from "../program/numbers";

const day_ms = 86_400_000;
const number_of = (iso: string): number => Math.round(Date.parse(`${iso}T00:00Z`) / day_ms);
const iso_of = (number: number): string => new Date(number * day_ms).toISOString().slice(0, 10);
const is_monday = (number: number): boolean => new Date(number * day_ms).getUTCDay() === 1;

const hours_high = 40;
const bar_high = 18;
const most_labels = 7;

/** Places on it, as shares of its width, so that it is as wide as there is room. */
class Scale {
  readonly #first: number;
  readonly #many: number;

  constructor({ calendar }: Days) {
    this.#first = number_of(calendar[0].day);
    this.#many = calendar.length;
  }

  at = (iso: string, more = 0): string => `${this.#share(number_of(iso) + more)}%`;
  wide = (days: number): string => `${((100 * days) / this.#many).toFixed(3)}%`;

  #share = (number: number): string => ((100 * (number - this.#first)) / this.#many).toFixed(3);

  /** Of the weeks, as close as their dates can be read. */
  mondays(): string[] {
    const all = Array.from({ length: this.#many }, (_, i) => this.#first + i).filter(is_monday);
    return all.filter((_, i) => i % Math.ceil(all.length / most_labels) === 0).map(iso_of);
  }
  is_at_end = (iso: string): boolean => number_of(iso) - this.#first > 0.88 * this.#many;
}

export function day_strip(days: Days): TemplateResult {
  const scale = new Scale(days);
  const { calendar } = days;
  return html`<figure class="day-strip">
    <p class="aside">${weekday(calendar[0].day)} to ${weekday(calendar.at(-1)!.day)}</p>
    ${row(days, scale, 20, dates(scale))}
    <p>Hours of your making days</p>
    ${row(days, scale, hours_high + 2, hours_of(days, scale))}
    ${days.batches.map(
      (one) =>
        html`<p>${batch_words(days, one)}</p>
          ${row(days, scale, bar_high + 6, bars(days, scale, one))}`,
    )}
    <figcaption>${legend(days)}</figcaption>
  </figure>`;
}

const row = (days: Days, scale: Scale, high: number, marks: unknown): TemplateResult =>
  html`<svg width="100%" height=${high} aria-hidden="true">
    ${svg`${patterns} ${days_off(days, scale)}
      ${scale.mondays().map((monday) => svg`<line class="week" x1=${scale.at(monday)} x2=${scale.at(monday)} y1="0" y2="100%" />`)}
      ${marks}
      ${due_days(days).map((due) => svg`<line class="due" x1=${scale.at(due)} x2=${scale.at(due)} y1="0" y2="100%" />`)}`}
  </svg>`;

/** In each drawing anew: a pattern is not found in one that is out of sight. */
const patterns = svg`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`;

const due_days = ({ days }: Days): string[] =>
  days.filter(({ acts }) => acts.some(({ act }) => act === "due")).map(({ day }) => day);

const days_off = ({ calendar }: Days, scale: Scale): unknown =>
  calendar
    .filter(({ off }) => off)
    .map(({ day }) => svg`<rect class="off" x=${scale.at(day)} width=${scale.wide(1)} height="100%" />`);

const dates = (scale: Scale): unknown =>
  scale
    .mondays()
    .filter((monday) => !scale.is_at_end(monday))
    .map(
      (monday, i) =>
        svg`<text class=${i % 2 ? "between" : ""} x=${scale.at(monday)} dx="3" y="14">${day_of_month(monday)}</text>`,
    );

/** Of each making day an open bar, filled as far as it is used. */
function hours_of({ calendar }: Days, scale: Scale): unknown {
  const longest = Math.max(...calendar.map(({ hours_min }) => hours_min));
  const bar = (look: string, day: string, min: number) => {
    const high = (hours_high * min) / longest;
    return svg`<rect class=${look} x=${scale.at(day, 0.1)} width=${scale.wide(0.8)} y=${1 + hours_high - high} height=${high} />`;
  };
  return calendar
    .filter(({ hours_min }) => hours_min > 0)
    .map(({ day, hours_min, used_min }) => svg`${bar("free", day, hours_min)} ${bar("used", day, used_min)}`);
}

function bars(days: Days, scale: Scale, one: BatchOnDays): unknown {
  const { poured, unmoulded, cured } = one;
  const bar = (look: string, from: string, to: string) => {
    const many = number_of(to) - number_of(from);
    return svg`<rect class=${look} x=${scale.at(from)} y="3" width=${scale.wide(many)} height=${bar_high} />`;
  };
  const is_same_day = poured === unmoulded;
  const mark = (act: DayAct["act"], r: number) =>
    days_with(days, act, one).map(
      (day) => svg`<circle class=${act} cx=${scale.at(day, 0.5)} cy=${3 + bar_high / 2} r=${r} />`,
    );
  return svg`${bar("mould", poured, is_same_day ? iso_of(number_of(poured) + 1) : unmoulded)}
    ${number_of(unmoulded) < number_of(cured) ? bar("cure", unmoulded, cured) : nothing}
    ${mark("chill", 7)} ${mark("cast", 3.5)}`;
}

const is_of = ({ of, runs, batches }: DayAct, one: BatchOnDays): boolean =>
  of === one.of && runs.join() === one.runs.join() && batches.includes(one.batch);

/** A lye that is shared tells its batches itself. */
const lyes_of = ({ lyes }: Days, one: BatchOnDays): string[] =>
  lyes
    .filter(({ batches }) =>
      batches.some(({ of, runs, batch }) => of === one.of && runs.join() === one.runs.join() && batch === one.batch),
    )
    .map(({ made }) => made);

function days_with(days: Days, act: DayAct["act"], one: BatchOnDays): string[] {
  const told = days.days.filter(({ acts }) => acts.some((each) => each.act === act && is_of(each, one)));
  return [...new Set([...told.map(({ day }) => day), ...(act === "chill" ? lyes_of(days, one) : [])])];
}

function batch_words({ asked, batches }: Days, one: BatchOnDays): string {
  const is_like = ({ of, runs }: BatchOnDays) => of === one.of && runs.join() === one.runs.join();
  const name = asked[one.of].lines.find(({ runs }) => runs.join() === one.runs.join())?.name ?? "";
  const many = batches.filter(is_like).length;
  return `${name}${many > 1 ? `, batch ${one.batch} of ${many}` : ""}: ${one.pieces} ${one.pieces === 1 ? "piece" : "pieces"}`;
}

const sign = (drawn: unknown, words: string): TemplateResult =>
  html`<span><svg width="26" height="20" aria-hidden="true">${drawn}</svg> ${words}</span>`;
const box = (look: string): unknown => svg`<rect class=${look} x="1" y="1" width="24" height="18" />`;

/** Of what there is on it. */
function legend({ calendar, days }: Days): unknown[] {
  const has = (wanted: DayAct["act"]) => days.some(({ acts }) => acts.some(({ act }) => act === wanted));
  const signs: [boolean, unknown, string][] = [
    [true, box("used"), "hours used"],
    [true, box("free"), "hours free"],
    [true, box("mould"), "in the mould"],
    [true, box("cure"), "curing"],
    [calendar.some(({ off }) => off), box("off"), "day off"],
    [has("cast"), svg`<circle class="cast" cx="13" cy="10" r="3.5" />`, "decorations cast"],
    [has("chill"), svg`<circle class="chill" cx="13" cy="10" r="7" />`, "weighed out the evening before"],
    [true, svg`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`, "ready to hand over"],
  ];
  return signs.filter(([is]) => is).map(([, drawn, words]) => sign(drawn, words));
}
