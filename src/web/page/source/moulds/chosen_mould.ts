// A mould that is there, opened: what it holds, what can be made with it, and the way to change it.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { sets_out } from "../documents/goings";
import { look_into } from "../documents/measuring";
import { make_run } from "../documents/opening";
import { amend, state, update, type ChosenMould } from "../documents/state";
import { ways_of_mould } from "../documents/ways";
import { Refused } from "../program/api";
import { least_loaf_ml } from "../forms/cut_form";
import { pieces_asked, pieces_in } from "../forms/pieces_asked";
import { used_by } from "../forms/used_by";
import { is_bare_number } from "../program/numbers";
import { mould_ways } from "./mould_ways";
import { found } from "./mould_views";
import { change_mould } from "./new_mould";

export const leave_mould = (): void => update({ chosen_mould: undefined });

export function open_mould(file: string, told?: string): void {
  sets_out();
  const listed = state.files?.moulds.find((one) => one.file === file);
  const catalogued = state.catalogue.find((one) => one.path === file);
  const chosen_mould: ChosenMould = {
    file,
    name: listed?.name || catalogued?.name || file,
    note: listed?.note ?? "",
    shipped: listed?.shipped ?? true,
    sell: "",
    slice: "",
    told,
  };
  update({ chosen_mould });
  void measure(chosen_mould);
  requestAnimationFrame(() => document.querySelector<HTMLElement>("#mould-title")?.focus());
}

const retry_ms = 2000;

async function measure(of: ChosenMould): Promise<void> {
  if (of !== state.chosen_mould) return;
  try {
    amend(of, { answer: await look_into({ file: of.file }) });
    amend(of, { complaint: undefined });
  } catch (error) {
    amend(of, { complaint: error instanceof Refused ? error.message : String(error) });
    if (error instanceof Refused && error.may_pass) window.setTimeout(() => void measure(of), retry_ms);
  }
}

const listed_mould = (file: string) => state.files?.moulds.find((one) => one.file === file);

type Tried = (act: () => Promise<void>) => Promise<void>;

export function mould_opened(of: ChosenMould, tried: Tried): TemplateResult {
  const change = () =>
    tried(async () => {
      if (await change_mould(of.file, of.shipped)) leave_mould();
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
        ${mould_ways(ways_of_mould(of.file, of.answer?.gauge))}
        <button type="button" @click=${change}>${of.shipped ? "Change a copy of it" : "Change it"}</button>
      </div>
      ${of.complaint ? nothing : bases(of, tried)}
    </div>
  </section>`;
}

const is_loaf = ({ answer }: ChosenMould): boolean => (answer?.gauge.pockets[0]?.brimful_ml ?? 0) >= least_loaf_ml;

/** With its unit; nothing where it is left whole. */
function sliced(of: ChosenMould): string | undefined {
  const typed = is_loaf(of) ? of.slice.trim() : "";
  return is_bare_number(typed) ? `${typed} mm` : typed || undefined;
}

const slice_asked = (of: ChosenMould): TemplateResult =>
  html`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${live(of.slice)}
      @input=${(event: Event) => amend(of, { slice: (event.target as HTMLInputElement).value })}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;

function bases(of: ChosenMould, tried: Tried): TemplateResult {
  const sell = pieces_in(of.sell);
  const slice = sliced(of);
  const make = (formula: string) => () =>
    tried(() => make_run({ mould: of.file, name: of.name, formula, sell: sell!, slice }));
  return html`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${pieces_asked("mould-sell", of.sell, (text) => amend(of, { sell: text }))}
      ${is_loaf(of) ? slice_asked(of) : nothing}
    </div>
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
