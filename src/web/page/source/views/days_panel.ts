// When it is made: what can be promised, the strip of days, what is done on each of them, and what limits it.
import { html, nothing, type TemplateResult } from "lit";
import { days_again, days_now, days_question } from "../documents/days_asking";
import { state } from "../documents/state";
import { day_strip } from "../drawings/day_strip";
import { counted } from "../figures/batches";
import { danger_sign } from "../figures/dangers";
import { id_of } from "../forms/field";
import { reach } from "../forms/form_parts";
import { has_studio } from "../forms/shared";
import { of_work } from "../forms/work_times";
import type { AskedFor, DayAct, Days, DayOfWork, WiderLimit } from "../program/answers";
import { wording, type Complaint } from "../program/api";
import { days_in_words, hours, weekday } from "../program/numbers";
import { place_words } from "./complaint";
import { dangers_in, day_lyes } from "./day_lyes";
import { earlier_calendar, since_earlier } from "./earlier_calendar";
import { keep, paper_button, paper_buttons, stem_of, told_of_papers } from "./papers";
import { lead_to, to_making_days } from "./to_days_field";

type Of = "run" | "order";

export function days_panel(of: Of): TemplateResult {
  const { days, complaint, is_old } = days_now(of);
  return html`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${complaint ? said(of, complaint) : nothing}
    ${
      days
        ? html`<div class=${is_old ? "old" : ""}>${told(of, days)}</div>
            ${papers(of, is_old)}`
        : complaint
          ? nothing
          : html`<p class="hint" role="status">Asking when it is made ...</p>`
    }
  </section>`;
}

/** As long as nobody knows when she works, nor how long it takes her, that is all that is said, and no fault. */
function said(of: Of, complaint: Complaint): TemplateResult {
  const { field, is_fault } = complaint;
  if (is_fault)
    return html`<p class="alarm" role="status">${wording(complaint)}</p>
      <button type="button" @click=${() => days_again(of)}>Ask again</button>`;
  if (["/days", "/days/making"].includes(field) || (of === "run" && !has_studio()))
    return html`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${() => void to_making_days(of)}>To my making days</button>`;
  if (["/work", of_work("each_batch")].includes(field))
    return html`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${() => void lead_to(of, { ...complaint, field: of_work("each_batch") })}
      >
        To the time of a batch
      </button>`;
  return html`<p class="alarm" role="status">${place_words(field)}${days_in_words(wording(complaint))}</p>
    ${
      field ? html`<button type="button" @click=${() => void lead_to(of, complaint)}>Go to the field</button>` : nothing
    }`;
}

const told = (of: Of, days: Days): TemplateResult =>
  html`${dangers(days)} ${answer(of, days)} ${made_already(days)} ${day_strip(days)} ${by_day(of, days)}
  ${day_lyes(days)} ${limits(days)} ${extras(days)} ${notes(of, days)}`;

/** Of an order: what is packed without being made. */
const made_already = ({ asked }: Days): TemplateResult[] =>
  asked.flatMap(({ ready }) =>
    (ready?.lines ?? []).filter(({ text }) => text).map(({ text }) => html`<p><b>${text}</b></p>`),
  );

const proved = (is: boolean, words: string, else_words: string): TemplateResult =>
  html`<small>${is ? words : else_words}</small>`;

function answer(of: Of, days: Days): TemplateResult {
  const { kept, promise, promise_proved, from } = days;
  if (kept === null)
    return html`<p class="when">
        Begun today, ${weekday(from)}, promise it for <b>${weekday(promise)}</b>.
        ${proved(promise_proved, "No earlier day can be kept.", "The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${() => reach(document.getElementById(id_of(of, "/due")))}>
        Give it a due day
      </button>`;
  return kept ? in_time(days) : late(days);
}

function in_time({ asked, latest_start, latest_start_proved, promise, promise_proved }: Days): TemplateResult {
  const [{ due, pieces, last_making_day }] = asked;
  return html`<p class="when">
      Begin on <b>${weekday(latest_start!)}</b> at the latest to have ${counted(pieces, "piece")} by
      <b>${weekday(due!)}</b>.
      ${proved(latest_start_proved, "A later start does not keep it.", "The search ended here: a later start may be possible.")}
    </p>
    ${last_making_day ? html`<p>The last day to pour any of it is ${weekday(last_making_day)}.</p>` : nothing}
    <p>
      Begun today, all of it can be ready by ${weekday(promise)}.
      ${promise_proved ? nothing : html`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`;
}

function late({ asked, in_time_proved }: Days): TemplateResult {
  const words = ({ pieces, in_time, due, rest_on }: AskedFor) =>
    in_time
      ? html`${in_time} of ${counted(pieces, "piece")} by ${weekday(due!)}, the rest on <b>${weekday(rest_on!)}</b>.`
      : html`none of the ${counted(pieces, "piece")} by ${weekday(due!)}, all of them on <b>${weekday(rest_on!)}</b>.`;
  return html`${asked
      .filter(({ kept }) => kept === false)
      .map(
        (one) =>
          html`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${words(one)}
          </p>`,
      )}
    <p>
      ${proved(in_time_proved, "No more can be in time, and the rest is ready no earlier.", "The search ended here: more may be possible.")}
    </p>`;
}

/** Of an order there is more to come beneath. */
const by_day = (of: Of, { days }: Days): TemplateResult =>
  html`<details ?open=${of === "run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${days.map(
        (one) =>
          html`<li>
            <h3>${weekday(one.day)} <small>${time_of(one)}</small></h3>
            <ul>
              ${one.acts.map(act_told)}
            </ul>
          </li>`,
      )}
    </ol>
  </details>`;

const time_of = ({ hours_min, used_min, off }: DayOfWork): string => {
  if (off) return "day off";
  return hours_min && used_min ? `${hours(used_min)} of ${hours(hours_min)}` : "";
};

const act_told = ({ text, min, caution }: DayAct): TemplateResult =>
  html`<li>
    ${days_in_words(text)}${min ? html` <small>${hours(min)}</small>` : nothing}
    ${caution ? html`<p class="minded"><strong>Caution</strong> ${caution}</p>` : nothing}
  </li>`;

function limits({ what_if, kept }: Days): TemplateResult {
  if (!what_if.length)
    return html`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;
  const then = ({ keeps_due, latest_start, promise, proved: is_proved }: WiderLimit) =>
    [
      keeps_due && !kept ? "keeps the due day, " : "",
      keeps_due ? `begin on ${weekday(latest_start!)} at the latest` : `ready by ${weekday(promise!)}`,
      is_proved ? "" : " (the search ended there)",
    ].join("");
  return html`<h3>${kept === false ? "What would help" : "What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${what_if.map((one) => html`<li>${one.text}: <b>${then(one)}</b></li>`)}
    </ul>`;
}

function extras({ extras: all }: Days): TemplateResult | typeof nothing {
  if (!all.length) return nothing;
  return html`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${all.map(
        ({ run, batch, mould, cavities }) =>
          html`<li>Batch ${batch} of ${run} fills ${counted(cavities, "cavity", "cavities")} of ${mould}</li>`,
      )}
    </ul>`;
}

/** Before all else. */
function dangers(days: Days): TemplateResult | typeof nothing {
  const all = dangers_in(days);
  if (!all.length) return nothing;
  return html`<div class="dangers">
    ${all.map((text) => html`<p class="danger"><strong>${danger_sign}</strong> ${days_in_words(text)}</p>`)}
  </div>`;
}

type Note = Days["notes"][number];

/** With the way to the field where the studio says it. */
function notes(of: Of, { notes, studio }: Days): TemplateResult | typeof nothing {
  const all = notes.filter(({ severity }) => severity !== "danger");
  const told = ({ severity, text }: Note) =>
    severity === "note"
      ? html`<p>${days_in_words(text)}</p>`
      : html`<p class="minded"><strong>Caution</strong> ${days_in_words(text)}</p>`;
  const way = ({ field }: Note) =>
    field
      ? html`<button type="button" @click=${() => void lead_to(of, { file: studio, field })}>Say it</button>`
      : nothing;
  return all.length
    ? html`<h3>To mind</h3>
        ${all.map((note) => html`<div class="day-note">${told(note)} ${way(note)}</div>`)}`
    : nothing;
}

function papers(of: Of, is_old: boolean): TemplateResult {
  const days = days_question(of);
  const stem = stem_of(days.file);
  const sheet = { plan: days, paper: state.printing.paper, "with-days": true };
  return html`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${paper_button("Calendar file (.ics)", keep(`${stem} days.ics`, { kind: "calendar", days: since_earlier(days) }), "", is_old)}
      ${paper_buttons({
        words: "Days and bench sheet",
        kind: "sheet",
        file: `${stem} days and sheet`,
        of: sheet,
        is_asleep: is_old,
      })}
      ${paper_button("Table of the days (.csv)", keep(`${stem} days.csv`, { kind: "days-csv", days }), "", is_old)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    ${earlier_calendar(days.file)}
    <p role="status">${told_of_papers()}</p>
  </section>`;
}
