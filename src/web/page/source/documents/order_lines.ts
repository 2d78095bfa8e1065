// What an order is of: runs, and how many pieces of each.
import type { Document } from "../program/json";

export interface Line {
  run: string;
  pieces?: number;
  ready?: string | string[];
}

export const lines_of = ({ lines }: Document): Line[] => (Array.isArray(lines) ? (lines as unknown as Line[]) : []);

/** Each line has a run and its pieces, so that it may be asked about. */
export function is_complete(order: Document): boolean {
  const lines = lines_of(order);
  return lines.length > 0 && lines.every(({ run, pieces }) => run && typeof pieces === "number");
}
