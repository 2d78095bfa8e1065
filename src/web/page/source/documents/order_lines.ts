// What an order is of: runs, and how many pieces of each.
import type { Document } from "../program/json";

export interface Line {
  run: string;
  pieces?: number;
  together?: string;
  ready?: string | string[];
}

export const lines_of = ({ lines }: Document): Line[] => (Array.isArray(lines) ? (lines as unknown as Line[]) : []);

/** Each line has a run and its pieces, so that it may be asked about. */
export function is_complete(order: Document): boolean {
  const lines = lines_of(order);
  return lines.length > 0 && lines.every(({ run, pieces }) => run && typeof pieces === "number");
}

/** That two lines at least have, so that they are poured from one base. */
export function shared_words(order: Document): string[] {
  const words = lines_of(order).flatMap(({ together }) => together ?? []);
  return [...new Set(words.filter((one, i) => words.indexOf(one) !== i))];
}
