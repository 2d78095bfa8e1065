// What has changed since a batch was begun: its weights stay, and she says whether it goes on by them.
import { html, nothing, type TemplateResult } from "lit";
import { start_anew } from "../documents/bench";
import { redraw } from "../documents/drawing";
import { state } from "../documents/state";
import { danger_sign } from "../figures/dangers";
import { go_on, to_id } from "../forms/form_parts";
import { is_no_answer, wording } from "../program/api";
import { dangers_in, type AtHand } from "./at_bench";
import { differences } from "./differences";

const most_told = 3;

/** By the batch's id, the mark that she has gone on weighing in spite of. */
const passed_over = new Map<string, string>();

let is_asked_again = "";

interface Changed {
  told: string[]; // what differs
  dangers: string[]; // that the run as it stands now draws
  refusal?: string; // why it gives no weights
  mark: string; // of this change
}

function changed(hand: AtHand): Changed | undefined {
  const { kept, weights, planned, of } = hand;
  if (!kept || kept.finished_at || !weights) return undefined;
  const { complaint } = state;
  if (complaint && !is_no_answer(complaint)) {
    return { told: [], dangers: [], refusal: "what is wrong stands above", mark: wording(complaint) };
  }
  if (!planned) {
    if (!state.plan) return undefined;
    const refusal = of > 1 ? `the run has no batch ${hand.number} any more` : "the run has no such batch any more";
    return { told: [], dangers: [], refusal, mark: refusal };
  }
  if (planned.mark === weights.mark) return undefined;
  const told = differences(weights.vessels, planned.vessels);
  const known = new Set(dangers_in(weights).map(({ text }) => text));
  const dangers = dangers_in(planned).flatMap(({ text }) => (known.has(text) ? [] : [text]));
  return told.length || dangers.length ? { told, dangers, mark: planned.mark } : undefined;
}

export function changed_since(hand: AtHand): TemplateResult | typeof nothing {
  const found = changed(hand);
  const { kept } = hand;
  if (!found || !kept) return nothing;
  if (passed_over.get(kept.id) === found.mark) return reminder(kept.id);
  const is_red = found.dangers.length > 0 || found.refusal !== undefined;
  return html`<div class="changed ${is_red ? "red" : ""}" role=${is_red ? "alert" : "status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${what_changed(found)}
    </p>
    ${all_told(found)}
    ${found.dangers.map((text) => html`<p class="danger"><strong>${danger_sign}</strong> As it is now: ${text}</p>`)}
    ${is_asked_again === kept.id ? asked_again(hand) : buttons(hand, found)}
  </div>`;
}

function what_changed({ told, refusal }: Changed): TemplateResult {
  if (refusal !== undefined) return html`<strong>No weights can be given as it is now:</strong> ${refusal}.`;
  const more = told.length - most_told;
  return html`${told.slice(0, most_told).join("; ")}${more > 0 ? ` and ${more} more.` : "."}`;
}

const all_told = ({ told }: Changed): TemplateResult | typeof nothing =>
  told.length > most_told
    ? html`<details>
        <summary>All ${told.length} changes</summary>
        <p>${told.join("; ")}.</p>
      </details>`
    : nothing;

function reminder(id: string): TemplateResult {
  return html`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${() => (passed_over.delete(id), redraw())}>What has changed</button>
  </div>`;
}

function buttons(hand: AtHand, { mark, refusal }: Changed): TemplateResult {
  const { id } = hand.kept!;
  const pass = () => {
    passed_over.set(id, mark);
    redraw();
    go_on(to_id("run-title"));
  };
  return html`<div class="row">
    <button type="button" class="strong" @click=${pass}>Keep weighing</button>
    ${
      refusal === undefined
        ? html`<button type="button" @click=${() => ask_again(hand)}>Start this batch anew</button>`
        : nothing
    }
  </div>`;
}

/** At once where nothing is ticked. */
function ask_again(hand: AtHand): void {
  const { ticks, weigh_cup, id } = hand.kept!;
  if (!Object.keys(ticks).length && weigh_cup === undefined) return void start_anew(hand.number);
  is_asked_again = id;
  redraw();
  go_on(to_id("keep-weighing"));
}

function asked_again(hand: AtHand): TemplateResult {
  const many = Object.keys(hand.kept!.ticks).length;
  const close = () => {
    is_asked_again = "";
    redraw();
    go_on(to_id("run-title"));
  };
  const start = () => {
    close();
    void start_anew(hand.number);
  };
  return html`<p>
      <b>${many === 1 ? "The 1 tick" : `All ${many} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${close}>Keep weighing</button>
      <button type="button" @click=${start}>Put the ticks away and start anew</button>
    </div>`;
}
