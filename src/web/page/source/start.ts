// Where one begins: a run that is there, or a mould, from the catalogue or one's own.
import { html, nothing, type TemplateResult } from "lit";
import { get, Refused, type Files, type Listed } from "./api";
import { chosen_mould, leave_mould, mould_opened, open_mould } from "./chosen_mould";
import { formula_list } from "./formula_list";
import { leave_formula } from "./formula_opening";
import { drop_draft, left_drafts } from "./mould_draft";
import { begin_mould, go_on_with_draft, mould_ways, new_mould, type MouldWay } from "./new_mould";
import { both, volume } from "./numbers";
import { open_run } from "./opening";
import { ask_again, words_of } from "./own_moulds";
import { changed, state } from "./state";

let complaint = "";

export function open_start(): void {
  if (state.formulas.apart) return void leave_formula().then((is_left) => is_left && open_start());
  state.view = "start";
  complaint = "";
  leave_mould();
  begin_mould(undefined);
  void tried(read_files);
  requestAnimationFrame(() => document.querySelector<HTMLElement>("h1")?.focus());
}

async function read_files(): Promise<void> {
  state.files = await get<Files>("/api/files");
  ask_again();
}

function kept_mould(file: string): void {
  begin_mould(undefined);
  open_mould(file, `Saved in ${file}.`);
}

async function tried(act: () => Promise<void>): Promise<void> {
  complaint = "";
  try {
    await act();
  } catch (error) {
    complaint = error instanceof Refused ? error.message : String(error);
  }
  changed();
}

async function gone_to(act: () => Promise<void>): Promise<void> {
  await tried(act);
  window.scrollTo(0, 0);
}

export function start(): TemplateResult {
  const opened = chosen_mould();
  const making = new_mould(kept_mould);
  return html` <h1 tabindex="-1">What will you make?</h1>
    <p class="choice">
      ${
        state.file
          ? html`<button type="button" @click=${() => ((state.view = "run"), changed())}>Back to the run</button>`
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
          : html`${runs()} ${own_mould()} ${moulds()} ${formula_list(tried)}`
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
    <h2 id="moulds-title">A mould that is there: make a run with it, or change it</h2>
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

function own_mould(): TemplateResult {
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
  return left_drafts().map((left) => {
    const name = String(left.document.name ?? "").trim() || left.paper.from_name || "a mould without a name yet";
    const drop = () => {
      drop_draft(left.paper);
      changed();
    };
    return html`<div class="banner">
      <p>What you typed of <b>${name}</b> is still here, and in no file yet.</p>
      <div class="choice">
        <button type="button" @click=${() => go_on_with_draft(left)}>Go on with it</button>
        <button type="button" @click=${drop}>Let it go</button>
      </div>
    </div>`;
  });
}
