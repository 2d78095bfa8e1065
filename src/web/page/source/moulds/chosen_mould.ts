// A mould that is there, opened: what it holds, what can be made with it, and the way to change it.
import { html, nothing, type TemplateResult } from "lit";
import { look_into } from "../documents/measuring";
import { make_run } from "../documents/opening";
import { amend, state, update, type ChosenMould } from "../documents/state";
import { Refused } from "../program/api";
import { pieces_asked, pieces_in } from "../forms/pieces_asked";
import { used_by } from "../forms/used_by";
import { found } from "./mould_views";
import { change_mould } from "./new_mould";

export const leave_mould = (): void => update({ chosen_mould: undefined });

export function open_mould(file: string, told?: string): void {
  const listed = state.files?.moulds.find((one) => one.file === file);
  const catalogued = state.catalogue.find((one) => one.path === file);
  const chosen_mould: ChosenMould = {
    file,
    name: listed?.name || catalogued?.name || file,
    note: listed?.note ?? "",
    shipped: listed?.shipped ?? true,
    sell: "",
    told,
  };
  update({ chosen_mould });
  void measure(chosen_mould);
  requestAnimationFrame(() => document.querySelector<HTMLElement>("#mould-title")?.focus());
}

async function measure(of: ChosenMould): Promise<void> {
  try {
    amend(of, { answer: await look_into({ file: of.file }) });
  } catch (error) {
    amend(of, { complaint: error instanceof Refused ? error.message : String(error) });
  }
}

const listed_mould = (file: string) => state.files?.moulds.find((one) => one.file === file);

type Tried = (act: () => Promise<void>) => Promise<void>;

export function mould_opened(of: ChosenMould, tried: Tried): TemplateResult {
  const change = () =>
    tried(async () => {
      await change_mould(of.file, of.shipped);
      leave_mould();
    });
  return html`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${of.name} <small>${of.shipped ? "built-in" : `your own, ${of.file}`}</small>
    </h2>
    ${of.told ? html`<p role="status">${of.told}</p>` : nothing} ${of.note ? html`<p>${of.note}</p>` : nothing}
    ${used_by(listed_mould(of.file))}
    ${of.complaint ? html`<p class="alarm" role="alert">It cannot be measured: ${of.complaint}</p>` : nothing}
    <div class="beside">
      <div>
        ${of.answer ? found(of.answer) : of.complaint ? nothing : html`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${change}>${of.shipped ? "Change a copy of it" : "Change it"}</button>
      </div>
      ${of.complaint ? nothing : bases(of, tried)}
    </div>
  </section>`;
}

function bases(of: ChosenMould, tried: Tried): TemplateResult {
  const sell = pieces_in(of.sell);
  const make = (formula: string) => () =>
    tried(() => make_run({ mould: of.file, name: of.name, formula, sell: sell! }));
  return html`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    ${pieces_asked("mould-sell", of.sell, (text) => amend(of, { sell: text }))}
    ${sell ? nothing : html`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(state.files?.formulas ?? []).map(
        (one) =>
          html`<li>
            <button type="button" ?disabled=${!of.answer || !sell} @click=${make(one.file)}>
              <b>${one.name}</b><span>${one.note || one.file}</span>
            </button>
          </li>`,
      )}
    </ul>
  </div>`;
}
