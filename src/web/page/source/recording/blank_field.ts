// A blank of the sheet as a field: one a line, what is planned beside it, what came of it beneath.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { redraw } from "../documents/drawing";
import { give_way, insist, note_at_once, type_note } from "../documents/record";
import { note_of } from "../documents/record_acts";
import type { NoteAct } from "../documents/record_types";
import { announce } from "../documents/state";
import { leave_field } from "../forms/field";
import type { Blank, RecordedBatch } from "../program/record";
import {
  as_noted,
  in_field,
  lacking,
  remember_degrees,
  units_for,
  usual_unit,
  type InField,
  type Side,
} from "./blank_text";

type Drawn = TemplateResult | typeof nothing;

/** The field that the hand is in, as typed. */
let at_hand: { batch: string; key: string; typed: InField } | undefined;

const id_of = (batch: string, key: string): string => `note-${batch}-${key.replaceAll(/[^\w]/g, "-")}`;

export function blank_field(batch: RecordedBatch, blank: Blank): TemplateResult {
  const act = note_of(batch.begun.id, blank.key);
  const id = id_of(batch.begun.id, blank.key);
  const is_refused = act?.refused !== undefined;
  return html`<div class="blank ${is_refused ? "wants" : ""}" data-key=${blank.key}>
    ${
      blank.kind === "choice"
        ? html`<p class="blank-words" id="${id}-label">${blank.words}</p>`
        : html`<label class="blank-words" for=${id}>${blank.words}</label>`
    }
    <div class="blank-value">${entry(batch, blank, id, act)}</div>
    <p class="blank-beside">
      ${blank.planned ? html`<span class="planned">planned <b>${blank.planned}</b></span>` : nothing}
      ${how_it_stands(batch, blank, act)}
    </p>
    ${beneath(batch, blank, id, act)}
  </div>`;
}

function entry(batch: RecordedBatch, blank: Blank, id: string, act: NoteAct | undefined): TemplateResult {
  if (blank.kind === "choice") return choices(batch, blank, id, act);
  const shown = typed_in(batch, blank, act);
  const is_number = units_for(blank).length > 0 || blank.kind === "count";
  const put = (event: Event) => take(batch, blank, { ...shown, number: (event.target as HTMLInputElement).value });
  const left = (event: Event) => {
    leave_field(event);
    leave(batch, blank);
  };
  return html`<input
      id=${id}
      type=${blank.kind === "date" ? "date" : "text"}
      inputmode=${blank.kind === "count" ? "numeric" : is_number ? "decimal" : nothing}
      class=${is_number ? "number" : ""}
      autocomplete="off"
      .value=${live(shown.number)}
      aria-invalid=${act?.refused ? "true" : "false"}
      aria-describedby=${act?.refused || lacking(blank, shown) ? `${id}-said` : nothing}
      @input=${put}
      @blur=${left}
      @keydown=${(event: KeyboardEvent) => event.key === "Enter" && next_field(event)}
    />
    ${units(batch, blank, shown)} ${sides(batch, blank, shown)}`;
}

/** As typed, as it waits, or as it is noted. */
function typed_in({ begun }: RecordedBatch, blank: Blank, act: NoteAct | undefined): InField {
  if (at_hand?.batch === begun.id && at_hand.key === blank.key) return at_hand.typed;
  if (act?.lacks) return { number: act.text, unit: blank.kind === "temperature" ? undefined : usual_unit(blank) };
  const kept = in_field(blank, act ? act.value : (blank.noted ?? ""));
  return { ...kept, unit: kept.unit ?? usual_unit(blank) };
}

function take(batch: RecordedBatch, blank: Blank, typed: InField, is_left = false): void {
  at_hand = { batch: batch.begun.id, key: blank.key, typed };
  note(batch, blank, typed, is_left);
  redraw();
}

function note(batch: RecordedBatch, blank: Blank, typed: InField, is_left: boolean): void {
  const lacks = lacking(blank, typed) !== undefined;
  type_note(batch, { key: blank.key, text: typed.number, value: as_noted(typed), is_left, lacks });
}

function leave(batch: RecordedBatch, blank: Blank): void {
  if (at_hand?.batch !== batch.begun.id || at_hand.key !== blank.key) return;
  const { typed } = at_hand;
  at_hand = undefined;
  note(batch, blank, typed, true);
  redraw();
}

/** From the keyboard on the screen, the hand goes on down the sheet. */
function next_field({ target }: KeyboardEvent): void {
  const all = [...document.querySelectorAll<HTMLElement>(".blank :is(input, button)")];
  all.find((one) => one.compareDocumentPosition(target as Node) & Node.DOCUMENT_POSITION_PRECEDING)?.focus();
}

function units(batch: RecordedBatch, blank: Blank, shown: InField): Drawn {
  const all = units_for(blank);
  if (blank.kind !== "temperature")
    return all.length ? html`<span class="unit">${shown.unit ?? all[0]}</span>` : nothing;
  const choose = (unit: string) => {
    remember_degrees(unit);
    take(batch, blank, { ...shown, unit }, true);
  };
  return pressed_one(`Degrees: ${blank.words}`, all, shown.unit, choose);
}

function sides(batch: RecordedBatch, blank: Blank, shown: InField): Drawn {
  if (blank.kind !== "length") return nothing;
  const choose = (side: Side) => take(batch, blank, { ...shown, side }, true);
  return pressed_one<Side>(`Side: ${blank.words}`, ["above", "below"], shown.side, choose);
}

const pressed_one = <T extends string>(
  label: string,
  all: T[],
  chosen: string | undefined,
  choose: (one: T) => void,
): TemplateResult =>
  html`<div class="choice" role="group" aria-label=${label}>
    ${all.map(
      (one) =>
        html`<button type="button" aria-pressed=${one === chosen ? "true" : "false"} @click=${() => choose(one)}>
          ${one}
        </button>`,
    )}
  </div>`;

function choices(batch: RecordedBatch, blank: Blank, id: string, act: NoteAct | undefined): TemplateResult {
  const chosen = act ? act.value : blank.noted;
  const choose = (one: string) => {
    note_at_once(batch, blank.key, one);
    announce(one ? `${blank.words}: ${one}` : `${blank.words}: taken back`);
  };
  return html`<div class="choice" role="group" id=${id} aria-labelledby="${id}-label">
    ${(blank.choices ?? []).map(
      (one) =>
        html`<button type="button" aria-pressed=${one === chosen ? "true" : "false"} @click=${() => choose(one)}>
          ${one}
        </button>`,
    )}
    ${chosen ? html`<button type="button" class="plain" @click=${() => choose("")}>Take back</button>` : nothing}
  </div>`;
}

function how_it_stands({ begun }: RecordedBatch, blank: Blank, act: NoteAct | undefined): Drawn {
  if (act?.refused ?? act?.lacks) return html`<span class="stands not">✗ not noted</span>`;
  if (act) return html`<span class="stands waiting">… not kept yet</span>`;
  const is_at_hand = at_hand?.batch === begun.id && at_hand.key === blank.key;
  return blank.noted !== undefined && !(is_at_hand && !at_hand!.typed.number.trim())
    ? html`<span class="stands kept">✓ noted ${time_of(blank.noted_at)}</span>`
    : nothing;
}

const timed = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit" });
const dated = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short" });

/** Of today the time, else the day. */
export function time_of(at: string | undefined): string {
  if (!at) return "";
  const then = new Date(at);
  return (then.toDateString() === new Date().toDateString() ? timed : dated).format(then);
}

function beneath(batch: RecordedBatch, blank: Blank, id: string, act: NoteAct | undefined): Drawn {
  if (act?.refused) return said(act, `${id}-said`);
  const question = lacking(blank, typed_in(batch, blank, act));
  return question ? html`<p class="complaint" id="${id}-said">${question}</p>` : nothing;
}

/** Why it was not taken, and what she may say to that. */
export function said(act: NoteAct, id: string): TemplateResult {
  const { words, is_asked, noted, is_lye } = act.refused!;
  const mine = act.value || "nothing";
  const is_taken = noted !== undefined;
  return html`<div class="blank-said" role="alert">
    <p class=${is_lye ? "alarm" : "complaint"} id=${id} data-lye=${is_lye ? "true" : nothing}>
      ${is_lye ? html`<strong aria-hidden="true">⚠</strong> ` : nothing}${/^(is|was|makes|has|cannot) /.test(words) ? `It ${words}` : words}.
    </p>
    ${
      is_asked || is_taken
        ? html`<div class="row">
            ${
              is_taken
                ? html`<button type="button" @click=${() => give_way(act)}>Keep ${noted || "it blank"}</button>`
                : nothing
            }
            <button type="button" @click=${() => insist(act)}>
              ${is_taken ? `Note ${mine} in its place` : `It is so: note ${mine}`}
            </button>
          </div>`
        : nothing
    }
  </div>`;
}
