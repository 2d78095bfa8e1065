// Names of files, and the places where a document holds them.
import type { Document, Json } from "../program/json";
import { at, with_value } from "../program/pointer";

export const folder_of = (file: string): string => file.slice(0, file.lastIndexOf("/") + 1);
export const last_part = (file: string): string => file.slice(file.lastIndexOf("/") + 1);

/** What a file means by a name: a path from the folder that it lies in. */
export const named_from = (file: string, name: string): string => {
  const folder = folder_of(file);
  return folder ? normal(folder + name) : name;
};

function normal(path: string): string {
  const parts: string[] = [];
  for (const part of path.split("/"))
    if (part === "..") parts.pop();
    else if (part !== ".") parts.push(part);
  return parts.join("/");
}

/** A plain file name made of what she calls it. */
export function file_name(name: string, ending: string): string {
  const plain = name.toLowerCase().replaceAll(/[^a-z0-9]+/g, "_");
  return (plain.replace(/^_+|_+$/g, "").slice(0, 60) || "mine") + ending;
}

/** `name`, or the first like it with a number that nobody has. */
export function free_name(name: string, taken: readonly { file: string }[]): string {
  const [, stem, ending] = /^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(name) ?? ["", name, ""];
  for (let i = 1; ; ++i) {
    const free = i === 1 ? name : `${stem}_${i}${ending}`;
    if (!taken.some((one) => one.file === free)) return free;
  }
}

// The program names them anew in a copy that lies elsewhere; see web/renaming.h.
const naming_keys = ["mould", "formula", "run", "file", "own_fats", "own_tips"];

/** The places where a document names another file. */
function naming_places(here: Json | undefined, pointer = ""): string[] {
  if (here === null || typeof here !== "object") return [];
  return Object.entries(here).flatMap(([key, value]) => {
    const place = `${pointer}/${key}`;
    if (typeof value !== "string") return naming_places(value, place);
    return naming_keys.includes(key) ? [place] : [];
  });
}

/** The same text, but for the names of the files it uses and for its id, which a copy has anew. */
export function is_copy_of(document: Document, copy: Document): boolean {
  let [one, other] = [document, copy];
  for (const place of ["/$schema", "/id", ...naming_places(document)])
    [one, other] = [with_value(one, place, undefined), with_value(other, place, undefined)];
  return JSON.stringify(one) === JSON.stringify(other);
}

/** Gives any text of a document the names, and the id, that its copy has got. */
export function renaming(before: Document, after: Document): (document: Document) => Document {
  const renamed = ["/id", ...naming_places(before)].filter((place) => at(before, place) !== at(after, place));
  return (document) =>
    renamed.reduce(
      (text, place) => (at(text, place) === at(before, place) ? with_value(text, place, at(after, place)) : text),
      document,
    );
}
