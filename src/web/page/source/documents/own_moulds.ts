// Her own moulds, each measured, so that they are listed by what they hold as the catalogue's are.
import { ask_gauge, Refused } from "../program/api";
import { state, update } from "./state";

type Measured = (typeof state.own_moulds)[string];

const due: string[] = [];
let measuring: string | undefined; // just now

/** They are asked again: another hand may have changed the files. */
export function measure_own_moulds(): void {
  due.length = 0;
  for (const { file, shipped } of state.files?.moulds ?? []) if (!shipped) due.push(file);
  if (measuring === undefined) void measure_all();
}

/** Nothing as long as it is not measured; then it is asked for. */
export function own_mould(file: string): Measured | undefined {
  const known = state.own_moulds[file];
  if (!known && file !== measuring && !due.includes(file)) due.push(file);
  if (measuring === undefined && due.length) void measure_all();
  return known;
}

/** One after the other, so that a large mesh does not hold up what she does meanwhile. */
async function measure_all(): Promise<void> {
  while ((measuring = due.shift()) !== undefined) {
    const file = measuring;
    const measured = await measured_as(file);
    if (measured) update({ own_moulds: { ...state.own_moulds, [file]: measured } });
  }
}

const retry_ms = 2000;

/** Nothing where nobody answers; then it is asked again. */
async function measured_as(file: string): Promise<Measured | undefined> {
  try {
    const { pockets } = await ask_gauge({ file });
    return { brimful_ml: pockets[0].brimful_ml, cavities: pockets.length };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (error.may_pass) {
      window.setTimeout(() => own_mould(file), retry_ms);
      return undefined;
    }
    const { field, problem, remedy } = error.complaint;
    const place = field && `${field.slice(1).replaceAll("/", ", ")} `;
    return { complaint: [place, problem, remedy && `; ${remedy}`].join("") };
  }
}
