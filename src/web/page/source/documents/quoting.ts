// What a piece costs and what to ask for it: asked for only while it is looked at, when the plan's own answer is drawn
// and the hand rests; one question at a time.
import type { Quote } from "../program/answers";
import { ask_quote, Refused, type Complaint, type PlanQuestion, type QuoteQuestion } from "../program/api";
import { state, update, type QuoteWish } from "./state";

const rest_ms = 300;
const retry_ms = 1000;

export interface QuoteTold {
  quote?: Quote;
  complaint?: Complaint;
  is_old: boolean; // the quote is not of what is typed now
}

/** Nothing at first; the page is drawn again when the answer is here. */
export function quote_now(): QuoteTold {
  const { quoted, plan, quote_wish, is_old } = state;
  const is_of_now = quoted?.of === plan && quoted?.wish === quote_wish;
  if (!is_of_now && !is_old) ask_soon();
  const complaint = is_of_now ? quoted?.complaint : undefined;
  return { quote: quoted?.quote, complaint, is_old: is_old || !is_of_now || complaint !== undefined };
}

/** The same question once more. */
export function quote_again(): void {
  if (state.quoted) update({ quoted: { ...state.quoted, of: undefined } });
}

let due: { of: unknown; wish: QuoteWish; timer: number } | undefined;
let is_asking = false;

function ask_soon(): void {
  const { plan: of, quote_wish: wish } = state;
  if (is_asking || (due?.of === of && due?.wish === wish)) return;
  window.clearTimeout(due?.timer);
  due = { of, wish, timer: window.setTimeout(() => void ask(), state.quoted ? rest_ms : 0) };
}

/** Numbers of pieces as the program reads them, with whatever stands between them. */
export const asked_numbers = (numbers: string): string =>
  numbers
    .split(/[\s,;]+|\band\b/)
    .filter(Boolean)
    .join(",");

function question_of(planned: PlanQuestion, { numbers = "", by, figure }: QuoteWish): QuoteQuestion {
  const sell = asked_numbers(numbers);
  return { ...planned, ...(sell && { sell }), ...(by && figure.trim() && { [by]: figure }) };
}

/** Of the run as it is typed now. */
export const question_now = (): QuoteQuestion =>
  question_of({ file: state.run.file, run: state.run.now }, state.quote_wish);

/** The run's own number was planned: a number that cannot be made is one of those asked about. */
function asked_about(complaint: Complaint, { numbers = "" }: QuoteWish): Complaint {
  return complaint.field === "/sell" && asked_numbers(numbers) ? { ...complaint, file: "", field: "sell" } : complaint;
}

async function ask(): Promise<void> {
  due = undefined;
  const { run, plan, planned, quote_wish, is_old } = state;
  if (!plan || !planned || is_old) return; // the next drawing asks for it
  is_asking = true;
  try {
    const quote = await ask_quote(question_of(planned, quote_wish));
    if (run === state.run) update({ quoted: { of: plan, wish: quote_wish, quote } });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (run !== state.run) return;
    const complaint = asked_about(error.complaint, quote_wish);
    update({ quoted: { of: plan, wish: quote_wish, quote: state.quoted?.quote, complaint } });
    if (error.may_pass) window.setTimeout(quote_again, retry_ms);
  } finally {
    is_asking = false;
  }
}
