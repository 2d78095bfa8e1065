// Weigh-cups: the studio's, by name, and which of them a reading is of.
import { html, nothing, type TemplateResult } from "lit";
import { text_at, value_at } from "../documents/editing";
import type { Document, Json } from "../program/json";
import { escaped } from "../program/pointer";
import { field } from "./field";
import { change, one_of, to_field } from "./form_parts";
import { has_studio } from "./shared";

const cups = (): string[] => Object.keys((value_at("studio", "/cups") ?? {}) as Document);

/** A reading that is still to be taken; of a cup of the studio its volume is known. */
export const blank_cup = (): Json =>
  cups().length === 1 ? { net: "" } : cups().length ? { cup: "", net: "" } : { holds: "", net: "" };

const another = "\u0000another"; // no cup is called that

/** What the cup of the reading at `here` holds, or which of the studio's it was. */
export function cup_choice(here: string, label = "Cup holds"): TemplateResult {
  const holds = `${here}/holds`;
  const names = cups();
  if (value_at("run", holds) !== undefined || !names.length)
    return html`${field({ label, at: holds, unit: "ml", short: true })}${names.length ? back_to_studio(here) : nothing}`;
  const take = (name: string) =>
    name === another
      ? change("run", "Another cup", here, { ...without_cup(here), holds: "" }, to_field("run", holds))
      : change("run", `Cup: ${name}`, here, { ...without_cup(here), cup: name });
  const volume = (name: string) => text_at("studio", `/cups/${escaped(name)}`);
  return one_of({
    label: "Which cup",
    at: `${here}/cup`,
    answers: [...names.map((name): [string, string] => [name, `${name}, ${volume(name)}`]), [another, "Another cup"]],
    unsaid: "choose ...",
    chosen: text_at("run", `${here}/cup`) || (names.length === 1 ? names[0] : ""),
    take,
  });
}

function without_cup(here: string): Document {
  const { cup: _, holds: __, ...rest } = (value_at("run", here) ?? {}) as Document;
  return rest;
}

const back_to_studio = (here: string): TemplateResult =>
  html`<button type="button" @click=${() => change("run", "A cup of the studio", here, without_cup(here))}>
    A cup of my studio
  </button>`;

/** In the studio: each by its name, and one more. */
export function cup_rows(): TemplateResult {
  if (!has_studio())
    return html`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`;
  return html`<div class="row">
    ${cups().map((name) => field({ of: "studio", label: `${name} holds`, at: `/cups/${escaped(name)}`, unit: "ml", short: true, optional: true }))}
    ${add_cup()}
  </div>`;
}

function add_cup(): TemplateResult {
  const add = () => {
    const input = document.getElementById("new-cup") as HTMLInputElement;
    const name = input.value.trim() || free_name();
    input.value = "";
    change("studio", `${name} added`, `/cups/${escaped(name)}`, "", to_field("studio", `/cups/${escaped(name)}`));
  };
  return html`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${free_name()} />
    </div>
    <button type="button" @click=${add}>Add the cup</button>`;
}

function free_name(): string {
  for (let i = 1; ; ++i) {
    const name = i === 1 ? "weigh-cup" : `weigh-cup ${i}`;
    if (!cups().includes(name)) return name;
  }
}
