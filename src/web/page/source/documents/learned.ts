// What the batches say for the next plan: asked for while it is looked at, and anew when the plan or the record has
// changed. Taking a figure is the program's act, upon the version of the file that she saw.
import type { LearnedFigure } from "../program/answers";
import { Refused, wording } from "../program/api";
import { read_learned, take_learned, type KeptLearned, type WrittenFile } from "../program/learned";
import { is_changed, written_by_program } from "./open_file";
import { plan_soon } from "./planning";
import { follow_run_to_record } from "./record";
import { save_formulas, save_open } from "./saving";
import { announce, state, update, type AtLearned } from "./state";
import { files_leant_on } from "./versions_beside";
import { look_now } from "./watching";

const retry_ms = 1000;

const rests_on = (): readonly unknown[] => [state.run.file, state.plan, state.record.version];

const is_same = (one: readonly unknown[] | undefined, other: readonly unknown[]): boolean =>
  one !== undefined && one.every((each, i) => each === other[i]);

const amend_learned = (what: Partial<AtLearned>): void => update({ learned: { ...state.learned, ...what } });

/** Nothing at first; the page is drawn again when the answer is here. */
export function learned_now(): AtLearned & { is_old: boolean } {
  follow_run_to_record();
  const { learned } = state;
  const is_ready = state.record.run === state.run.file && state.record.version !== undefined && !state.is_old;
  const is_of_now = is_same(learned.of, rests_on());
  if (is_ready && !is_of_now && !is_asking) void ask();
  const known = learned.run === state.run.file ? learned : {};
  return { ...known, is_old: !is_ready || !is_of_now };
}

export const learned_again = (): void => amend_learned({ of: undefined });

let is_asking = false;

async function ask(): Promise<void> {
  is_asking = true;
  try {
    await answered();
  } finally {
    is_asking = false;
    update({});
  }
}

async function answered(): Promise<void> {
  const of = rests_on();
  const run = state.run.file;
  try {
    const kept = await read_learned(run);
    if (run === state.run.file) amend_learned({ of, run, kept, failed: undefined });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (run !== state.run.file) return;
    amend_learned({ of, run, failed: wording(error.complaint) });
    if (error.may_pass) window.setTimeout(learned_again, retry_ms);
  }
}

const is_anything_typed = (): boolean => is_changed(state.run) || [...files_leant_on()].some(is_changed);

/** As it is told once all that is typed lies in its files. */
async function as_written(figure: LearnedFigure, kept: KeptLearned): Promise<[LearnedFigure, KeptLearned]> {
  if (!is_anything_typed()) return [figure, kept];
  await save_formulas();
  await save_open();
  const fresh = await read_learned(state.run.file);
  return [fresh.learned?.figures.find(({ name }) => name === figure.name) ?? figure, fresh];
}

export const take_figure = (figure: LearnedFigure): Promise<void> => act(figure, "take");
export const take_back = (figure: LearnedFigure): Promise<void> => act(figure, "undo");

async function act(shown: LearnedFigure, what: "take" | "undo"): Promise<void> {
  const { kept, doing } = state.learned;
  if (doing !== undefined || !kept || !shown.in_file) return;
  amend_learned({ doing: shown.name, said: undefined });
  const run = state.run.file;
  try {
    const [figure, now] = await as_written(shown, kept);
    const { file } = shown.in_file;
    const written = await take_learned({ run, file, version: now.versions[file] ?? "", [what]: figure.name });
    take_up(written);
    say(shown, `${file} was changed.`);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    say(shown, `Nothing was written: ${wording(error.complaint)}.`, true);
    learned_again();
  } finally {
    amend_learned({ doing: undefined });
  }
}

function say({ name }: LearnedFigure, words: string, is_refused = false): void {
  amend_learned({ said: { name, words, is_refused } });
  announce(words);
}

/** Where the file lies open, the page has it at once; all others are watched. */
function take_up(written: WrittenFile): void {
  for (const file of [state.run, ...files_leant_on()])
    if (file.file === written.file) written_by_program(file, written);
  plan_soon();
  look_now();
}
