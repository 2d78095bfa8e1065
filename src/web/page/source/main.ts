// The page: reads the run, draws what is known, follows the keys.
import { html, nothing, render } from "lit";
import { Refused } from "./api";
import { bench, head } from "./bench";
import "./curve";
import { redo, undo } from "./editing";
import { formula_view } from "./formula_view";
import { begin } from "./opening";
import { save_now, watch } from "./saving";
import "./solid_panel";
import { open_start, start } from "./start";
import { drawn_by, state } from "./state";

const root = document.getElementById("page")!;

function page() {
  return html`
    <button type="button" class="skip" @click=${() => document.getElementById("main")?.focus()}>To the figures</button>
    ${head(open_start)}
    <main id="main" tabindex="-1">
      ${state.fault ? html`${state.view === "start" ? nothing : html`<h1>Brimwright</h1>`}<p class="alarm" role="alert">${state.fault}</p>` : nothing}
      ${state.view === "run" ? bench() : state.view === "formula" ? formula_view() : state.view === "start" ? start() : state.fault ? nothing : html`<h1>Brimwright</h1><p>Reading the runs of this folder ...</p>`}
    </main>
    <p class="unseen" role="status">${state.said}</p>`;
}

drawn_by(() => render(page(), root));
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
  if (document.visibilityState === "visible") void watch();
  else if (state.saving.is === "waiting") void save_now();
});

begin().catch((error: unknown) => {
  state.fault =
    error instanceof Refused && [401, 403].includes(error.status)
      ? "This address is from an earlier start. Open the address that brimwright printed this time."
      : error instanceof Error
        ? error.message
        : String(error);
  render(page(), root);
});
