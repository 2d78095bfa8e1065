// The fats a formula may name: the shipped ones, and those of her own file.
import type { Fat } from "../program/answers";
import { read_file } from "../program/api";
import { document_in, type Document, type Json } from "../program/json";
import { at } from "../program/pointer";
import type { FormulaSlot } from "./file_types";
import { folder_of } from "./names";
import { state, update, type OwnFat } from "./state";

export const forget_own_fats = (): void => update({ own_fats: {} });

/** Her own fats come first: they are fewer, and were put there to be used. */
export function known_fats(slot: FormulaSlot): (Fat | OwnFat)[] {
  const own = own_fats(slot);
  return Array.isArray(own) ? [...own, ...state.fats] : state.fats;
}

export function own_fats(slot: FormulaSlot): OwnFat[] | "waiting" | "none" | undefined {
  const formula = state.formulas[slot];
  const name = at(formula?.now, "/own_fats");
  if (typeof name !== "string" || !name.endsWith(".json") || formula === undefined) return undefined;
  const open = state.beside.own_fats;
  if (open && [folder_of(formula.file) + name, name].includes(open.file)) return fats_of(open.now) ?? "none";
  const key = `${formula.file}\n${name}`;
  const known = state.own_fats[key];
  if (known) return known;
  keep(key, "waiting");
  void fats_in(name, formula.file).then((fats) => keep(key, fats));
  return "waiting";
}

const keep = (key: string, fats: OwnFat[] | "waiting" | "none"): void =>
  update({ own_fats: { ...state.own_fats, [key]: fats } });

async function fats_in(name: string, formula: string): Promise<OwnFat[] | "none"> {
  for (const file of new Set([folder_of(formula) + name, name])) {
    const fats = fats_of(await document_of(file));
    if (fats) return fats;
  }
  return "none"; // what is wrong with it the program says
}

const fats_of = (document: Document | undefined): OwnFat[] | undefined =>
  Array.isArray(document?.fats) ? (document.fats as Document[]).map(fat_of) : undefined;

async function document_of(file: string): Promise<Document | undefined> {
  try {
    return document_in((await read_file(file)).text);
  } catch {
    return undefined;
  }
}

const fat_of = ({ id, name, saponification_value }: Document): OwnFat => ({
  id: String(id ?? ""),
  name: String(name ?? id ?? ""),
  own: own_value(saponification_value),
});

/** As it stands in her file. */
function own_value(value: Json | undefined): string {
  if (value === null || typeof value !== "object") return String(value ?? "");
  const { low, high } = value as Document;
  return `${String(low)} to ${String(high)}`;
}
