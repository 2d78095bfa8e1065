// What the studio says of money: what is bought, where, and what it takes to make and to sell a piece.
import { html, nothing, type TemplateResult } from "lit";
import { text_at, value_at } from "../documents/editing";
import { quote_now } from "../documents/quoting";
import { state } from "../documents/state";
import type { Document, Json } from "../program/json";
import { at, escaped, with_value } from "../program/pointer";
import { field, type FieldOptions } from "./field";
import { add_button, add_to, item_buttons, item_id, rows_of, type List } from "./form_lists";
import { choice_field, folded, part, said_at, to_field } from "./form_parts";
import { called, material_finder, materials } from "./material_finder";
import { name_adder, name_field, names_in, remove_named } from "./named_rows";
import { begin_packs, pack_key, pack_rows, shelf_rows } from "./packs";
import { has_prices, studios_currency } from "./money_said";
import { is_gathering } from "./wanted";
import { of_work, work_times } from "./work_times";

interface MoneyForm {
  key: string;
  title: string;
  pointers: string[];
  told: string; // what it says now; "" for nothing
  body: () => unknown;
}

const name_of = ({ key }: MoneyForm): string => `money ${key}`;

export function money_forms(): TemplateResult | typeof nothing {
  if (!has_prices()) return nothing;
  const all = forms(studios_currency());
  // What is wrong in them, only what a piece costs tells.
  if (!is_gathering() && all.some((one) => state.open.has(`folded studio ${name_of(one)}`))) quote_now();
  return html`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${own_currency()}
    <div class="folds">
      ${all.map((one) =>
        folded({
          of: "studio",
          name: name_of(one),
          pointers: one.pointers,
          summary: html`<span>${one.title}${one.told ? html`<small>${one.told}</small>` : nothing}</span>`,
          body: one.body,
        }),
      )}
    </div>
  </section>`;
}

/** Where the run says one, the prices ask for that. */
const own_currency = (): TemplateResult | typeof nothing =>
  value_at("run", "/money/currency") === undefined
    ? nothing
    : html`<div class="row">
        ${studio_field({ label: "Currency of the studio", at: "/currency", optional: true, short: true })}
      </div>`;

const studio_field = (options: Omit<FieldOptions, "of">): TemplateResult => field({ ...options, of: "studio" });

const listed = (place: string): string => names_in("studio", place).map(called).join(", ");

function forms(currency: string): MoneyForm[] {
  const sum = (place: string, label: string, more: Partial<FieldOptions> = {}) =>
    studio_field({ label, at: place, told: currency, short: true, ...more });
  const some = (place: string, label: string) => sum(place, label, { optional: true, takes_part: true });
  const says = (place: string, words = "") => {
    const said = text_at("studio", place);
    return said && `${said}${words}`;
  };
  return [
    {
      key: "packs",
      title: "Packs",
      pointers: ["/packs", "/waste", "/serves_as"],
      told: listed("/packs"),
      body: () => pack_rows(currency),
    },
    { key: "sellers", title: "Sellers", pointers: ["/sellers"], told: listed("/sellers"), body: () => sellers(sum) },
    { key: "have", title: "On the shelf", pointers: ["/have"], told: listed("/have"), body: shelf_rows },
    {
      key: "packaging",
      title: "Packaging",
      pointers: ["/packaging"],
      told: rows_of(packaging)
        .map((one) => called(String(at(one, "/material"))))
        .join(", "),
      body: packaging_rows,
    },
    {
      key: "work",
      title: "Work",
      pointers: ["/work"],
      told: says(of_work("paid_an_hour"), ` ${currency} an hour`),
      body: () => work(sum),
    },
    {
      key: "overhead",
      title: "Overhead",
      pointers: ["/overhead"],
      told: says("/overhead/each_batch", ` ${currency} each batch`),
      body: () =>
        html`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${some("/overhead/each_batch", "Each batch")} ${some("/overhead/each_piece_made", "Each piece made")}
          </div>`,
    },
    { key: "tax", title: "Tax on sales", pointers: ["/tax"], told: says("/tax/rate"), body: tax },
    {
      key: "fees",
      title: "Fees of selling",
      pointers: ["/fees"],
      told: says("/fees/of_price", " of the price"),
      body: () =>
        html`<div class="row">
          ${studio_field({ label: "Of what the buyer pays", at: "/fees/of_price", unit: "%", optional: true, takes_part: true, short: true })}
          ${some("/fees/each_order", "Each order")}
        </div>`,
    },
    {
      key: "asking",
      title: "Ways of selling",
      pointers: ["/asking", "/price_endings"],
      told: listed("/asking"),
      body: () => ways(sum),
    },
  ];
}

type Sum = (place: string, label: string, more?: Partial<FieldOptions>) => TemplateResult;

/** Packs name their seller. */
const sold_by =
  (name: string) =>
  (studio: Document, to: string): Document =>
    Object.entries((studio.packs ?? {}) as Record<string, Document[]>).reduce(
      (now, [material, packs]) =>
        packs.reduce(
          (then, { from }, i) => (from === name ? with_value(then, `/packs/${escaped(material)}/${i}/from`, to) : then),
          now,
        ),
      studio,
    );

function sellers(sum: Sum): TemplateResult {
  const of = (name: string, key: string) => `/sellers/${escaped(name)}/${key}`;
  return html`${names_in("studio", "/sellers").map(
    (name) =>
      html`<div class="part" role="group" aria-label=${name}>
        <div class="part-head">
          <p class="part-title">${name}</p>
          ${remove_named("studio", "/sellers", name)}
        </div>
        <div class="row">
          ${name_field({ of: "studio", at: "/sellers", name, label: "Seller's name", also: sold_by(name) })}
          ${sum(of(name, "postage"), "Postage of an order", { optional: true, hint: "0 if you fetch it" })}
          ${sum(of(name, "postage_free_from"), "Free from", { optional: true })}
          ${studio_field({ label: "From ordering to having it", at: of(name, "lead_time"), unit: "days", optional: true, short: true })}
        </div>
      </div>`,
  )}
  ${name_adder({
    of: "studio",
    at: "/sellers",
    label: "Another seller, by name",
    add: "Add the seller",
    blank: {},
    then: (name) => to_field("studio", of(name, "postage")),
  })}`;
}

const packaging: List = { of: "studio", at: "/packaging" };

const is_of_no_run = (name: string): boolean =>
  !materials().includes(name) && !state.fats.some((one) => one.id === name);

function packaging_rows(): TemplateResult {
  const has = (name: string) => rows_of(packaging).some((one) => at(one, "/material") === name);
  return html`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${rows_of(packaging).map((one, i) => packaging_row(String(at(one, "/material") ?? ""), i))}
    ${material_finder({
      key: "packaging",
      label: "What goes round a piece?",
      offers: ["/packs", "/prices"].flatMap((place) => names_in("studio", place)).filter(is_of_no_run),
      taken: has,
      take: (material) => add_to(packaging, { material, each_piece: "" }, material),
    })}`;
}

function packaging_row(material: string, i: number): TemplateResult {
  const has_price =
    pack_key(material) !== undefined || value_at("studio", `/prices/${escaped(material)}`) !== undefined;
  return html`<div class="row" id=${item_id(packaging, i)}>
    ${studio_field({
      label: `${called(material)}, each piece`,
      at: `/packaging/${i}/each_piece`,
      unit: "pieces",
      short: true,
      hint: "How many, or a mass such as 3 g",
    })}
    ${
      has_price
        ? nothing
        : html`<button type="button" aria-label="Say its price: ${material}" @click=${() => begin_packs(material)}>
            Say its price
          </button>`
    }
    ${item_buttons(packaging, i, material)}
  </div>`;
}

function work(sum: Sum): TemplateResult {
  const has = value_at("studio", "/work") !== undefined;
  return html`<div class="row">
      ${sum(of_work("paid_an_hour"), "Paid an hour", { optional: true, takes_part: true, is_due: has })} ${work_times()}
    </div>
    ${said_at("studio", "/work")}`;
}

const with_tax = (question: string, key: string): TemplateResult =>
  choice_field({
    of: "studio",
    question,
    at: `/tax/${key}`,
    chosen: text_at("studio", `/tax/${key}`) || undefined,
    answers: [
      ["with tax", "With tax"],
      ["without tax", "Without tax"],
    ],
    puts: (to) => to,
  });

const tax = (): TemplateResult =>
  html`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${part({
      of: "studio",
      at: "/tax",
      name: "the tax",
      title: "Tax on sales",
      add: "I charge tax",
      blank: { rate: "" },
      body: () =>
        html`<div class="row">${studio_field({ label: "Rate", at: "/tax/rate", unit: "%", short: true })}</div>
          ${with_tax("The prices you pay are", "prices_paid")} ${with_tax("The prices you ask are", "prices_asked")}`,
    })}`;

type By = "margin" | "markup" | "price";
const by_words: [By, string][] = [
  ["margin", "A margin"],
  ["markup", "A markup"],
  ["price", "A price as set"],
];

function ways(sum: Sum): TemplateResult {
  const of = (name: string) => `/asking/${escaped(name)}`;
  return html`${names_in("studio", "/asking").map((name) => way(name, of(name), sum))}
  ${name_adder({
    of: "studio",
    at: "/asking",
    label: "Another way, such as retail",
    add: "Add the way",
    blank: {},
    then: (name) => to_field("studio", of(name)),
  })}
  ${endings(sum)}`;
}

function way(name: string, here: string, sum: Sum): TemplateResult {
  const said = (value_at("studio", here) ?? {}) as Document;
  const by = by_words.map(([one]) => one).find((one) => said[one] !== undefined);
  const share = (label: string) => studio_field({ label, at: `${here}/${by}`, unit: "%", short: true });
  return html`<div class="part" role="group" aria-label=${name}>
    <div class="part-head">
      <p class="part-title">${name}</p>
      ${remove_named("studio", "/asking", name)}
    </div>
    <div class="row">${name_field({ of: "studio", at: "/asking", name, label: "What you call it" })}</div>
    ${choice_field<By>({
      of: "studio",
      question: "Its price comes by",
      at: here,
      chosen: by,
      answers: by_words,
      puts: (to): Json => ({ [to]: "" }),
      then: (to) => `${here}/${to}`,
    })}
    ${
      by
        ? html`<div class="row">
            ${
              by === "price"
                ? sum(`${here}/price`, "Price of a piece")
                : share(by === "margin" ? "Margin, of the price" : "Markup, on the cost")
            }
          </div>`
        : nothing
    }
  </div>`;
}

const all_endings: List = { of: "studio", at: "/price_endings" };

/** What a price is rounded up to. */
const endings = (sum: Sum): TemplateResult =>
  html`<p class="question">A price ends in</p>
    ${rows_of(all_endings).map(
      (_, i) =>
        html`<div class="row" id=${item_id(all_endings, i)}>
          ${sum(`/price_endings/${i}`, `Ending ${i + 1}`, { hint: "Such as 0.90" })}
          ${item_buttons(all_endings, i, `ending ${i + 1}`)}
        </div>`,
    )}
    ${add_button(all_endings, "Add an ending", () => add_to(all_endings, "", "An ending"))}`;
