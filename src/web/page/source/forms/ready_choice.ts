// Whether an order takes pieces that are made already: she says so, of all its lines or of one.
import { html, type TemplateResult } from "lit";
import { edit } from "../documents/editing";
import { lines_of } from "../documents/order_lines";
import { order_now } from "../documents/order_opening";
import { one_of, said_at } from "./form_parts";

export function ready_choice(): TemplateResult {
  const { now } = order_now().open;
  return html`<div class="row">
      ${one_of({
        of: "order",
        label: "Pieces that are made already",
        at: "/ready",
        answers: [["take", "take them first"]],
        unsaid: "leave them",
        optional: true,
        chosen: now.ready === "take" ? "take" : "",
      })}
    </div>
    ${lines_of(now).map((line, i) => own_word(line.ready, i))}`;
}

/** What a line says itself, which wins over the order's word; and the way back to that. */
function own_word(ready: string | string[] | undefined, i: number): TemplateResult {
  const at = `/lines/${i}/ready`;
  if (ready === undefined) return html`${said_at("order", at)}`;
  const says = Array.isArray(ready)
    ? `takes pieces of ${ready.length === 1 ? "batch" : "batches"} ${ready.join(", ")} alone`
    : ready === "take"
      ? "takes pieces that are made already"
      : "leaves them";
  return html`${said_at("order", at)}
    <p>
      Line ${i + 1} ${says}, whatever the order says.
      <button type="button" @click=${() => edit("order", at, undefined)}>Line ${i + 1}: as the order says</button>
    </p>`;
}

/** From now on the line takes of these batches alone, changed since or not. */
export const take_batches = (i: number, codes: string[]): void => edit("order", `/lines/${i}/ready`, codes);
