// What an order says: who it is for, when it is due, and how many pieces of which runs.
import { html, nothing, type TemplateResult } from "lit";
import { folder_of, named_from } from "../documents/names";
import { lines_of } from "../documents/order_lines";
import { order_now } from "../documents/order_opening";
import { state } from "../documents/state";
import { counted } from "../figures/batches";
import type { Listed } from "../program/api";
import { field } from "./field";
import { add_to, item_buttons, item_id, rows_of, type List } from "./form_lists";
import { one_of, said_at } from "./form_parts";
import { ready_choice } from "./ready_choice";

const lines: List = { of: "order", at: "/lines", in_order: true, stays: true };

export function order_form(): TemplateResult {
  return html`<section class="card" aria-label="The order">
    <div class="row">
      ${field({ of: "order", label: "For", at: "/for", optional: true })}
      ${field({ of: "order", label: "Due", at: "/due", date: true, optional: true, short: true })}
      ${field({ of: "order", label: "Note", at: "/note", optional: true })}
    </div>
    <h2>What is ordered</h2>
    ${said_at("order", "/lines")} ${rows_of(lines).map((_, i) => line_row(i))} ${line_adder()} ${ready_choice()}
  </section>`;
}

const own_runs = (): Listed[] => (state.files?.runs ?? []).filter(({ shipped }) => !shipped);

/** The run of a line, as it is listed. */
function listed(name: string): Listed | undefined {
  const file = named_from(order_now().open.file, name);
  return state.files?.runs.find((one) => one.file === file);
}

export const run_name = (name: string): string => listed(name)?.name || name;

/** Those beside the order or in a folder below that no other line has, as the order names them. */
function free_runs(but_for?: string): [string, string][] {
  const { file: order, now } = order_now().open;
  const folder = folder_of(order);
  const taken = lines_of(now).flatMap(({ run }) => (run && run !== but_for ? named_from(order, run) : []));
  return own_runs()
    .filter(({ file }) => file.startsWith(folder) && !taken.includes(file))
    .map(({ file, name }) => [file.slice(folder.length), name || file]);
}

function line_row(i: number): TemplateResult {
  const { run } = lines_of(order_now().open.now)[i] ?? { run: "" };
  const at = `/lines/${i}`;
  const own = listed(run)?.pieces;
  const name = run ? run_name(run) : `line ${i + 1}`;
  return html`<div class="row" id=${item_id(lines, i)} role="group" aria-label=${name}>
    ${one_of({ of: "order", label: "Run", at: `${at}/run`, answers: free_runs(run), unsaid: "choose ..." })}
    ${field({
      of: "order",
      label: "Pieces",
      at: `${at}/pieces`,
      count: true,
      short: true,
      hint: own === undefined ? undefined : `The run itself: ${counted(own, "piece")}`,
    })}
    ${
      rows_of(lines).length > 1
        ? field({
            of: "order",
            label: "Poured with others",
            at: `${at}/together`,
            optional: true,
            short: true,
            hint: "Lines with one word, such as A, share one base.",
          })
        : nothing
    }
    ${item_buttons(lines, i, name)}
  </div>`;
}

/** By the run alone: how many of it are wanted, nobody else knows. */
function line_adder(): TemplateResult {
  const free = free_runs();
  if (!own_runs().length)
    return html`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`;
  if (!free.length) return html`${nothing}`;
  return html`<div class="row">
    ${one_of({
      of: "order",
      label: rows_of(lines).length ? "Another run" : "The run that is ordered",
      at: "/lines/-",
      answers: free,
      unsaid: "choose ...",
      optional: true,
      chosen: "",
      take: (run) => run && add_to(lines, { run }, run_name(run)),
    })}
  </div>`;
}
