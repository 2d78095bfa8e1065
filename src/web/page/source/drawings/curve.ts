// The level curve, with the pour line on it: as a drawing, and as a table for those who hear it.
import { html, svg, type TemplateResult } from "lit";
import type { Level } from "../program/answers";
import { trimmed } from "../program/numbers";

const [wide, high] = [440, 270];
const [left, right, top, bottom] = [64, wide - 10, 10, high - 52]; // of the plot itself
const most_steps = 6;
const table_rows = 8;

/** Round numbers from zero to `greatest`, a few. */
function ticks(greatest: number): number[] {
  const least = greatest / most_steps;
  const power = 10 ** Math.floor(Math.log10(least));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= least)!;
  return Array.from({ length: Math.floor(greatest / step + 1e-9) + 1 }, (_, i) => i * step);
}

const rounded = (value: number): string => trimmed(value, 1);

/** Depths from the floor and what the cavity holds to each. */
export function level_curve(levels: readonly Level[], line_mm: number): TemplateResult {
  const deepest = levels.at(-1)?.depth_mm ?? 1;
  const greatest = levels.at(-1)?.volume_ml ?? 1;
  const x = (depth: number) => rounded(left + ((right - left) * depth) / deepest);
  const y = (volume: number) => rounded(bottom - ((bottom - top) * volume) / greatest);
  const points = levels.map(({ depth_mm, volume_ml }) => `L${x(depth_mm)} ${y(volume_ml)}`).join("");
  return html`<svg
      class="level-curve"
      viewBox="0 0 ${wide} ${high}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${line_mm} millimetres"
    >
      ${ticks(deepest).map(
        (depth) =>
          svg`<path class="grid" d="M${x(depth)} ${top}V${bottom}" />
            <text x=${x(depth)} y=${bottom + 20} text-anchor="middle">${rounded(depth)}</text>`,
      )}
      ${ticks(greatest).map(
        (volume) =>
          svg`<path class="grid" d="M${left} ${y(volume)}H${right}" />
            <text x=${left - 8} y=${y(volume)} text-anchor="end" dominant-baseline="middle">${rounded(volume)}</text>`,
      )}
      ${svg`<text x=${(left + right) / 2} y=${high - 6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(top + bottom) / 2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${x(0)} ${y(0)}${points}" />
        <path class="pour-line" d="M${x(line_mm)} ${top}V${bottom}" />`}
    </svg>
    ${as_table(levels)}`;
}

function as_table(levels: readonly Level[]): TemplateResult {
  const every = Math.max(1, Math.round(levels.length / table_rows));
  const shown = levels.filter((_, i) => (i + 1) % every === 0);
  return html`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${shown.map(
          ({ depth_mm, volume_ml, ml_per_mm }) =>
            html`<tr>
              <th scope="row">${rounded(depth_mm)}</th>
              <td>${rounded(volume_ml)}</td>
              <td>${trimmed(ml_per_mm, 2)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </details>`;
}
