// What is the same in every run: said by the studio, unless the run says it itself. A field stands for whichever says
// it, so that an edit goes where it belongs.
import { html, nothing, type TemplateResult } from "lit";
import { make_studio } from "../documents/beside";
import { edit_several, value_at } from "../documents/editing";
import type { DocumentId } from "../documents/file_types";
import { asked_name } from "../documents/run_names";
import { announce, state } from "../documents/state";
import type { Document, Json } from "../program/json";
import { at, escaped, with_value } from "../program/pointer";
import { field, type FieldOptions } from "./field";

/** Where the run says it, and where the studio does. */
export interface Shared {
  run: string;
  studio: string;
}

export const has_studio = (): boolean => state.beside.studio !== undefined;

const in_run = ({ run }: Shared): Json | undefined => value_at("run", run);
const in_studio = ({ studio }: Shared): Json | undefined => value_at("studio", studio);

/** The document and the place that a field for it stands for. */
export function place_of(one: Shared): { of: DocumentId; at: string } {
  return in_run(one) === undefined && has_studio() ? { of: "studio", at: one.studio } : { of: "run", at: one.run };
}

/** What counts, whoever says it. */
export const said = (one: Shared): Json | undefined => in_run(one) ?? in_studio(one);

/** A field that stands for whichever of the two says it. */
export const shared_field = (one: Shared, options: Omit<FieldOptions, "of" | "at">): TemplateResult =>
  field({ ...options, ...place_of(one) });

const is_empty = (value: Json | undefined): boolean =>
  value === undefined || value === "" || (value !== null && typeof value === "object" && !Object.keys(value).length);

/** What of it is said in any depth: a name within the place, and its value. */
function parts_of(value: Json | undefined, below = ""): [string, Json][] {
  if (value === undefined || is_empty(value)) return [];
  if (value === null || typeof value !== "object" || Array.isArray(value)) return [[below, value]];
  return Object.entries(value).flatMap(([key, one]) => parts_of(one, `${below}/${escaped(key)}`));
}

/** With nothing left that holds nothing. */
export function without_empty(document: Document, pointer: string): Document {
  for (let here = pointer; here; here = here.slice(0, here.lastIndexOf("/")))
    if (at(document, here) !== undefined && is_empty(at(document, here)))
      document = with_value(document, here, undefined);
  return document;
}

export const taken_out = (run: Document, pointers: string[]): Document =>
  pointers.reduce((now, pointer) => without_empty(with_value(now, pointer, undefined), pointer), run);

type Kept = [from: string, to: string, value: Json];

/** What the run says of them and the studio does not say otherwise. */
function kept_of(all: Shared[]): Kept[] {
  const kept = new Map<string, Json>();
  return all.flatMap((one) =>
    parts_of(in_run(one)).flatMap(([below, value]): Kept[] => {
      const to = one.studio + below;
      const there = kept.get(to) ?? value_at("studio", to);
      const is_free = is_empty(there) || String(there).startsWith("?") || there === value;
      if (!is_free) return [];
      kept.set(to, value);
      return [[one.run + below, to, value]];
    }),
  );
}

/** Moved from the run to the studio, which is begun for it where there is none. */
export async function keep_in_studio(all: Shared[]): Promise<void> {
  if (!has_studio()) await make_studio();
  const kept = kept_of(all);
  edit_several([
    ["studio", (studio) => kept.reduce((now, [, to, value]) => with_value(now, to, value), studio)],
    [
      "run",
      (run) =>
        taken_out(
          run,
          kept.map(([from]) => from),
        ),
    ],
  ]);
  announce("Kept in the studio");
}

/** The studio's figures are written into the run, to be changed there. */
function say_in_run(all: Shared[]): void {
  const copied = all.flatMap((one) =>
    parts_of(in_studio(one)).map(([below, value]): [string, Json] => [one.run + below, value]),
  );
  const put = (run: Document) =>
    copied.reduce((now, [to, value]) => (at(now, to) === undefined ? with_value(now, to, value) : now), run);
  edit_several([["run", put]]);
  announce("Said in this run only");
}

function leave_to_studio(all: Shared[]): void {
  const pointers = all.flatMap((one) =>
    parts_of(in_run(one))
      .filter(([below]) => value_at("studio", one.studio + below) !== undefined)
      .map(([below]) => one.run + below),
  );
  edit_several([["run", (run) => taken_out(run, pointers)]]);
  announce("Taken from the studio again");
}

const says = (value: Json | undefined): boolean => parts_of(value).length > 0;

/** Who says what stands below, and the ways to have it said elsewhere; nothing as long as there is no studio. */
export function who_says(what: string, all: Shared[]): TemplateResult | typeof nothing {
  if (!has_studio()) return nothing;
  const own = all.some((one) => says(in_run(one)));
  const lent = all.some((one) => says(in_studio(one)));
  const button = (words: string, act: () => void) =>
    html`<button type="button" aria-label="${what}: ${words}" @click=${act}>${words}</button>`;
  return html`<span class="who-says">
    <small>${own ? "in this run only" : lent ? "from the studio" : "kept in the studio"}</small>
    ${own && kept_of(all).length ? button("Keep in my studio", () => void keep_in_studio(all)) : nothing}
    ${own && lent ? button("As in the studio", () => leave_to_studio(all)) : nothing}
    ${!own && lent ? button("Otherwise in this run", () => say_in_run(all)) : nothing}
  </span>`;
}

/** How a studio names that mould, as it stands there or as the run has it. */
export function mould_key(name: string): string {
  const all = Object.keys((value_at("studio", "/moulds_owned") ?? {}) as Document);
  const listed = state.files?.moulds;
  return all.find((one) => asked_name(one, listed) === asked_name(name, listed)) ?? name;
}
