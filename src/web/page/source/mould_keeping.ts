// The mould goes into its file: a new one, a copy of the catalogue's, or her own over the version she read.
import { get, put, Refused, type Document, type Files, type Kept } from "./api";
import { measure_soon } from "./measuring";
import { complain, draft, drop_draft, sendable } from "./mould_draft";
import { file_name } from "./opening";
import { plan_soon } from "./planning";
import { free_name, text_of } from "./saving";
import { changed, state } from "./state";

/** Called with the file once it is written. */
export type Taken = (file: string) => void;

export function name_taken_by(name: string): string | undefined {
  const wanted = name.toLowerCase();
  return state.files?.moulds.find((one) => one.file !== draft.paper.file && one.name.trim().toLowerCase() === wanted)
    ?.file;
}

export async function keep_mould(taken: Taken): Promise<void> {
  const document = sendable(draft.document);
  const mould = { ...document, name: String(document.name).trim() };
  try {
    const file = draft.paper.file ? await written_over(draft.paper.file, mould) : await written_new(mould);
    if (!file) return;
    drop_draft();
    state.files = await get<Files>("/api/files");
    if (state.file) {
      measure_soon();
      plan_soon(); // the run that lies open may be poured into it
    }
    taken(file);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    complain(error);
  }
  changed();
}

async function written_new(mould: Document): Promise<string> {
  for (;;) {
    const file = free_name(file_name(String(mould.name), ".json"), [
      ...state.files!.moulds,
      ...state.files!.runs,
      ...state.files!.formulas,
    ]);
    try {
      await put<Kept>("/api/run", { file, version: null, text: text_of(mould), from: draft.paper.from });
      return file;
    } catch (error) {
      if (!(error instanceof Refused) || error.status !== 409) throw error;
      state.files!.moulds.push({ file, name: file, note: "", shipped: false }); // somebody else's
    }
  }
}

/** Nothing if another hand wrote the file: then she chooses. */
async function written_over(file: string, mould: Document): Promise<string | undefined> {
  try {
    await put<Kept>("/api/run", { file, version: draft.paper.version, text: text_of(mould) });
    return file;
  } catch (error) {
    if (!(error instanceof Refused) || error.status !== 409) throw error;
    const there = error.answer as unknown as Kept;
    draft.conflict = { version: there.version, text: there.text };
    changed();
    requestAnimationFrame(() => window.scrollTo(0, 0));
    return undefined;
  }
}

export async function keep_over(version: string | null, taken: Taken): Promise<void> {
  draft.paper.version = version;
  draft.conflict = undefined;
  await keep_mould(taken);
}
