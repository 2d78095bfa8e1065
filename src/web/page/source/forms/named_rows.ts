// Things of a file that go by names of her own, such as sellers: one more, and away with one.
import { html, type TemplateResult } from "lit";
import { value_at } from "../documents/editing";
import type { DocumentId } from "../documents/file_types";
import type { Document, Json } from "../program/json";
import { escaped, with_value } from "../program/pointer";
import { change, change_whole, reach, to_id, type Way } from "./form_parts";
import { id_of } from "./field";
import { without_empty } from "./shared";

export const names_in = (of: DocumentId, at: string): string[] => Object.keys((value_at(of, at) ?? {}) as Document);

interface Adder {
  of: DocumentId;
  at: string;
  label: string; // "Another seller, its name"
  add: string; // "Add the seller"
  blank: Json;
  then: (name: string) => Way; // where to go on
}

const adder_id = (of: DocumentId, at: string): string => `${id_of(of, at)}-name`;

/** A name that is there already leads to what has it. */
export function name_adder({ of, at, label, add, blank, then }: Adder): TemplateResult {
  const id = adder_id(of, at);
  const take = () => {
    const input = document.getElementById(id) as HTMLInputElement;
    const name = input.value.trim();
    if (!name) return input.focus();
    input.value = "";
    if (names_in(of, at).includes(name)) return reach(then(name)());
    change(of, `${name} added`, `${at}/${escaped(name)}`, blank, then(name));
  };
  return html`<div class="row">
    <div class="field">
      <label for=${id}>${label}</label>
      <input
        id=${id}
        autocomplete="off"
        spellcheck="false"
        @keydown=${(event: KeyboardEvent) => {
          if (event.key === "Enter") take();
        }}
      />
    </div>
    <button type="button" @click=${take}>${add}</button>
  </div>`;
}

/** With the last of them their place goes too. */
export function remove_named(of: DocumentId, at: string, name: string, words = name): TemplateResult {
  const out = (document: Document) => without_empty(with_value(document, `${at}/${escaped(name)}`, undefined), at);
  return html`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${words}"
      @click=${() => change_whole(of, `${words} removed`, out, to_id(adder_id(of, at)))}
    >
      ×
    </button>
  </div>`;
}
