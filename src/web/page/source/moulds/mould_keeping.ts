// The mould goes into its file: a new one, a copy of the catalogue's, or her own over the version she read.
import { complain_of_mould, draft } from "../documents/mould_draft";
import { measure_soon } from "../documents/measuring";
import { save } from "../documents/open_file";
import { plan_soon } from "../documents/planning";
import { state, update } from "../documents/state";
import { list_files, Refused } from "../program/api";

/** Called with the file once it is written. */
export type Taken = (file: string) => void;

export function name_taken_by(name: string): string | undefined {
  const wanted = name.toLowerCase();
  const { file: name_of_file, shipped } = draft().open;
  const own = shipped ? "" : name_of_file;
  return state.files?.moulds.find((one) => one.file !== own && one.name.trim().toLowerCase() === wanted)?.file;
}

export async function keep_mould(taken: Taken): Promise<void> {
  const { open } = draft();
  try {
    await save(open);
    if (open.theirs) return void requestAnimationFrame(() => window.scrollTo(0, 0));
    update({ files: await list_files() });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return complain_of_mould(error);
  }
  if (state.run.file) {
    measure_soon();
    plan_soon(); // the run that lies open may be poured into it
  }
  taken(open.file);
}
