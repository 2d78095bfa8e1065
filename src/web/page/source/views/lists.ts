// What the lists of files have in common.
import { html, nothing, type TemplateResult } from "lit";
import { last_act, list_anew, redo_act, undo_act } from "../documents/file_acts";
import { state, update } from "../documents/state";
import { Refused } from "../program/api";

/** What is refused is told above the list. */
export async function tried(act: () => Promise<unknown>): Promise<void> {
  update({ list_complaint: "" });
  try {
    await act();
  } catch (error) {
    update({ list_complaint: error instanceof Error ? error.message : String(error) });
    if (error instanceof Refused) await list_anew().catch(() => undefined);
  }
}

export const undo_last = (): void => void tried(undo_act);
export const redo_last = (): void => void tried(redo_act);

export function list_head(title: string): TemplateResult {
  return html`<h1 tabindex="-1">${title}</h1>
    ${state.list_complaint ? html`<p class="alarm" role="alert">${state.list_complaint}</p>` : nothing}
    ${
      state.list_told && last_act()
        ? html`<p class="told" role="status">
            ${state.list_told} <button type="button" @click=${undo_last}>Undo</button>
          </p>`
        : nothing
    }
    ${(state.files?.cut ?? []).map(
      (one) =>
        html`<p class="alarm">
          More lies in ${one.folder} than is looked at: ${one.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`,
    )}`;
}
