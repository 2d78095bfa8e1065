// The runs that are there, and a new one.
import { html, type TemplateResult } from "lit";
import { run_kind } from "../documents/kinds";
import { open_run } from "../documents/opening";
import { state } from "../documents/state";
import { counted } from "../figures/batches";
import type { Listed } from "../program/api";
import { day } from "../program/numbers";
import { file_card, file_cards } from "./file_card";
import { list_head } from "./lists";
import { new_run } from "./new_run";
import { removed_of } from "./removed";

/** What was changed last stands first. */
const latest_first = (a: Listed, b: Listed): number => (b.changed ?? "").localeCompare(a.changed ?? "");

export function runs_list(): TemplateResult {
  const listed = state.files?.runs ?? [];
  const own = listed.filter((one) => !one.shipped).sort(latest_first);
  const shipped = listed.filter((one) => one.shipped);
  return html`${list_head("Runs")} ${new_run()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${
        own.length
          ? file_cards(own, card)
          : html`<p class="aside">No runs of your own in ${state.files?.folder} yet.</p>`
      }
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${file_cards(shipped, card)}
    </section>
    ${removed_of("run")}`;
}

function card(one: Listed): TemplateResult {
  const { pieces, mould, due, made_on, changed } = one;
  const facts = [
    pieces === undefined ? "" : counted(pieces, "piece"),
    mould ?? "",
    due ? `due ${day(due)}` : "",
    made_on ? `made ${day(made_on)}` : changed ? `changed ${day(changed)}` : "",
  ].filter(Boolean);
  return file_card({ kind: run_kind, one, facts, picture: mould_called(mould), open: () => open_run(one.file) });
}

const mould_called = (name: string | undefined): string | undefined =>
  state.files?.moulds.find((one) => one.name === name)?.file ?? state.catalogue.find((one) => one.name === name)?.path;
