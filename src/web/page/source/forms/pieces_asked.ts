// How many pieces a new run is to sell, asked before there is a run.
import { html, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";

/** What is typed, as long as it is a whole number above 0. */
export const pieces_in = (text: string): number | undefined =>
  /^\s*0*[1-9]\d{0,8}\s*$/.test(text) ? Number(text) : undefined;

export function pieces_asked(id: string, text: string, put: (text: string) => void): TemplateResult {
  return html`<div class="field short">
    <label for=${id} data-said="required">Pieces to sell</label>
    <input
      id=${id}
      aria-required="true"
      .value=${live(text)}
      @input=${(event: Event) => put((event.target as HTMLInputElement).value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`;
}
