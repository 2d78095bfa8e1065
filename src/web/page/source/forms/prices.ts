// What was paid for the materials of the run, by the studio or by the run alone.
import { html, nothing, type TemplateResult } from "lit";
import { value_at } from "../documents/editing";
import { escaped } from "../program/pointer";
import { change, to_field } from "./form_parts";
import { called, materials } from "./material_finder";
import { currency, has_prices, prices, prices_shared } from "./money_said";
import { another_pack, pack_key, packs_told } from "./packs";
import { has_studio, said, shared_field, type Shared } from "./shared";

const may_have_packs = (name: string): boolean =>
  has_studio() && pack_key(name) === undefined && prices_shared().length > 0;

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
      ${materials().map((name) =>
        pack_key(name) === undefined || value_at("run", price(name, "paid").run) !== undefined
          ? html`<div class="row">
              ${shared_field(price(name, "paid"), { label: `${called(name)}, paid`, optional: true, takes_part: true, short: true })}
              ${shared_field(price(name, "for"), {
                label: `for how much ${called(name)}`,
                unit: "g",
                optional: true,
                takes_part: true,
                short: true,
              })}
              ${may_have_packs(name) && said(price(name, "paid")) ? another_pack(name) : nothing}
            </div>`
          : packs_told(name),
      )}
    </div>
    ${materials().length ? nothing : html`<p class="hint">The materials stand here as soon as there are figures.</p>`}`;
}

function begin(): void {
  const of = has_studio() ? "studio" : "run";
  const at = of === "studio" ? currency.studio : currency.run;
  change(of, "Prices added", at, "", to_field(of, at));
}
