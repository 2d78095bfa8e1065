// What a batter of the run takes of what stands ready in the studio: lye solutions in place of dry alkali, and a blend
// of fats. Only what goes with the formula is offered, so that a solution of the other alkali cannot be taken.
import { html, nothing, type TemplateResult } from "lit";
import { list_at, text_at, value_at } from "../documents/editing";
import type { Slot } from "../documents/file_types";
import { state } from "../documents/state";
import { listed } from "../figures/batches";
import type { Document, Json } from "../program/json";
import { at } from "../program/pointer";
import { complaint_on, field, id_of, said_beneath } from "./field";
import { change, choice_field, folded, to_field } from "./form_parts";
import { names_in } from "./named_rows";
import { fats_in_blend, solution_called } from "./stands_ready";

const lye_at = (slot: Slot): string => `/${slot}/lye_from`;
const blend_at = (slot: Slot): string => `/${slot}/blend`;

/** Nothing as long as nothing stands ready, and nothing of it is named. */
export function taken_ready(slot: Slot): TemplateResult | typeof nothing {
  const has_lye = names_in("studio", "/lye_solutions").length > 0 || value_at("run", lye_at(slot)) !== undefined;
  const has_blend = names_in("studio", "/blends").length > 0 || value_at("run", blend_at(slot)) !== undefined;
  if (!has_lye && !has_blend) return nothing;
  const taken = [...solutions_of(slot), blend_of(slot)].filter(Boolean).join(", ");
  return folded({
    name: `/${slot} ready`,
    pointers: [lye_at(slot), blend_at(slot)],
    summary: `From what stands ready${taken && `: ${taken}`}`,
    body: () => html`${has_lye ? lye(slot) : nothing} ${has_blend ? blend(slot) : nothing}`,
  });
}

/** One name, or a list of them. */
function solutions_of(slot: Slot): string[] {
  const text = value_at("run", lye_at(slot));
  return typeof text === "string" ? [text] : list_at("run", lye_at(slot)).map(String);
}

const alkalis_of = (slot: Slot): string[] => list_at(slot, "/alkali").map((one) => String(at(one, "/alkali")));

function lye(slot: Slot): TemplateResult {
  const place = lye_at(slot);
  const id = id_of("run", place);
  const taken = solutions_of(slot);
  const alkalis = alkalis_of(slot);
  const all = [...new Set([...names_in("studio", "/lye_solutions"), ...taken])];
  const offered = all.filter((name) => taken.includes(name) || alkalis.includes(solution_called(name).alkali));
  const others = all.filter((name) => !offered.includes(name));
  const complaint = complaint_on("run", place);
  const turn = (name: string) => {
    const { alkali } = solution_called(name);
    const is_taken = taken.includes(name);
    const rest = taken.filter((one) => one !== name && (is_taken || solution_called(one).alkali !== alkali));
    const names = is_taken ? rest : [...rest, name];
    const value: Json | undefined = names.length > 1 ? names : names[0];
    change("run", `${name}: ${is_taken ? "no" : "yes"}`, place, value);
  };
  return html`<div class="field asked ${complaint ? "wants" : ""}">
    <p class="question" id="${id}-label">
      Lye solution that is weighed in place of dry ${alkalis.length ? listed(alkalis) : "alkali"}
    </p>
    <div class="choice" role="group" id=${id} tabindex="-1" aria-labelledby="${id}-label">
      ${offered.map(
        (name) =>
          html`<button type="button" aria-pressed=${taken.includes(name) ? "true" : "false"} @click=${() => turn(name)}>
            ${solution_called(name).words}
          </button>`,
      )}
    </div>
    ${said_beneath(id, complaint, taken.length ? undefined : "None chosen: the alkali is weighed dry.")}
    ${others.length ? html`<p class="hint">Of another alkali than this formula's: ${others.map((one) => solution_called(one).words).join(", ")}.</p>` : nothing}
  </div>`;
}

const blend_of = (slot: Slot): string => {
  const value = value_at("run", blend_at(slot));
  return typeof value === "string" ? value : text_at("run", `${blend_at(slot)}/name`);
};

/** The formula has each of its fats, by its id or its name. */
function fits(slot: Slot, name: string): boolean {
  const of_formula = (list_at(slot, "/fats") as Document[]).map(({ fat }) => String(fat));
  const names = new Set(
    of_formula.flatMap((fat) => {
      const known = state.fats.find(({ id }) => id === fat);
      return known ? [known.id, known.name, known.inci, ...known.also_called] : [fat];
    }),
  );
  const small = new Set([...names].map((one) => one.toLowerCase()));
  return fats_in_blend(name).every((fat) => small.has(fat.toLowerCase()));
}

const singly = "\u0000singly"; // no blend is called that

function blend(slot: Slot): TemplateResult {
  const place = blend_at(slot);
  const now = blend_of(slot);
  const all = [...new Set([...names_in("studio", "/blends"), ...(now ? [now] : [])])];
  const offered = all.filter((name) => name === now || fits(slot, name));
  const others = all.filter((name) => !offered.includes(name));
  const has_share = value_at("run", `${place}/share`) !== undefined;
  return html`${choice_field<string>({
    question: "Blend of fats that is weighed",
    at: place,
    chosen: now || singly,
    answers: [[singly, "None: each fat by itself"], ...offered.map((name): [string, string] => [name, name])],
    puts: (to) => (to === singly ? undefined : to),
    hint: others.length ? `With fats that this formula has not: ${others.join(", ")}.` : undefined,
  })}
  ${
    !now
      ? nothing
      : has_share
        ? html`<div class="row">
            ${field({
              label: `${now}: share of all fats of the formula`,
              at: `${place}/share`,
              unit: "%",
              optional: true,
              short: true,
            })}
          </div>`
        : html`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${() =>
                change("run", "Its share", place, { name: now, share: "" }, to_field("run", `${place}/share`))}
            >
              Take a share of my own
            </button>`
  }`;
}
