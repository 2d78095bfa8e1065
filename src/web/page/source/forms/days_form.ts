// When she works and what limits the work of a day: in the studio.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { days_now } from "../documents/days_asking";
import { edit, list_at, text_at, value_at } from "../documents/editing";
import { state } from "../documents/state";
import type { Document } from "../program/json";
import { day } from "../program/numbers";
import { at, with_value } from "../program/pointer";
import { complaint_at, complaint_on, field, id_of, leave_field, said_beneath, type FieldOptions } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of, type List } from "./form_lists";
import { change_whole, folded, part, said_at } from "./form_parts";
import { has_prices } from "./money_said";
import { without_empty } from "./shared";
import { is_gathering } from "./wanted";
import { work_times } from "./work_times";

const weekdays = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"] as const;
const called = (name: string): string => name[0].toUpperCase() + name.slice(1);

const studio_field = (options: Omit<FieldOptions, "of">): TemplateResult => field({ ...options, of: "studio" });

export function days_form(): TemplateResult {
  // What is wrong in it, only when it is made tells.
  if (!is_gathering() && state.run.file && state.open.has("folded studio days")) days_now("run");
  return html`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${folded({
      of: "studio",
      name: "days",
      pointers: ["/days", ...(has_prices() ? [] : ["/work"])],
      summary: html`<span>When you work${html`<small>${told()}</small>`}</span>`,
      body: questions,
    })}
  </section>`;
}

function told(): string {
  const making = (value_at("studio", "/days/making") ?? {}) as Document;
  return weekdays
    .filter((name) => making[name])
    .map((name) => `${called(name)} ${String(making[name])}`)
    .join(", ");
}

const questions = (): TemplateResult =>
  html`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${weekdays.map((name) =>
        studio_field({
          label: called(name),
          at: `/days/making/${name}`,
          unit: "h",
          optional: true,
          takes_part: true,
          short: true,
        }),
      )}
    </div>
    ${said_at("studio", "/days")} ${said_at("studio", "/days/making")} ${small_jobs()} ${days_off()} ${limits()}
    ${
      has_prices()
        ? html`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`
        : html`<p class="question">How long the work takes you</p>
            <div class="row">${work_times(value_at("studio", "/days") !== undefined)}</div>
            ${said_at("studio", "/work")}`
    }`;

/** Beside the making days. */
function small_jobs(): TemplateResult {
  const place = "/days/small_jobs";
  const id = id_of("studio", place);
  const now = list_at("studio", place);
  const turn = (name: string) => {
    const names = weekdays.filter((one) => (one === name) !== now.includes(one));
    const put = (studio: Document) =>
      without_empty(with_value(studio, place, names.length ? [...names] : undefined), "/days");
    change_whole("studio", `${called(name)}: ${now.includes(name) ? "no" : "yes"}`, put);
  };
  const complaint = complaint_at("studio", place);
  const others = weekdays.filter((name) => now.includes(name) || !text_at("studio", `/days/making/${name}`));
  return html`<div class="field asked ${complaint ? "wants" : ""}">
    <p class="question" id="${id}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${id} tabindex="-1" aria-labelledby="${id}-label">
      ${others.map(
        (name) =>
          html`<button type="button" aria-pressed=${now.includes(name) ? "true" : "false"} @click=${() => turn(name)}>
            ${called(name)}
          </button>`,
      )}
    </div>
    ${said_beneath(id, complaint, "Without any, these wait for a making day.")}
  </div>`;
}

const off: List = { of: "studio", at: "/days/off", and: (document) => without_empty(document, "/days") };

function days_off(): TemplateResult {
  return html`<p class="question">Days off and holidays</p>
    ${rows_of(off).map((one, i) => day_off(String(one), i))}
    ${add_button(off, "Add a day off", () => add_to(off, "", "A day off"))}`;
}

/** One day, or from a first to a last: "2026-12-24/2027-01-02" as the file has it. */
function day_off(text: string, i: number): TemplateResult {
  const place = `/days/off/${i}`;
  const [first, last = ""] = text.split("/");
  const id = id_of("studio", place);
  const complaint = complaint_on("studio", place);
  const put = (from: string, to: string) => edit("studio", place, to && to !== from ? `${from}/${to}` : from);
  const date = (id_here: string, label: string, value: string, take: (to: string) => void) =>
    html`<div class="field short ${complaint ? "wants" : ""}">
      <label for=${id_here}>${label}</label>
      <input
        id=${id_here}
        type="date"
        .value=${live(value)}
        @input=${(event: Event) => take((event.target as HTMLInputElement).value)}
        @blur=${leave_field}
        aria-invalid=${complaint ? "true" : "false"}
        aria-describedby=${complaint ? `${id}-said` : nothing}
      />
      ${id_here === id ? said_beneath(id, complaint) : nothing}
    </div>`;
  const name = first ? `off on ${day(first)}` : `day off ${i + 1}`;
  return html`<div class="row" id=${item_id(off, i)} role="group" aria-label=${name}>
    ${date(id, "First day off", first, (to) => put(to, last))}
    ${date(`${id}-last`, "Last, if there are several", last, (to) => put(first, to))} ${item_buttons(off, i, name)}
  </div>`;
}

function limits(): TemplateResult {
  const count = (key: string, label: string, hint?: string) =>
    studio_field({ label, at: `/days/${key}`, count: true, optional: true, short: true, hint });
  return html`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${count("pots_owned", "Pots for the base")} ${count("bowls_owned", "Bowls for the topping")}
      ${count("used_a_day", "Uses of each on a day", "Once, if blank; washed up in between.")}
      ${count("rack_places", "Pieces that can cure at once")}
      ${studio_field({
        label: "Decorations cast beforehand by at most",
        at: "/days/cast_beforehand",
        unit: "days",
        optional: true,
        short: true,
      })}
    </div>
    ${one_lye()}
    ${
      at(value_at("studio", "/days"), "/making") === undefined && value_at("studio", "/days") !== undefined
        ? html`<p class="hint">Without the hours of a making day these are of no use.</p>`
        : nothing
    }`;
}

/** Several batches of a day out of one pot. */
const one_lye = (): TemplateResult =>
  part({
    of: "studio",
    at: "/days/one_lye_a_day",
    name: "the shared lye",
    title: "One pot of lye solution for several batches of a day",
    add: "Make one pot of lye solution for a day's batches",
    blank: { holds: "", saves: "" },
    body: () => {
      const one = (key: string, label: string, unit: string, more: object = {}) =>
        studio_field({ label, at: `/days/one_lye_a_day/${key}`, unit, short: true, ...more });
      return html`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${one("holds", "Pot holds", "l", { hint: "To the brim; filled to half." })}
          ${one("saves", "Each further batch takes less by", "min")}
          ${one("pot_tare", "Empty pot", "g", { optional: true, hint: "Where the full one is weighed with it." })}
        </div>`;
    },
  });
