// The end of a batch: said by her, so that the next can begin.
import { html, nothing, type TemplateResult } from "lit";
import { finish, is_waiting, start_anew, ticked } from "../documents/bench";
import { redraw } from "../documents/drawing";
import { go_on, to_id } from "../forms/form_parts";
import type { AtHand } from "./at_bench";

let is_asked = "";

export function batch_end(hand: AtHand): TemplateResult | typeof nothing {
  const { kept, number } = hand;
  if (!kept) return nothing;
  if (kept.finished_at) return ended(hand, kept.finished_at);
  const rows = (hand.weights?.vessels ?? []).flatMap((one) => one.rows);
  const left = rows.filter(({ key }) => !ticked(number, key).is_done).length;
  const ask = () => (left ? ask_again(kept.id) : void finish(number));
  return html`<div class="batch-end">
    <p class="aside">Begun ${moment(kept.begun_at)}; its weights stay as they were then.</p>
    ${
      is_asked === kept.id
        ? are_you_sure(
            `${left === 1 ? "1 row is" : `${left} rows are`} not ticked.`,
            "The batch is done all the same",
            () => void finish(number),
          )
        : html`<button type="button" class=${left ? "" : "strong"} ?disabled=${is_waiting(number)} @click=${ask}>
            This batch is done
          </button>`
    }
  </div>`;
}

function ended({ kept, number }: AtHand, at: string): TemplateResult {
  const { id } = kept!;
  return html`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${moment(at)}.</p>
    ${
      is_asked === id
        ? are_you_sure(
            "What was ticked of it will be put away.",
            "Put it away and weigh this batch once more",
            () => void start_anew(number),
          )
        : html`<button type="button" @click=${() => ask_again(id)}>Start this batch anew</button>`
    }
  </div>`;
}

function ask_again(id: string): void {
  is_asked = id;
  redraw();
  go_on(to_id("batch-stays"));
}

function are_you_sure(words: string, sure: string, act: () => void): TemplateResult {
  const close = () => {
    is_asked = "";
    redraw();
    go_on(to_id("run-title"));
  };
  return html`<p><b>${words}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${close}>Leave it as it is</button>
      <button type="button" @click=${() => (close(), act())}>${sure}</button>
    </div>`;
}

const dated = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", hour: "2-digit", minute: "2-digit" });

const moment = (at: string): string => dated.format(new Date(at));
