// One file, two hands: what is typed here and what another tab or program wrote meanwhile. Nothing is written, and
// no figure stands, until she has said which is to stay.
import { html, nothing, type TemplateResult } from "lit";
import { keep_mine, keep_my_formula, take_their_formula, take_theirs } from "./saving";
import { everyone, state, type FormulaPaper, type Whose } from "./state";

const papers_of = (whose: readonly Whose[]): FormulaPaper[] => {
  const papers = whose.flatMap((one) => state.formulas[one] ?? []);
  return papers.filter((paper, i) => paper.clash && papers.indexOf(paper) === i);
};

/** Among the formulas that the figures are made of. */
export const clash_of = (what: "run" | "apart"): FormulaPaper | undefined =>
  papers_of(what === "apart" ? ["apart"] : ["pour", "pipe"])[0];

export function conflict(): TemplateResult {
  return html`${run_clash()}
  ${papers_of(everyone).map((paper) =>
    asked(
      paper.file,
      paper.clash!.text === null,
      () => take_their_formula(paper),
      () => keep_my_formula(paper),
    ),
  )}`;
}

function run_clash(): TemplateResult | typeof nothing {
  const { saving } = state;
  return saving.is === "conflict" ? asked(state.file, saving.text === null, take_theirs, keep_mine) : nothing;
}

function asked(file: string, is_gone: boolean, theirs: () => void, mine: () => void): TemplateResult {
  const id = `conflict-${file.replaceAll(/[^\w]/g, "-")}`;
  return html`<section class="banner" aria-labelledby=${id}>
    <h2 id=${id}>${file} has ${is_gone ? "been taken away" : "changed"} underneath</h2>
    <p>Another hand or tab wrote the file. Nothing typed here was written over it. Which is to stay?</p>
    <div class="choice">
      ${is_gone ? nothing : html`<button type="button" @click=${theirs}>Take what is in the file</button>`}
      <button type="button" @click=${mine}>Keep what is on this page</button>
    </div>
  </section>`;
}
