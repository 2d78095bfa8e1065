// A word of the trade, explained where it stands: by a button that opens a line or two beneath.
import { html, nothing, type TemplateResult } from "lit";
import { state, toggle } from "../documents/state";
import { terms, type Term, type TermName } from "./terms";

/** `place` tells two of the same word on one view apart. */
export function explained(term: TermName, place = ""): TemplateResult {
  const { name, words, drawing }: Term = terms[term];
  const key = `term ${term} ${place}`;
  const is_open = state.open.has(key);
  return html`<span class="term"
    ><button
      type="button"
      aria-expanded=${is_open ? "true" : "false"}
      aria-label="What ${name} means"
      @click=${() => toggle("open", key)}
    >
      <span aria-hidden="true">?</span></button
    >${
      is_open
        ? html`<span class="term-words" role="note"
            >${
              drawing ? html`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${drawing}</svg>` : nothing
            }<span><b>${name}</b>: ${words}</span></span
          >`
        : nothing
    }</span
  >`;
}
