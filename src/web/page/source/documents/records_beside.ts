// What is recorded in her folder, as far as an order rests on it that is looked at: what it got and what stands ready.
import { changes_now } from "../program/api";
import { state, update } from "./state";

const is_looked_at = (): boolean => state.view === "order";

/** What is watched while an order is looked at, as soon as it is known. */
export const records_known = (): string | undefined => (is_looked_at() ? state.recorded : undefined);

export const take_records = (version: string): void => update({ recorded: version });

/** Before figures are asked for: whatever changes from now on is seen. */
export async function know_records(): Promise<void> {
  if (state.recorded !== undefined) return;
  const { stock } = await changes_now(new Map(), { stock: "" });
  if (stock !== undefined && state.recorded === undefined) take_records(stock);
}
