// One part of the set-up: a drawing, a line of what comes of it, and its questions, folded until they are asked for.
import { html, nothing, type TemplateResult } from "lit";
import type { DocumentId } from "../documents/file_types";
import { open_up, state, toggle } from "../documents/state";
import { complaint_at } from "../forms/field";
import { is_gathering, wanted_now, within } from "../forms/wanted";

interface SetUpPart {
  name: string;
  title: string;
  drawing?: () => TemplateResult; // gives way to a larger one among the questions
  result: unknown;
  about: [DocumentId, string][]; // the places that are asked about in it
  form: () => unknown;
}

/** Kept from one visit to the next; see documents/state. */
const key_of = (name: string): string => `set-up ${name}`;

export function set_up_part({ name, title, drawing, result, about, form }: SetUpPart): TemplateResult {
  const key = key_of(name);
  const asked = () => within({ part: title, fold: key }, form);
  if (is_gathering()) return html`${asked()}`;
  if (about.some(([of, pointer]) => complaint_at(of, pointer))) open_up(key);
  const is_open = state.open.has(key);
  const lacks = wanted_now().filter(({ folds }) => folds.includes(key)).length;
  return html`<section class="lane ${name} ${is_open ? "is-open" : ""}" aria-labelledby="lane-${name}">
    <div class="part-line">
      ${is_open || !drawing ? nothing : drawing()}
      <div class="part-told">
        <h2 id="lane-${name}" tabindex="-1">${title}</h2>
        ${result} ${lacks ? html`<p class="lacks">${lacks} still needed</p>` : nothing}
      </div>
      <button
        type="button"
        aria-expanded=${is_open ? "true" : "false"}
        aria-label="${is_open ? "Close" : "Change"} ${title}"
        @click=${() => toggle("open", key)}
      >
        ${is_open ? "Close" : "Change"}
      </button>
    </div>
    ${is_open ? html`<div class="lane-body">${asked()}</div>` : nothing}
  </section>`;
}

/** What comes of it, struck through where it is not of what is typed now; before there are figures nothing is old. */
export const told = (words: unknown): TemplateResult =>
  html`<p class="order ${state.is_old && state.plan ? "old" : ""}">${words}</p>`;
