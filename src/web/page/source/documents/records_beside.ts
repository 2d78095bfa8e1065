// What is recorded beside an order that is looked at and beside its runs, as far as it rests on it: what it got and what
// stands ready.
import { changes_now } from "../program/api";
import { folder_of, named_from } from "./names";
import { lines_of } from "./order_lines";
import { state, update } from "./state";

const is_looked_at = (): boolean => state.view === "order";

/** What is watched while an order is looked at, as soon as it is known. */
export const records_known = (): string | undefined => (is_looked_at() ? state.recorded : undefined);

/** Beside which files: one for each folder. */
export function records_are_beside(): string[] {
  if (!is_looked_at() || !state.order) return [];
  const { file, now } = state.order.open;
  const files = [file, ...lines_of(now).flatMap(({ run }) => (run ? named_from(file, run) : []))];
  return files.filter((one, i) => files.findIndex((other) => folder_of(other) === folder_of(one)) === i);
}

export const take_records = (version: string): void => update({ recorded: version });

/** Before figures are asked for: whatever changes from now on is seen. */
export async function know_records(): Promise<void> {
  if (state.recorded !== undefined) return;
  const { stock } = await changes_now(new Map(), { stock: "", beside: records_are_beside() });
  if (stock !== undefined && state.recorded === undefined) take_records(stock);
}
