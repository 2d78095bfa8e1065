// What leaves the page for paper, printers and other programs.
import type { TemplateResult } from "lit";
import type { Plan } from "../program/answers";
import { files_out } from "./files_out";

export const print_view = (plan: Plan): TemplateResult => files_out(plan);
