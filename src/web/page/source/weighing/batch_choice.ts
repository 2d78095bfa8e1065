// Which of the run's batches is weighed, and how far each has come.
import { html, nothing, type TemplateResult } from "lit";
import { choose_batch } from "../documents/bench";
import { announce } from "../documents/state";
import { choice } from "../forms/form_parts";
import { status_of, type AtHand } from "./at_bench";

const most_buttons = 6;

const signs = { "not begun": "○", "under way": "◐", done: "●" };

export function batch_choice({ number, of }: AtHand): TemplateResult | typeof nothing {
  if (of < 2) return nothing;
  const numbers = Array.from({ length: of }, (_, i) => i + 1);
  const called = (one: number) => `Batch ${one}, ${status_of(one)}`;
  if (of > most_buttons)
    return html`<select
      aria-label="Which batch is weighed"
      @change=${(event: Event) => choose(Number((event.target as HTMLSelectElement).value))}
    >
      ${numbers.map((one) => html`<option value=${one} ?selected=${one === number}>${called(one)}</option>`)}
    </select>`;
  return choice(
    "Which batch is weighed",
    String(number),
    numbers.map((one) => [
      String(one),
      html`<span class="status" aria-hidden="true">${signs[status_of(one)]}</span> ${one}<small>
          ${status_of(one)}</small
        >`,
    ]),
    (which) => choose(Number(which)),
  );
}

function choose(number: number): void {
  choose_batch(number);
  announce(`Batch ${number}, ${status_of(number)}`);
}
