// A field of what she is about to record, with the program's word about it beneath.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { type_in_form } from "../documents/stock";
import type { StockForm } from "../documents/stock_types";
import { wording } from "../program/api";

export interface Asked {
  name: string; // as the act calls it
  label: string;
  kind?: "date";
  number?: boolean;
  count?: boolean;
  hint?: string;
}

export const id_of = ({ kind, of }: StockForm, name: string): string =>
  `shelf-${`${kind}-${of}-${name}`.replaceAll(/[^\w]+/g, "-")}`;

/** What the program says of this field; a question stands beneath the whole form. */
export const said_of = ({ complaint }: StockForm, name: string): string | undefined =>
  complaint && complaint.field === name && !complaint.asks ? wording(complaint) : undefined;

export function field(form: StockForm, { name, label, kind, number, count, hint }: Asked): TemplateResult {
  const id = id_of(form, name);
  const said = said_of(form, name);
  const beneath = said ?? hint;
  return html`<div class="field ${said ? "wants" : ""}">
    <label for=${id}>${label}</label>
    <input
      id=${id}
      type=${kind ?? "text"}
      inputmode=${count ? "numeric" : number ? "decimal" : nothing}
      autocomplete="off"
      spellcheck="false"
      .value=${live(form.typed[name] ?? "")}
      aria-invalid=${said ? "true" : "false"}
      aria-describedby=${beneath ? `${id}-said` : nothing}
      @input=${(event: Event) => type_in_form(form, { typed: { [name]: (event.target as HTMLInputElement).value } })}
    />
    ${beneath ? html`<p id="${id}-said" class=${said ? "complaint" : "hint"}>${beneath}</p>` : nothing}
  </div>`;
}

/** What is typed; nothing where nothing is. */
export const typed_in = ({ typed }: StockForm, name: string): string | undefined => typed[name]?.trim() || undefined;

/** Names that may be meant, each a tap. */
export function offered(
  form: StockForm,
  name: string,
  label: string,
  names: string[],
): TemplateResult | typeof nothing {
  const typed = (form.typed[name] ?? "").trim().toLowerCase();
  const words = typed.split(/\s+/);
  const found = names.filter((one) => words.every((word) => one.toLowerCase().includes(word)));
  const is_chosen = names.some((one) => one.toLowerCase() === typed);
  if (is_chosen || !found.length) return nothing;
  return html`<div class="choice" role="group" aria-label=${label}>
      ${found
        .slice(0, most_offered)
        .map(
          (one) =>
            html`<button type="button" @click=${() => type_in_form(form, { typed: { [name]: one } })}>${one}</button>`,
        )}
    </div>
    ${
      found.length > most_offered
        ? html`<p class="hint">${found.length - most_offered} more: type a part of the name.</p>`
        : nothing
    }`;
}

const most_offered = 8;
