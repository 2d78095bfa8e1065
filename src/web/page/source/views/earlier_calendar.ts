// The calendar that was exported before: what it has and the days have no more is written as cancelled.
import { html, nothing, type TemplateResult } from "lit";
import { redraw } from "../documents/drawing";
import { announce } from "../documents/state";
import type { DaysQuestion } from "../program/api";

/** Of the run or order in that file. */
interface Earlier {
  of: string;
  name: string;
  text: string;
}

let earlier: Earlier | undefined;
let complaint = "";

const most_bytes = 2 ** 20; // some thousand entries

/** The same question, with the calendar that was chosen for it. */
export const since_earlier = (days: DaysQuestion): object =>
  earlier?.of === days.file ? { ...days, since: { name: earlier.name, text: earlier.text } } : days;

export function earlier_calendar(of: string): TemplateResult {
  const chosen = async (event: Event) => {
    const input = event.target as HTMLInputElement;
    await take(of, input.files?.[0]);
    input.value = ""; // so that the same file may be chosen again
  };
  return html`<div class="earlier-calendar">
    <div class="field">
      <label for="earlier-calendar">The calendar that you exported before (.ics)</label>
      <input
        id="earlier-calendar"
        type="file"
        accept=".ics,text/calendar"
        aria-describedby="earlier-calendar-said"
        @change=${(event: Event) => void chosen(event)}
      />
      <p id="earlier-calendar-said" class=${complaint ? "complaint" : "hint"}>
        ${complaint || "Choose it, if there is one: what it has and the days have no more then goes from your calendar too."}
      </p>
    </div>
    ${earlier?.of === of ? told(earlier) : nothing}
  </div>`;
}

const told = ({ name }: Earlier): TemplateResult =>
  html`<p role="status">
    The calendar file will cancel what only <b>${name}</b> has.
    <button type="button" @click=${() => leave_out(name)}>Leave ${name} out</button>
  </p>`;

async function take(of: string, file: File | undefined): Promise<void> {
  if (!file) return;
  complaint = file.size > most_bytes ? `${file.name} is too large for a calendar of this program.` : "";
  earlier = complaint ? undefined : { of, name: file.name, text: await file.text() };
  announce(complaint || `${file.name} is taken into account.`);
}

function leave_out(name: string): void {
  earlier = undefined;
  announce(`${name} is left out.`);
  redraw();
}
