// What leaves the page as a file, or is laid out to be printed: one tap each, and a line that says how it went.
import { html, type TemplateResult } from "lit";
import { conflict_of } from "../documents/conflicts";
import { save_formulas, save_open } from "../documents/saving";
import { amend, state, type PaperSize } from "../documents/state";
import { choice } from "../forms/form_parts";
import { laid_out, made_document } from "../program/api";

export const printing = (what: Partial<typeof state.printing>): void => amend(state.printing, what);

function with_link(address: string, set: (link: HTMLAnchorElement) => void): void {
  const link = document.createElement("a");
  link.href = address;
  set(link);
  link.click();
}

/** Works one wish off after the other, and says how it went. */
async function tried(wish: () => Promise<string>): Promise<void> {
  if (state.printing.is_working) return;
  printing({ is_working: true, told: "Making it ...", on: state.view });
  try {
    await written();
    printing({ told: await wish() });
  } catch (error) {
    printing({ told: error instanceof Error ? error.message : String(error) });
  }
  printing({ is_working: false });
}

/** The program makes papers of what lies in the files: that must be what is typed. */
async function written(): Promise<void> {
  await save_formulas();
  await save_open();
  const order = state.view === "order" ? state.order?.open : undefined;
  const conflict = conflict_of("run") ?? (order?.theirs && order);
  if (conflict) throw new Error(`${conflict.file} was changed outside this page: choose first which version to keep.`);
}

/** Of what was asked on this view. */
export const told_of_papers = (): string => (state.printing.on === state.view ? state.printing.told : "");

/** As a file among her downloads. */
export const keep = (name: string, body: object) => () =>
  tried(async () => {
    const address = URL.createObjectURL(await made_document(body));
    with_link(address, (link) => (link.download = name));
    window.setTimeout(() => URL.revokeObjectURL(address), 60_000);
    return `${name} is in your downloads.`;
  });

/** In a tab of its own, where the browser prints it. */
export const open = (body: object) => () =>
  tried(async () => {
    with_link(await laid_out(body), (link) => Object.assign(link, { target: "_blank", rel: "noopener" }));
    return "It is open in a tab of its own: print it there at 100 %, not fitted to the page.";
  });

const set_paper = (paper: PaperSize) => {
  printing({ paper });
  localStorage.setItem("paper", paper);
};

export const paper_size = (): TemplateResult =>
  choice<PaperSize>(
    "Paper",
    state.printing.paper,
    [
      ["A4", "A4"],
      ["Letter", "Letter"],
    ],
    set_paper,
  );

export const paper_button = (words: string, act: () => Promise<void>, look = "", is_asleep = false): TemplateResult =>
  html`<button
    type="button"
    class=${look}
    ?disabled=${state.printing.is_working || is_asleep}
    @click=${() => void act()}
  >
    ${words}
  </button>`;

interface Paper {
  words: string; // "Bench sheet"
  kind: string; // of the document; its PDF is called likewise
  file: string; // of the PDF, without its ending
  of: object;
  is_asleep?: boolean;
}

/** To be printed by the browser, and as a PDF where the program makes them. */
export const paper_buttons = ({ words, kind, file, of, is_asleep }: Paper, look = ""): TemplateResult =>
  html`${paper_button(`${words}, to print`, open({ kind, ...of }), look, is_asleep)}
  ${
    state.files?.makes_pdf
      ? paper_button(`${words}, PDF`, keep(`${file}.pdf`, { kind: `${kind}-pdf`, ...of }), "", is_asleep)
      : ""
  }`;

/** "may" of "runs/may.run.json". */
export const stem_of = (file: string): string =>
  file
    .split("/")
    .at(-1)!
    .replace(/(\.(run|order))?\.json$/, "");
