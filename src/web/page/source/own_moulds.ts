// Her own moulds on the start page, each with its volume as the catalogue's have theirs.
import { Refused } from "./api";
import { gauge_of } from "./measuring";
import { both, volume } from "./numbers";
import { changed, state } from "./state";

type Answer = { brimful_ml: number; cavities: number } | { complaint: string };

const answers = new Map<string, Answer>();
const due: string[] = [];
let asked: string | undefined; // just now

/** They are asked again: another hand may have changed the files. */
export function ask_again(): void {
  due.length = 0;
  for (const { file, shipped } of state.files?.moulds ?? []) if (!shipped) due.push(file);
  if (asked === undefined) void ask_all();
}

function ask_for(file: string): void {
  if (file !== asked && !due.includes(file)) due.push(file);
  if (asked === undefined) void ask_all();
}

/** One after the other, so that a large mesh does not hold up what she does meanwhile. */
async function ask_all(): Promise<void> {
  while ((asked = due.shift()) !== undefined) {
    answers.set(asked, await answer_for(asked));
    changed();
  }
}

async function answer_for(file: string): Promise<Answer> {
  try {
    const { pockets } = await gauge_of({ file });
    return { brimful_ml: pockets[0]!.brimful_ml, cavities: pockets.length };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    const { field, problem, remedy } = error.complaint;
    return {
      complaint: [field && `${field.slice(1).replaceAll("/", ", ")} `, problem, remedy && `; ${remedy}`].join(""),
    };
  }
}

export function words_of(file: string): string {
  const answer = answers.get(file);
  if (!answer) ask_for(file);
  if (!answer) return `your own, ${file}; measuring ...`;
  if ("complaint" in answer) return `your own, ${file}; it cannot be measured: ${answer.complaint}`;
  return `${both(volume(state.units, answer.brimful_ml))}, ${answer.cavities} in one; your own, ${file}`;
}
