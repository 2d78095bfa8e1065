// Names of files as the run that lies open means them.
import { named_from } from "./names";
import { state } from "./state";

export const beside_run = (name: string): string => named_from(state.run.file, name);

/** A name as a run writes it, as the page may ask for it: beside the run, or of the catalogue. */
export function asked_name(name: string, listed: { file: string }[] | undefined): string {
  const there = beside_run(name);
  return listed?.some((one) => one.file === there) ? there : name;
}
