// Danger: what could make a soap that burns. It stands first on every view, until a newer answer takes it back.
import { html, nothing, type TemplateResult } from "lit";
import { tried_now } from "../documents/dangers";
import { danger_sign } from "../figures/dangers";
import { conflict_of } from "../documents/conflicts";
import { is_deleted } from "../documents/open_file";
import { state, update } from "../documents/state";
import { taken_in_words } from "../documents/versions_beside";
import { is_list } from "../documents/views";
import { listed } from "../program/words";

interface Told {
  from: string; // where it stands beside other things
  text: string;
}

function told(): Told[] {
  const is_elsewhere =
    is_list(state.view) || state.view === "order" || state.view === "trail" || tried_now() === "apart";
  const of_run = state.dangers.run.map(({ text }) => ({
    from: is_elsewhere ? `In the run "${String(state.run.now.name ?? state.run.file)}": ` : "",
    text,
  }));
  return [...state.dangers.apart.map(({ text }) => ({ from: "", text })), ...of_run];
}

export const is_in_danger = (): boolean => told().length > 0;

/** Always in sight, above whatever is looked at. */
export function foremost(): TemplateResult | typeof nothing {
  const dangers = told();
  const stale = stale_words();
  const taken_in = stale || is_list(state.view) ? "" : taken_in_words();
  if (!dangers.length && !stale && !taken_in) return nothing;
  return html`<section class="foremost" aria-label="Danger, and figures from before">
    ${
      dangers.length
        ? html`<div role="alert" class="dangers">
            ${dangers.map(({ from, text }) => html`<p class="danger"><strong>${danger_sign}</strong> ${from}${text}</p>`)}
          </div>`
        : nothing
    }
    ${
      stale
        ? html`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${stale}</p>
            ${asks_now() ? html`<button type="button" @click=${to_question}>To the question</button>` : nothing}
          </div>`
        : nothing
    }
    ${
      taken_in
        ? html`<div class="taken-in">
            <p>${taken_in}</p>
            <button type="button" @click=${() => update({ taken_in: undefined })}>Close</button>
          </div>`
        : nothing
    }
  </section>`;
}

const asks_now = (): boolean => conflict_of(tried_now()) !== undefined && !is_list(state.view);

function to_question(): void {
  const title = document.querySelector<HTMLElement>(".banner h2");
  if (!title) return;
  title.tabIndex = -1;
  title.focus({ preventScroll: true });
  title.scrollIntoView({ block: "start" });
}

function stale_words(): string {
  if (!state.run.file || state.view === "reading") return "";
  const conflict = conflict_of(tried_now());
  if (conflict && is_deleted(conflict))
    return `${conflict.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`;
  if (conflict)
    return `${conflict.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`;
  const changed = state.changed_beside;
  return state.is_old && changed.length
    ? `${listed(changed)} ${changed.length === 1 ? "was" : "were"} changed outside this page: what is struck through is not to be weighed.`
    : "";
}
