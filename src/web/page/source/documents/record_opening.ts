// The way to the record of a batch, whichever run it is of.
import { Refused } from "../program/api";
import { open_run } from "./opening";
import { choose_record, remember_chosen } from "./record";
import { announce, state, update } from "./state";

export async function open_record(run: string, batch: string): Promise<void> {
  remember_chosen(run, batch);
  if (state.run.file === run) {
    if (state.record.run === run) choose_record(batch);
    return update({ view: "record" });
  }
  try {
    await open_run(run, "record");
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    announce(error.message);
    update({ stock: { ...state.stock, told: { of: "", sentences: [error.message] } } });
  }
}
