// Things of a file that go by names of her own, such as sellers: one more, and away with one.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { value_at } from "../documents/editing";
import type { DocumentId } from "../documents/file_types";
import { announce, state, update } from "../documents/state";
import type { Document, Json } from "../program/json";
import { at, escaped, with_value } from "../program/pointer";
import { change, change_whole, go_on, reach, to_id, type Way } from "./form_parts";
import { id_of, said_beneath } from "./field";
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

interface Renamer {
  of: DocumentId;
  at: string;
  name: string;
  label: string;
  also?: (document: Document, to: string) => Document; // what names it elsewhere
  put?: (change: (document: Document) => Document, to: string) => void; // where other documents change with it
}

/** Called otherwise from now on, in its place among the others. */
export function name_field({
  of,
  at: place,
  name,
  label,
  also = (document) => document,
  put,
}: Renamer): TemplateResult {
  const id = `${id_of(of, place)}-${names_in(of, place).indexOf(name)}-called`;
  return name_input({
    id,
    name,
    label,
    taken: names_in(of, place),
    take: (to) => {
      const renamed = (document: Document) => also(with_key(document, place, name, to), to);
      if (put) put(renamed, to);
      else change_whole(of, `${name} is called ${to}`, renamed);
    },
  });
}

interface NameInput {
  id: string;
  name: string;
  label: string;
  taken: string[]; // the names that there are
  take: (to: string) => void;
  hint?: string;
}

let refused: { id: string; words: string } | undefined; // the name typed last, where another has it

/** A name that counts once it is whole. */
export function name_input({ id, name, label, taken, take, hint }: NameInput): TemplateResult {
  const typed = (event: Event) => {
    const to = (event.target as HTMLInputElement).value.trim();
    const is_taken = to !== name && taken.includes(to);
    refused = is_taken ? { id, words: `Another is called ${to} already` } : undefined;
    update({ typed: undefined });
    if (!to || is_taken || to === name) return;
    take(to);
    announce(`${name} is called ${to}`);
    go_on(to_id(id));
  };
  const said = refused?.id === id ? refused.words : undefined;
  return html`<div class="field ${said ? "wants" : ""}">
    <label for=${id}>${label}</label>
    <input
      id=${id}
      .value=${live(state.typed?.key === id ? state.typed.text : name)}
      @input=${(event: Event) => update({ typed: { key: id, text: (event.target as HTMLInputElement).value } })}
      @change=${typed}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${said ? "true" : "false"}
      aria-describedby=${said || hint ? `${id}-said` : nothing}
    />
    ${said_beneath(id, said, hint)}
  </div>`;
}

/** The same under another key, in its place among the others. */
export function with_key(document: Document, place: string, from: string, to: string): Document {
  const renamed = Object.entries((at(document, place) ?? {}) as Document).map(([key, value]) => [
    key === from ? to : key,
    value,
  ]);
  return with_value(document, place, Object.fromEntries(renamed) as Document);
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
