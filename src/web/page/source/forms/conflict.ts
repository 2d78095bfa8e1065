// One file, two hands: what is typed here and what another tab or program wrote meanwhile. Nothing is written before
// she has said which is to stay; where nothing was typed, what the file holds is shown.
import { html, nothing, type TemplateResult } from "lit";
import type { OpenFile } from "../documents/file_types";
import { is_in_history, remember } from "../documents/history";
import {
  bring_back,
  forget_set_aside,
  is_deleted,
  keep_mine,
  leave_deleted,
  take_theirs,
} from "../documents/open_file";

export function which_is_to_stay(file: OpenFile, then: () => void = () => undefined): TemplateResult | typeof nothing {
  if (!file.theirs) return nothing;
  const is_gone = is_deleted(file);
  const id = `conflict-${file.file.replaceAll(/[^\w]/g, "-")}`;
  const keep = () => {
    keep_mine(file);
    then();
  };
  return html`<section class="banner" aria-labelledby=${id}>
    <h2 id=${id}>${file.file} was ${is_gone ? "deleted" : "changed outside this page"}</h2>
    <p>
      ${
        is_gone
          ? "Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it."
          : "Another program or browser tab saved it. Which version do you want to keep?"
      }
    </p>
    ${file.failed ? html`<p class="complaint" role="status">Not loaded: ${file.failed}.</p>` : nothing}
    <div class="choice">
      ${
        is_gone
          ? html`<button type="button" @click=${keep}>Save it again</button>
              <button type="button" @click=${() => leave_deleted(file)}>Leave it deleted</button>`
          : html`<button type="button" @click=${() => take_theirs(file)}>Load the saved file</button>
              <button type="button" @click=${keep}>Overwrite it with this page</button>`
      }
    </div>
  </section>`;
}

/** The way back to what gave way unasked, or where there is no undo. */
export function set_aside(file: OpenFile): TemplateResult | typeof nothing {
  if (file.theirs || !file.set_aside || (is_in_history(file) && !file.is_taken)) return nothing;
  const back = () => {
    if (is_in_history(file)) remember();
    bring_back(file);
  };
  return html`<section class="banner quiet" aria-label="${file.file} was changed">
    <p>
      ${file.file} was changed outside this page, and stands here as it is
      now.${file.is_taken ? "" : " What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${back}>Change to the other text</button>
      ${file.is_taken ? html`<button type="button" @click=${() => forget_set_aside(file)}>Close</button>` : nothing}
    </div>
  </section>`;
}
