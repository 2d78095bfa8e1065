// A mould's own measures and what batches say of it, side by side.
import { html, nothing, type TemplateResult } from "lit";
import { state, type AtWays } from "../documents/state";
import type { MouldWay, MouldWays } from "../program/answers";
import { both, length, plain, volume } from "../program/numbers";

const ml = (value: number): string => both(volume(state.units, value));
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

export function mould_ways({ ways, failed }: AtWays): TemplateResult | typeof nothing {
  if (failed !== undefined) return html`<p class="hint">How the ways of measuring compare is not known: ${failed}.</p>`;
  if (!ways?.ways.length) return nothing;
  return html`<section class="ways" aria-labelledby="ways-title">
    <h3 id="ways-title">What one cavity holds, by each way</h3>
    <p>${ways.used_because}</p>
    <ul class="each-way">
      ${ways.ways.map((one) => way(one, ways))}
    </ul>
    ${line(ways)} ${ways.remarks.map((text) => html`<p class="aside">${text}</p>`)}
  </section>`;
}

function way(one: MouldWay, { below_brim_mm }: MouldWays): TemplateResult {
  const { by, brimful_ml, at_line_ml, low_ml, high_ml, rests_on, used } = one;
  return html`<li data-by=${by} class=${used ? "is-used" : ""}>
    <p class="way-name">
      <b>By ${by}</b> ${used ? html`<span>✓ the plan uses it</span>` : html`<span>${apart(one)}</span>`}
    </p>
    ${at_line_ml === null ? nothing : html`<p>to the pour line <b class="at-line">${ml(at_line_ml)}</b></p>`}
    <p>to the brim <b class="brimful">${ml(brimful_ml)}</b></p>
    <p>
      ${
        low_ml === null || high_ml === null
          ? nothing
          : html`between ${ml(low_ml)} and ${ml(high_ml)}${below_brim_mm === null ? "" : " to the line"}: `
      }${low_ml === null ? capital(rests_on) : rests_on}
    </p>
  </li>`;
}

function apart({ differs_percent }: MouldWay): string {
  const share = plain(Math.abs(differs_percent), 1);
  if (share === "0.0") return "the same";
  return `${share} % ${differs_percent > 0 ? "more" : "less"}`;
}

const line = ({ below_brim_mm, line_of }: MouldWays): TemplateResult | typeof nothing =>
  below_brim_mm === null
    ? nothing
    : html`<p class="aside">
        The pour line is ${both(length(state.units, below_brim_mm))} below the
        brim${line_of === "as asked" ? "" : `, ${line_of}`}.
      </p>`;
