// The tips one may choose: those that ship, and those of the maker's own file.
import { list_tips, read_file, Refused, type Tip } from "../program/api";
import { document_in, type Document } from "../program/json";
import { beside_run } from "./run_names";
import { state, update } from "./state";

/** Another hand wrote such a file. */
export const forget_own_tips = (): void => update({ own_tips: {} });

let is_asked = false;

/** None at first; they are asked for once, and the page is drawn again when they are here. */
export function shipped_tips(): Tip[] {
  if (!state.tips && !is_asked) {
    is_asked = true;
    void list_tips()
      .then((tips) => update({ tips }), pass_refusal)
      .finally(() => (is_asked = false));
  }
  return state.tips ?? [];
}

/** Of a file beside the run; not asked for while its name is being typed. */
export function tips_of(name: string): Tip[] {
  const file = beside_run(name);
  const open = state.beside.own_tips;
  if (open?.file === file) return tips_in(open.now);
  const known = state.own_tips[file];
  if (known || !name || state.typed) return known ?? [];
  keep(file, []);
  void read_file(file).then(({ text }) => keep(file, tips_in(document_in(text))), pass_refusal);
  return [];
}

const keep = (file: string, tips: Tip[]): void => update({ own_tips: { ...state.own_tips, [file]: tips } });

function tips_in(document: Document | undefined): Tip[] {
  const tips = document?.tips;
  return (Array.isArray(tips) ? tips : []).map((tip) => ({ name: String((tip as { name?: unknown }).name) }));
}

/** The plan itself says what is wrong with the file. */
function pass_refusal(error: unknown): void {
  if (!(error instanceof Refused)) throw error;
}
