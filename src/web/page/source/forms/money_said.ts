// In which currency the run and the studio say what was paid, and for what.
import { text_at, value_at } from "../documents/editing";
import { said, type Shared } from "./shared";

export const currency: Shared = { run: "/money/currency", studio: "/currency" };
export const prices: Shared = { run: "/money/prices", studio: "/prices" };

/** Whether there are prices, by the run or the studio. */
export const has_prices = (): boolean => said(currency) !== undefined;

/** Prices in two currencies are not added up, and so not moved. */
export function prices_shared(): Shared[] {
  const [run, studio] = [value_at("run", currency.run), value_at("studio", currency.studio)];
  return run !== undefined && studio !== undefined && run !== studio ? [] : [currency, prices];
}

/** What prices and sums of the studio are in. */
export const studios_currency = (): string => text_at("studio", currency.studio) || String(said(currency) ?? "");
