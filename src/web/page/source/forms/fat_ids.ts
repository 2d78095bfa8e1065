// Fats by their names and ids: how they are found, and what a new one of her own goes by.
import type { OwnFat } from "../documents/state";
import type { Fat } from "../program/answers";
import type { Json } from "../program/json";

/** In small letters without accents. */
export const plain = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

/** The name of the fat that has all words typed: the one shown, or else another one; nothing where none has. */
export function name_with(fat: Fat | OwnFat, text: string): string | undefined {
  const words = plain(text).split(/\s+/).filter(Boolean);
  const has_all = (name: string): boolean => words.every((word) => plain(name).includes(word));
  if (has_all(`${fat.name} ${fat.id.replaceAll("_", " ")}`)) return fat.name;
  return "own" in fat ? undefined : [...fat.also_called, fat.inci].find(has_all);
}

/** It stays when its name changes. */
export function free_id(name: string, taken: readonly { id?: Json }[]): string {
  const stem =
    plain(name)
      .replaceAll(/[^a-z0-9]+/g, "_")
      .replace(/^[_0-9]+|_+$/g, "") || "my_fat";
  for (let i = 1; ; ++i) {
    const id = i === 1 ? stem : `${stem}_${i}`;
    if (!taken.some((one) => one.id === id)) return id;
  }
}
