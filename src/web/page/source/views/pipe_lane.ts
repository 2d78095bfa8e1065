// Pipe: what each takes, the headspace, and what this bowl pipes now.
import { html, nothing, svg, type TemplateResult } from "lit";
import { edit, text_at, value_at } from "../documents/editing";
import { state } from "../documents/state";
import { side_view, small_view } from "../drawings/side_view";
import { counted, in_one_batch, whipping_called, type Bench } from "../figures/batches";
import { explained } from "../figures/explained";
import { figure, how } from "../figures/figure";
import { complaint_at, field } from "../forms/field";
import { cup_choice, blank_cup } from "../forms/cups";
import { folded, part } from "../forms/form_parts";
import { taken_ready } from "../forms/taken_ready";
import { size_form, topping_rest, whip_form } from "../forms/topping_form";
import type { BatchPipe, Whipping } from "../program/answers";
import { both, duration, mass, trimmed, volume } from "../program/numbers";
import { change_formula } from "./pour_lane";
import { set_up_part, told } from "./set_up_part";

const recess_shares = [0, 50, 80, 100];

/** The topping: how large, how whipped, what this bowl pipes now. */
export function pipe_part(bench?: Bench): TemplateResult {
  const pipe = bench?.pipe;
  return set_up_part({
    name: "pipe",
    title: "Pipe",
    drawing: pipe && (() => small_view("pipe", bench)),
    result: pipe ? headline(bench, pipe) : told("A topping, not yet with figures."),
    about: [["run", "/pipe"]],
    form: () => (pipe ? with_figures(bench, pipe) : pipe_questions()),
  });
}

function headline(bench: Bench, pipe: BatchPipe): TemplateResult {
  const whose = in_one_batch(bench);
  return told(
    html`Pipe <b>${trimmed(pipe.volume_each_ml, 0)} ml</b> on each, ${both(mass(state.units, pipe.mass_each_g))} at this
      whipped density; make <b>${both(mass(state.units, pipe.make_g))}</b>${whose ? ` for ${whose}` : ""}.`,
  );
}

function with_figures(plan: Bench, pipe: BatchPipe): TemplateResult {
  return html`<div class="side">
      ${side_view("pipe", plan)}
      ${figure({
        key: "pipe.each",
        label: "Topping on each",
        shown: volume(state.units, pipe.volume_each_ml),
        note: `${trimmed(pipe.in_headspace_each_ml, 1)} ml of it below the brim`,
        of: `${plan.place}.pipe.volume_each_ml`,
      })}
      ${figure({
        key: "set-up.pipe.make",
        label: "Topping to make",
        note: in_one_batch(plan),
        shown: mass(state.units, pipe.make_g),
        of: `${plan.place}.pipe.make_g`,
      })}
      ${figure({
        key: "pipe.density",
        label: "Whipped density",
        note: `overrun ${trimmed(pipe.overrun_percent, 0)} %`,
        shown: [`${pipe.density_g_per_ml} g/ml`, ""],
        of: `${plan.place}.pipe.density_g_per_ml`,
        term: "overrun",
      })}
      ${change_formula("pipe")} ${taken_ready("pipe")}
    </div>
    <div class="weights">${whip_form(pipe)} ${recess()} ${now(plan)} ${allows(plan)}</div>
    <div class="more">${size_form(pipe)} ${topping_rest()}</div>`;
}

/** The key of the figures of one whipping, which no other has. */
export const whipping_key = (i: number): string => (i === 0 ? "pipe" : `pipe.whipping${i}`);

/** Its place in the plan. */
export const whipping_place = (bench: Bench, i: number): string => `${bench.place}.pipe.whippings.${i}`;

/** Each whipping has its own bowl, and is weighed out by itself. */
function whipping_title(bench: Bench, one: Whipping): TemplateResult | typeof nothing {
  const called = whipping_called(bench, one);
  return called ? html`<h4 class="whipping">${called.replace(/^./, (letter) => letter.toUpperCase())}</h4>` : nothing;
}

/** Just added, it has no figures before everything is said; its questions stand here all the same. */
function pipe_questions(): TemplateResult {
  return html`<div class="more">${size_form()}</div>
    <div class="side">${recess()} ${value_at("run", "/pipe/whip_now") === undefined ? nothing : whip_today()}</div>
    <div class="weights">${whip_form()} ${change_formula("pipe")} ${taken_ready("pipe")}</div>
    <div class="more">${topping_rest()}</div>`;
}

const of_one = (bench: Bench): TemplateResult | typeof nothing =>
  in_one_batch(bench) ? html`<small>${in_one_batch(bench)}</small>` : nothing;

function now(bench: Bench): TemplateResult {
  return html`<h3>Today's bowl ${of_one(bench)}</h3>
    ${whip_today()} ${bench.whippings.map((one, i) => bowl_now(bench, one, i))}`;
}

function bowl_now(bench: Bench, one: Whipping, i: number): TemplateResult {
  const pieces = one.pieces_now;
  const lacking = pieces === undefined || pieces === null ? 0 : one.pieces - pieces;
  const words = lacking > 0 ? `Short by ${lacking} at this whipped density.` : `Enough for the ${one.pieces} to make.`;
  return html`${whipping_title(bench, one)}
  ${
    pieces === undefined || pieces === null
      ? nothing
      : figure({
          key: `${whipping_key(i)}.now`,
          label: "Enough for",
          note: words,
          shown: [counted(pieces, "piece"), ""],
          size: "weigh",
          of: `${whipping_place(bench, i)}.pieces_now`,
        })
  }
  ${readings(bench, one, i)}`;
}

function whip_today(): TemplateResult {
  const holds = value_at("run", "/pipe/whip/holds");
  const blank = holds === undefined ? blank_cup() : { holds, net: "" };
  return part({
    at: "/pipe/whip_now",
    name: "today's weigh-cup",
    title: "Today's weigh-cup",
    add: "Weigh a cup of today's whip",
    blank,
    body: cup_today,
  });
}

function cup_today(): TemplateResult {
  return html`<div class="row">
    ${field({ label: "Weigh-cup today, net", at: "/pipe/whip_now/net", unit: "g" })} ${cup_choice("/pipe/whip_now")}
  </div>`;
}

function readings(bench: Bench, pipe: Whipping, i: number): TemplateResult | typeof nothing {
  if (!pipe.readings?.length) return nothing;
  return folded({
    name: `${whipping_key(i)} readings`,
    pointers: [],
    summary: "Other readings of the weigh-cup",
    body: () => readings_table(bench, pipe, i),
  });
}

function readings_table(bench: Bench, pipe: Whipping, i: number): TemplateResult {
  return html`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${pipe.readings?.map(
          (one) =>
            html`<tr class=${one.planned ? "planned" : ""}>
              <th scope="row">${trimmed(one.net_g, 1)} g${one.planned ? " (planned)" : ""}</th>
              <td>${trimmed(one.overrun_percent, 0)} %</td>
              <td>${one.pieces}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    ${how(`${whipping_key(i)}.readings`, "Show the calculation", `${whipping_place(bench, i)}.readings`)}`;
}

/** The recess under the brim, as a picture: topping reaches into it, or sits above it. */
function recess(): TemplateResult {
  const pointer = "/pipe/fills_headspace";
  const share = Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(text_at("run", pointer))?.[1]?.replace(",", "."));
  const complaint = complaint_at("run", pointer);
  return html`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${explained("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${recess_shares.map(
        (one) =>
          html`<button
            type="button"
            aria-pressed=${one === share ? "true" : "false"}
            @click=${() => edit("run", pointer, `${one} %`)}
          >
            ${recess_picture(one)}<span
              >${{ 0: "Not at all, 0 %", 50: "Half, 50 %", 80: "Mostly, 80 %", 100: "Level, 100 %" }[one]}</span
            >
          </button>`,
      )}
    </div>
    ${field({
      label: "Headspace filled, as a share",
      at: pointer,
      unit: "%",
      hint: complaint ? undefined : "Trials piped on flat paper do not include it.",
    })}`;
}

function recess_picture(share: number): TemplateResult {
  const wide = 52 * (share / 100);
  return html`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${svg`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36 - wide / 2} y="18" width=${wide} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`;
}

/** Of one bowl; what limits it is the same for all of them. */
function allows(bench: Bench): TemplateResult | typeof nothing {
  const paced = bench.whippings.map((one) => ({ one, words: pace_words(one) })).filter(({ words }) => words);
  const largest = bench.whippings[0];
  const limits = largest?.limits ?? [];
  if (!largest || (!limits.length && !paced.length)) return nothing;
  return html`<h3>Limits of whisk, bowl and time ${of_one(bench)}</h3>
    ${paced.map(
      ({ one, words }) =>
        html`${whipping_title(bench, one)}
          <p>${words}.</p>`,
    )}
    <ul class="limits">
      ${limits.map(
        (one) =>
          html`<li class=${one.sets ? "binds" : ""}>
            ${one.sets ? html`<strong>Sets the batch: </strong>` : nothing}${one.text}
          </li>`,
      )}
    </ul>
    ${how("pipe.limits", "How the limits come about", `${whipping_place(bench, 0)}.limits`)}`;
}

function pace_words({ piping_s, lye_spoonfuls }: Whipping): string {
  return [
    piping_s ? `${duration(piping_s)} of piping` : "",
    lye_spoonfuls ? `${lye_spoonfuls.count} spoonfuls of lye, ${duration(lye_spoonfuls.altogether_s)}` : "",
  ]
    .filter(Boolean)
    .join("; ");
}
