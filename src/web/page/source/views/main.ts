// The page: reads the run, draws what is known, follows the keys.
import { html, nothing, render, type TemplateResult } from "lit";
import { drawn_by, hold_still_beneath_a_finger } from "../documents/drawing";
import { wire_effects } from "../documents/effects";
import { plan_soon } from "../documents/planning";
import { save_open } from "../documents/saving";
import { state, update } from "../documents/state";
import { is_list, is_of_run, type ListView } from "../documents/views";
import { look_now } from "../documents/watching";
import { Refused } from "../program/api";
import { on_key } from "../program/http";
import { foremost } from "./foremost";
import { fats_list } from "./fats_list";
import { formula_view } from "./formula_view";
import { formulas_list } from "./formulas_list";
import { moulds_list } from "./moulds_list";
import { order_view } from "./order_view";
import { orders_list } from "./orders_list";
import { rail } from "./rail";
import { run_view } from "./run_view";
import { runs_list } from "./runs_list";
import { shelf_view } from "../stock/shelf_view";
import { trail_view } from "../stock/trail_view";
import { steps } from "./steps";
import { tips_list } from "./tips_list";
import { begin_here, keep_address, put_address, wire_history } from "./where";

const root = document.getElementById("page")!;

function page(): TemplateResult {
  const { view, fault } = state;
  return html` <button type="button" class="skip" @click=${() => document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${rail()} ${foremost()}
    <main
      id="main"
      tabindex="-1"
      data-view=${view}
      class=${state.is_old && !is_list(view) && view !== "order" && view !== "trail" ? "old-now" : ""}
    >
      ${
        fault
          ? html`${view === "reading" ? html`<h1>Brimwright</h1>` : nothing}
              <p class="alarm" role="alert">${fault}</p>`
          : nothing
      }
      ${looked_at()}
    </main>
    <p class="unseen" role="status">${state.announcement}</p>`;
}

const lists: Record<ListView, () => TemplateResult> = {
  runs: runs_list,
  orders: orders_list,
  formulas: formulas_list,
  moulds: moulds_list,
  fats: fats_list,
  tips: tips_list,
  shelf: shelf_view,
};

function looked_at(): TemplateResult | typeof nothing {
  const { view, fault } = state;
  if (is_of_run(view)) return run_view(view);
  if (is_list(view)) return lists[view]();
  if (view === "formula") return formula_view();
  if (view === "order") return order_view();
  if (view === "trail") return trail_view();
  if (fault) return nothing;
  return html`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`;
}

drawn_by(() => {
  keep_address();
  render(page(), root);
  watch_foremost();
});
render(page(), root);

document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
  if (is_list(state.view) && !state.mould) return; // the browser takes back what is typed into a name
  event.preventDefault();
  const { undo, redo } = steps();
  (event.shiftKey ? redo : undo)?.();
});

// A tablet that wakes looks at the file again; one that goes to sleep writes first.
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible") return look_now();
  void save_open();
});

function go_on(): void {
  if (!state.run.file) return start_over();
  update({ fault: undefined });
  void save_open();
  plan_soon();
}

function start_over(): void {
  update({ fault: undefined });
  begin_here().catch((error: unknown) => {
    update({ fault: words_of(error) });
    if (error instanceof Refused && error.may_pass) window.setTimeout(start_over, 2000);
  });
}

function words_of(error: unknown): string {
  if (error instanceof Refused && [401, 403].includes(error.status))
    return "This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.";
  return error instanceof Error ? error.message : String(error);
}

/** What is stuck to the top must know how much of it is taken already. Measured when it changes, not at each drawing. */
const heights = new ResizeObserver(([{ target }]) => tell_height((target as HTMLElement).offsetHeight));
let foremost_now: Element | null = null;

function watch_foremost(): void {
  const drawn = document.querySelector(".foremost");
  if (drawn === foremost_now) return;
  heights.disconnect();
  if (drawn) heights.observe(drawn);
  else tell_height(0);
  foremost_now = drawn;
}

const tell_height = (high: number): void => document.documentElement.style.setProperty("--foremost", `${high}px`);

hold_still_beneath_a_finger();
wire_effects();
wire_history();
on_key((is_new) => {
  put_address();
  if (is_new) go_on();
});
start_over();
