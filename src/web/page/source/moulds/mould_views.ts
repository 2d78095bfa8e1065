// What the program found in a mould: drawn from above and from the side, and told.
import { html, nothing, svg, type TemplateResult } from "lit";
import { type Found, state } from "../documents/state";
import { both, length, volume } from "../program/numbers";
import { path_of } from "../program/outline";

/** One above the other to one scale, as draughtsmen set them. */
function views({ outline, above }: Found): TemplateResult {
  const margin = Math.max(4, (outline.right - outline.left) * 0.06);
  const depths = above.flat().map(([, y]) => y);
  const [near, far] = depths.length ? [Math.min(...depths), Math.max(...depths)] : [0, 0];
  const lift = -outline.brim - 2 * margin + near; // the nearest edge comes to stand two margins over the brim
  const top = lift - far - margin;
  const box = [outline.left - margin, top, outline.right - outline.left + 2 * margin, -outline.floor + margin - top];
  const drawn = (name: string, d: string) =>
    svg`<path class="shaded pour" fill-rule="evenodd" d=${d} /><path class="wall ${name}" fill-rule="evenodd" d=${d} />`;
  return html`<div class="drawing tall">
    <svg
      viewBox=${box.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${drawn("above", path_of(above, lift))}${drawn("side", path_of(outline.loops))}
    </svg>
  </div>`;
}

export function found(of: Found | undefined, is_old = false, wanted: string[] = []): TemplateResult {
  const missing = wanted.length ? html`<p class="hint" role="status">Still needed: ${wanted.join(", ")}.</p>` : nothing;
  if (!of)
    return html`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${missing}`;
  const { gauge } = of;
  const pocket = gauge.pockets[0];
  return html`${views(of)}
    <p class="order ${is_old ? "old" : ""}" role="status">
      Holds
      <b>${both(volume(state.units, pocket.brimful_ml))}</b>${
        gauge.pockets.length > 1
          ? html` in each of ${gauge.pockets.length}, ${both(volume(state.units, gauge.total_ml))} together`
          : nothing
      },
      ${both(length(state.units, pocket.brim_mm - pocket.floor_mm))} deep.
    </p>
    ${missing}
    ${
      (gauge.measurements?.length ?? 0) > 1
        ? html`<p class="aside">
            ${gauge.measurements.map((one) => `By ${one.by} ${both(volume(state.units, one.brimful_ml))}`).join("; ")}.
          </p>`
        : nothing
    }
    ${
      gauge.notes.length
        ? html`<ul class="limits">
            ${gauge.notes.map((one) => html`<li>${one.text}</li>`)}
          </ul>`
        : nothing
    }`;
}
