// When a run is made: from today, or for its due day.
import { html, type TemplateResult } from "lit";
import { field } from "../forms/field";
import { days_panel } from "./days_panel";

export const days_view = (): TemplateResult =>
  html`<section class="card" aria-label="What it is for">
      <div class="row">
        ${field({
          label: "Due",
          at: "/due",
          date: true,
          optional: true,
          short: true,
          hint: "The day it is handed over. Left blank, it is begun today.",
        })}
        ${field({ label: "Pieces to sell", at: "/sell", count: true, short: true })}
        ${field({ label: "For", at: "/for", optional: true, hint: "Whom or what, such as the spring fair." })}
      </div>
    </section>
    ${days_panel("run")}`;
