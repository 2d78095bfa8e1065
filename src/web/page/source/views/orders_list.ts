// The orders that are there, and a new one.
import { html, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { order_kind } from "../documents/kinds";
import { make_order, open_order } from "../documents/order_opening";
import { state, update } from "../documents/state";
import { counted } from "../figures/batches";
import type { Listed } from "../program/api";
import { day } from "../program/numbers";
import { file_card, file_cards } from "./file_card";
import { list_head, tried } from "./lists";
import { removed_of } from "./removed";

/** What is due first stands first, and what is not due at all last. */
const first_due = (a: Listed, b: Listed): number =>
  (a.due ?? "~").localeCompare(b.due ?? "~") || (b.changed ?? "").localeCompare(a.changed ?? "");

export function orders_list(): TemplateResult {
  const orders = [...(state.files?.orders ?? [])].sort(first_due);
  const called = state.new_order.trim();
  const make = () =>
    void tried(async () => {
      await make_order(called);
      update({ new_order: "" });
    });
  return html`${list_head("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${
        orders.length
          ? file_cards(orders, card)
          : html`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`
      }
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${live(state.new_order)}
            @input=${(event: Event) => update({ new_order: (event.target as HTMLInputElement).value })}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!called} @click=${make}>Begin the order</button>
      </div>
      ${called ? "" : html`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${removed_of("order")}`;
}

function card(one: Listed): TemplateResult {
  const { pieces, due, changed } = one;
  const facts = [
    pieces === undefined ? "" : counted(pieces, "piece"),
    due ? `due ${day(due)}` : "",
    changed ? `changed ${day(changed)}` : "",
  ].filter(Boolean);
  return file_card({ kind: order_kind, one, facts, open: () => open_order(one.file) });
}
