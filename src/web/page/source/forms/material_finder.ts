// A material by its name: one of the run, a fat that is known, or whatever she calls it.
import { html, nothing, type TemplateResult } from "lit";
import { state, update } from "../documents/state";
import { name_with, plain } from "./fat_ids";

/** Of the run, as prices call them. */
export const materials = (): string[] => state.plan?.piece.cost?.materials.map((one) => one.name) ?? [];

/** A fat goes by its id where materials are listed. */
export const called = (name: string): string => state.fats.find((one) => one.id === name)?.name ?? name;

interface Finder {
  key: string; // no other form has it
  label: string;
  offers: string[]; // before anything is typed
  among?: "fats"; // else whatever the run is made of, too
  taken: (name: string) => boolean; // it stands there already
  take: (name: string) => void;
}

const most_shown = 8;

export function material_finder({ key, label, offers, among, taken, take }: Finder): TemplateResult {
  const id = `find-${key}`;
  const text = state.finding?.key === key ? state.finding.text : "";
  const found = (text.trim() ? found_by(text, among) : offers).filter((name) => !taken(name));
  const chosen = (name: string) => {
    update({ finding: undefined });
    take(name);
  };
  const own = text.trim();
  const is_new = own !== "" && !taken(own) && !found.some((name) => plain(called(name)) === plain(own));
  const entered = () => {
    if (!own) return;
    const whole = found.find((name) => plain(called(name)) === plain(own) || plain(name) === plain(own));
    const only = found.length === 1 ? found[0] : undefined;
    if (whole ?? only ?? is_new) chosen(whole ?? only ?? own);
  };
  return html`<div class="picker" role="group" aria-labelledby="${id}-label">
    <p class="question" id="${id}-label">${label}</p>
    <div class="field">
      <label for=${id}>Find it by its name</label>
      <input
        id=${id}
        .value=${text}
        @input=${(event: Event) => update({ finding: { key, text: (event.target as HTMLInputElement).value } })}
        @keydown=${(event: KeyboardEvent) => {
          if (event.key === "Enter") entered();
        }}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${found
        .slice(0, most_shown)
        .map((name) => html`<button type="button" @click=${() => chosen(name)}>${called(name)}</button>`)}
      ${is_new ? html`<button type="button" @click=${() => chosen(own)}>Add "${own}"</button>` : nothing}
    </div>
    ${found.length > most_shown ? html`<p class="hint">${found.length - most_shown} more: type a part of the name.</p>` : nothing}
  </div>`;
}

/** Those of the run first. */
function found_by(text: string, among?: "fats"): string[] {
  const of_run = among ? [] : materials();
  const words = plain(text).split(/\s+/).filter(Boolean);
  const fats = state.fats.filter((fat) => name_with(fat, text) !== undefined).map(({ id }) => id);
  const has_all = (name: string) => words.every((word) => plain(called(name)).includes(word));
  return [...new Set([...of_run.filter((name) => has_all(name) || fats.includes(name)), ...fats])];
}
