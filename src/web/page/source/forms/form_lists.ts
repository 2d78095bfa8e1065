// Lists in a run or a formula that grow, shrink and change their order by hand.
import { html, nothing, type TemplateResult } from "lit";
import { list_at } from "../documents/editing";
import type { DocumentId } from "../documents/file_types";
import type { Document, Json } from "../program/json";
import { with_value } from "../program/pointer";
import { complaint_on, id_of, said_beneath } from "./field";
import { type Way, change_whole, id_at, to_field, to_first_in, to_id } from "./form_parts";

export interface List {
  of?: DocumentId;
  at: string;
  in_order?: boolean; // hers, and changed by hand
  least?: number; // so many stay
  stays?: boolean; // though nothing is in it
  and?: (document: Document, many: number) => Document; // what changes with how many there are
}

export const rows_of = ({ of = "run", at }: List): Json[] => list_at(of, at);

/** What one of the list stands in on the page. */
export const item_id = ({ of = "run", at }: List, i: number): string => id_at(of, `${at}/${i}`, "item");
const button_id = ({ of = "run", at }: List, i: number, what: string): string => id_at(of, `${at}/${i}`, what);
/** The button that adds to it; so the program's complaint about the list leads there. */
const adder_id = ({ of = "run", at }: List): string => id_of(of, at);

/** The last one takes the list with it, unless it must be there. */
export function set_rows(list: List, said: string, rows: Json[], way?: Way): void {
  const { of = "run", at, stays, and = (document) => document } = list;
  change_whole(
    of,
    said,
    (document) => and(with_value(document, at, rows.length || stays ? rows : undefined), rows.length),
    way,
  );
}

/** Also makes the list, if it is the first. */
export function add_to(list: List, item: Json, name: string): void {
  const rows = rows_of(list);
  set_rows(list, `${name} added`, [...rows, item], to_first_in(item_id(list, rows.length)));
}

function take_from(list: List, i: number, name: string): void {
  const rows = rows_of(list).filter((_, at) => at !== i);
  const next = Math.min(i, rows.length - 1);
  const has_button = rows.length > (list.least ?? 0);
  set_rows(
    list,
    `${name} removed`,
    rows,
    has_button ? to_id(button_id(list, next, "drop")) : to_field(list.of ?? "run", list.at),
  );
}

function move_in(list: List, i: number, by: -1 | 1, name: string): void {
  const rows = [...rows_of(list)];
  const [one] = rows.splice(i, 1);
  rows.splice(i + by, 0, one);
  const words = by < 0 ? "earlier" : "later";
  const is_at_end = i + by === 0 || i + by === rows.length - 1; // where the same button sleeps
  const stays_on = is_at_end ? (by < 0 ? "later" : "earlier") : words;
  set_rows(list, `${name} moved ${words}`, rows, to_id(button_id(list, i + by, stays_on)));
}

/** Remove one of a list; those that change the order only where there is one. */
export function item_buttons(list: List, i: number, name: string): TemplateResult | typeof nothing {
  const last = rows_of(list).length - 1;
  const is_free = last >= (list.least ?? 0);
  const has_order = list.in_order && last > 0;
  if (!is_free && !has_order) return nothing;
  const move = (by: -1 | 1, words: string, is_at_end: boolean) =>
    html`<button
      type="button"
      id=${button_id(list, i, words)}
      ?disabled=${is_at_end}
      aria-label="${name} ${words}"
      @click=${() => move_in(list, i, by, name)}
    >
      ${by < 0 ? "↑" : "↓"}
    </button>`;
  return html`<div class="tools">
    ${has_order ? html`${move(-1, "earlier", i === 0)} ${move(1, "later", i === last)}` : nothing}
    ${
      is_free
        ? html`<button
            type="button"
            id=${button_id(list, i, "drop")}
            aria-label="Remove ${name}"
            @click=${() => take_from(list, i, name)}
          >
            ×
          </button>`
        : nothing
    }
  </div>`;
}

/** What the program says of the whole list, and the button to mend it by. */
export function add_button(list: List, words: unknown, act: () => void): TemplateResult {
  const id = adder_id(list);
  const complaint = complaint_on(list.of ?? "run", list.at);
  return html`${said_beneath(id, complaint)}
    <button type="button" id=${id} aria-describedby=${complaint ? `${id}-said` : nothing} @click=${act}>
      ${words}
    </button>`;
}
