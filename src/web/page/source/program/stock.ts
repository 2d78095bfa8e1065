// What stands on the shelf: lots of materials and pieces of batches, as the program keeps them in her folder.
import type { StockAmount, StockList, Trail } from "./answers";
import { json, posted } from "./api";

export interface KeptStock {
  version: string; // of all that is recorded in the folder
  stock: StockList;
}

/** With what materials and sellers are called there. */
export const read_stock = (): Promise<KeptStock> => json<KeptStock>("GET", "/api/stock?names");

/** What came or went, by the names of what the command line is told. An act that was done already, by its id, is done once. */
export interface StockAct {
  act: string;
  bought?: string;
  made?: string;
  of?: string[]; // "CO-117=500 g"
  pack?: string;
  packs?: string;
  price?: string;
  seller?: string;
  lot?: string;
  "best-before"?: string;
  counted?: string[]; // "olive:CO-117=1.2 kg"
  sold?: string[]; // "2026-12-01A=12"
  given?: string[];
  spoilt?: string[];
  "counted-pieces"?: string[];
  "take-have"?: boolean;
  order?: string; // its file
  for?: string;
  on?: string;
  why?: string;
  confirmed?: string[];
  seen?: StockAmount; // of the lot, or of the pieces, as far as she knows
}

export const act_on_stock = (act: StockAct): Promise<{ stock: StockList }> =>
  posted<{ stock: StockList }>("/api/stock/act", act);

/** Of a lot or a batch by its code, of an order by its id. */
export const read_trail = (of: string): Promise<{ version: string; trail: Trail }> =>
  json<{ version: string; trail: Trail }>("GET", `/api/trail?of=${encodeURIComponent(of)}`);
