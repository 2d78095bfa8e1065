// The moulds that are there, to make a run with one or to change it, and the ways to a new one.
import { html, type TemplateResult } from "lit";
import { redraw } from "../documents/drawing";
import { mould_kind } from "../documents/kinds";
import { leave_draft } from "../documents/mould_draft";
import { own_mould } from "../documents/own_moulds";
import { state } from "../documents/state";
import { drop_unsaved, unsaved_copies, type UnsavedCopy } from "../documents/unsaved";
import { mould_opened, open_mould } from "../moulds/chosen_mould";
import { type MouldWay, begin_mould, go_on_with_draft, mould_ways, new_mould } from "../moulds/new_mould";
import { counted } from "../figures/batches";
import type { Listed } from "../program/api";
import { document_in } from "../program/json";
import { both, volume } from "../program/numbers";
import { file_card, file_cards } from "./file_card";
import { list_head, tried } from "./lists";
import { removed_of } from "./removed";

function kept_mould(file: string): void {
  leave_draft();
  open_mould(file, `Saved in ${file}.`);
}

export function moulds_list(): TemplateResult {
  const { chosen_mould } = state;
  return html`${list_head("Moulds")}
  ${chosen_mould ? mould_opened(chosen_mould, tried) : (new_mould(kept_mould) ?? html`${own_mould_ways()} ${moulds()}`)}`;
}

function moulds(): TemplateResult {
  const own = (state.files?.moulds ?? []).filter((one) => !one.shipped);
  const catalogued = state.catalogue.map((one) => ({ file: one.path, name: one.name, note: "", shipped: true }));
  return html`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${file_cards([...own, ...catalogued], card)} ${removed_of("mould")}
  </section>`;
}

function card(one: Listed): TemplateResult {
  const facts = one.shipped ? described(one.file) : measured_words(one.file);
  const open = () => Promise.resolve(open_mould(one.file));
  return file_card({ kind: mould_kind, one, facts, picture: one.file, open });
}

const described = (path: string): string[] =>
  state.catalogue
    .filter((one) => one.path === path)
    .map(
      (one) =>
        `${both(volume(state.units, one.brimful_ml))}, ${counted(one.cavities, "cavity", "cavities")}; ${one.description}`,
    );

function own_mould_ways(): TemplateResult {
  return html`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${begun()}
    <div class="choice">
      ${(Object.entries(mould_ways) as [MouldWay, string][]).map(
        ([way, words]) => html`<button type="button" @click=${() => begin_mould(way)}>${words}</button>`,
      )}
    </div>
  </section>`;
}

/** Moulds that were being described and are in no file yet. */
function begun(): TemplateResult[] {
  return unsaved_copies(mould_kind).map((left) => {
    const name = String(document_in(left.text)?.name ?? "").trim() || name_copied(left) || "a mould without a name yet";
    const drop = () => {
      drop_unsaved(mould_kind, left.id);
      redraw();
    };
    return html`<div class="banner">
      <p>Your unsaved mould <b>${name}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${() => tried(() => go_on_with_draft(left))}>Continue</button>
        <button type="button" @click=${drop}>Discard it</button>
      </div>
    </div>`;
  });
}

const name_copied = ({ file }: UnsavedCopy): string | undefined =>
  state.files?.moulds.find((one) => one.file === file)?.name;

function measured_words(file: string): string[] {
  const mould = own_mould(file);
  if (!mould) return ["measuring ..."];
  if ("complaint" in mould) return [`it cannot be measured: ${mould.complaint}`];
  return [both(volume(state.units, mould.brimful_ml)), counted(mould.cavities, "cavity", "cavities")];
}
