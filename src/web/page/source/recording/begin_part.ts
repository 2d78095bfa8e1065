// At the weights: the lye is mixed, and the record of the batch begins.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { is_waiting } from "../documents/bench";
import { open_order } from "../documents/order_opening";
import { choose_record, newest_record } from "../documents/record";
import { answer_and_begin, ask_to_begin, begin_now, not_yet, type_code_to_begin } from "../documents/record_begin";
import type { BeginningRecord } from "../documents/record_types";
import { state } from "../documents/state";
import { go_on, to_id } from "../forms/form_parts";
import { wording, type Choice, type Complaint } from "../program/api";
import type { RecordedBatch } from "../program/record";
import { begun_large } from "../program/words";
import { code_part } from "./code_part";
import { how_it_is } from "./makings";

export interface ToBegin {
  number: number; // of the batch
  words: string; // which one it is
  seen?: string; // the mark of its weights; what lines of an order are poured from has none
  since?: string; // its first tick
  is_struck: boolean; // its weights are not those of what is typed
  is_due?: boolean; // its lye is ticked
  show: () => void; // its record
}

const title_id = "begin-title";

export function begin_part(to_begin: ToBegin): TemplateResult | typeof nothing {
  const { record } = state;
  if (record.run !== state.run.file || record.version === undefined) return nothing;
  const { number, since } = to_begin;
  const begun = since === undefined ? undefined : newest_record(number, since);
  if (begun) return is_begun(begun, to_begin);
  return asked_or_not(to_begin);
}

/** The button, or what it asks. */
export function asked_or_not(
  to_begin: ToBegin,
  words: string | TemplateResult = "Lye is mixed: begin the record",
): TemplateResult {
  const { number, is_due } = to_begin;
  const { beginning } = state.record;
  if (beginning?.batch === number) return asked(beginning, to_begin);
  const ask = () => {
    ask_to_begin(number);
    go_on(to_id(title_id));
    requestAnimationFrame(() => document.querySelector(".begin-record.asked")?.scrollIntoView({ block: "nearest" }));
  };
  return html`<div class="begin-record">
    <button type="button" class=${is_due ? "strong" : ""} @click=${ask}>${words}</button>
  </div>`;
}

function is_begun(begun: RecordedBatch, { show }: ToBegin): TemplateResult {
  const look = () => {
    choose_record(begun.begun.id);
    show();
  };
  return html`<div class="begin-record is-begun">
    ${code_part(begun)}
    <button type="button" class="strong" @click=${look}>Note what happens</button>
    ${came_up(begun)}
  </div>`;
}

/** When its record began. */
export function came_up({ begun }: RecordedBatch): TemplateResult | typeof nothing {
  const { told } = state.record;
  return told?.batch === begun.id && told.remarks.length
    ? html`<ul class="begin-remarks" role="status">
        ${told.remarks.map((text) => html`<li>${text}</li>`)}
      </ul>`
    : nothing;
}

function asked(beginning: BeginningRecord, to_begin: ToBegin): TemplateResult {
  const { number, words, seen, is_struck } = to_begin;
  const before = newest_record(number);
  const { complaint, is_asking } = beginning;
  const is_base = seen === undefined;
  const may_begin = !is_struck && !is_asking && (is_base || !is_waiting(number));
  return html`<div class="begin-record asked" role="group" aria-labelledby=${title_id}>
    <p id=${title_id} tabindex="-1"><b>Begin the record of ${words}?</b> Its plan is kept with it as it is weighed.</p>
    ${before ? made_before(before, to_begin) : nothing}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">${is_base ? "Code on the pot" : "Code on the mould"}</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${live(beginning.code)}
          aria-describedby="code-to-begin-said"
          @input=${(event: Event) => type_code_to_begin((event.target as HTMLInputElement).value)}
        />
        <p class="hint" id="code-to-begin-said">
          Left blank: the day and the next letter.${is_base ? " Each line gets the same with a number behind." : ""}
        </p>
      </div>
      <button type="button" class="strong" ?disabled=${!may_begin} @click=${() => void begin_now(seen)}>
        ${is_asking ? "Beginning ..." : before ? "Begin another making" : "Begin the record"}
      </button>
      <button type="button" @click=${not_yet}>Not yet</button>
    </div>
    ${is_struck ? html`<p class="complaint">The weights are not those of what is typed.</p>` : nothing}
    ${complaint ? refused(complaint, seen) : nothing}
  </div>`;
}

const made_before = (before: RecordedBatch, { show }: ToBegin): TemplateResult =>
  html`<p>
      There is a record of it already, <b>${before.begun.code}</b>: ${how_it_is(before)}. If this is the same soap, go
      on in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${() => {
          not_yet();
          choose_record(before.begun.id);
          show();
        }}
      >
        Go on in ${before.begun.code}
      </button>
    </p>`;

/** Why it cannot begin, or what she is asked first; an order that it is asked about is a tap away. */
function refused(complaint: Complaint, seen?: string): TemplateResult {
  const choices = complaint.choices ?? [];
  const order = state.files?.orders.find(({ file }) => is_file(complaint.file, file))?.file;
  return html`<div role="alert">
    <p class="alarm">
      ${choices.length || complaint.field === "begin" ? `${begun_large(complaint.problem)}.` : `${wording(complaint)}.`}
    </p>
    ${
      order !== undefined && choices.length
        ? html`<button type="button" class="answer" @click=${() => void open_order(order)}>To the order</button>`
        : nothing
    }
    ${choices.map(
      (one) =>
        html`<button type="button" class="answer" @click=${() => void answer_and_begin(one, seen)}>
          ${words_of(one, complaint)}
        </button>`,
    )}
  </div>`;
}

const is_file = (path: string, file: string): boolean => path === file || path.endsWith(`/${file}`);

function words_of(choice: Choice, { field }: Complaint): string {
  const { confirmed, lot } = choice;
  if (confirmed === "by-itself") return "This batch is mixed by itself";
  if (confirmed && field === "begin") return `It is made once more, besides ${confirmed}`;
  if (choice["beyond-stock"]) return `There is more than the records say: take it of lot ${choice["beyond-stock"]}`;
  return lot ? `Take ${lot}` : `It is so: ${confirmed ?? ""}`;
}
