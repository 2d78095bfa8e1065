// What a run says of its batches: how large one may be, and how many cavities are filled.
import { html, nothing, type TemplateResult } from "lit";
import { text_at, value_at, without } from "../documents/editing";
import type { Document, Json } from "../program/json";
import { is_cut } from "./decoration";
import { field } from "./field";
import { choice_field, change, folded, said_at } from "./form_parts";
import { has_topping } from "./topping_form";

const here = "/batch";
export const owned = (of: string): string => `${of}/moulds_owned`;

/** Nothing of it must be said. */
export function batch_form(): TemplateResult {
  return folded({
    name: "batches",
    pointers: [here],
    summary: `Batches${said()}`,
    body: () =>
      html` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${said_at("run", here)}
        <div class="row">${largest()} ${whippings()}</div>
        ${choice_field({
          question: "Cavities at each filling",
          at: here,
          asked_at: `${here}/fill`,
          chosen: value_at("run", `${here}/fill`) === "full" ? "full" : "needed",
          answers: [
            ["needed", "As many as are needed"],
            ["full", "All of them, the rest to stock"],
          ],
          puts: (to) => with_key("fill", to === "full" ? to : undefined),
        })}`,
  });
}

/** What is said already, so that it need not be unfolded to be seen. */
function said(): string {
  const [pieces, casts] = [`${here}/pieces`, `${here}/casts`].map((pointer) => text_at("run", pointer));
  const all = [pieces && `at most ${pieces} in a batch`, casts && `at most ${casts} casts in a batch`].filter(Boolean);
  return all.length ? `: ${all.join(", ")}` : "";
}

/** The part with this said in it, or no part where nothing is. */
function with_key(key: string, value: Json | undefined): Json | undefined {
  const rest = without("run", here, [key]);
  const all: Document = value === undefined ? rest : { ...rest, [key]: value };
  return Object.keys(all).length ? all : undefined;
}

type Counted = "pieces" | "casts";

/** In pieces, or of what is cut in loaves: never in both. */
function largest(): TemplateResult {
  const has_casts = value_at("run", `${here}/casts`) !== undefined;
  const as_count = (key: Counted, label: string) =>
    field({ label, at: `${here}/${key}`, count: true, optional: true, takes_part: true, short: true, term: "batch" });
  if (!is_cut())
    return has_casts ? as_count("casts", "Most casts in a batch") : as_count("pieces", "Most pieces in a batch");
  return value_at("run", `${here}/pieces`) !== undefined
    ? html`${as_count("pieces", "Most bars in a batch")}
        <button type="button" @click=${by_loaves}>Count loaves instead</button>`
    : as_count("casts", "Most loaves in a batch");
}

/** How many loaves so many bars are is not guessed. */
function by_loaves(): void {
  change("run", "Counted in loaves", here, with_key("pieces", undefined));
}

function whippings(): TemplateResult | typeof nothing {
  const at = `${here}/whippings`;
  if (!has_topping() && value_at("run", at) === undefined) return nothing;
  return field({
    label: "Whippings a batch",
    at,
    count: true,
    optional: true,
    takes_part: true,
    short: true,
    hint: "Each weighed out by itself; else one.",
  });
}
