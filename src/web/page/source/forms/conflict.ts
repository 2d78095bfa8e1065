// One file, two hands: what is typed here and what another tab or program wrote meanwhile. Nothing is written before
// she has said which is to stay.
import { html, nothing, type TemplateResult } from "lit";
import type { OpenFile } from "../documents/file_types";
import { bring_back, keep_mine, take_theirs } from "../documents/open_file";

export function which_is_to_stay(file: OpenFile, then: () => void = () => undefined): TemplateResult | typeof nothing {
  if (!file.theirs) return nothing;
  const is_gone = file.theirs.text === null;
  const id = `conflict-${file.file.replaceAll(/[^\w]/g, "-")}`;
  const keep = () => {
    keep_mine(file);
    then();
  };
  return html`<section class="banner" aria-labelledby=${id}>
    <h2 id=${id}>${file.file} was ${is_gone ? "deleted" : "changed outside this page"}</h2>
    <p>Another hand or tab wrote the file. Nothing typed here was written over it. Which is to stay?</p>
    ${file.failed ? html`<p class="complaint" role="status">Not taken: ${file.failed}.</p>` : nothing}
    <div class="choice">
      ${is_gone ? nothing : html`<button type="button" @click=${() => take_theirs(file)}>Load the saved file</button>`}
      <button type="button" @click=${keep}>Overwrite it with this page</button>
    </div>
  </section>`;
}

/** The way back to what gave way, where there is no undo. */
export function set_aside(file: OpenFile): TemplateResult | typeof nothing {
  if (file.theirs || !file.set_aside) return nothing;
  return html`<section class="banner" aria-label="What you typed">
    <p>This is what another hand wrote. What you typed is still here.</p>
    <button type="button" @click=${() => bring_back(file)}>Change to the other text</button>
  </section>`;
}
