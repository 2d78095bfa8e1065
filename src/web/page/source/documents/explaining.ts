// How the figures of the plan come about: asked for when one is opened, and kept until there is another plan.
import type { Working } from "../program/answers";
import { ask_explanation, Refused } from "../program/api";
import { state, update } from "./state";

interface Told {
  workings: Working[]; // of the figure itself, or else of each that stands below its place
  complaint?: string;
  is_old: boolean; // it is of a plan before this one
}

let is_asking = false;

/** Nothing at first; the page is drawn again when the answer is here. */
export function workings_at(place: string): Told {
  const { plan, explanation } = state;
  const is_old = explanation?.of !== plan;
  if (is_old && !is_asking) void ask();
  return { workings: found(explanation?.workings, place), complaint: explanation?.complaint, is_old };
}

function found(workings: ReadonlyMap<string, Working> | undefined, place: string): Working[] {
  const itself = workings?.get(place);
  if (itself) return [itself];
  return [...(workings?.values() ?? [])].filter(({ of }) => of.startsWith(`${place}.`));
}

/** One question at a time; typing asks for a new plan, and drawing that for the next explanation. */
async function ask(): Promise<void> {
  const { plan, planned } = state;
  if (!plan || !planned) return;
  is_asking = true;
  try {
    const { how } = await ask_explanation(planned);
    update({ explanation: { of: plan, workings: new Map(how.map((one) => [one.of, one])) } });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    update({ explanation: { of: plan, workings: new Map(), complaint: error.message } });
  } finally {
    is_asking = false;
  }
}
