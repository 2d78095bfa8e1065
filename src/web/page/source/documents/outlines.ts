// How moulds look from the side, for the lists: asked for one after the other, each once for each state of its file.
import { made_document, Refused } from "../program/api";
import { outline_of, solids_of, type Outline } from "../program/outline";

const known = new Map<string, Promise<Outline | undefined>>();
let last: Promise<unknown> = Promise.resolve();

/** `changed` is when the file was. None of what cannot be measured. */
export function outline_in(file: string, changed = ""): Promise<Outline | undefined> {
  const key = `${file}\n${changed}`;
  let asked = known.get(key);
  if (!asked) {
    asked = last.then(() => outline(file));
    last = asked;
    known.set(key, asked);
  }
  return asked;
}

async function outline(file: string): Promise<Outline | undefined> {
  try {
    const glb = await made_document({ kind: "glb", gauge: { file } });
    const solids = solids_of(await glb.arrayBuffer());
    return outline_of(solids.find((one) => one.name === "cavity") ?? solids[0]);
  } catch (error) {
    if (error instanceof Refused) return undefined;
    throw error;
  }
}
