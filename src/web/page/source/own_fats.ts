// The fats a formula may name: the shipped ones, and those of her own file.
import { read_kept, type Document, type Json } from "./api";
import { value_at } from "./field";
import type { Fat } from "./plan";
import { changed, state, type Whose } from "./state";

const read = new Map<string, Fat[] | "waiting" | "none">(); // by the file's name and the formula's

export const forget_own_fats = (): void => read.clear();

const folder_of = (file: string): string => file.slice(0, file.lastIndexOf("/") + 1);

/** Her own fats come first: they are fewer, and were put there to be used. */
export function known_fats(whose: Whose): Fat[] {
  const own = own_fats(whose);
  return Array.isArray(own) ? [...own, ...state.fats] : state.fats;
}

export function own_fats(whose: Whose): Fat[] | "waiting" | "none" | undefined {
  const name = value_at(whose, "/fats_from");
  const formula = state.formulas[whose]?.file;
  if (typeof name !== "string" || !name.endsWith(".json") || formula === undefined) return undefined;
  const key = `${formula}\n${name}`;
  if (!read.has(key)) {
    read.set(key, "waiting");
    void read_file(name, formula).then((fats) => {
      read.set(key, fats);
      changed();
    });
  }
  return read.get(key);
}

async function read_file(name: string, formula: string): Promise<Fat[] | "none"> {
  for (const file of new Set([folder_of(formula) + name, name])) {
    const document = await read_document(file);
    if (Array.isArray(document?.fats)) return (document.fats as Document[]).map(fat_of);
  }
  return "none"; // what is wrong with it the program says
}

async function read_document(file: string): Promise<Document | undefined> {
  try {
    return JSON.parse((await read_kept(file)).text) as Document;
  } catch {
    return undefined;
  }
}

function fat_of(entry: Document): Fat {
  const fat: Fat = { id: String(entry.id ?? ""), name: String(entry.name ?? entry.id ?? "") };
  return { ...fat, own: own_value(entry.saponification_value) };
}

/** As it stands in her file. */
function own_value(value: Json | undefined): string {
  if (value === null || typeof value !== "object") return String(value ?? "");
  const { low, high } = value as Document;
  return `${String(low)} to ${String(high)}`;
}

/** A formula for this folder, of one that lies elsewhere: its own fats are found from here, too. */
export async function named_from_here(formula: Document, from: string): Promise<Document> {
  const name = formula.fats_from;
  if (typeof name !== "string" || !folder_of(from)) return formula;
  const there = folder_of(from) + name;
  return (await read_document(there)) ? { ...formula, fats_from: there } : formula;
}
