// A measure far from usual is asked once: the answer "it is really so" names it beside itself.
import { html, nothing, type TemplateResult } from "lit";
import type { Keep } from "../program/api";
import type { Document, Json } from "../program/json";
import { at } from "../program/pointer";

/** All that is confirmed there then. */
function confirmed_with(document: Document, { at: pointer, figure }: Keep): Json {
  const before = at(document, pointer);
  const others = Array.isArray(before) ? before : typeof before === "string" ? [before] : [];
  return others.length ? [...others, figure] : figure;
}

/** A button that keeps the figure that was asked for; nothing where none was. */
export function keep_it(
  document: Document,
  keep: Keep | undefined,
  put: (pointer: string, value: Json) => void,
): TemplateResult | typeof nothing {
  if (!keep) return nothing;
  const put_it = () => put(keep.at, confirmed_with(document, keep));
  return html`<button type="button" @click=${put_it}>It is really so: keep it</button>`;
}
