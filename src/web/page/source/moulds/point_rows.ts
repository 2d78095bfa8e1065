// A shape that is a row of points: an outline's corners, a turned wall's heights and radii.
import { html, nothing, type TemplateResult } from "lit";
import { draft, mould_now, set } from "../documents/mould_draft";
import { half_points, rows_at, whole_points } from "../documents/mould_text";
import type { PointList } from "../documents/shapes";
import { unit_of } from "../program/numbers";
import { at } from "../program/pointer";
import { type DraftField, complaint_at, draft_input, forget_typed, id_of, unit_for, value_of } from "./mould_fields";

const here = "/shape/points";
const most = 500;
const place = (row: number, column?: string): string => [here, row, ...(column ? [column] : [])].join("/");

export const blank_points = (of: PointList) => Array.from({ length: of.least }, () => ({}));

export function point_rows(of: PointList): TemplateResult {
  const rows = rows_at(mould_now(), here);
  const numbers = numbering();
  const { complaint } = draft();
  const about_all = complaint?.field === here && !complaint.about ? complaint.line : undefined;
  return html`<h3 id="points-title">Points</h3>
    <p class="hint">${of.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${of.columns.map(
          (one) =>
            html`<span
              >${one.label} (${unit_for(place(-1, one.name), one.unit, unit_above(of, rows.length, one.name))})</span
            >`,
        )}
      </div>
      ${rows.map((_, i) => point_row(of, i, numbers))}
    </div>
    ${about_all ? html`<p class="complaint">${about_all}</p>` : nothing}
    <button type="button" ?disabled=${rows.length >= most} @click=${() => insert(of, rows.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`;
}

function point_row(of: PointList, row: number, numbers: Map<number, number>): TemplateResult {
  const name = numbers.has(row) ? `point ${numbers.get(row)}` : "empty point";
  const said = complaint_of(row);
  const cell = (column: number) => {
    const { name: key, label, unit } = of.columns[column];
    const field: DraftField = { label, pointer: place(row, key), unit, unit_before: unit_above(of, row, key) };
    const spoken = `${label}, ${numbers.has(row) ? name : `point ${row + 1}`}`;
    return draft_input(field, said ? `point-${row}-said` : undefined, keys(of, row, column), spoken);
  };
  return html`<div class="point ${said ? "wants" : ""}">
    <span class="number">${numbers.get(row) ?? ""}</span>${cell(0)}${cell(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${name}" @click=${() => insert(of, row)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${name} away" @click=${() => remove(of, row)}>×</button>
    ${said ? html`<p id="point-${row}-said" class="complaint">${said}</p>` : nothing}
  </div>`;
}

/** Numbered as the program counts them: rows with nothing in them are not sent. */
function numbering(): Map<number, number> {
  const there = [...whole_points(mould_now()), ...half_points(mould_now())].sort((a, b) => a - b);
  return new Map(there.map((row, i) => [row, i + 1]));
}

/** A complaint about the whole list may still tell which point it means. */
function complaint_of(row: number): string | undefined {
  const { complaint } = draft();
  return complaint_at(place(row)) ?? (complaint?.about === place(row) ? complaint.line : undefined);
}

/** In whatever unit the row above was measured, or the number beside. */
function unit_above(of: PointList, row: number, column: string): string {
  const unit = (r: number, c: string) => unit_of(at(mould_now(), place(r, c)));
  for (let above = row - 1; above >= 0; --above) if (unit(above, column)) return unit(above, column);
  return of.columns.map(({ name }) => unit(row, name)).find(Boolean) ?? "";
}

/** As soon as the row is drawn: fast fingers do not wait for the next frame. */
function focus(row: number, column: string): void {
  queueMicrotask(() => document.getElementById(id_of(place(row, column)))?.focus());
}

function insert(of: PointList, row: number): void {
  const rows = [...rows_at(mould_now(), here)];
  if (rows.length >= most) return;
  rows.splice(row, 0, {});
  forget_typed();
  set(here, rows);
  focus(row, of.columns[0].name);
}

function remove(of: PointList, row: number, column = 0): void {
  const rows = rows_at(mould_now(), here).filter((_, i) => i !== row);
  forget_typed();
  set(here, rows.length ? rows : [{}]);
  focus(Math.max(0, Math.min(row - (column ? 1 : 0), rows.length - 1)), of.columns[column].name);
}

function keys(of: PointList, row: number, column: number): (event: KeyboardEvent) => void {
  const [first, second] = of.columns.map(({ name }) => name) as [string, string];
  return (event) => {
    const is_empty = !value_of(place(row, first)) && !value_of(place(row, second));
    if (event.key === "Enter" && event.shiftKey) insert(of, row + 1);
    else if (event.key === "Enter" && column === 0) focus(row, second);
    else if (event.key === "Enter" && row + 1 < rows_at(mould_now(), here).length) focus(row + 1, first);
    else if (event.key === "Enter") insert(of, row + 1);
    else if (event.key === "Backspace" && is_empty && rows_at(mould_now(), here).length > 1)
      remove(of, row, row > 0 ? 1 : 0);
    else return;
    event.preventDefault();
  };
}
