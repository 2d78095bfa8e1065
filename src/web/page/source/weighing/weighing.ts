// What a run opens on: all that is weighed for one batch, in the order of the work.
import { html, nothing, type TemplateResult } from "lit";
import { follow_run_to_bench, is_waiting, ticked, told_is_read } from "../documents/bench";
import { redraw } from "../documents/drawing";
import { follow_run_to_record } from "../documents/record";
import { state } from "../documents/state";
import { pieces_of } from "../figures/batches";
import { explained } from "../figures/explained";
import { field } from "../forms/field";
import { choice } from "../forms/form_parts";
import type { Batter, Vessel } from "../program/answers";
import { per_cent } from "../program/numbers";
import { begin_part } from "../recording/begin_part";
import { at_hand, is_struck, type AtHand, type Weights } from "./at_bench";
import { batch_choice } from "./batch_choice";
import { batch_end } from "./batch_end";
import { changed_since } from "./changed_since";
import { dangers_above } from "./danger";
import { pipe_order, pour_order, whip_order } from "./orders";
import { poured_by } from "./poured_by";
import { to_know, vessel_rows } from "./vessel_rows";
import { weigh_cup } from "./weigh_cup";

type Part = "pour" | "pipe" | "rest";

let narrow_part: Part = "pour"; // the one that a narrow screen shows

/** Its weights stay, whatever becomes of the plan. */
export const is_begun = (): boolean => at_hand().kept !== undefined;

/** `show_record` leads to what is noted of the batch. */
export function weighing(show_record: () => void): TemplateResult {
  follow_run_to_bench();
  follow_run_to_record();
  const hand = at_hand();
  const is_known = state.bench.version !== undefined || state.bench.failed !== undefined;
  return html`<section class="weighing" data-part=${narrow_part} aria-labelledby="run-title">
    ${head(hand)} ${told(hand)} ${poured_by(hand)}
    ${
      hand.weights && is_known
        ? html`${dangers_above(hand.weights)} ${changed_since(hand)} ${weights_of(hand, hand.weights, show_record)}`
        : nothing
    }
    ${hand.weights && is_known && !is_begun_at_lye(hand) ? begin_record(hand, hand.weights, show_record) : nothing}
    ${batch_end(hand)}
  </section>`;
}

function head(hand: AtHand): TemplateResult {
  const { weights } = hand;
  return html`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${weights?.plan.run ?? String(state.run.now.name ?? "")}</h1>
    ${weights ? html`<p class="which">${which_batch(hand, weights)}</p>` : nothing}
    <div class="row">
      ${field({ label: "Pieces to sell", at: "/sell", count: true, short: true })} ${batch_choice(hand)}
    </div>
  </div>`;
}

function which_batch(hand: AtHand, { plan, batch, vessels }: Weights): TemplateResult {
  const rows = vessels.flatMap((one) => one.rows);
  const done = rows.filter(({ key }) => ticked(hand.number, key).is_done).length;
  const which = hand.of > 1 ? `Batch ${hand.number} of ${hand.of}: ` : "";
  return html`<b>${which}${pieces_of(plan, batch)}</b>, ${done} of ${rows.length} weighed`;
}

/** What stands between her and the program. */
function told({ number, weights }: AtHand): TemplateResult {
  const { failed, unsent, told, complaints, version } = state.bench;
  const is_unsent = unsent !== undefined && is_waiting(number);
  return html`<div class="bench-told" role="status">
    ${
      told?.batch === number
        ? html`<p class="alarm">${told.words}</p>
            <button type="button" @click=${told_is_read}>I have looked</button>`
        : nothing
    }
    ${
      is_unsent
        ? html`<p class="alarm">
            <strong>Not kept yet:</strong> ${unsent}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`
        : nothing
    }
    ${
      failed !== undefined
        ? html`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${failed}.</p>`
        : nothing
    }
    ${complaints.map((line) => html`<p class="alarm">${line}</p>`)}
    ${
      weights || failed !== undefined
        ? nothing
        : html`<p class="hint">
            ${state.complaint ? "No weights before this is corrected." : version === undefined ? "Reading ..." : ""}
          </p>`
    }
  </div>`;
}

function weights_of(hand: AtHand, weights: Weights, show_record: () => void): TemplateResult {
  const { vessels } = weights;
  const of = (batter?: Vessel["batter"]) => vessels.filter((one) => one.batter === batter);
  const rest = of();
  const ahead = rest.filter((one) => one.day_before);
  const after = rest.filter((one) => !one.day_before);
  const has_topping = of("pipe").length > 0;
  const drawn = (some: Vessel[]) => some.map((one) => vessel_rows(hand, weights, one));
  return html`${narrow_choice(has_topping, rest)}
    <div class="batters ${has_topping ? "two" : ""}">
      ${part("ahead", "To have ready", drawn(ahead))}
      ${part("base", has_topping ? "Base" : "Batter", base(hand, weights, of("pour"), ahead, show_record))}
      ${
        has_topping
          ? part("topping", "Topping", [
              ...drawn(of("pipe")),
              topping_work(hand, weights),
              to_know(of("pipe"), superfat_of_topping(hand, weights)),
            ])
          : nothing
      }
      ${part("after", "At the end", drawn(after))}
    </div>`;
}

const is_lye = ({ vessel }: Vessel): boolean => vessel === "lye" || vessel === "lye_pot";

/** Once it is mixed, its record begins where her eyes are; before, at the end. */
function is_begun_at_lye(hand: AtHand): boolean {
  const of_base = (hand.weights?.vessels ?? []).filter((one) => is_lye(one) && one.batter !== "pipe");
  const rows = of_base.flatMap((one) => one.rows);
  return rows.length > 0 && rows.every(({ key }) => ticked(hand.number, key).is_done);
}

const begin_record = (hand: AtHand, { plan, batch, mark }: Weights, show: () => void): Drawn =>
  begin_part({
    number: hand.number,
    words: `${hand.of > 1 ? `batch ${hand.number} of ${hand.of}` : "this batch"}, ${pieces_of(plan, batch)}`,
    seen: mark,
    since: hand.kept?.begun_at,
    is_struck: is_struck(hand),
    is_due: is_begun_at_lye(hand),
    show,
  });

type Drawn = TemplateResult | typeof nothing;

const part = (name: string, title: string, inside: Drawn[]): Drawn =>
  inside.some((one) => one !== nothing)
    ? html`<div class="part-of ${name}">
        <h2 id="weigh-${name}">${title}</h2>
        ${inside}
      </div>`
    : nothing;

/** The line to pour to stands before the layers that it is divided into. */
function base(hand: AtHand, weights: Weights, vessels: Vessel[], ahead: Vessel[], show_record: () => void): Drawn[] {
  const is_layers = ({ vessel }: Vessel) => vessel === "layers";
  const drawn = (some: Vessel[]) => some.map((one) => vessel_rows(hand, weights, one));
  const before = vessels.filter((one) => !is_layers(one));
  const last_lye = before.map(is_lye).lastIndexOf(true);
  return [
    ...drawn(before.slice(0, last_lye + 1)),
    is_begun_at_lye(hand) ? begin_record(hand, weights, show_record) : nothing,
    ...drawn(before.slice(last_lye + 1)),
    pour_order(hand, weights),
    ...drawn(vessels.filter(is_layers)),
    to_know([...ahead, ...vessels], superfat_of_base(hand, weights)),
  ];
}

const superfat_told = (hand: AtHand, batters: Batter[], beside: Drawn = nothing): TemplateResult =>
  html`<p class=${is_struck(hand) ? "old" : ""}>
    <b>Superfat as weighed:</b> ${batters.map((one) => per_cent(one.superfat_percent.effective)).join(", ")} ${beside}
  </p>`;

const superfat_of_base = (hand: AtHand, { batch }: Weights): TemplateResult =>
  superfat_told(hand, [batch.pour], explained("superfat_as_weighed"));

const superfat_of_topping = (hand: AtHand, { batch }: Weights): TemplateResult =>
  superfat_told(hand, batch.pipe?.whippings ?? []);

const topping_work = (hand: AtHand, weights: Weights): TemplateResult =>
  html`${whip_order(hand, weights)} ${weigh_cup(hand, weights)} ${pipe_order(hand, weights)}`;

const rest_names: Partial<Record<Vessel["vessel"], string>> = { lye_pot: "Lye", melt: "Melt", dust: "Dust" };

/** On a narrow screen one part stands alone. */
function narrow_choice(has_topping: boolean, rest: Vessel[]): Drawn {
  const names = [...new Set(rest.flatMap(({ vessel }) => rest_names[vessel] ?? []))].join(", ").toLowerCase();
  const parts: [Part, string][] = [
    ["pour", has_topping ? "Base" : "Batter"],
    ...(has_topping ? [["pipe", "Topping"] as [Part, string]] : []),
    ...(names ? [["rest", names.replace(/^./, (letter) => letter.toUpperCase())] as [Part, string]] : []),
  ];
  if (parts.length < 2) return nothing;
  if (!parts.some(([one]) => one === narrow_part)) narrow_part = "pour";
  return html`<div class="narrow">${choice("What is shown", narrow_part, parts, show_part)}</div>`;
}

function show_part(part: Part): void {
  narrow_part = part;
  redraw();
  requestAnimationFrame(() => document.querySelector(".batters")?.scrollIntoView({ block: "start" }));
}
