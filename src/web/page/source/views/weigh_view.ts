// What is to be weighed.
import { html, type TemplateResult } from "lit";
import { bench_of } from "../figures/batches";
import type { Plan } from "../program/answers";
import { lanes, order } from "./set_up_view";
import { shelf } from "./shelf";

export function weigh_view(plan: Plan): TemplateResult {
  const of_one = bench_of(plan);
  return html`${order(plan)} ${lanes(of_one)} ${shelf(of_one)}`;
}
