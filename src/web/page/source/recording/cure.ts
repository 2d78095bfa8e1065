// The cure: pieces put on the scale together, each time with its day.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { redraw } from "../documents/drawing";
import { note_at_once, weighing_words } from "../documents/record";
import { note_of } from "../documents/record_acts";
import { announce, state } from "../documents/state";
import { go_on, to_id } from "../forms/form_parts";
import { day, is_bare_number } from "../program/numbers";
import type { Blank, RecordedBatch, Weighing } from "../program/record";
import { said } from "./blank_field";

interface Typed {
  batch: string;
  day: string;
  pieces: string;
  weight: string;
}

let typed: Typed | undefined;

function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((one) => String(one).padStart(2, "0")).join("-");
}

const key_of = (on: string): string => `cured.${on}`;

export function cure(batch: RecordedBatch, blank: Blank): TemplateResult {
  const { id } = batch.begun;
  const now: Typed = typed?.batch === id ? typed : { batch: id, day: today(), pieces: "", weight: "" };
  const weighings = batch.cured ?? [];
  const there = weighings.find(({ on }) => on === now.day);
  const is_whole = now.day !== "" && now.pieces.trim() !== "" && now.weight.trim() !== "";
  return html`<div class="blank cure" data-key=${blank.key}>
    <p class="blank-words">
      Weighed while it cures ${blank.planned ? html`<small>planned, cured: ${blank.planned}</small>` : nothing}
    </p>
    ${waiting_of(id).map(waiting)}
    ${
      weighings.length
        ? html`<ul class="weighings">
            ${weighings.map((one) => weighed(batch, one))}
          </ul>`
        : html`<p class="aside">None noted yet.</p>`
    }
    <div class="row">
      ${asked("Day", "cure-day", "date", now.day, (value) => ({ ...now, day: value }))}
      ${asked("Pieces", "cure-pieces", "numeric", now.pieces, (value) => ({ ...now, pieces: value }))}
      ${asked(`Weight together, ${blank.unit ?? "g"}`, "cure-weight", "decimal", now.weight, (value) => ({ ...now, weight: value }))}
      <button type="button" ?disabled=${!is_whole} @click=${() => add(batch, blank, now)}>
        ${there ? "Put it in its place" : "Note this weighing"}
      </button>
    </div>
    ${there ? html`<p class="hint">Noted of ${day(there.on)} already: ${weighing_words(there)}.</p>` : nothing}
  </div>`;
}

const asked = (
  label: string,
  id: string,
  kind: "date" | "numeric" | "decimal",
  value: string,
  put: (value: string) => Typed,
): TemplateResult =>
  html`<div class="field short">
    <label for=${id}>${label}</label>
    <input
      id=${id}
      type=${kind === "date" ? "date" : "text"}
      inputmode=${kind === "date" ? nothing : kind}
      autocomplete="off"
      .value=${live(value)}
      @input=${(event: Event) => {
        typed = put((event.target as HTMLInputElement).value);
        redraw();
      }}
    />
  </div>`;

function add(batch: RecordedBatch, { unit = "g" }: Blank, now: Typed): void {
  const weight = is_bare_number(now.weight) ? `${now.weight.trim()} ${unit}` : now.weight.trim();
  const pieces = now.pieces.trim();
  const value = `${pieces} ${pieces === "1" ? "piece" : "pieces"}, ${weight}`;
  note_at_once(batch, key_of(now.day), value);
  announce(`Weighing of ${day(now.day)}: ${value}`);
  typed = undefined;
  redraw();
  go_on(to_id("cure-pieces"));
}

/** What is not kept yet, or was not taken. */
const waiting_of = (batch: string) =>
  state.record.acts.filter((one) => one.batch === batch && one.key.startsWith("cured."));

const waiting = (act: ReturnType<typeof waiting_of>[number]): TemplateResult => {
  const on = day(act.key.slice("cured.".length));
  return act.refused
    ? html`<p><b>${on}</b> <span class="stands not">✗ not noted</span></p>
        ${said(act, `said-${act.id}`)}
        <div class="row"><button type="button" @click=${() => correct(act)}>Correct it</button></div>`
    : html`<p><b>${on}</b>: ${act.value || "taken back"} <span class="stands waiting">… not kept yet</span></p>`;
};

/** Back into the fields. */
function correct({ batch, key, value }: { batch: string; key: string; value: string }): void {
  const [, pieces = "", weight = ""] = /^\s*(\S+) pieces?, (.*)$/.exec(value) ?? [];
  typed = { batch, day: key.slice("cured.".length), pieces, weight };
  redraw();
  go_on(to_id("cure-pieces"));
}

function weighed(batch: RecordedBatch, one: Weighing): TemplateResult {
  const act = note_of(batch.begun.id, key_of(one.on));
  return html`<li>
    <span><b>${day(one.on)}</b>: ${weighing_words(one)} <span class="stands kept">✓ noted</span></span>
    ${
      act
        ? nothing
        : html`<button
            type="button"
            aria-label="Take back the weighing of ${day(one.on)}"
            @click=${() => note_at_once(batch, key_of(one.on), "")}
          >
            Take back
          </button>`
    }
  </li>`;
}
