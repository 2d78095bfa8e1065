// A word of the trade, explained where it stands: by a button that opens a line or two beneath.
import { html, nothing, type TemplateResult } from "lit";
import { state, toggle } from "../documents/state";
import { terms, type Term, type TermName } from "./terms";

const key_of = (term: TermName): string => `term ${term}`;

/** Beside the word; what it opens, `term_words`, may stand apart from it. */
export function term_button(term: TermName): TemplateResult {
  return html`<button
    type="button"
    class="ask-term"
    aria-expanded=${state.open.has(key_of(term)) ? "true" : "false"}
    aria-label="What ${terms[term].name} means"
    @click=${() => toggle("open", key_of(term))}
  >
    <span aria-hidden="true">?</span>
  </button>`;
}

export function term_words(term: TermName): TemplateResult | typeof nothing {
  if (!state.open.has(key_of(term))) return nothing;
  const { name, words, drawing }: Term = terms[term];
  return html`<span class="term-words" role="note"
    >${drawing ? html`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${drawing}</svg>` : nothing}<span
      ><b>${name}</b>: ${words}</span
    ></span
  >`;
}

/** Once on a view. */
export const explained = (term: TermName): TemplateResult =>
  html`<span class="term">${term_button(term)}${term_words(term)}</span>`;
