// The run that lies open: what holds for all of it, then the view of it that is looked at.
import { html, type TemplateResult } from "lit";
import { all_conflicts, all_taken } from "../documents/conflicts";
import { state } from "../documents/state";
import type { RunView } from "../documents/views";
import { set_aside, which_is_to_stay } from "../forms/conflict";
import type { Plan } from "../program/answers";
import { complaint } from "./complaint";
import { days_view } from "./days_view";
import { learned_view } from "./learned_view";
import { money_view } from "./money_view";
import { record_view } from "../recording/record_view";
import { mould_view } from "./mould_view";
import { print_view } from "./print_view";
import { set_up_view } from "./set_up_view";
import { watch_view } from "./watch_view";
import { weigh_view } from "./weigh_view";
import { show } from "./where";

/** Of a run that is planned. */
const views: Record<Exclude<RunView, "weigh" | "record" | "learned">, (plan: Plan) => TemplateResult> = {
  "set-up": set_up_view,
  watch: watch_view,
  money: money_view,
  days: days_view,
  mould: mould_view,
  print: print_view,
};

export function run_view(view: RunView): TemplateResult {
  const changed_files = html`${all_conflicts().map((file) => which_is_to_stay(file))} ${all_taken().map(set_aside)}`;
  if (view === "weigh") return html`${changed_files} ${weigh_view()}`;
  if (view === "record")
    return html`${changed_files}
    ${record_view({
      to_weights: () => void show("weigh"),
      to_learned: () => void show("learned"),
    })}`;
  if (view === "learned") return html`${changed_files} ${complaint()} ${learned_view()}`;
  const { plan } = state;
  return html`${changed_files} ${complaint()}
    <h1 id="run-title" tabindex="-1">${plan?.run ?? String(state.run.now.name ?? "")}</h1>
    ${plan ? views[view](plan) : without_plan(view)}`;
}

/** What is missing must be within reach. */
function without_plan(view: RunView): TemplateResult {
  if (!state.complaint) return html`<p class="hint">Reading the run ...</p>`;
  return view === "set-up"
    ? set_up_view()
    : html`<p class="hint">No figures yet: the set-up tells what is missing.</p>`;
}
