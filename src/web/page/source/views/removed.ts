// Files that were removed: they are kept for long, and come back from here.
import { html, nothing, type TemplateResult } from "lit";
import { bring_back_file, delete_removed } from "../documents/file_acts";
import type { Kind } from "../documents/file_types";
import { state, toggle } from "../documents/state";
import type { RemovedFile } from "../program/api";
import { day } from "../program/numbers";
import { tried } from "./lists";

export function removed_of(kind: Kind["name"]): TemplateResult | typeof nothing {
  const all = state.removed.filter((one) => one.kind === kind);
  if (!all.length) return nothing;
  return html`<details class="removed">
    <summary>Removed, and kept still: ${all.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${all.map(row)}
    </ul>
  </details>`;
}

function row(one: RemovedFile): TemplateResult {
  const called = one.name || one.file;
  const key = `removed ${one.removed}`;
  const is_asked = state.open.has(key);
  return html`<li>
    <p>
      <b>${called}</b> <small>${one.file}, removed ${day(one.removed_at)}, kept until ${day(one.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${called}" @click=${() => void tried(() => bring_back_file(one))}>
        Bring back
      </button>
      ${
        is_asked
          ? html`<button
                type="button"
                aria-label="Delete ${called} for good"
                @click=${() => void tried(() => delete_removed(one))}
              >
                Delete it for good
              </button>
              <button type="button" @click=${() => toggle("open", key)}>Keep it</button>`
          : html`<button type="button" aria-label="Delete ${called} ..." @click=${() => toggle("open", key)}>
              Delete ...
            </button>`
      }
    </div>
  </li>`;
}
