// What is to be weighed, beneath what keeps the plan from being of what is typed.
import { html, type TemplateResult } from "lit";
import { is_begun, weighing } from "../weighing/weighing";
import { complaint } from "./complaint";
import { show } from "./where";

export const weigh_view = (): TemplateResult =>
  html`${complaint(is_begun() ? "No new weights can be given." : undefined)} ${weighing(() => void show("record"))}`;
