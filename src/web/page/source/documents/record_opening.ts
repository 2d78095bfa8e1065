// The way to the record of a batch, whichever run it is of, or whichever order's lines are poured from it.
import { Refused } from "../program/api";
import { read_record, type RecordOf } from "../program/record";
import { read_trail } from "../program/stock";
import { shared_words } from "./order_lines";
import { open_order, order_now } from "./order_opening";
import { open_run } from "./opening";
import { amend_record, choose_record, follow_to_record, remember_chosen } from "./record";
import { announce, state, update } from "./state";
import { show_trail } from "./stock";

export async function open_record(run: string, batch: string): Promise<void> {
  try {
    if (is_order(run)) return await open_base(run, batch);
    remember_chosen({ run }, batch);
    if (state.run.file !== run) return await open_run(run, "record");
    if (state.record.run === run) choose_record(batch);
    update({ view: "record" });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    announce(error.message);
    update({ stock: { ...state.stock, told: { of: "", sentences: [error.message] } } });
  }
}

const is_order = (file: string): boolean => state.files?.orders.some((one) => one.file === file) ?? false;

/** The word whose batch it is, is found by asking. */
async function open_base(order: string, batch: string): Promise<void> {
  await open_order(order);
  for (const together of shared_words(order_now().open.now)) {
    const { record } = await read_record({ run: order, together }, batch);
    if (record.batches.some(({ begun }) => begun.id === batch)) return show_base({ run: order, together }, batch);
  }
  announce("No lines of this order are poured from that base any more");
}

function show_base(of: Required<RecordOf>, batch: string): void {
  choose_word(of.run, of.together);
  remember_chosen(of, batch);
  follow_to_record(of);
  choose_record(batch);
  amend_record({ is_led_to: true });
}

const word_name = (order: string): string => `poured together ${order}`;

/** Of several bases of an order the one that is looked at. */
export function choose_word(order: string, word: string): void {
  sessionStorage.setItem(word_name(order), word);
  update({});
}

export function word_looked_at(order: string, words: readonly string[]): string {
  const chosen = sessionStorage.getItem(word_name(order));
  return words.find((one) => one === chosen) ?? words[0];
}

/** The trail knows the order of a base; without one, what is in the base is told. */
export async function open_base_of(code: string): Promise<void> {
  try {
    const { trail } = await read_trail(`batch ${code}`);
    const base = trail.batches.find(({ batch }) => batch === code);
    if (base && is_order(base.file)) return await open_record(base.file, base.id);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
  }
  show_trail(`batch ${code}`);
}
