// The tips one may choose: those that ship, and those of the maker's own file.
import { post, read_kept, Refused } from "./api";
import { beside_run } from "./editing";
import { changed, state } from "./state";

export interface Tip {
  name: string;
  opening?: string; // in words
  area_mm2?: number;
}

let shipped: Tip[] | undefined;
const of_file = new Map<string, Tip[]>();

/** Another hand wrote such a file. */
export const forget_tips = (): void => of_file.clear();

/** None at first; they are asked for once, and the page is drawn again when they are here. */
export function shipped_tips(): Tip[] {
  if (!shipped) {
    shipped = [];
    void post<{ tips: Tip[] }>("/api/list", { what: "tips" }).then(
      ({ tips }) => {
        shipped = tips;
        changed();
      },
      forget_if_refused(() => (shipped = undefined)),
    );
  }
  return shipped;
}

/** Of a file beside the run; not asked for while its name is being typed. */
export function tips_of(name: string): Tip[] {
  const file = beside_run(name);
  const known = of_file.get(file);
  if (known || !name || state.typed) return known ?? [];
  of_file.set(file, []);
  void read_kept(file).then(
    ({ text }) => {
      const { tips } = JSON.parse(text) as { tips?: Tip[] };
      of_file.set(
        file,
        (Array.isArray(tips) ? tips : []).map(({ name }) => ({ name: String(name) })),
      );
      changed();
    },
    forget_if_refused(() => undefined),
  ); // the plan itself says what is wrong with the file
  return [];
}

const forget_if_refused = (forget: () => void) => (error: unknown) => {
  if (!(error instanceof Refused)) throw error;
  forget();
};
