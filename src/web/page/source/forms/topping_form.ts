// What a run says of its topping: its size by one way or several, its whip, and what holds and paces it.
import { html, nothing, type TemplateResult } from "lit";
import { value_at } from "../documents/editing";
import { undo } from "../documents/history";
import { open_up, state } from "../documents/state";
import { figure } from "../figures/figure";
import type { Document } from "../program/json";
import { trimmed, volume } from "../program/numbers";
import { at, with_value } from "../program/pointer";
import type { Topping } from "../program/topping";
import { bead_form, blank_beads } from "./bead_form";
import { blank_cup, cup_choice } from "./cups";
import { field, id_of } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of } from "./form_lists";
import { choice_field, change, change_whole, folded, part, said_at, to_id } from "./form_parts";
import { has_studio } from "./shared";
import { want } from "./wanted";
import { warmth_form } from "./warmth_form";

export const has_topping = (): boolean => at(state.run.now, "/pipe") !== undefined;

/** Everything is left blank, and nothing is guessed; what the studio says of losses is left to it. */
export function add_topping(): void {
  const topped = (run: Document) => {
    const piped = with_value(run, "/pipe", { formula: "", fills_headspace: "", whip: blank_cup() });
    return has_studio() ? piped : with_value(piped, "/losses/pipe", { bag: "", bowl_and_whisk: "" });
  };
  open_up("set-up pipe");
  change_whole("run", "Topping added", topped, to_id("lane-pipe"));
}

/** With its losses and whippings, and with the pot that both batters had their lye from. */
function without_topping(run: Document): Document {
  const is_alone = Object.keys((at(run, "/batch") ?? {}) as Document).length === 1;
  const whippings = at(run, "/batch/whippings") !== undefined && is_alone ? "/batch" : "/batch/whippings";
  return ["/pipe", "/losses/pipe", "/lye_pot", whippings].reduce(
    (left, name) => (at(left, name) === undefined ? left : with_value(left, name, undefined)),
    run,
  );
}

function take_topping_away(): void {
  change_whole("run", "Topping removed", without_topping, to_id("topping-back"));
}

/** Just taken away, it is one tap to have it again. */
export function topping_back(): TemplateResult | typeof nothing {
  const before = state.past.at(-1)?.run?.now;
  if (!before || at(before, "/pipe") === undefined || has_topping()) return nothing;
  return html`<button type="button" id="topping-back" @click=${undo}>Bring the topping back</button>`;
}

/** What is seldom said, and the way out. */
export function topping_rest(): TemplateResult {
  return html`${pace()} ${warmth_form("pipe")}
    <p class="choice"><button type="button" @click=${take_topping_away}>Take the topping away</button></p>`;
}

const sizes = ["trials", "beads", "envelope"];

export function size_form(pipe?: Topping): TemplateResult {
  if (sizes.every((one) => value_at("run", `/pipe/${one}`) === undefined))
    want("run", "/pipe", `${id_of("run", "/pipe/trials")}-add`, "How large the topping is");
  return html`<h3>How large is the topping?</h3>
    ${said_at("run", "/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${part({
        at: "/pipe/trials",
        name: "the trials",
        title: "Trials piped on paper",
        add: "Weigh trials piped on paper",
        blank: { weighed: [""], weigh_cup: blank_cup() },
        body: trials,
      })}
      ${part({
        at: "/pipe/envelope",
        name: "the outline",
        title: "Its outline",
        add: "Measure its outline",
        blank: { form: "", diameter: "", height: "", soap_share: "" },
        body: outline,
      })}
    </div>
    ${part({
      at: "/pipe/beads",
      name: "the beads",
      title: "Beads from a tip",
      add: "Calculate it from the tip and its moves",
      blank: blank_beads,
      body: () => bead_form(pipe),
    })}
    ${pipe ? compared(pipe) : nothing}`;
}

function trials(): TemplateResult {
  const weighed = { at: "/pipe/trials/weighed", least: 1 };
  return html`<div class="trials">
      ${rows_of(weighed).map(
        (_, i) =>
          html`<div class="row" id=${item_id(weighed, i)}>
            ${field({ label: `Trial ${i + 1}`, at: `${weighed.at}/${i}`, unit: "g", short: true })}
            ${item_buttons(weighed, i, `trial ${i + 1}`)}
          </div>`,
      )}
    </div>
    ${add_button(weighed, "One more trial", () => add_to(weighed, "", "trial"))}
    <div class="row">
      ${field({ label: "Weigh-cup of the trials, net", at: "/pipe/trials/weigh_cup/net", unit: "g" })}
      ${cup_choice("/pipe/trials/weigh_cup")}
    </div>
    ${said_at("run", "/pipe/trials/weigh_cup")} ${known_better()}`;
}

/** What batches tell of it, say, in place of the trials. */
const known_better = (): TemplateResult =>
  html`<div class="row">
    ${field({
      label: "Volume of one, where you know it better",
      at: "/pipe/trials/volume_each",
      unit: "ml",
      optional: true,
      hint: "Above its foot, as your batches tell it. It is used in place of the trials; empty it to go by them again.",
    })}
  </div>`;

function outline(): TemplateResult {
  const here = "/pipe/envelope";
  const chosen = value_at("run", `${here}/form`) as string;
  return html`${choice_field({
      question: "Form of the outline",
      at: `${here}/form`,
      chosen,
      answers: [
        ["cone", "Cone"],
        ["dome", "Dome"],
      ],
      puts: (to) => to,
    })}
    <div class="row">
      ${field({ label: "Diameter", at: `${here}/diameter`, unit: "mm", short: true })}
      ${field({ label: "Height", at: `${here}/height`, unit: "mm", short: true })}
      ${field({
        label: "Share that is soap, not air",
        at: `${here}/soap_share`,
        unit: "%",
        short: true,
        hint: "Topping, not air between its ridges.",
      })}
    </div>`;
}

type ShapeWay = "given" | "trials" | "beads" | "envelope";

const way_words: Record<ShapeWay, string> = {
  given: "As you know it",
  trials: "By weighed trials",
  beads: "By beads",
  envelope: "By its outline",
};

/** The ways side by side, and how her hand differs from the geometry. */
function compared(pipe: Topping): TemplateResult | typeof nothing {
  const by = pipe.visible_by;
  if (!by) return nothing;
  const ways = (["given", "trials", "beads", "envelope"] as const)
    .map((way) => ({ way, ml: by[`${way}_ml`] }))
    .filter((one): one is { way: ShapeWay; ml: number } => typeof one.ml === "number");
  const counts = (i: number) => (ways.length < 2 ? undefined : i === 0 ? "this one counts" : "for comparison");
  return html`<h4>${ways.length < 2 ? "Visible topping" : "The ways compared, visible shape alone"}</h4>
    ${ways.map(({ way, ml }, i) =>
      figure({
        key: `pipe.by.${way}`,
        label: way_words[way],
        note: counts(i),
        shown: volume(state.units, ml),
        of: `pipe.visible_by.${way}_ml`,
      }),
    )}
    ${hand(pipe)}`;
}

function hand(pipe: Topping): TemplateResult | typeof nothing {
  const found = pipe.visible_by?.suggested_correction;
  if (!found || state.is_old) return nothing;
  const times = trimmed(found.correction, 2);
  const at_hand = "/pipe/beads/tip/hand";
  const is_own = typeof value_at("run", "/pipe/beads/tip") === "object";
  const can_keep = is_own && at(state.run.now, `${at_hand}/correction`) !== found.correction;
  const keep = () => change("run", "correction kept", at_hand, { correction: found.correction, trials: found.trials });
  return html`<p>
      Your hand lays down ${times} times the computed beads (${found.trials}
      ${found.trials === 1 ? "trial" : "trials"}): keep that as the tip's hand
      factor${is_own ? "" : ", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${can_keep ? html`<button type="button" @click=${keep}>Keep ${times} for my tip</button>` : nothing}`;
}

export function whip_form(pipe?: Topping): TemplateResult {
  return html`<h3>The whip planned for</h3>
    <div class="row">
      ${field({ label: "Weigh-cup, net", at: "/pipe/whip/net", unit: "g", term: "weigh_cup" })}
      ${cup_choice("/pipe/whip")}
    </div>
    ${said_at("run", "/pipe/whip")}
    ${pipe?.loads ? html`<p class="aside of-plan">${pipe.loads} bag loads.</p>` : nothing}`;
}

function pace(): TemplateResult {
  const here = "/pipe/pace";
  const short = (label: string, key: string, unit: string, optional = false) =>
    field({ label, at: `${here}/${key}`, unit, optional, short: true });
  return folded({
    name: "pace",
    pointers: [here],
    summary: "Piping speed",
    body: () =>
      part({
        at: here,
        name: "the pace",
        title: "The pace",
        add: "Add your piping speed",
        blank: { open_time: "", time_per_piece: "" },
        body: () =>
          html`<div class="row">
            ${short("Can be piped for", "open_time", "min")} ${short("To pipe one", "time_per_piece", "s")}
            ${short("To change the bag", "time_per_bag_change", "s", true)}
          </div>`,
      }),
  });
}
