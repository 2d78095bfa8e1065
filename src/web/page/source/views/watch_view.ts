// What to look out for.
import { html, nothing, type TemplateResult } from "lit";
import type { Caution, Plan } from "../program/answers";

const word_for: Record<string, string> = {
  danger: "⚠ Danger",
  stop: "Stop",
  warning: "Warning",
  caution: "Caution",
  note: "Note",
};

/** Danger first; the rest in the program's own order, which knows what is worse. */
export function watch_view(plan: Plan): TemplateResult {
  const is_danger = (one: Caution) => one.severity === "danger";
  const cautions = [...plan.cautions.filter(is_danger), ...plan.cautions.filter((one) => !is_danger(one))];
  const listed = (some: Caution[]) =>
    html`<ul>
      ${some.map(
        (one) =>
          html`<li class=${one.severity}><strong>${word_for[one.severity] ?? one.severity}</strong> ${one.text}</li>`,
      )}
    </ul>`;
  const notes = cautions.filter((one) => one.severity === "note");
  return html`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${listed(cautions.filter((one) => one.severity !== "note"))}
    ${
      notes.length
        ? html`<details ?open=${notes.length < 3}>
            <summary>${notes.length} ${notes.length === 1 ? "note" : "notes"}</summary>
            ${listed(notes)}
          </details>`
        : nothing
    }
  </section>`;
}
