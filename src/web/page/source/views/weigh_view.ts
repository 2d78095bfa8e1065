// What is to be weighed.
import { html, type TemplateResult } from "lit";
import { bench_of } from "../figures/batches";
import type { Plan } from "../program/answers";
import { order } from "./set_up_view";
import { weigh_lists } from "./weigh_lists";

export const weigh_view = (plan: Plan): TemplateResult => html`${order(plan)} ${weigh_lists(bench_of(plan))}`;
