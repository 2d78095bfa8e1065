// The page: reads the run, draws what is known, follows the keys.
import { html, nothing, render } from "lit";
import { drawn_by } from "../documents/drawing";
import { wire_effects } from "../documents/effects";
import { redo, undo } from "../documents/history";
import { begin } from "../documents/opening";
import { plan_soon } from "../documents/planning";
import { is_changed } from "../documents/open_file";
import { save_now } from "../documents/saving";
import { state, update } from "../documents/state";
import { look_now } from "../documents/watching";
import { Refused } from "../program/api";
import { on_new_key } from "../program/http";
import { foremost } from "./foremost";
import { formula_view } from "./formula_view";
import { bench, head } from "./run_view";
import { open_start, start } from "./start";
import "../drawings/solid_panel";

const root = document.getElementById("page")!;

function page() {
  return html` <button type="button" class="skip" @click=${() => document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${head(open_start)} ${foremost()}
    <main id="main" tabindex="-1" class=${state.is_old && state.view !== "start" ? "old-now" : ""}>
      ${
        state.fault
          ? html`${state.view === "start" ? nothing : html`<h1>Brimwright</h1>`}
              <p class="alarm" role="alert">${state.fault}</p>`
          : nothing
      }
      ${
        state.view === "run"
          ? bench()
          : state.view === "formula"
            ? formula_view()
            : state.view === "start"
              ? start()
              : state.fault
                ? nothing
                : html`<h1>Brimwright</h1>
                    <p>Reading the runs of this folder ...</p>`
      }
    </main>
    <p class="unseen" role="status">${state.announcement}</p>`;
}

drawn_by(() => {
  render(page(), root);
  measure_foremost();
});
addEventListener("resize", measure_foremost);
render(page(), root);

document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
  if (state.view !== "run") return; // what is typed into a mould is not the run's to take back
  event.preventDefault();
  (event.shiftKey ? redo : undo)();
});

// A tablet that wakes looks at the file again; one that goes to sleep writes first.
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible") return look_now();
  if (state.view !== "run" && state.view !== "formula") return;
  if (is_changed(state.run)) void save_now();
});

function go_on(): void {
  if (!state.run.file) return start_over();
  update({ fault: undefined });
  if (is_changed(state.run)) void save_now();
  plan_soon();
}

function start_over(): void {
  update({ fault: undefined });
  begin().catch((error: unknown) => {
    update({ fault: words_of(error) });
    if (error instanceof Refused && error.may_pass) window.setTimeout(start_over, 2000);
  });
}

function words_of(error: unknown): string {
  if (error instanceof Refused && [401, 403].includes(error.status))
    return "This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.";
  return error instanceof Error ? error.message : String(error);
}

/** What is stuck to the top must know how much of it is taken already. */
function measure_foremost(): void {
  const high = document.querySelector<HTMLElement>(".foremost")?.offsetHeight ?? 0;
  document.documentElement.style.setProperty("--foremost", `${high}px`);
}

wire_effects();
on_new_key(go_on);
start_over();
