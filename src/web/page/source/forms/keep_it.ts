// A measure far from usual is asked once: the answer "it is really so" names it beside itself.
import { html, nothing, type TemplateResult } from "lit";
import type { Document, Json } from "../program/json";
import { at } from "../program/pointer";

const proposed = /put "confirmed": ("(?:[^"\\]|\\.)*")/;

/** What the complaint at `field` proposes to keep: where it is confirmed, and all that then is. */
function kept(document: Document, field: string, said: string): { pointer: string; value: Json } | undefined {
  const named = proposed.exec(said)?.[1];
  if (named === undefined) return undefined;
  const figure = JSON.parse(named) as string;
  const here = field === "/" ? document : at(document, field);
  const is_object = here !== null && typeof here === "object" && !Array.isArray(here) && !/ beside "/.test(said);
  const holder = is_object ? field.replace(/^\/$/, "") : field.slice(0, field.lastIndexOf("/"));
  const before = at(document, `${holder}/confirmed`);
  const others = Array.isArray(before) ? before : typeof before === "string" ? [before] : [];
  return { pointer: `${holder}/confirmed`, value: others.length ? [...others, figure] : figure };
}

/** A button that keeps the figure that was asked for; nothing where none was. */
export function keep_it(
  document: Document,
  field: string,
  said: string,
  put: (pointer: string, value: Json) => void,
): TemplateResult | typeof nothing {
  const found = kept(document, field, said);
  if (!found) return nothing;
  return html`<button type="button" @click=${() => put(found.pointer, found.value)}>It is really so: keep it</button>`;
}
