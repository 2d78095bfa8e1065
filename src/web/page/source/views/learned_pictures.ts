// Plan against actual in one picture: of this run, and of a year with all its runs.
import { html, type TemplateResult } from "lit";
import { state } from "../documents/state";
import type { Learned } from "../program/answers";
import { keep, open, paper_button, stem_of, told_of_papers } from "./papers";

/** The years in which batches were made that tell something, the last one first. */
const years_of = ({ years }: Learned): string[] => years.map(String).reverse();

export function learned_pictures(learned: Learned): TemplateResult {
  const file = state.run.file;
  const stem = stem_of(file);
  const picture = (of: object) => ({ kind: "picture", learned: { file, ...of } });
  return html`<section class="out" aria-labelledby="learned-pictures">
    <h3 id="learned-pictures">Plan against actual, in one picture</h3>
    <div class="choice">
      ${paper_button("This run", open(picture({})))}
      ${paper_button("This run, SVG", keep(`${stem} plan against actual.svg`, picture({})))}
      ${years_of(learned).map(
        (year) =>
          html`${paper_button(`The year ${year}`, open(picture({ year })))}
          ${paper_button(`The year ${year}, SVG`, keep(`${stem} ${year}.svg`, picture({ year })))}`,
      )}
    </div>
    <p role="status">${told_of_papers()}</p>
  </section>`;
}
