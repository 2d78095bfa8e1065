// A figure one can ask: tapped, it shows how it came about, beneath itself.
import { html, nothing, type TemplateResult } from "lit";
import { workings_at } from "../documents/explaining";
import { state, toggle } from "../documents/state";
import { term_button, term_words } from "./explained";
import type { TermName } from "./terms";
import type { Working } from "../program/answers";
import type { Shown } from "../program/numbers";

interface FigureOptions {
  key: string;
  label: string;
  shown: Shown;
  of: string; // its place in the plan, as "batches.0.pour.make_g"
  working?: Working; // where it is not the plan that tells it
  size?: "weigh" | "plain";
  note?: unknown;
  term?: TermName; // a word in it that is explained
}

export function figure({ key, label, shown, of, working, size = "plain", note, term }: FigureOptions): TemplateResult {
  const is_open = state.open.has(key);
  const id = `sum-${key.replaceAll(/[^\w]/g, "-")}`;
  return html`<div class="figure ${term ? "explains" : ""}">
    <button
      type="button"
      class="line"
      aria-expanded=${is_open ? "true" : "false"}
      aria-controls=${is_open ? id : nothing}
      @click=${() => toggle("open", key)}
    >
      <span class="name">${label}${note ? html`<small>${note}</small>` : nothing}</span>
      <span class="value ${size === "weigh" ? "large" : ""} ${state.is_old ? "old" : ""}"
        ><b>${shown[0]}</b>${shown[1] ? html` <i>${shown[1]}</i>` : nothing}</span
      ><span class="how" aria-hidden="true">${is_open ? "–" : "="}</span>
    </button>
    ${term ? html`${term_button(term)}${term_words(term)}` : nothing}
    ${is_open ? html`<div class="sum" id=${id}>${working ? arithmetic(working) : of_plan(of)}</div>` : nothing}
  </div>`;
}

/** For what is told in sentences or a table above it. */
export const how = (key: string, label: string, of: string): TemplateResult =>
  figure({ key, label, shown: ["", ""], of });

/** How what stands at that place of the plan comes about. */
export function of_plan(place: string): TemplateResult {
  const { workings, complaint, is_old } = workings_at(place);
  if (workings.length) return html`<div class=${is_old ? "old" : ""}>${workings.map(arithmetic)}</div>`;
  if (is_old) return html`<p class="old" role="status">Asking how it is calculated ...</p>`;
  return html`<p role="status">${complaint ?? "The program does not say how this is calculated."}</p>`;
}

export function arithmetic({ formula, with: given, sum, rounded, comes_to, sources }: Working): TemplateResult {
  const steps = sum && comes_to ? `${sum} = ${comes_to}` : (sum ?? (comes_to && `It comes to ${comes_to}`));
  return html`<p class="formula">${formula}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${given.map(
          ({ name, value, from }) =>
            html`<tr>
              <th scope="row">${name}</th>
              <td>${value}</td>
              <td>${from ?? ""}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    ${steps ? html`<p class="comes-to">${steps}${rounded ? `, rounded ${rounded}` : ""}</p>` : nothing}
    ${sources.length ? html`<p class="sources">From: ${sources.join("; ")}.</p>` : nothing}`;
}
