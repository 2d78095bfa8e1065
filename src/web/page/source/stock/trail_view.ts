// Where a lot went and what is in a batch: from lots over batches and their pieces to whoever has them, and back.
import { html, nothing, type TemplateResult } from "lit";
import { open_record } from "../documents/record_opening";
import { show_trail } from "../documents/stock";
import { state, update } from "../documents/state";
import type { AskedTrail } from "../documents/stock_types";
import type { OtherLot, PiecesGone, Trail, TrailBatch, TrailGap, TrailLot, TrailRow } from "../program/answers";
import { day, in_stock } from "../program/numbers";
import { facts, past } from "./lots";
import { where_they_are } from "./pieces";

type Drawn = TemplateResult | typeof nothing;

export function trail_view(): TemplateResult {
  const { trail: asked } = state.stock;
  const { trail, complaint, choices = [], of = "" } = asked ?? {};
  return html`<h1 tabindex="-1">${trail ? title_of(trail) : of}</h1>
    <div class="trail">
      <div class="row">
        ${way_back(asked)}
        ${trail ? html`<button type="button" @click=${() => window.print()}>Print</button>` : nothing}
      </div>
      ${complaint ? html`<p class="alarm" role="alert">${complaint}</p>` : nothing}
      ${
        choices.length
          ? html`<div class="row">
              ${choices.map((one) => html`<button type="button" @click=${() => show_trail(one)}>The ${one}</button>`)}
            </div>`
          : nothing
      }
      ${trail ? whole(trail) : complaint ? nothing : html`<p class="hint">Reading ...</p>`}
    </div>`;
}

/** To the order, where it was asked at one. */
function way_back(asked?: AskedTrail): TemplateResult {
  const is_of_order = asked?.order !== undefined && asked.order === state.order?.open.file;
  return is_of_order
    ? html`<button type="button" @click=${() => update({ view: "order" })}>Back to the order</button>`
    : html`<button type="button" @click=${() => update({ view: "shelf" })}>Back to the shelf</button>`;
}

function title_of({ asked, is, batches }: Trail): string {
  if (is === "lot") return `Where lot ${asked} went`;
  if (is === "batch") return `What is in ${asked}`;
  const whom = batches.flatMap(({ went }) => went).find((one) => one.for)?.for;
  return `What ${whom ?? asked} got`;
}

/** From what is asked about to what it leads to. */
function whole(trail: Trail): TemplateResult {
  const { is, lots, batches, gaps } = trail;
  const of_lots = html`<section class="shelf-part" aria-labelledby="trail-lots">
    <h2 id="trail-lots">${is === "lot" ? "The lot" : "Lots in it"}</h2>
    ${
      lots.length
        ? html`<ul class="lots">
            ${lots.map(lot_part)}
          </ul>`
        : html`<p class="aside">No lot of it is known.</p>`
    }
  </section>`;
  const of_batches = html`<section class="shelf-part" aria-labelledby="trail-batches">
    <h2 id="trail-batches">${is === "lot" ? "Batches that hold it" : is === "batch" ? "The batch" : "Batches"}</h2>
    ${
      batches.length
        ? html`<ul class="lots">
            ${batches.map((one) => batch_part(one, trail))}
          </ul>`
        : html`<p class="aside">No batch has taken of it.</p>`
    }
  </section>`;
  return html`${is === "lot" ? html`${of_lots} ${of_batches}` : html`${of_batches} ${of_lots}`} ${unknown(gaps)}`;
}

/** To another end of the trail; on paper it stands there as it is. */
type End = "lot" | "batch" | "order";
const to_trail = (kind: End, of: string, words = of): TemplateResult =>
  html`<button type="button" class="to-trail" @click=${() => show_trail(`${kind} ${of}`)}>${words}</button>`;

function lot_part(lot: TrailLot): TemplateResult {
  const { shown_as } = lot;
  return html`<li class="lot" data-lot=${lot.lot}>
    <div class="lot-told">
      <p class="lot-left">
        ${to_trail("lot", lot.lot)} <span>${lot.make ?? shown_as}</span> <b>${in_stock(state.units, lot.left)}</b>
        <span class="aside">left of ${lot.packs === 1 ? "" : `${lot.packs} × `}${lot.pack}</span>
      </p>
      <p class="lot-facts">${facts(lot).map((one) => html`<span>${one}</span> `)}</p>
      ${lot.is_past ? past(lot) : nothing} ${others("Made of", lot.from_lots)} ${others("Went into", lot.into_lots)}
      ${lot.counts.map(
        ({ on, by, why }) =>
          html`<p class="lot-facts">Counted ${day(on)}: ${by_count(by)}${why ? ` (${why})` : ""}</p>`,
      )}
    </div>
  </li>`;
}

function by_count({ g, pieces }: TrailLot["left"]): string {
  const change = g ?? pieces ?? 0;
  if (!change) return "as it was";
  const size = in_stock(state.units, pieces === undefined ? { g: Math.abs(change) } : { pieces: Math.abs(change) });
  return `${size} ${change < 0 ? "less" : "more"} than was recorded`;
}

const others = (words: string, lots: OtherLot[]): Drawn =>
  lots.length
    ? html`<p class="trail-line">
        ${words}
        ${lots.map((one) => html`${to_trail("lot", one.lot)} <span>${one.material}, ${in_stock(state.units, one.amount)}</span> `)}
      </p>`
    : nothing;

function batch_part(one: TrailBatch, { is, asked }: Trail): TemplateResult {
  const { batch, run, begun_on, rows, pieces, went, cost, lines } = one;
  const is_it = is === "batch" && batch === asked;
  return html`<li class="lot pieces-of" data-batch=${batch}>
    <div class="lot-told">
      <p class="lot-left">
        ${is_it ? html`<b class="code">${batch}</b>` : to_trail("batch", batch)} <span>${run}</span>
        ${lines.length || pieces.made === null ? nothing : html`<b>${pieces.there} there</b>`}
      </p>
      <p class="lot-facts">
        <span>begun ${day(begun_on)}</span>
        ${
          lines.length
            ? nothing
            : html`<span>${pieces.made === null ? "how many were made is not noted" : where_they_are(pieces)}</span>`
        }
        ${cost ? html`<span>${cost_words(cost)}</span>` : nothing}
      </p>
      ${poured(one)}
      ${
        went.length
          ? html`<ul class="trail-went">
              ${went.map(gone)}
            </ul>`
          : nothing
      }
      <ul class="trail-rows">
        ${rows.map(row_part)}
      </ul>
    </div>
    <div class="lot-acts">
      <button type="button" aria-label="Its record: ${batch}" @click=${() => void open_record(one.file, one.id)}>
        Its record
      </button>
    </div>
  </li>`;
}

/** From a base that was mixed for several runs, or into them. */
function poured({ poured_from: base, lines }: TrailBatch): Drawn {
  if (base)
    return html`<p class="trail-line">
      Poured from ${to_trail("batch", base.batch)} <span>(${tidy_percent(base.share_percent)})</span>
    </p>`;
  return lines.length
    ? html`<p class="trail-line">Poured into ${lines.map((code) => html`${to_trail("batch", code)} `)}</p>`
    : nothing;
}

const tidy_percent = (percent: number): string => `${Math.round(percent * 10) / 10} %`;

function cost_words({ materials, unpriced }: NonNullable<TrailBatch["cost"]>): string {
  const sums = materials.map(({ amount, currency }) => `${amount} ${currency}`).join(" and ");
  const without = unpriced.length ? `unpriced: ${unpriced.join(", ")}` : "";
  return [sums ? `its materials cost ${sums}` : "", without].filter(Boolean).join("; ");
}

function gone({ what, pieces, on, order, for: whom, why }: PiecesGone): TemplateResult {
  const words = { sold: "sold", given: "given away", spoilt: "spoilt", counted: "" }[what];
  const many = Math.abs(pieces);
  const count = what === "counted" ? `${many} ${pieces < 0 ? "fewer" : "more"} by count` : `${many} ${words}`;
  const to = order ?? whom;
  return html`<li>
    ${count} ${to ? html`to ${to_trail("order", to, whom ?? to)}` : nothing} on ${day(on)}${why ? ` (${why})` : ""}
  </li>`;
}

function row_part({ shown_as, weighed, from, unknown: without }: TrailRow): TemplateResult {
  const is_unknown = (without.g ?? without.pieces ?? 0) > 0;
  return html`<li>
    <span>${shown_as}, ${in_stock(state.units, weighed)}</span>
    ${from.map(
      (one) =>
        html`<span class="trail-from"
          >${to_trail("lot", one.lot)} ${from.length > 1 || is_unknown ? in_stock(state.units, one.amount) : nothing}
          ${one.make ?? nothing}</span
        > `,
    )}
    ${
      is_unknown
        ? html`<span class="trail-unknown"
            >${from.length ? `${in_stock(state.units, without)} of` : "of"} a lot that nobody noted</span
          >`
        : nothing
    }
  </li>`;
}

function unknown(gaps: TrailGap[]): Drawn {
  if (!gaps.length) return nothing;
  return html`<section class="shelf-part" aria-labelledby="trail-gaps">
    <h2 id="trail-gaps">Batches that may hold it too</h2>
    <p>They weighed the same material, and nobody noted of which lot.</p>
    <ul class="trail-went">
      ${gaps.map(({ batch, run, shown_as }) => html`<li>${to_trail("batch", batch)} ${run}: ${shown_as}</li>`)}
    </ul>
  </section>`;
}
