// What the page is sure to ask first, asked while most of it is still on its way: which files there are, the run that is
// going to lie open, and its plan. Each answer is taken once.
import type { Plan } from "../program/answers";
import { ask_plan, list_files, read_file, type Files, type Kept, type PlanQuestion } from "../program/api";
import { document_in, text_of } from "../program/json";
import { first_view, place_in } from "./addresses";

/** The one wanted, if it is there; else the one she worked on last. */
export function run_to_open(files: Files, wanted?: string): string {
  const known = (file?: string | null) => files.runs.some((one) => one.file === file);
  const last = localStorage.getItem("run");
  if (known(wanted)) return wanted!;
  if (files.open) return files.open;
  if (last && known(last)) return last;
  return files.shown_first ?? files.runs[0]?.file ?? "";
}

let files: Promise<Files> | undefined = list_files();
let text: Promise<Kept> | undefined;
let plan: { of: PlanQuestion; answer: Promise<Plan> } | undefined;

/** Whoever takes an answer hears of what went wrong; nobody has to take it. */
const nobody_need_wait = (answer: Promise<unknown>): Promise<unknown> => answer.catch(() => undefined);

async function ask_for_plan(found: Files): Promise<void> {
  const file = run_to_open(found, first_view(place_in(location.hash)).run);
  if (!file) return;
  text = read_file(file);
  const run = document_in((await text).text);
  if (!run) return;
  plan = { of: { file, run }, answer: ask_plan({ file, run }) };
  void nobody_need_wait(plan.answer);
}

/** Or there is nothing to ask. */
export const is_asked_ahead = nobody_need_wait(files.then(ask_for_plan));

export function first_files(): Promise<Files> {
  const answer = files ?? list_files();
  files = undefined;
  return answer;
}

export async function first_text(name: string): Promise<Kept> {
  const ahead = await text?.catch(() => undefined);
  text = undefined;
  return ahead?.file === name ? ahead : read_file(name);
}

/** Nothing if it was not asked, or of another text. */
export function plan_ahead({ file, run }: PlanQuestion): Promise<Plan> | undefined {
  const asked = plan;
  plan = undefined;
  return asked?.of.file === file && text_of(asked.of.run) === text_of(run) ? asked.answer : undefined;
}
