// The opening of a tip, seen from the front, as far as its measures are plain.
import { html, nothing, svg, type TemplateResult } from "lit";
import type { Document, Json } from "../program/json";
import { millimetres } from "../program/numbers";

type Point = [x: number, y: number];

export function tip_picture(tip: Document): TemplateResult | typeof nothing {
  const radius = millimetres((tip.round as Document | undefined)?.radius);
  if (radius) return picture(radius, svg`<circle class="plain" r=${radius} />`);
  const corners = corners_of(tip);
  if (!corners) return nothing;
  const far = Math.max(...corners.map(([x, y]) => Math.hypot(x, y)));
  return far > 0
    ? picture(far, svg`<path class="plain" d=${`M${corners.map((one) => one.join(" ")).join("L")}Z`} />`)
    : nothing;
}

const picture = (far: number, shape: unknown): TemplateResult =>
  html`<svg class="tip" viewBox="${-1.1 * far} ${-1.1 * far} ${2.2 * far} ${2.2 * far}" aria-hidden="true">
    ${shape}
  </svg>`;

function corners_of({ star, outline }: Document): Point[] | undefined {
  if (star && typeof star === "object" && !Array.isArray(star)) return corners_of_star(star);
  if (!Array.isArray(outline)) return undefined;
  const corners = outline.map((one): Point => [number_of(one, "x"), -number_of(one, "y")]);
  return corners.some(([x, y]) => Number.isNaN(x) || Number.isNaN(y)) ? undefined : corners;
}

/** Signed; `millimetres` knows lengths alone. */
function number_of(corner: Json, key: "x" | "y"): number {
  const text = String((corner as Document)[key] ?? "").trim();
  return (text.startsWith("-") ? -1 : 1) * (millimetres(text.replace(/^-/, "")) ?? NaN);
}

function corners_of_star({ points, outer_radius, inner_radius }: Document): Point[] | undefined {
  const [outer, inner] = [millimetres(outer_radius), millimetres(inner_radius)];
  if (!outer || !inner || typeof points !== "number" || points < 3 || points > 60) return undefined;
  return Array.from({ length: 2 * points }, (_, i): Point => {
    const angle = (Math.PI * i) / points;
    const radius = i % 2 ? inner : outer;
    return [radius * Math.sin(angle), -radius * Math.cos(angle)];
  });
}
