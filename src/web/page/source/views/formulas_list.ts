// The formulas that are there, to open one; and a new one, from blank or as a copy.
import { html, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { copy_formula, new_formula, open_formula_file } from "../documents/formula_opening";
import { amend, state } from "../documents/state";
import { formula_kind } from "../documents/kinds";
import type { Listed } from "../program/api";
import { day } from "../program/numbers";
import { file_card, file_cards } from "./file_card";
import { list_head, tried } from "./lists";
import { removed_of } from "./removed";

const asking = (what: Partial<typeof state.new_formula>): void => amend(state.new_formula, what);

export function formulas_list(): TemplateResult {
  const { name, copied } = state.new_formula;
  const listed = [...(state.files?.formulas ?? [])].sort((a, b) => Number(a.shipped) - Number(b.shipped));
  const made = (act: (called: string) => Promise<void>) => () =>
    tried(async () => {
      await act(name.trim());
      asking({ name: "", copied: "" });
    });
  return html`${list_head("Formulas")}
    <section aria-label="Formulas">
      ${file_cards(listed, card)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${live(name)}
            @input=${(event: Event) => asking({ name: (event.target as HTMLInputElement).value })}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!name.trim()} @click=${made(new_formula)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${(event: Event) => asking({ copied: (event.target as HTMLSelectElement).value })}
          >
            <option value="" .selected=${live(copied === "")}>choose ...</option>
            ${listed.map(
              (one) =>
                html`<option value=${one.file} .selected=${live(one.file === copied)}>${one.name || one.file}</option>`,
            )}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!name.trim() || !copied}
          @click=${made((called) => copy_formula(copied, called))}
        >
          Make the copy
        </button>
      </div>
      ${name.trim() ? "" : html`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${removed_of("formula")}`;
}

function card(one: Listed): TemplateResult {
  const facts = one.changed ? [`changed ${day(one.changed)}`] : [];
  return file_card({ kind: formula_kind, one, facts, open: () => open_formula_file(one.file) });
}
