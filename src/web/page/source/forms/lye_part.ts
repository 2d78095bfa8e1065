// The superfat, the alkali and the water of a formula. None of them has a value before she says one.
import { html, nothing, type TemplateResult } from "lit";
import { list_at, value_at } from "../documents/editing";
import type { FormulaSlot } from "../documents/file_types";
import { state } from "../documents/state";
import type { Batter } from "../program/answers";
import type { Document, Json } from "../program/json";
import { trimmed } from "../program/numbers";
import { danger_beside, dangers_of } from "../figures/dangers";
import { complaint_on, field } from "./field";
import { choice_field, folded } from "./form_parts";
import { total_words } from "./rates";

const danger_id = "danger-of-superfat";

type Alkalis = "NaOH" | "KOH" | "both";

export function lye_part(of: FormulaSlot, batter: Batter | undefined): TemplateResult {
  return html`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${field({
        label: "Superfat (share of all fat left unsaponified)",
        of,
        at: "/superfat",
        unit: "%",
        term: "superfat",
        described_by: dangers_of(of).length ? danger_id : undefined,
      })}
    </div>
    ${danger_beside(of, danger_id)} ${alkali(of)} ${water(of, batter)}
  </section>`;
}

function alkali(of: FormulaSlot): TemplateResult {
  const rows = list_at(of, "/alkali") as Document[];
  const chosen: Alkalis | undefined = rows.length > 1 ? "both" : (rows[0]?.alkali as Alkalis | undefined);
  const then = (to: Alkalis) => (to === "both" ? "/alkali/0/share" : "/alkali/0/purity");
  return html`${choice_field({
    of,
    question: "Alkali",
    term: "alkali",
    at: "/alkali",
    chosen,
    answers: [
      ["NaOH", "NaOH, for bars"],
      ["KOH", "KOH, for soft soap"],
      ["both", "Both"],
    ],
    puts: (to) => alkalis(rows, to),
    then,
  })}
  ${rows.map((one, i) => one_alkali(of, one, i, rows.length > 1))}
  ${
    rows.length > 1
      ? html`<p class="total" role="status">
          ${total_words(
            "The two",
            rows.map((one) => one.share),
          )}
        </p>`
      : nothing
  }`;
}

/** What is known of an alkali stays with it; the shares of two are asked for anew. */
function alkalis(rows: Document[], to: Alkalis): Json {
  const row = (alkali: string, share: string): Json => ({
    purity: "",
    ...rows.find((one) => one.alkali === alkali),
    alkali,
    share,
  });
  return to === "both" ? [row("NaOH", ""), row("KOH", "")] : [row(to, "100 %")];
}

function one_alkali(of: FormulaSlot, row: Document, i: number, is_one_of_two: boolean): TemplateResult {
  const at = `/alkali/${i}`;
  const name = String(row.alkali ?? "");
  const complaint = complaint_on(of, at) ?? complaint_on(of, `${at}/alkali`);
  return html`<div class="formula-row">
    ${complaint ? html`<p class="complaint">${complaint}</p>` : nothing}
    <div class="row">
      ${
        is_one_of_two || row.share !== "100 %"
          ? field({
              label: `${name}: share of the fats it saponifies`,
              of,
              at: `${at}/share`,
              unit: "%",
              hint: "Counted by saponification, not by the weight of the alkali.",
            })
          : nothing
      }
      ${field({
        label: `${name}: purity`,
        of,
        at: `${at}/purity`,
        unit: "%",
        hint: "Pure alkali in what is weighed, from the supplier's document.",
        term: i === 0 ? "purity" : undefined,
      })}
    </div>
    ${folded({
      of,
      name: at,
      pointers: [`${at}/purity_range`],
      summary: `Guaranteed purity range${range_words(row.purity_range)}`,
      body: () => purity_range(of, at),
    })}
  </div>`;
}

const range_words = (range: Json | undefined): string =>
  Array.isArray(range) ? `: ${range.map(String).join(" to ")}` : "";

function purity_range(of: FormulaSlot, at: string): TemplateResult {
  const pointer = `${at}/purity_range`;
  const has = value_at(of, pointer) !== undefined;
  return html`${choice_field({
    of,
    question: "Guaranteed range",
    at: pointer,
    chosen: has ? "said" : "none",
    answers: [
      ["none", "Not given"],
      ["said", "From ... to"],
    ],
    puts: (to) => (to === "none" ? undefined : ["", ""]),
  })}
  ${
    has
      ? html`<div class="row">
          ${field({ label: "Lowest", of, at: `${pointer}/0`, unit: "%", short: true })}
          ${field({ label: "Highest", of, at: `${pointer}/1`, unit: "%", short: true })}
        </div>`
      : nothing
  }`;
}

const ways = {
  lye_strength: "By the lye's strength",
  water_to_alkali: "By parts to the alkali",
  share_of_fats: "By the fats",
};
type Way = keyof typeof ways;

function water(of: FormulaSlot, batter: Batter | undefined): TemplateResult {
  const now = Object.keys((value_at(of, "/water") ?? {}) as Document) as Way[];
  const chosen = now.length === 1 ? now[0] : undefined;
  const answers = Object.entries(ways) as [Way, string][];
  return html`${choice_field({
      of,
      question: "How is the water given?",
      at: "/water",
      chosen,
      answers,
      puts: (way) => ({ [way]: "" }),
      then: (way) => `/water/${way}`,
      hint: all_three(batter),
    })}
    <div class="row">${now.map((way) => amount(of, way))}</div>`;
}

function amount(of: FormulaSlot, way: Way): TemplateResult {
  const at = `/water/${way}`;
  if (way === "water_to_alkali")
    return field({ label: "Parts of water for 1 part of pure alkali", of, at, number: true });
  if (way === "lye_strength")
    return field({ label: "Strength: pure alkali in alkali and water together", of, at, unit: "%" });
  return field({ label: "Water, as a share of the fats", of, at, unit: "%" });
}

/** The same water said in all three ways, so that changing the way needs no reckoning. */
function all_three(batter: Batter | undefined): string | undefined {
  if (!batter || state.is_old) return undefined;
  return `It now makes a strength of ${trimmed(
    batter.lye_strength_percent,
    1,
  )} %; ${trimmed(batter.water_to_pure_alkali, 2)} parts to 1 of pure alkali; ${trimmed(
    batter.water_percent_of_fats,
    1,
  )} % of the fats.`;
}
