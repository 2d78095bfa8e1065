// A new run: what it is called, from which mould and base it is made, and how many pieces are to be sold.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { make_run } from "../documents/opening";
import { amend, state, update } from "../documents/state";
import { pieces_asked, pieces_in } from "../forms/pieces_asked";
import { tried } from "./lists";

type Wanted = NonNullable<typeof state.new_run>;

const begin = (): void => {
  update({ new_run: { name: "", mould: "", formula: "", sell: "" } });
  requestAnimationFrame(() => document.getElementById("new-run-name")?.focus());
};

export function new_run(): TemplateResult {
  const wanted = state.new_run;
  if (!wanted) return html`<p class="choice"><button type="button" class="strong" @click=${begin}>New run</button></p>`;
  const { name, mould, formula } = wanted;
  const sell = pieces_in(wanted.sell);
  const is_ready = name.trim() && mould && formula && sell;
  const make = () =>
    void tried(async () => {
      await make_run({ name: name.trim(), mould, formula, sell: sell! });
      update({ new_run: undefined });
    });
  return html`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${live(name)}
          @input=${(event: Event) => amend(wanted, { name: (event.target as HTMLInputElement).value })}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${pick(wanted, "mould", "Mould", moulds())} ${pick(wanted, "formula", "Base", formulas())}
      ${pieces_asked("new-run-sell", wanted.sell, (text) => amend(wanted, { sell: text }))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!is_ready} @click=${make}>Make the run</button>
      <button type="button" @click=${() => update({ new_run: undefined })}>Cancel</button>
    </div>
    ${is_ready ? nothing : html`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`;
}

type Choices = [file: string, words: string][];

const moulds = (): Choices => [
  ...(state.files?.moulds ?? [])
    .filter((one) => !one.shipped)
    .map((one): Choices[0] => [one.file, one.name || one.file]),
  ...state.catalogue.map((one): Choices[0] => [one.path, one.name]),
];

const formulas = (): Choices => (state.files?.formulas ?? []).map((one) => [one.file, one.name || one.file]);

function pick(wanted: Wanted, key: "mould" | "formula", label: string, choices: Choices): TemplateResult {
  const id = `new-run-${key}`;
  const choose = (event: Event) => amend(wanted, { [key]: (event.target as HTMLSelectElement).value });
  return html`<div class="field choose">
    <label for=${id} data-said="required">${label}</label>
    <select id=${id} @change=${choose}>
      <option value="" .selected=${live(wanted[key] === "")}>choose ...</option>
      ${choices.map(
        ([file, words]) => html`<option value=${file} .selected=${live(file === wanted[key])}>${words}</option>`,
      )}
    </select>
  </div>`;
}
