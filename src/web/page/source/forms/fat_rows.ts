// The fats of a formula: which, how much of each, in which order, and what is known of her lots.
import { html, nothing, type TemplateResult } from "lit";
import { open_own_fats } from "../documents/beside";
import { edit, list_at, text_at, value_at } from "../documents/editing";
import type { FormulaSlot } from "../documents/file_types";
import { known_fats, own_fats } from "../documents/own_fats";
import { state, update, type OwnFat } from "../documents/state";
import type { Fat } from "../program/answers";
import type { Document, Json } from "../program/json";
import { confirmed } from "./contents";
import { free_id, name_with, plain } from "./fat_ids";
import { complaint_on, field, id_of } from "./field";
import { add_button, item_buttons, item_id, rows_of, set_rows, type List } from "./form_lists";
import { choice_field, folded, go_on, to_field, to_id, unfold } from "./form_parts";
import { blank_fat, own_fat_form } from "./own_fat_form";
import { total_words } from "./rates";
import { want } from "./wanted";

type FoundFat = Fat | OwnFat;

const name_of = (of: FormulaSlot, id: string): string => known_fats(of).find((one) => one.id === id)?.name ?? id;

const fats_of = (of: FormulaSlot): List => ({ of, at: "/fats", in_order: true, stays: true });
const rows_in = (of: FormulaSlot): Document[] => rows_of(fats_of(of)) as Document[];

export function fat_rows(of: FormulaSlot): TemplateResult {
  const rows = rows_in(of);
  const is_new = state.picking?.of === of && state.picking.row === rows.length;
  return html`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${rows.map((_, i) => fat_row(of, i, rows))}
    </ol>
    <p class="total" role="status">
      ${
        rows.length
          ? total_words(
              "The fats",
              rows.map((one) => one.share),
            )
          : "No fat yet."
      }
    </p>
    ${rows.length ? nothing : want(of, "/fats", id_of(of, "/fats"), "The fats")}
    ${is_new ? picker(of) : add_button(fats_of(of), "Add a fat", () => pick(of, rows.length))} ${own_file(of)}
  </section>`;
}

function fat_row(of: FormulaSlot, i: number, rows: Document[]): TemplateResult {
  const at = `/fats/${i}`;
  const name = name_of(of, String(rows[i].fat ?? "")) || "Which fat?";
  const complaint = complaint_on(of, `${at}/fat`) ?? complaint_on(of, at);
  const is_open = state.picking?.of === of && state.picking.row === i;
  return html`<li class="formula-row" id=${item_id(fats_of(of), i)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${id_of(of, `${at}/fat`)}
        aria-expanded=${is_open ? "true" : "false"}
        aria-label="${name}: choose another fat"
        @click=${() => (is_open ? put_away() : pick(of, i))}
      >
        ${name}
      </button>
      ${field({ label: "Share", of, at: `${at}/share`, unit: "%", short: true })} ${item_buttons(fats_of(of), i, name)}
    </div>
    ${complaint ? html`<p class="complaint">${complaint}</p>` : nothing} ${is_open ? picker(of) : nothing}
    ${own_fat_form(of, String(rows[i].fat ?? ""))}
    ${folded({
      of,
      name: at,
      pointers: [`${at}/saponification_value`, `${at}/confirmed`, `${at}/lot`],
      summary: `Your lot${lot_words(rows[i])}`,
      body: () => lot(of, i),
    })}
  </li>`;
}

function pick(of: FormulaSlot, row: number): void {
  update({ picking: { of, row, text: "" } });
  go_on(to_id("find-fat"));
  requestAnimationFrame(() => document.querySelector(".picker")?.scrollIntoView({ block: "start" }));
}

function put_away(): void {
  const was = state.picking;
  update({ picking: undefined });
  if (was) go_on(to_field(was.of, was.row < rows_in(was.of).length ? `/fats/${was.row}/fat` : "/fats"));
}

function take(of: FormulaSlot, id: string): void {
  const { row } = state.picking!;
  const rows = rows_in(of);
  update({ picking: undefined });
  // Another fat is another lot: what was known of the one before does not hold for it.
  const kept: Json = rows[row] ? { fat: id, share: rows[row].share ?? "" } : { fat: id, share: "" };
  set_rows(
    fats_of(of),
    `${name_of(of, id)} chosen`,
    [...rows.slice(0, row), kept, ...rows.slice(row + 1)],
    to_field(of, `/fats/${row}/share`),
  );
}

/** What may be chosen by what is typed, and what of it is lit. */
function free_fats(of: FormulaSlot): { found: FoundFat[]; free: FoundFat[]; lit?: FoundFat } {
  const { row, text, lit } = state.picking!;
  const there = rows_in(of).map((one) => one.fat);
  const found = found_by(of, text);
  const free = found.filter((one) => !there.includes(one.id) || there[row] === one.id);
  return { found, free, lit: free.find((one) => one.id === lit) };
}

/** Done as soon as the fats are here. A word for several is asked about, unless it is one's whole name. */
function enter(of: FormulaSlot): void {
  const picking = state.picking!;
  if (!state.fats.length) return update({ picking: { ...picking, is_entered: true } });
  const { free, lit } = free_fats(of);
  const whole = free.find((one) => plain(one.name) === plain(picking.text.trim()));
  const meant = lit ?? (free.length === 1 ? free[0] : whole);
  if (meant) take(of, meant.id);
  else if (picking.is_entered) update({ picking: { ...picking, is_entered: false } });
}

function picker(of: FormulaSlot): TemplateResult {
  const { row, text } = state.picking!;
  const there = rows_in(of).map((one) => one.fat);
  const { found, free, lit } = free_fats(of);
  const typed = (event: Event) => {
    update({ picking: { of, row, text: (event.target as HTMLInputElement).value } });
  };
  const step = (by: 1 | -1) => {
    const at = lit ? free.indexOf(lit) + by : by > 0 ? 0 : free.length - 1;
    const next = free[(at + free.length) % free.length];
    if (!next) return;
    update({ picking: { of, row, text, lit: next.id } });
    requestAnimationFrame(() => document.getElementById(`fat-${next.id}`)?.scrollIntoView({ block: "nearest" }));
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === "Escape") put_away();
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      step(event.key === "ArrowDown" ? 1 : -1);
    }
    if (event.key === "Enter") enter(of);
  };
  if (state.picking!.is_entered && state.fats.length) queueMicrotask(() => state.picking?.is_entered && enter(of));
  return html`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${lit ? `fat-${lit.id}` : nothing}
          .value=${text}
          @input=${typed}
          @keydown=${key}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${put_away}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${
        !state.fats.length
          ? `The list of fats is on its way ...${state.picking!.is_entered ? " Then what you typed is taken." : ""}`
          : found.length
            ? `${found.length === 1 ? "One fat: Enter takes it" : `${found.length} fats: the arrow keys choose, Enter takes`}.`
            : "No fat of that name."
      }
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${found.map((one) => {
        const is_in = there.includes(one.id) && there[row] !== one.id;
        const by = name_with(one, text);
        return html`<button
          type="button"
          role="option"
          id="fat-${one.id}"
          class=${one === lit ? "lit" : ""}
          ?disabled=${is_in}
          aria-selected=${one === lit || there[row] === one.id ? "true" : "false"}
          @click=${() => take(of, one.id)}
        >
          ${one.name}${by === one.name || !by ? "" : `, ${by}`}${is_in ? " (is in it)" : ""}
        </button>`;
      })}
    </div>
    <p class="choice">
      <button type="button" @click=${() => void describe_fat(of, text)}>
        ${text.trim() ? `Describe "${text.trim()}" as a fat of my own` : "Describe a fat of my own"}
      </button>
    </p>
  </div>`;
}

/** By all words of a name; where no fat has them all, as in "organic olive pomace", by some, the most of them first. */
function found_by(of: FormulaSlot, text: string): FoundFat[] {
  const all = known_fats(of).filter((one) => name_with(one, text) !== undefined);
  const words = text.split(/\s+/).filter((word) => word.length > 2);
  if (all.length || words.length < 2) return all;
  const many = (one: Fat | OwnFat) => words.filter((word) => name_with(one, word) !== undefined).length;
  const most = Math.max(...known_fats(of).map(many));
  return most ? known_fats(of).filter((one) => many(one) === most) : [];
}

/** It goes into the file of her own fats, and its form opens beneath its row; nothing of it is guessed but its id. */
async function describe_fat(of: FormulaSlot, text: string): Promise<void> {
  const file = await open_own_fats(of);
  if (!file) return;
  const name = text.trim();
  const id = free_id(name, [...state.fats, ...(list_at("own_fats", "/fats") as Document[])]);
  const places = list_at("own_fats", "/fats").length;
  edit("own_fats", `/fats/${places}`, { ...blank_fat, id, name });
  take(of, id);
  unfold("own_fats", id);
  go_on(to_field("own_fats", `/fats/${places}/${name ? "inci" : "name"}`));
}

function lot_words(row: Document): string {
  const value = row.saponification_value;
  const range = value as Document;
  const is_blank = value === "" || (value !== null && typeof value === "object" && range.low === "");
  const words = is_blank
    ? "to be filled in"
    : value === undefined
      ? "published values"
      : value !== null && typeof value === "object"
        ? `${String(range.low)} to ${String(range.high)} mg KOH per g`
        : `${String(value)} mg KOH per g`;
  return `: ${row.lot ? `${String(row.lot)}, ` : ""}${words}`;
}

type ValueWay = "published" | "one" | "range";
const value_ways: [ValueWay, string][] = [
  ["published", "As published"],
  ["one", "One value, from the supplier"],
  ["range", "A range, from the supplier"],
];
const starts: Record<ValueWay, Json | undefined> = {
  published: undefined,
  one: "",
  range: { low: "", typical: "", high: "" },
};

function lot(of: FormulaSlot, i: number): TemplateResult {
  const at = `/fats/${i}/saponification_value`;
  const value = value_at(of, at);
  const way: ValueWay =
    value === undefined ? "published" : value !== null && typeof value === "object" ? "range" : "one";
  const is_confirmed = value_at(of, `/fats/${i}/confirmed`) !== undefined;
  const number = (label: string, pointer: string) => field({ label, of, at: pointer, number: true, short: true });
  return html` ${field({ label: "Lot", of, at: `/fats/${i}/lot`, optional: true, short: true })}
  ${choice_field({
    of,
    question: "Saponification value, mg of KOH for 1 g of fat (ISO 3657)",
    at,
    is_told_elsewhere: way === "one",
    chosen: way,
    answers: value_ways,
    puts: (to) => starts[to],
    hint: published_words(of, text_at(of, `/fats/${i}/fat`)),
  })}
  ${way === "one" ? html`<div class="row">${number("Saponification value", at)}</div>` : nothing}
  ${
    way === "range"
      ? html`<div class="row">
          ${number("Lowest", `${at}/low`)} ${number("Typical", `${at}/typical`)} ${number("Highest", `${at}/high`)}
        </div>`
      : nothing
  }
  ${
    way !== "published" || is_confirmed
      ? confirmed(
          of,
          `/fats/${i}/confirmed`,
          "Checked in the supplier's document, though what is known of the fat contradicts it",
        )
      : nothing
  }`;
}

function published_words(of: FormulaSlot, id: string): string | undefined {
  const fat = known_fats(of).find((one) => one.id === id);
  if (!fat) return undefined;
  if ("own" in fat) return fat.own ? `In your file: ${fat.own}.` : undefined;
  const { low, high, source } = fat.saponification_value_mg_koh_per_g;
  return `Published: ${low} to ${high} (${source}).`;
}

function own_file(of: FormulaSlot): TemplateResult {
  const own = own_fats(of);
  const found = Array.isArray(own)
    ? `In it: ${own.map((one) => one.name).join(", ")}.`
    : own === "none"
      ? "No such file is found from here."
      : undefined;
  const named = text_at(of, "/own_fats");
  return folded({
    of,
    name: "own fats",
    pointers: ["/own_fats"],
    summary: `A file of your own fats${named && `: ${named}`}`,
    body: () =>
      field({
        label: "Its name, as it lies beside this formula",
        of,
        at: "/own_fats",
        optional: true,
        hint: found ?? "Such as studio.fats.json. Its fats then stand in the list of fats.",
      }),
  });
}
