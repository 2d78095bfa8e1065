// A new file: under the first name like the one that is wanted that nobody has.
import { Refused, write_file, type Kept } from "../program/api";
import { document_in } from "../program/json";
import type { Kind } from "./file_types";
import { free_name } from "./names";
import { in_own_hand, left_own_hand } from "./own_hand";
import { list_file, state } from "./state";

interface NewFile {
  kind: Kind;
  name: string;
  text: string;
  from?: string; // of which it is a copy
  goes_on?: boolean; // as that did, at the bench too
  about_to?: (file: string) => void;
  is_own?: (there: Kept) => boolean; // what stands under a name is this very file, written before
}

/** Lists may be behind: where another hand has the name after all, the next is tried. */
export async function create({ kind, name, text, from, goes_on, about_to, is_own }: NewFile): Promise<Kept> {
  for (;;) {
    const {
      runs = [],
      orders = [],
      formulas = [],
      moulds = [],
      studios = [],
      fats = [],
      tips = [],
    } = state.files ?? {};
    const file = free_name(name, [...runs, ...orders, ...formulas, ...moulds, ...studios, ...fats, ...tips]);
    about_to?.(file);
    const kept = await written({ file, version: null, text, from, goes_on });
    list_file(kind, file, document_in(kept.there.text) ?? {});
    if (kept.is_new || is_own?.(kept.there)) return kept.there;
  }
}

async function written(file: Parameters<typeof write_file>[0]): Promise<{ is_new: boolean; there: Kept }> {
  try {
    in_own_hand(file.file);
    const there = await write_file(file);
    left_own_hand(there.file, there.version);
    return { is_new: true, there };
  } catch (error) {
    if (!(error instanceof Refused) || error.status !== 409) throw error;
    left_own_hand(file.file, null);
    return { is_new: false, there: error.answer as Kept };
  }
}
