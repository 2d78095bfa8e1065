// The shelf: what stands there of materials and of pieces.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { show_trail } from "../documents/stock";
import { state, update } from "../documents/state";
import { days_in_words } from "../program/numbers";
import { told_of } from "./act_form";
import { materials } from "./lots";
import { pieces } from "./pieces";

export function shelf_view(): TemplateResult {
  const { list, failed } = state.stock;
  return html`<h1 tabindex="-1">Shelf</h1>
    <div class="shelf-view">
      ${
        failed !== undefined
          ? html`<p class="alarm" role="alert"><strong>What stands there could not be read:</strong> ${failed}.</p>`
          : nothing
      }
      ${list ? html`${told_at_the_top()} ${finder()} ${remarks()} ${materials()} ${pieces()}` : html`<p class="hint">${failed === undefined ? "Reading ..." : ""}</p>`}
    </div>`;
}

/** Of a lot or batch that is not listed any more, or of one that is new. */
function told_at_the_top(): TemplateResult | typeof nothing {
  const { list, told } = state.stock;
  if (!told || !list) return nothing;
  const is_listed =
    list.pieces.some(({ batch }) => batch === told.of) ||
    list.materials.some(({ lots }) => lots.some((one) => `${one.material}:${one.lot}` === told.of));
  return is_listed ? nothing : told_of(told.of);
}

/** What is used up is not listed, and still it can be followed. */
function finder(): TemplateResult {
  const text = state.finding?.key === "trail" ? state.finding.text : "";
  const find = (event: Event) => {
    event.preventDefault();
    if (!text.trim()) return;
    update({ finding: undefined });
    show_trail(text.trim());
  };
  return html`<form class="row find-trail" @submit=${find}>
    <div class="field">
      <label for="find-trail">Which pieces hold a lot, and what is in a batch: its number</label>
      <input
        id="find-trail"
        autocomplete="off"
        spellcheck="false"
        .value=${live(text)}
        @input=${(event: Event) => update({ finding: { key: "trail", text: (event.target as HTMLInputElement).value } })}
      />
    </div>
    <button type="submit" ?disabled=${!text.trim()}>Follow it</button>
  </form>`;
}

function remarks(): TemplateResult | typeof nothing {
  const { has_records, notes = [] } = state.stock.list ?? {};
  const others = notes.filter(({ severity }) => severity === "danger");
  return html`${has_records ? nothing : html`<p class="aside">Nothing is recorded in this folder yet.</p>`}
  ${others.map(({ text }) => html`<p class="alarm">${days_in_words(text)}</p>`)}`;
}
