// A figure one can ask: tapped, it shows how it came about, beneath itself.
import { html, nothing, type TemplateResult } from "lit";
import { state, toggle } from "../documents/state";
import type { Shown } from "../program/numbers";
import type { Working } from "./workings";

interface FigureOptions {
  key: string;
  label: string;
  shown: Shown;
  sum?: Working;
  size?: "weigh" | "plain";
  note?: unknown;
}

export function figure({ key, label, shown, sum, size = "plain", note }: FigureOptions): TemplateResult {
  const is_open = state.open.has(key);
  const id = `sum-${key.replaceAll(/[^\w]/g, "-")}`;
  const words = html`<span class="name">${label}${note ? html`<small>${note}</small>` : nothing}</span>
    <span class="value ${size} ${state.is_old ? "old" : ""}"
      ><b>${shown[0]}</b>${shown[1] ? html` <i>${shown[1]}</i>` : nothing}</span
    >`;
  if (!sum) return html`<div class="figure"><div class="line">${words}</div></div>`;
  return html`<div class="figure">
    <button
      type="button"
      class="line"
      aria-expanded=${is_open ? "true" : "false"}
      aria-controls=${is_open ? id : nothing}
      @click=${() => toggle("open", key)}
    >
      ${words}<span class="how" aria-hidden="true">${is_open ? "–" : "="}</span>
    </button>
    ${is_open ? arithmetic(id, sum) : nothing}
  </div>`;
}

/** For what is told in sentences or a table above it. */
export function how(key: string, label: string, sum: Working): TemplateResult {
  return figure({ key, label, shown: ["", ""], sum });
}

function arithmetic(id: string, sum: Working): TemplateResult {
  return html`<div class="sum" id=${id}>
    <p class="formula">${sum.formula}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${sum.with.map(
          ([name, value, from]) =>
            html`<tr>
              <th scope="row">${name}</th>
              <td>${value}</td>
              <td>${from ?? ""}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    ${sum.sources?.length ? html`<p class="sources">From: ${sum.sources.join("; ")}.</p>` : nothing}
  </div>`;
}
