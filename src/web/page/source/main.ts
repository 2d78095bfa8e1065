// The page: reads the run, draws what is known, follows the keys.
import { html, nothing, render } from "lit";
import { on_new_key, Refused } from "./api";
import { bench, head } from "./bench";
import { look } from "./beside";
import "./curve";
import { foremost } from "./danger";
import { redo, undo } from "./editing";
import { formula_view } from "./formula_view";
import { begin } from "./opening";
import { plan_soon } from "./planning";
import { save_again, save_now, watch } from "./saving";
import "./solid_panel";
import { open_start, start } from "./start";
import { changed, drawn_by, state } from "./state";

const root = document.getElementById("page")!;

function page() {
  return html` <button type="button" class="skip" @click=${() => document.getElementById("main")?.focus()}>
      To the figures
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
    <p class="unseen" role="status">${state.said}</p>`;
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
  if (state.view !== "run" && state.view !== "formula") return;
  if (document.visibilityState === "visible") (void watch(), void look().catch(() => undefined));
  else if (state.saving.is === "waiting") void save_now();
});

function go_on(): void {
  if (!state.file) return start_over();
  state.fault = undefined;
  if (state.saving.is === "failed" || state.saving.is === "waiting") save_again();
  plan_soon();
  void watch();
  changed();
}

function start_over(): void {
  state.fault = undefined;
  begin().catch((error: unknown) => {
    state.fault =
      error instanceof Refused && [401, 403].includes(error.status)
        ? "This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here."
        : error instanceof Error
          ? error.message
          : String(error);
    if (error instanceof Refused && error.may_pass) window.setTimeout(start_over, 2000);
    changed();
  });
}

/** What is stuck to the top must know how much of it is taken already. */
function measure_foremost(): void {
  const high = document.querySelector<HTMLElement>(".foremost")?.offsetHeight ?? 0;
  document.documentElement.style.setProperty("--foremost", `${high}px`);
}

on_new_key(go_on);
start_over();
