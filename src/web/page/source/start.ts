// Where one begins: a run that is there, or a mould, from the catalogue or one's own.
import { html, nothing, type TemplateResult } from "lit";
import { Refused, type Listed } from "./api";
import { both, volume } from "./numbers";
import { new_mould, begin_mould, mould_ways, type MouldWay } from "./new_mould";
import { make_run, open_run } from "./opening";
import { changed, state } from "./state";

interface Chosen {
  mould: string;
  name: string;
  cavities: number;
  deep_mm: number;
}

let chosen: Chosen | undefined;
let complaint = "";

export function open_start(): void {
  state.view = "start";
  chosen = undefined;
  complaint = "";
  begin_mould(undefined);
  changed();
  requestAnimationFrame(() => document.querySelector<HTMLElement>("h1")?.focus());
}

export function choose_mould(mould: Chosen): void {
  chosen = mould;
  begin_mould(undefined);
  changed();
  requestAnimationFrame(() => document.querySelector<HTMLElement>("#formula-title")?.focus());
}

async function tried(act: () => Promise<void>): Promise<void> {
  complaint = "";
  try {
    await act();
    window.scrollTo(0, 0);
  } catch (error) {
    complaint = error instanceof Refused ? error.message : String(error);
  }
  changed();
}

export function start(): TemplateResult {
  const making = new_mould(choose_mould);
  return html`
    <h1 tabindex="-1">What will you make?</h1>
    <p class="choice">
      ${state.file ? html`<button type="button" @click=${() => ((state.view = "run"), changed())}>Back to the run</button>` : nothing}
      ${chosen || making ? html`<button type="button" @click=${open_start}>Back to runs and moulds</button>` : nothing}
    </p>
    ${complaint ? html`<p class="alarm" role="alert">${complaint}</p>` : nothing}
    ${chosen ? formulas(chosen) : making ? making : html`${runs()} ${own_mould()} ${moulds()}`}`;
}

function runs(): TemplateResult {
  const listed = state.files?.runs ?? [];
  const own = listed.filter((one) => !one.shipped);
  const shipped = listed.filter((one) => one.shipped);
  return html`<section aria-labelledby="runs-title"><h2 id="runs-title">Open a run</h2>
    ${own.length ? html`<ul class="cards">${own.map(card)}</ul>` : html`<p class="aside">None of your own in ${state.files?.folder} yet.</p>`}
    <h3>Examples</h3><ul class="cards">${shipped.map(card)}</ul></section>`;
}

function card(one: Listed): TemplateResult {
  return html`<li><button type="button" @click=${() => tried(() => open_run(one.file))}><b>${one.name || one.file}</b><span>${one.file}</span></button></li>`;
}

function moulds(): TemplateResult {
  return html`<section aria-labelledby="moulds-title"><h2 id="moulds-title">New run with a mould that is there</h2>
    <ul class="cards">${own_moulds()}${state.catalogue.map(
      (one) => html`<li><button type="button" @click=${() => choose_mould({ mould: one.path, name: one.name, cavities: one.cavities, deep_mm: one.depth_mm })}>
        <b>${one.name}</b><span>${both(volume(state.units, one.brimful_ml))}, ${one.cavities} in one; ${one.description}</span></button></li>`,
    )}</ul></section>`;
}

function own_moulds(): TemplateResult[] {
  const own = (state.files?.moulds ?? []).filter((one) => !one.shipped);
  return own.map(
    (one) => html`<li><button type="button" @click=${() => choose_mould({ mould: one.file, name: one.name, cavities: 1, deep_mm: 0 })}>
      <b>${one.name}</b><span>your own, ${one.file}</span></button></li>`,
  );
}

function own_mould(): TemplateResult {
  return html`<section aria-labelledby="own-title"><h2 id="own-title">New run with a mould of your own</h2>
    <div class="choice">${(Object.entries(mould_ways) as [MouldWay, string][]).map(
      ([way, words]) => html`<button type="button" @click=${() => begin_mould(way)}>${words}</button>`,
    )}</div></section>`;
}

function formulas(mould: Chosen): TemplateResult {
  const take = (file: string) => () => tried(() => make_run({ ...mould, formula: file }));
  return html`<section aria-labelledby="formula-title"><h2 id="formula-title" tabindex="-1">${mould.name}: which base?</h2>
    <ul class="cards">${(state.files?.formulas ?? []).map(
      (one) => html`<li><button type="button" @click=${take(one.file)}><b>${one.name}</b><span>${one.note || one.file}</span></button></li>`,
    )}</ul></section>`;
}
