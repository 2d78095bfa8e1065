// What was paid for the materials of the run, by the studio or by the run alone.
import { html, nothing, type TemplateResult } from "lit";
import { value_at } from "../documents/editing";
import { state } from "../documents/state";
import { escaped } from "../program/pointer";
import { change, to_field } from "./form_parts";
import { has_studio, said, shared_field, type Shared } from "./shared";

const currency: Shared = { run: "/money/currency", studio: "/currency" };
const prices: Shared = { run: "/money/prices", studio: "/prices" };

/** Whether there are prices, by the run or the studio. */
export const has_prices = (): boolean => said(currency) !== undefined;

/** Prices in two currencies are not added up, and so not moved. */
export function prices_shared(): Shared[] {
  const [run, studio] = [value_at("run", currency.run), value_at("studio", currency.studio)];
  return run !== undefined && studio !== undefined && run !== studio ? [] : [currency, prices];
}

const materials = (): string[] => state.plan?.piece.cost?.materials.map((one) => one.name) ?? [];

/** A fat goes by its id where prices are listed. */
const called = (name: string): string => state.fats.find((one) => one.id === name)?.name ?? name;

export function price_rows(): TemplateResult {
  if (!has_prices()) return html`<button type="button" @click=${begin}>Add what you paid</button>`;
  const price = (name: string, key: string): Shared => {
    const below = `/${escaped(name)}/${key}`;
    return { run: prices.run + below, studio: prices.studio + below };
  };
  return html`<div class="row">
      ${shared_field(currency, { label: "Currency", short: true, hint: "Its ISO 4217 code, such as EUR." })}
    </div>
    <div class="prices">
      ${materials().map(
        (name) =>
          html`<div class="row">
            ${shared_field(price(name, "paid"), { label: `${called(name)}, paid`, optional: true, takes_part: true, short: true })}
            ${shared_field(price(name, "for"), {
              label: `for how much ${called(name)}`,
              unit: "g",
              optional: true,
              takes_part: true,
              short: true,
            })}
          </div>`,
      )}
    </div>
    ${materials().length ? nothing : html`<p class="hint">The materials stand here as soon as there are figures.</p>`}`;
}

function begin(): void {
  const of = has_studio() ? "studio" : "run";
  const at = of === "studio" ? currency.studio : currency.run;
  change(of, "Prices added", at, "", to_field(of, at));
}
