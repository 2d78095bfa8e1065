// My studio: what is the same in every run, said once. Each field stands for the studio's file where it says it, and for
// the run where the run does.
import { html, nothing, type TemplateResult } from "lit";
import { move_owned, owned_in_file } from "../documents/mould_owned";
import { text_at, value_at } from "../documents/editing";
import { state } from "../documents/state";
import { both, mass } from "../program/numbers";
import { escaped } from "../program/pointer";
import { in_one_batch, type Bench } from "../figures/batches";
import { owned } from "../forms/batch_form";
import { cup_rows } from "../forms/cups";
import { kerf } from "../forms/cut_form";
import { days_form } from "../forms/days_form";
import { decorations, is_cut, pointer_of } from "../forms/decoration";
import { rows_of } from "../forms/form_lists";
import { market, market_choice } from "../forms/run_extras";
import { loss_fields, losses_of } from "../forms/losses";
import { money_forms } from "../forms/money_forms";
import { prices_shared } from "../forms/money_said";
import { price_rows } from "../forms/prices";
import { has_studio, keep_in_studio, mould_key, said, shared_field, who_says, type Shared } from "../forms/shared";
import { stands_ready } from "../forms/stands_ready";
import { has_topping } from "../forms/topping_form";
import { set_up_part, told } from "./set_up_part";

const same = (pointer: string): Shared => ({ run: pointer, studio: pointer });
const in_pipe = (key: string): Shared => ({ run: `/pipe/${key}`, studio: `/${key}` });

const scales = same("/scales");
const rejects = same("/spoilage");
const pots = same("/pots");

interface Section {
  title: string;
  all: Shared[];
  body: () => unknown;
}

export function my_studio(bench?: Bench): TemplateResult {
  return set_up_part({
    name: "studio",
    title: "My studio",
    result: told(where_it_is()),
    about: [
      ["studio", ""],
      ["run", "/losses"],
      ["run", "/scales"],
      ["run", "/spoilage"],
      ["run", "/pots"],
      ["run", "/money"],
      ["run", "/pipe/bowl"],
      ["run", "/pipe/bag_holds"],
      ["run", "/pipe/lye_spoon"],
    ],
    form: () => sections(bench),
  });
}

function where_it_is(): TemplateResult {
  const file = state.beside.studio?.file;
  if (file) return html`What is the same in every run, kept in ${file}.`;
  return html`Scales, losses and whatever else is the same in every run; kept in this run so far.`;
}

function sections(bench?: Bench): TemplateResult {
  const all = every_section(bench);
  const movable = [...all.flatMap((one) => one.all), ...(is_cut() ? [kerf] : [])];
  return html`${
      has_studio()
        ? nothing
        : html`<p class="choice">
              <button type="button" class="strong" @click=${() => void keep_in_studio(movable)}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`
    }
    <div class="studio-sections">
      ${all.map(
        ({ title, all: shared, body }) =>
          html`<section class="questions" aria-label=${title}>
            <div class="part-head">
              <h3>${title}</h3>
              ${who_says(title, shared)}
            </div>
            ${body()}
          </section>`,
      )}
    </div>
    ${has_studio() ? html`${money_forms()} ${stands_ready()} ${days_form()}` : nothing}`;
}

function every_section(bench?: Bench): Section[] {
  const topping = has_topping();
  const list: Section[] = [
    { title: "Scales", all: [scales], body: scale_fields },
    {
      title: "Losses",
      all: [losses_of("pour"), ...(topping ? [losses_of("pipe")] : [])],
      body: () => losses(topping, bench),
    },
    { title: "Rejects", all: [rejects], body: reject_field },
    { title: "Pot and lye jug", all: [pots], body: pot_fields },
    { title: "Moulds owned", all: owned_moulds().map(({ shared }) => shared), body: owned_fields },
    { title: "Prices paid", all: prices_shared(), body: price_rows },
  ];
  if (topping)
    list.splice(
      4,
      0,
      { title: "Bowl, bag, spoon", all: ["bowl", "bag_holds", "lye_spoon"].map(in_pipe), body: vessel_fields },
      { title: "Weigh-cups", all: [], body: cup_rows },
    );
  if (has_studio() && value_at("run", "/label") === undefined)
    list.push({ title: "Where it is sold", all: [market], body: market_choice });
  return list;
}

function scale_fields(): TemplateResult {
  const one = (which: "large" | "fine", words: string) =>
    html`${shared_field(same(`/scales/${which}/step`), {
      label: `${words}, smallest step`,
      unit: "g",
      short: true,
      term: which === "large" ? "scale_step" : undefined,
    })}
    ${shared_field(same(`/scales/${which}/most`), { label: `${words}, most it weighs`, unit: "g", short: true })}`;
  return html`<div class="row">${one("large", "Large scale")} ${one("fine", "Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`;
}

function losses(topping: boolean, bench?: Bench): TemplateResult {
  return html`<div class="row">
      ${loss_fields("pour", topping ? "Base" : undefined)} ${topping ? loss_fields("pipe", "Topping") : nothing}
    </div>
    ${bench ? lost(bench) : nothing}`;
}

function lost({ pour, pipe, ...bench }: Bench): TemplateResult {
  const of_one = in_one_batch({ pour, pipe, ...bench });
  const words = (name: string, { in_pieces_g, lost_g }: { in_pieces_g: number; lost_g: number }) =>
    `${name}: ${both(mass(state.units, in_pieces_g))} in the pieces, ${both(mass(state.units, lost_g))} lost.`;
  return html`<p class="aside of-plan">
    ${of_one ? `In ${of_one}. ` : ""}${words("Base", pour)} ${pipe ? words("Topping", pipe) : ""}
  </p>`;
}

const reject_field = (): TemplateResult =>
  shared_field(rejects, {
    label: "Rejects",
    unit: "%",
    short: true,
    optional: true,
    term: "rejects",
  });

function pot_fields(): TemplateResult {
  const holds = (key: string, label: string, hint: string) =>
    shared_field(same(`/pots/${key}`), { label, unit: "l", optional: true, takes_part: true, short: true, hint });
  return html`<div class="row">
    ${holds("holds", "Pot for the base holds", "To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${holds("lye_jug", "Lye jug holds", "To the brim; filled to half.")}
  </div>`;
}

function vessel_fields(): TemplateResult {
  const one = (pointer: string, label: string, unit: string, is_needed = false) =>
    shared_field(in_pipe(pointer), {
      label,
      unit,
      short: true,
      optional: true,
      is_due: is_needed,
      takes_part: pointer !== "bag_holds",
    });
  const has = (key: string) => said(in_pipe(key)) !== undefined;
  return html`<div class="row">
    ${one("bowl/holds", "Bowl holds", "l", has("bowl/whisk_needs"))}
    ${one("bowl/whisk_needs", "Smallest unwhipped amount the whisk reaches", "ml")}
    ${one("bag_holds", "One bag holds", "ml")}
    ${one("lye_spoon/holds", "Lye spoon holds", "ml", has("lye_spoon/time_between"))}
    ${one("lye_spoon/time_between", "From one spoonful to the next", "s", has("lye_spoon/holds"))}
  </div>`;
}

interface OwnedMould {
  mould: string;
  shared: Shared;
}

/** Of the moulds that the run names, each once. */
function owned_moulds(): OwnedMould[] {
  const places = ["/pour", ...rows_of(decorations).map((_, i) => pointer_of(i))];
  return places.flatMap((place) => {
    const mould = text_at("run", `${place}/mould`);
    return mould
      ? [{ mould, shared: { run: owned(place), studio: `/moulds_owned/${escaped(mould_key(mould))}` } }]
      : [];
  });
}

function owned_fields(): TemplateResult {
  return html`<div class="row">
    ${owned_moulds().map(({ mould, shared }) => {
      const name = state.files?.moulds.find((one) => one.file === mould)?.name ?? mould;
      const own = said(shared) === undefined ? owned_in_file(mould) : undefined;
      const move = () => void move_owned(mould, `/moulds_owned/${escaped(mould_key(mould))}`);
      return html`${shared_field(shared, {
        label: `${name}, owned`,
        count: true,
        optional: true,
        short: true,
        hint: own === undefined ? "Else as many as the mould's own file says." : `The mould's own file says ${own}.`,
      })}
      ${
        own !== undefined && has_studio()
          ? html`<button type="button" aria-label="Move it into my studio: ${own} of ${name}" @click=${move}>
              Move it into my studio
            </button>`
          : nothing
      }`;
    })}
  </div>`;
}
