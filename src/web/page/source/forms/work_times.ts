// How long the work takes her: what a piece costs and when it is made rest on it.
import type { TemplateResult } from "lit";
import { field } from "./field";

/** Where a time of the work stands in the studio. */
export const of_work = (key: string): string => ["/work", key].join("/");

/** For days, the time of a batch must be known. */
export function work_times(for_days = false): TemplateResult[] {
  const time = (key: string, label: string, unit: string, is_due = false) =>
    field({ of: "studio", label, at: of_work(key), unit, optional: true, takes_part: true, is_due, short: true });
  return [
    time("each_batch", "Each batch", "min", for_days),
    time("each_piece_made", "Each piece made", "s"),
    time("each_tray_fill", "Each tray fill", "min"),
    time("each_piece_packed", "Each piece packed", "s"),
  ];
}
