// Danger: what could make a soap that burns. It stands first on every view, until a newer answer takes it back.
import { html, nothing, type TemplateResult } from "lit";
import { wording, type Complaint } from "./api";
import { clash_of } from "./clash";
import type { Plan } from "./plan";
import { state, type Whose } from "./state";

/** Of the run that lies open, or of the formula that is tried in it by itself. */
const here = (): "run" | "apart" => (state.formulas.apart ? "apart" : "run");

/** A new answer: what it warns of takes the place of what was warned of before. */
export function take_dangers(plan: Plan): void {
  state.dangers[here()] = plan.cautions
    .filter((one) => one.severity === "danger")
    .map(({ text, topic }) => ({ text, is_of_heat: topic === "heat" }));
}

/** No answer, because the soap would be lye-heavy. Any other refusal says nothing for or against what stood before. */
export function take_refusal(complaint: Complaint): void {
  if (is_lye_heavy(complaint)) state.dangers[here()] = [{ text: wording(complaint), is_of_heat: false }];
}

/** The program says it in its words. */
export const is_lye_heavy = ({ problem }: Complaint): boolean =>
  /lye[- ]heavy|superfat\b[^;]*?(\s[-−]\d|below (zero|0))/i.test(problem);

const sign = html`<span aria-hidden="true">⚠</span> Danger`;

interface Told {
  from: string; // where it stands beside other things
  text: string;
}

function told(): Told[] {
  const is_elsewhere = state.view === "start" || here() === "apart";
  const of_run = state.dangers.run.map(({ text }) => ({
    from: is_elsewhere ? `In the run "${String(state.run.name ?? state.file)}": ` : "",
    text,
  }));
  return [...state.dangers.apart.map(({ text }) => ({ from: "", text })), ...of_run];
}

export const is_in_danger = (): boolean => told().length > 0;

/** Always in sight, above whatever is looked at. */
export function foremost(): TemplateResult | typeof nothing {
  const dangers = told();
  const stale = stale_words();
  if (!dangers.length && !stale) return nothing;
  return html`<section class="foremost" aria-label="Danger, and figures from before">
    ${
      dangers.length
        ? html`<div role="alert" class="dangers">
            ${dangers.map(({ from, text }) => html`<p class="danger"><strong>${sign}</strong> ${from}${text}</p>`)}
          </div>`
        : nothing
    }
    ${
      stale
        ? html`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${stale}</p>
            ${asks_now() ? html`<button type="button" @click=${to_question}>To the question</button>` : nothing}
          </div>`
        : nothing
    }
  </section>`;
}

const asks_now = (): boolean => clash_of(here()) !== undefined && state.view !== "start";

function to_question(): void {
  const title = document.querySelector<HTMLElement>(".banner h2");
  if (!title) return;
  title.tabIndex = -1;
  title.focus({ preventScroll: true });
  title.scrollIntoView({ block: "start" });
}

function stale_words(): string {
  if (!state.file || state.view === "reading") return "";
  const clash = clash_of(here());
  if (clash)
    return `${clash.file} changed underneath: what is struck through is of neither text. Say which is to stay.`;
  return state.is_old && state.changed_beside
    ? `${state.changed_beside} changed underneath: what is struck through is not to be weighed.`
    : "";
}

/** Beside a place that shows or asks the superfat of one of the batters, and where it is weighed that of one batch. */
export function danger_beside(whose: Whose, id = "", pieces?: number): TemplateResult | typeof nothing {
  const texts = dangers_of(whose, pieces);
  if (!texts.length) return nothing;
  return html`<div class="dangers" id=${id || nothing}>
    ${texts.map((text) => html`<p class="danger"><strong>${sign}</strong> ${text}</p>`)}
  </div>`;
}

/** Of its superfat: all but those that name the other formula alone, or batches of another size. */
export function dangers_of(whose: Whose, pieces?: number): string[] {
  const texts = state.dangers[whose === "apart" ? "apart" : "run"]
    .filter((one) => !one.is_of_heat)
    .map((one) => one.text)
    .filter((text) => pieces === undefined || is_of_size(text, pieces));
  if (whose === "apart") return texts;
  const name = (slot: Whose) => String(state.formulas[slot]?.document.name ?? "");
  const [own, other] = [name(whose), name(whose === "pour" ? "pipe" : "pour")];
  return texts.filter((text) => !other || !text.includes(other) || (own !== "" && text.includes(own)));
}

/** The program says it in its words, before a danger that only some of the batches have. */
function is_of_size(text: string, pieces: number): boolean {
  const named = /\bBatches of (\d+) pieces?: /.exec(text);
  return !named || Number(named[1]) === pieces;
}
