// The code of a batch, as it is written on its mould.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { give_code, leave_code, type_code } from "../documents/record_begin";
import { state } from "../documents/state";
import { go_on, to_id } from "../forms/form_parts";
import type { RecordedBatch } from "../program/record";

const field_id = "batch-code";

export function code_part({ begun, lines }: RecordedBatch): TemplateResult {
  const { code } = state.record;
  const is_typed = code?.batch === begun.id;
  const ask = () => {
    type_code(begun.id, begun.code);
    go_on(to_id(field_id));
  };
  return html`<div class="batch-code">
    <p>
      <span class="aside">${lines.length ? "On the pot:" : "On the mould:"}</span> <b class="code">${begun.code}</b>
    </p>
    ${
      is_typed
        ? html`<div class="row">
            <div class="field ${code.complaint ? "wants" : ""}">
              <label for=${field_id}>Another code</label>
              <input
                id=${field_id}
                autocomplete="off"
                .value=${live(code.text)}
                aria-describedby=${code.complaint ? `${field_id}-said` : nothing}
                @input=${(event: Event) => type_code(begun.id, (event.target as HTMLInputElement).value)}
              />
            </div>
            <button type="button" class="strong" @click=${() => void give_code()}>Use this code</button>
            <button type="button" @click=${leave_code}>Leave it</button>
            ${code.complaint ? html`<p class="complaint" id="${field_id}-said">${code.complaint}</p>` : nothing}
          </div>`
        : html`<button type="button" @click=${ask}>Change the code</button>`
    }
  </div>`;
}
