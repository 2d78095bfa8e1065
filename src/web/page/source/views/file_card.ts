// A file in a list: what it is, a way into it, and what can be done to it as a whole.
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { repeat } from "lit/directives/repeat.js";
import { change_file, copy_file, remove, stem_of, type Called } from "../documents/file_acts";
import type { Kind } from "../documents/file_types";
import { amend, state, update, type ListOpen } from "../documents/state";
import { Refused, type Listed } from "../program/api";
import { tried } from "./lists";
import { used_by } from "../forms/used_by";
import "../drawings/mould_picture";

interface Card {
  kind: Kind;
  one: Listed;
  facts: string[]; // in short, what it is
  picture?: string; // the mould that is drawn
  open: () => Promise<unknown>;
}

/** Each card stays its file's when their order changes, so that no finger meets another one's. */
export const file_cards = (all: Listed[], card: (one: Listed) => TemplateResult): TemplateResult =>
  html`<ul class="cards">
    ${repeat(all, ({ file }) => file, card)}
  </ul>`;

export function file_card(card: Card): TemplateResult {
  const { one, facts, picture, open } = card;
  const opened = state.list_open?.file === one.file ? state.list_open : undefined;
  const called = one.name || one.file;
  return html`<li class="file">
    <button type="button" class="open" @click=${() => void tried(open)}>
      ${picture ? html`<mould-picture file=${picture}></mould-picture>` : nothing}
      <span class="told-of"
        ><b>${called}</b>${facts.length ? html`<span>${facts.join(", ")}</span>` : nothing}
        <span class="file-name">${one.shipped ? "built-in" : one.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${opened ? "true" : "false"}
      aria-label="Name, note, copy or remove: ${called}"
      @click=${() => turn(card, !opened)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${opened ? acts(card, opened) : nothing}
  </li>`;
}

function turn({ one }: Card, is_open: boolean): void {
  const { file, name, note } = one;
  update({ list_open: is_open ? { file, name, note, stem: stem_of(file) } : undefined });
}

function acts(card: Card, opened: ListOpen): TemplateResult {
  const { kind, one } = card;
  const button = (words: string, act: () => Promise<void>, { is_strong = false, is_asleep = false } = {}) =>
    html`<button
      type="button"
      class=${is_strong ? "strong" : ""}
      ?disabled=${is_asleep || opened.is_busy}
      @click=${() => void once(opened, act)}
    >
      ${words}
    </button>`;
  const copy = button("Copy", () => copied(kind, one));
  if (one.shipped) return html`<div class="acts"><div class="choice">${copy}</div></div>`;
  const is_same =
    (["name", "note"] as const).every((key) => one[key] === opened[key]) && stem_of(one.file) === opened.stem;
  const is_named = kind.name === "fats" || kind.name === "tips" || opened.name.trim() !== "";
  const is_asleep = is_same || !is_named || !opened.stem.trim();
  return html`<div class="acts">
    ${used_by(one)} ${kind.called ? text(kind.called === "for" ? "For" : "Name", opened, "name") : nothing}
    ${kind.name === "tips" ? nothing : text("Note", opened, "note")} ${text("Name of the file", opened, "stem")}
    <div class="choice">
      ${button("Save", () => changed(card, opened), { is_strong: true, is_asleep })} ${copy}
      ${button("Remove", () => removed(one, opened, false))}
    </div>
    ${opened.used_by ? in_the_way(one, opened) : nothing}
  </div>`;
}

/** A second tap while the first is carried out is none. */
async function once(opened: ListOpen, act: () => Promise<void>): Promise<void> {
  if (opened.is_busy) return;
  amend(opened, { is_busy: true });
  await tried(act);
  amend(opened, { is_busy: false });
}

function text(label: string, opened: ListOpen, key: keyof Called): TemplateResult {
  const id = `list-${key}`;
  const typed = (event: Event) => amend(opened, { [key]: (event.target as HTMLInputElement).value });
  return html`<div class="field">
    <label for=${id}>${label}</label>
    <input id=${id} .value=${live(opened[key])} @input=${typed} autocomplete="off" spellcheck="false" />
  </div>`;
}

/** Others name it: they would not be planned without it. */
function in_the_way(one: Listed, opened: ListOpen): TemplateResult {
  return html`<div role="alert">
    <p class="alarm">${opened.used_by!.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${() => void once(opened, () => removed(one, opened, true))}>Remove it even so</button>
  </div>`;
}

/** The copy opens for its name to be typed. */
async function copied(kind: Kind, one: Listed): Promise<void> {
  const file = await copy_file(kind, one);
  const copy = state.files?.[kind.list].find((listed) => listed.file === file);
  if (!copy) return;
  update({ list_open: { file, name: copy.name, note: copy.note, stem: stem_of(file) } });
  requestAnimationFrame(() => document.querySelector<HTMLInputElement>("#list-name, #list-stem")?.select());
}

async function changed({ kind, one }: Card, opened: ListOpen): Promise<void> {
  const { name, note, stem } = opened;
  await change_file(kind, one, { name: name.trim(), note: note.trim(), stem: stem.trim() });
  fold(opened);
}

/** Unless another one was opened meanwhile. */
function fold(opened: ListOpen): void {
  if (state.list_open === opened) update({ list_open: undefined });
}

async function removed(one: Listed, opened: ListOpen, even_so: boolean): Promise<void> {
  const users = one.used_by ?? [];
  if (users.length && !even_so) return amend(opened, { used_by: users });
  try {
    await remove(one, even_so);
    fold(opened);
  } catch (error) {
    const named = error instanceof Refused ? (error.answer as { used_by?: string[] }).used_by : undefined;
    if (!named) throw error;
    amend(opened, { used_by: named });
  }
}
