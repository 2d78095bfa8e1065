// Where one begins: a run that is there, or a mould, from the catalogue or one's own.
import { html, nothing, type TemplateResult } from "lit";
import { redraw } from "../documents/drawing";
import { leave_formula } from "../documents/formula_opening";
import { open_run } from "../documents/opening";
import { mould_kind } from "../documents/kinds";
import { leave_draft } from "../documents/mould_draft";
import { measure_own_moulds, own_mould } from "../documents/own_moulds";
import { state, update } from "../documents/state";
import { drop_unsaved, unsaved_copies, type UnsavedCopy } from "../documents/unsaved";
import { formula_list } from "../forms/formula_list";
import { leave_mould, mould_opened, open_mould } from "../moulds/chosen_mould";
import { type MouldWay, begin_mould, go_on_with_draft, mould_ways, new_mould } from "../moulds/new_mould";
import { list_files, Refused, type Listed } from "../program/api";
import { document_in } from "../program/json";
import { both, volume } from "../program/numbers";

export function open_start(): void {
  if (state.formulas.apart) return void leave_formula().then((is_left) => is_left && open_start());
  update({ view: "start", start_complaint: "" });
  leave_mould();
  leave_draft();
  void tried(read_files);
  requestAnimationFrame(() => document.querySelector<HTMLElement>("h1")?.focus());
}

async function read_files(): Promise<void> {
  update({ files: await list_files() });
  measure_own_moulds();
}

function kept_mould(file: string): void {
  leave_draft();
  open_mould(file, `Saved in ${file}.`);
}

async function tried(act: () => Promise<void>): Promise<void> {
  update({ start_complaint: "" });
  try {
    await act();
  } catch (error) {
    update({ start_complaint: error instanceof Refused ? error.message : String(error) });
  }
}

async function gone_to(act: () => Promise<void>): Promise<void> {
  await tried(act);
  window.scrollTo(0, 0);
}

export function start(): TemplateResult {
  const { chosen_mould: opened, start_complaint: complaint } = state;
  const making = new_mould(kept_mould);
  return html` <h1 tabindex="-1">What will you make?</h1>
    <p class="choice">
      ${
        state.run.file
          ? html`<button type="button" @click=${() => update({ view: "run" })}>Back to the run</button>`
          : nothing
      }
      ${opened || making ? html`<button type="button" @click=${open_start}>Back to runs and moulds</button>` : nothing}
    </p>
    ${complaint ? html`<p class="alarm" role="alert">${complaint}</p>` : nothing}
    ${(state.files?.cut ?? []).map(
      (one) =>
        html`<p class="alarm">
          More lies in ${one.folder} than is looked at: ${one.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`,
    )}
    ${
      opened
        ? mould_opened(opened, gone_to)
        : making
          ? making
          : html`${runs()} ${own_mould_ways()} ${moulds()} ${formula_list(tried)}`
    }`;
}

function runs(): TemplateResult {
  const listed = state.files?.runs ?? [];
  const own = listed.filter((one) => !one.shipped);
  const shipped = listed.filter((one) => one.shipped);
  return html`<section aria-labelledby="runs-title">
    <h2 id="runs-title">Open a run</h2>
    ${
      own.length
        ? html`<ul class="cards">
            ${own.map(card)}
          </ul>`
        : html`<p class="aside">None of your own in ${state.files?.folder} yet.</p>`
    }
    <h3>Examples</h3>
    <ul class="cards">
      ${shipped.map(card)}
    </ul>
  </section>`;
}

function card(one: Listed): TemplateResult {
  return html`<li>
    <button type="button" @click=${() => gone_to(() => open_run(one.file))}>
      <b>${one.name || one.file}</b><span>${one.file}</span>
    </button>
  </li>`;
}

function moulds(): TemplateResult {
  return html`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    <ul class="cards">
      ${own_moulds()}${state.catalogue.map(
        (one) =>
          html`<li>
            <button type="button" @click=${() => open_mould(one.path)}>
              <b>${one.name}</b
              ><span>${both(volume(state.units, one.brimful_ml))}, ${one.cavities} in one; ${one.description}</span>
            </button>
          </li>`,
      )}
    </ul>
  </section>`;
}

function own_moulds(): TemplateResult[] {
  const own = (state.files?.moulds ?? []).filter((one) => !one.shipped);
  return own.map(
    (one) =>
      html`<li>
        <button type="button" @click=${() => open_mould(one.file)}>
          <b>${one.name || one.file}</b><span>${words_of(one.file)}</span>
        </button>
      </li>`,
  );
}

function own_mould_ways(): TemplateResult {
  return html`<section aria-labelledby="own-title">
    <h2 id="own-title">New run with a mould of your own</h2>
    ${begun()}
    <div class="choice">
      ${(Object.entries(mould_ways) as [MouldWay, string][]).map(
        ([way, words]) => html`<button type="button" @click=${() => begin_mould(way)}>${words}</button>`,
      )}
    </div>
  </section>`;
}

/** Moulds that were being described and are in no file yet. */
function begun(): TemplateResult[] {
  return unsaved_copies(mould_kind).map((left) => {
    const name = String(document_in(left.text)?.name ?? "").trim() || name_copied(left) || "a mould without a name yet";
    const drop = () => {
      drop_unsaved(mould_kind, left.id);
      redraw();
    };
    return html`<div class="banner">
      <p>What you typed of <b>${name}</b> is still here, and in no file yet.</p>
      <div class="choice">
        <button type="button" @click=${() => tried(() => go_on_with_draft(left))}>Continue</button>
        <button type="button" @click=${drop}>Discard it</button>
      </div>
    </div>`;
  });
}

const name_copied = ({ file }: UnsavedCopy): string | undefined =>
  state.files?.moulds.find((one) => one.file === file)?.name;

function words_of(file: string): string {
  const mould = own_mould(file);
  if (!mould) return `your own, ${file}; measuring ...`;
  if ("complaint" in mould) return `your own, ${file}; it cannot be measured: ${mould.complaint}`;
  return `${both(volume(state.units, mould.brimful_ml))}, ${mould.cavities} in one; your own, ${file}`;
}
