// What is in sight of a lot or of a batch's pieces: an act goes with it, so that nothing is counted or sold that has changed unseen.
import type { StockForm } from "../documents/stock_types";
import type { MaterialInStock, StockAmount, StockList, StockLot } from "../program/answers";

/** As acts name it: deliveries of one material with one code are one. */
export const name_of_lot = ({ material, lot }: Pick<StockLot, "material" | "lot">): string => `${material}:${lot}`;

const is_one = (one: StockLot, other: StockLot): boolean =>
  one.material === other.material && one.lot.toLowerCase() === other.lot.toLowerCase();

export const deliveries_of = (lot: StockLot, { lots }: MaterialInStock): StockLot[] =>
  lots.filter((one) => is_one(one, lot));

export function left_of(lots: StockLot[]): StockAmount {
  const pieces = lots[0]?.left.pieces;
  if (pieces !== undefined) return { pieces: lots.reduce((sum, { left }) => sum + (left.pieces ?? 0), 0) };
  return { g: Number(lots.reduce((sum, { left }) => sum + (left.g ?? 0), 0).toFixed(6)) };
}

export function seen_now(list: StockList | undefined, { kind, of }: StockForm): StockAmount | undefined {
  if (kind === "counted") {
    const lots = list?.materials.flatMap((one) => one.lots) ?? [];
    const first = lots.find((one) => name_of_lot(one).toLowerCase() === of.toLowerCase());
    return first ? left_of(lots.filter((one) => is_one(one, first))) : { g: 0 };
  }
  const there = list?.pieces.find(({ batch }) => batch === of)?.there;
  return { pieces: there ?? 0 };
}
