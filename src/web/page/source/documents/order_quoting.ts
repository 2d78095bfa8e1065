// What an order costs and what to ask for it: asked for while it is looked at and the hand rests, one question at a time.
// The program reads its runs from their files, so what is typed is written first.
import { ask_order_quote, Refused, type OrderQuestion } from "../program/api";
import type { OrderQuote, OrderTimes } from "../program/answers";
import { is_complete, shared_words } from "./order_lines";
import { order_now } from "./order_opening";
import { asked_numbers } from "./quoting";
import { know_records } from "./records_beside";
import { save_formulas, save_open } from "./saving";
import { amend, state, type OpenOrder } from "./state";
import { know_files_beside, times_struck } from "./versions_beside";

const rest_ms = 300;
const retry_ms = 1000;

interface OrderQuoteTold {
  quote?: OrderQuote;
  complaint?: NonNullable<OpenOrder["quoted"]>["complaint"];
  is_old: boolean; // the quote is not of what is typed now
}

/** Another plan comes of another run, formula or studio. */
const plan_rests_on = ({ open }: OpenOrder): readonly unknown[] => [
  open.now,
  open.file,
  state.plan,
  times_struck(),
  state.recorded,
];

/** All that the answer depends on. */
const rests_on = (order: OpenOrder): readonly unknown[] => {
  const { by, figure } = state.quote_wish;
  return [...plan_rests_on(order), order.times, by, figure];
};

const is_same = (one: readonly unknown[] | undefined, other: readonly unknown[]): boolean =>
  one !== undefined && one.every((each, i) => each === other[i]);

/** Nothing at first, nor as long as a line is half typed; the page is drawn again when the answer is here. */
export function order_quote_now(): OrderQuoteTold {
  const order = order_now();
  const { quoted } = order;
  if (!is_complete(order.open.now) || order.open.theirs) return { is_old: true };
  const is_of_now = is_same(quoted?.of, rests_on(order));
  if (!is_of_now && !state.is_old) ask_soon(order);
  const complaint = is_of_now ? quoted?.complaint : undefined;
  return { quote: quoted?.quote, complaint, is_old: state.is_old || !is_of_now || complaint !== undefined };
}

interface MadeOnce {
  made?: OrderTimes; // none before it is known, nor where it cannot be planned
  is_old: boolean;
}

/** What is left to make of it when it is made once, whatever it is costed for. */
export function made_once(): MadeOnce {
  const order = order_now();
  const is_of_now = is_complete(order.open.now) && is_same(order.once?.of, plan_rests_on(order));
  return { made: order.once?.made, is_old: state.is_old || !is_of_now };
}

export function order_quote_again(): void {
  const { quoted } = order_now();
  if (quoted) amend(order_now(), { quoted: { ...quoted, of: [] } });
}

/** Of the order as it is typed now. */
export function order_question({ open, times }: OpenOrder): OrderQuestion {
  const { by, figure } = state.quote_wish;
  const often = asked_numbers(times);
  return {
    file: open.file,
    order: open.now,
    ...(often && { times: often }),
    ...(by && figure.trim() && { [by]: figure }),
  };
}

let due: { of: readonly unknown[]; timer: number } | undefined;
let is_asking = false;

function ask_soon(order: OpenOrder): void {
  const of = rests_on(order);
  if (is_asking || is_same(due?.of, of)) return;
  window.clearTimeout(due?.timer);
  due = { of, timer: window.setTimeout(() => void ask(order), order.quoted ? rest_ms : 0) };
}

async function ask(order: OpenOrder): Promise<void> {
  due = undefined;
  if (order !== state.order) return;
  is_asking = true;
  try {
    await save_formulas();
    await save_open();
    await know_files_beside();
    await know_records();
    if (!is_complete(order.open.now)) return;
    const of = rests_on(order);
    await answered(order, of);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    // What could not be written is told beside its file's name.
  } finally {
    is_asking = false;
    amend(order, {});
  }
}

async function answered(order: OpenOrder, of: readonly unknown[]): Promise<void> {
  const planned_of = plan_rests_on(order);
  try {
    const quote = await ask_order_quote(order_question(order));
    amend(order, { quoted: { of, quote } });
    const made = once_in(quote);
    if (made) return amend(order, { once: { of: planned_of, made } });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    amend(order, { quoted: { of, quote: order.quoted?.quote, complaint: error.complaint } });
    if (error.may_pass) window.setTimeout(() => order === state.order && order_quote_again(), retry_ms);
  }
  if (shared_words(order.open.now).length && !is_same(order.once?.of, planned_of)) await ask_once(order, planned_of);
}

const once_in = ({ times }: OrderQuote): OrderTimes | undefined => times.find((one) => one.times === 1);

/** Of an order that is costed for other times alone, or for a price that is half typed. */
async function ask_once(order: OpenOrder, of: readonly unknown[]): Promise<void> {
  const { file, now } = order.open;
  try {
    amend(order, { once: { of, made: once_in(await ask_order_quote({ file, order: now })) } });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    amend(order, { once: error.may_pass ? undefined : { of } }); // why is told beside its costs
    if (error.may_pass) window.setTimeout(() => order === state.order && order_quote_again(), retry_ms);
  }
}
