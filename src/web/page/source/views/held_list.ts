// Files of fats or tips as cards, and the way to a new one of what stands in them.
import { html, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { Kind } from "../documents/file_types";
import { redraw } from "../documents/drawing";
import { state } from "../documents/state";
import { listed } from "../figures/batches";
import type { Listed } from "../program/api";
import { day } from "../program/numbers";
import { file_card, file_cards } from "./file_card";

export function held_list(kind: Kind, none: string, open: (file: string) => Promise<void>): TemplateResult {
  const files = [...(state.files?.[kind.list] ?? [])].sort((a, b) => Number(a.shipped) - Number(b.shipped));
  if (!files.length) return html`<p class="aside">None yet. ${none}</p>`;
  const card = (one: Listed) => file_card({ kind, one, facts: facts_of(one), open: () => open(one.file) });
  return file_cards(files, card);
}

const most_named = 4;

function facts_of({ holds = [], changed }: Listed): string[] {
  const more = holds.length - most_named;
  const named = more > 0 ? [...holds.slice(0, most_named), `${more} more`] : holds;
  return [named.length ? listed(named) : "", changed ? `changed ${day(changed)}` : ""].filter(Boolean);
}

interface NewHeld {
  label: string;
  add: string;
  act: (name: string) => Promise<unknown>;
  tried: (act: () => Promise<unknown>) => Promise<void>;
}

let name = ""; // as it is being typed

export function new_held({ label, add, act, tried }: NewHeld): TemplateResult {
  const take = () =>
    void tried(async () => {
      await act(name.trim());
      name = "";
      redraw();
    });
  const typed = (event: Event) => {
    name = (event.target as HTMLInputElement).value;
    redraw();
  };
  return html`<div class="row">
    <div class="field">
      <label for="new-held">${label}, by name</label>
      <input id="new-held" .value=${live(name)} @input=${typed} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!name.trim()} @click=${take}>${add}</button>
  </div>`;
}
