// The order that lies open, beside the run that does.
import { text_of, type Document } from "../program/json";
import { sets_out } from "./goings";
import { order_kind } from "./kinds";
import { create } from "./new_file";
import { begin, is_changed, load } from "./open_file";
import { redo_in, undo_in } from "./own_steps";
import { save_now, save_soon } from "./saving";
import { state, update, type OpenOrder } from "./state";
import { keep_looking } from "./watching";

let last_wanted: object = {};

/** As with a run: the one wanted last is shown, unless she has gone elsewhere meanwhile. */
export async function open_order(name: string): Promise<void> {
  sets_out();
  const wanted = (last_wanted = { name });
  const left = state.view;
  if (state.order?.open.file !== name) {
    if (state.order && is_changed(state.order.open)) await save_now(state.order.open);
    const open = await load(order_kind, name);
    if (last_wanted !== wanted) return;
    const past = is_changed(open) ? [open.saved ?? {}] : [];
    update({ order: { open, past, future: [], times: "" }, typed: undefined });
    if (is_changed(open)) save_soon(open);
  }
  if (state.view === left) update({ view: "order", typed: undefined });
  keep_looking();
}

/** Its file is gone. */
export function leave_order(): void {
  update({ order: undefined, ...(state.view === "order" ? { view: "orders" } : {}) });
}

export async function make_order(whom_for: string): Promise<void> {
  const is_wanted = sets_out();
  const order: Document = { schema: "brimwright.order/1", id: crypto.randomUUID(), for: whom_for, lines: [] };
  const name = order_kind.new_name(begin(order_kind, order));
  const { file } = await create({ kind: order_kind, name, text: text_of(order) });
  if (is_wanted()) await open_order(file);
}

/** The order where there must be one. */
export const order_now = (): OpenOrder => state.order!;

export const undo_order = (): void => undo_in(order_now());
export const redo_order = (): void => redo_in(order_now());
