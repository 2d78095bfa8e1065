// Which of her files rest on one: a change of it changes them all.
import { html, nothing, type TemplateResult } from "lit";
import { state } from "../documents/state";
import { listed } from "../figures/batches";
import type { Listed } from "../program/api";

const name_of = (file: string): string =>
  [...(state.files?.runs ?? []), ...(state.files?.orders ?? []), ...(state.files?.formulas ?? [])].find(
    (one) => one.file === file,
  )?.name || file;

export function used_by(one: Listed | undefined): TemplateResult | typeof nothing {
  const users = one?.used_by ?? [];
  if (!users.length) return nothing;
  return html`<p class="aside">Used by ${listed(users.map(name_of))}.</p>`;
}

/** Before a change that others will see as well. */
export function touches(one: Listed | undefined): TemplateResult | typeof nothing {
  const users = one?.used_by ?? [];
  if (users.length < 2) return nothing;
  return html`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${listed(users.map(name_of))}: a change here changes
    ${users.length === 2 ? "both" : `all ${users.length}`}.
  </p>`;
}
