// The fats that are there: files of her own, to change what stands in them, and those that are built in.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { held_now, make_held, open_held } from "../documents/beside";
import { fats_kind } from "../documents/kinds";
import { state, update } from "../documents/state";
import { name_with } from "../forms/fat_ids";
import { add_fat, fats_in_file, new_fat } from "../forms/held_rows";
import type { Fat } from "../program/answers";
import { trimmed } from "../program/numbers";
import { held_list, new_held } from "./held_list";
import { list_head, tried } from "./lists";
import { removed_of } from "./removed";

export function fats_list(): TemplateResult {
  const held = held_now();
  return html`${list_head("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${held_list(fats_kind, "Each file is named by the formulas that use its fats.", (file) => open_held(fats_kind, file))}
      ${held ? fats_in_file(held) : nothing}
      ${new_held({
        label: "A new fat of your own",
        add: held ? `Add it to ${held.file}` : "Begin a file with it",
        act: (name) => (held ? Promise.resolve(add_fat(name)) : make_held(fats_kind, new_fat(name, state.fats))),
        tried,
      })}
    </section>
    ${built_in()} ${removed_of("fats")}`;
}

const finding = "fats that are listed";

function built_in(): TemplateResult {
  const text = state.finding?.key === finding ? state.finding.text : "";
  const found = state.fats.filter((one) => name_with(one, text) !== undefined);
  return html`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${live(text)}
          @input=${(event: Event) => update({ finding: { key: finding, text: (event.target as HTMLInputElement).value } })}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
    </div>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Built-in fats and their figures">
      <table class="figures fats">
        <thead>
          <tr>
            <th scope="col">Fat</th>
            <th scope="col">Saponification value, mg KOH/g</th>
            <th scope="col">INCI name</th>
          </tr>
        </thead>
        <tbody>
          ${found.map((one) => row(one, text))}
        </tbody>
      </table>
    </div>
    ${found.length ? nothing : html`<p class="hint">None is called so.</p>`}
  </section>`;
}

function row(one: Fat, text: string): TemplateResult {
  const { low, high, typical } = one.saponification_value_mg_koh_per_g;
  const by = name_with(one, text);
  const shown = (value: number) => trimmed(value, 1);
  return html`<tr>
    <th scope="row">${one.name}${by && by !== one.name ? html` <small>${by}</small>` : nothing}</th>
    <td>${shown(typical)} <small>${shown(low)} to ${shown(high)}</small></td>
    <td>${one.inci}</td>
  </tr>`;
}
