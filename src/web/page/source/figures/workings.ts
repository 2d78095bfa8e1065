// How each figure comes about, in words and in the program's own figures. Nothing is reckoned here.
import type { Slot } from "../documents/file_types";
import { state } from "../documents/state";
import type { Batter, Cut, Ingredient, Layer, LyePot, Perch, Plan, Pour, Whipping } from "../program/answers";
import type { Json } from "../program/json";
import { first, per_cent, plain, step_words, trimmed, weighed_as, weight, type WeighedAs } from "../program/numbers";
import { at } from "../program/pointer";
import type { Topping } from "../program/topping";
import { counted, pieces_of, times, whippings_in_turn, type Bench } from "./batches";
import { in_grams, is_alkali } from "./weights";

export type Input = [name: string, value: string, from?: string];

export interface Working {
  formula: string;
  with: Input[];
  sources?: string[];
}

export const g = (grams: number, decimals = 1): string => `${plain(grams, decimals)} g`;
const weighed_g = (grams: number): string => `${trimmed(grams, 3)} g`;
/** As it is weighed; alkali, and lye with it, never more. */
const pot_g = <P extends string>(among: WeighedAs<P>, prefix: P): string =>
  first(weight("metric", weighed_as(among, prefix), "down"));
export const ml = (volume: number): string => `${trimmed(volume, 3)} ml`;
export const asked = (pointer: string): string => words(at(state.run.now, pointer));
const of_formula = (slot: Slot, pointer: string): string => words(at(state.formulas[slot]?.now, pointer));
export const run_file = "the run";

function words(value: Json | undefined): string {
  if (value === undefined || value === null) return "not said";
  if (typeof value !== "object") return String(value);
  return Object.values(value).map(words).join(", ");
}

export function working_of_make(plan: Plan): Working {
  return {
    formula:
      "pieces to make = pieces to sell ÷ (1 − spoilage), rounded up to whole casts, or to full moulds where they are all filled; batches as few as the fillings and what sets their size allow, and as even as can be",
    with: [
      ["to sell", String(plan.pieces.sell), run_file],
      ["spoilage", asked("/spoilage"), run_file],
      ["to make", String(plan.pieces.make)],
      ["cavities", String(plan.pieces.cavities), "the mould"],
      ["fillings", String(plan.pieces.fillings), "to make ÷ cavities, rounded up"],
      ...plan.batches.map((one): Input => [counted(one.count, "batch", "batches"), pieces_of(plan, one)]),
    ],
  };
}

export function working_of_pour_each(pour: Pour): Working {
  return {
    formula: "mass of one pour = volume to the pour line × density of the batter",
    with: [
      [
        "volume to the line",
        ml(pour.volume_each_ml),
        `level curve of ${pour.mould} at ${trimmed(pour.depth_mm, 2)} mm`,
      ],
      ["density", `${pour.density_g_per_ml} g/ml`, pour.formula],
      ...(pour.displaced_ml ? ([["pushed aside by embeds", ml(pour.displaced_ml)]] as Input[]) : []),
      ["one pour", g(pour.mass_each_g, 3)],
    ],
    sources: measured_by(),
  };
}

export function measured_by(): string[] {
  const by = state.measured?.gauge.measurements?.map((one) => `${one.by} (${ml(one.brimful_ml)} to the brim)`) ?? [];
  const has_water = state.measured?.gauge.measurements?.some((one) => one.by === "water");
  return [...by, ...(has_water ? ["density of water: Kell 1975"] : [])];
}

export function working_of_mm(pour: Pour): Working {
  return {
    formula: "one millimetre = area of the free surface at the pour line × 1 mm",
    with: [
      ["volume of 1 mm", ml(pour.ml_per_mm), `slope of the level curve at ${trimmed(pour.depth_mm, 2)} mm`],
      ["density", `${pour.density_g_per_ml} g/ml`, pour.formula],
      ["to the brim", ml(pour.brimful_ml)],
    ],
    sources: measured_by(),
  };
}

export function working_of_layer(pour: Pour, layer: Layer): Working {
  return {
    formula: "weigh for a layer = mass in one piece × pieces of the batch, with its share of the losses",
    with: [
      ["from", `${trimmed(layer.from_mm, 1)} mm`],
      ["to", `${trimmed(layer.to_mm, 1)} mm`],
      ["volume in one piece", ml(layer.volume_each_ml)],
      ["mass in one piece", g(layer.mass_each_g)],
      ["all batter to make", g(pour.make_g)],
    ],
  };
}

export function working_of_batter(slot: Slot, batter: Batter): Working {
  const losses = at(state.run.now, `/losses/${slot}`);
  const lost: Input[] = Object.entries((losses ?? {}) as Record<string, Json>).map(([name, value]) => [
    name.replaceAll("_", " "),
    words(value),
    run_file,
  ]);
  return {
    formula: "batter to make = in the pieces + losses, after every ingredient is rounded to the scale",
    with: [
      ["in the pieces", g(batter.in_pieces_g)],
      ...lost,
      ["losses together", g(batter.lost_g)],
      ["to make", g(batter.make_g)],
    ],
  };
}

export function working_of_density(slot: Slot, batter: Batter): Working {
  if (slot === "pipe")
    return {
      formula:
        "density of the whip = weigh-cup's net weight ÷ its volume; overrun = plain density ÷ whipped density − 1",
      with: [
        ["weigh-cup", asked("/pipe/whip"), run_file],
        ["whipped", `${batter.density_g_per_ml} g/ml`],
        ["plain", `${batter.plain_density_computed_g_per_ml} g/ml`, "computed, before whipping"],
      ],
    };
  return {
    formula: "density = mass of everything ÷ sum of the volumes, at the pouring temperature",
    with: [
      ["density", `${batter.density_g_per_ml} g/ml`],
      ["temperature", of_formula(slot, "/pour_temperature"), batter.formula],
      ["computed", `${batter.plain_density_computed_g_per_ml} g/ml`],
    ],
    sources: [
      "fats: each fat's published density and slope",
      "lye: Laliberté and Cooper 2004",
      "volumes taken as additive, good to 1 to 2 %",
    ],
  };
}

/** With every digit that the program sent. */
const to_the_last = (value: number): string => (value === 0 ? per_cent(value) : `${value} %`);

export function working_of_superfat(slot: Slot, batter: Batter): Working {
  const { aim, effective, low, high, likely_low, likely_high, doubts } = batter.superfat_percent;
  return {
    formula: "effective superfat = 1 − alkali weighed × purity ÷ alkali that the weighed fats and acids need",
    with: [
      ["aim", `${aim} %`, batter.formula],
      ["effective", to_the_last(effective), "after rounding fats and alkali to the scales"],
      ["lowest", to_the_last(low), "if every range falls the wrong way"],
      ["highest", to_the_last(high)],
      ...(likely_low === undefined || likely_high === undefined
        ? []
        : ([
            [
              "likely",
              `${to_the_last(likely_low)} to ${to_the_last(likely_high)}`,
              "19 batches in 20, each doubt even over its range and independent of the others",
            ],
          ] as Input[])),
      ...(doubts ?? [])
        .slice(0, 3)
        .map((one): Input => [`doubt: ${one.cause}`, `${Math.round(one.percent_of_variance)} %`, "of the variance"]),
      ["fats", g(batter.fats_g)],
      ["purity", of_formula(slot, "/alkali/0/purity")],
    ],
    sources: fat_sources(slot),
  };
}

function fats_of(slot: Slot): { id: string; share: string; own?: Json }[] {
  const fats = at(state.formulas[slot]?.now, "/fats");
  if (!Array.isArray(fats)) return [];
  return fats.map((fat) => {
    const { fat: id, share, saponification_value } = fat as Record<string, Json>;
    return { id: String(id), share: String(share), own: saponification_value };
  });
}

function fat_sources(slot: Slot): string[] {
  return fats_of(slot).map(({ id, own }) => {
    const fat = state.fats.find((one) => one.id === id);
    const value = fat?.saponification_value_mg_koh_per_g;
    if (own !== undefined) return `${fat?.name ?? id}: your lot's saponification value ${words(own)} mg/g`;
    return value ? `${fat.name}: ${value.low} to ${value.high} mg/g, ${value.source}` : id;
  });
}

function working_of_alkali(slot: Slot, batter: Batter): Working {
  return {
    formula:
      "alkali = [fats × saponification value × M(alkali) ÷ M(KOH) × (1 − superfat) + what acids take] ÷ purity, rounded down to the fine scale",
    with: [
      ["fats, as rounded", g(batter.fats_g)],
      ["superfat aimed at", `${batter.superfat_percent.aim} %`, batter.formula],
      ["purity", of_formula(slot, "/alkali/0/purity"), batter.formula],
      ["fine scale reads", asked("/scales/fine/reads"), run_file],
      ...batter.ingredients.filter(is_alkali).map((alkali): Input => [alkali.name, in_grams(alkali)]),
    ],
    sources: ["M(NaOH) 39.997 and M(KOH) 56.105 g/mol, IUPAC atomic weights", ...fat_sources(slot)],
  };
}

export function working_of_water(slot: Slot, batter: Batter): Working {
  return {
    formula: "water = pure alkali × (1 − strength) ÷ strength",
    with: [
      ["asked for", of_formula(slot, "/water"), batter.formula],
      ["lye strength", `${trimmed(batter.lye_strength_percent, 1)} %`, "alkali ÷ (alkali + water)"],
      ["water : alkali", `${trimmed(batter.water_to_pure_alkali, 2)} : 1`],
      ["water as a share of the fats", `${trimmed(batter.water_percent_of_fats, 1)} %`],
      ["large scale reads", asked("/scales/large/reads"), run_file],
    ],
  };
}

export function working_of_ingredient(slot: Slot, batter: Batter, one: Ingredient): Working {
  if (is_alkali(one)) return working_of_alkali(slot, batter);
  if (one.role === "water") return working_of_water(slot, batter);
  const fat = state.fats.find((known) => known.name === one.name);
  const share = fats_of(slot).find(({ id }) => id === fat?.id)?.share;
  if (fat && share)
    return {
      formula: "weigh = fats for the batter × share, rounded to the scale",
      with: [
        ["fats, as rounded", g(batter.fats_g)],
        ["share", share, batter.formula],
        ...scale_shows(one),
        ...aside(one),
      ],
      sources: [
        `saponification value: ${fat.saponification_value_mg_koh_per_g?.source ?? "your own"}`,
        `density: ${fat.density_g_per_ml?.source ?? "estimated"}`,
      ],
    };
  return {
    formula: "weigh = rate × what the rate is of, rounded to the scale",
    with: [
      ["rate", rate_of(slot, one.name), batter.formula],
      ["fats", g(batter.fats_g)],
      ["batter", g(batter.make_g)],
      ...scale_shows(one),
      ...aside(one),
    ],
  };
}

const scale_shows = (one: Ingredient): Input[] =>
  one.scale_step_g ? [["the scale shows", step_words(one.scale_step_g), run_file]] : [];

function aside(one: Ingredient): Input[] {
  return one.set_aside_for_colours_g ? [["of it set aside to disperse colours", g(one.set_aside_for_colours_g)]] : [];
}

function rate_of(slot: Slot, name: string): string {
  for (const list of ["additives", "fragrances", "colours"]) {
    const found = at(state.formulas[slot]?.now, `/${list}`);
    for (const one of Array.isArray(found) ? found : []) if (at(one, "/name") === name) return words(at(one, "/rate"));
  }
  return "see the formula";
}

export function working_of_layer_colour(pour: Pour, layer: Layer, colour: Ingredient, at_colour: string): Working {
  const bulk = asked(`${at_colour}/bulk_density`);
  return {
    formula:
      "powder = rate × what the rate is of: this layer's batter, or the fats in it (layer × fats ÷ batter); a rate by the spoon × bulk density; rounded to the fine scale",
    with: [
      ["rate", asked(`${at_colour}/rate`), run_file],
      ["this layer's batter", g(layer.g)],
      ["fats in all the base", g(pour.fats_g)],
      ["all the base", g(pour.make_g)],
      ...(at(state.run.now, `${at_colour}/bulk_density`) === undefined
        ? []
        : ([["bulk density", bulk, run_file]] as Input[])),
      ...scale_shows(colour),
    ],
  };
}

/** What takes its share of one pot, in the pot's order. */
const in_pot = (bench: Bench): Batter[] => [bench.pour, ...whippings_in_turn(bench)];

/** What each batter's own weighing asks for, side by side. */
function of_each(bench: Bench, what: string, of: (batter: Batter) => string): Input[] {
  return in_pot(bench).map((batter, i): Input => [
    `${what} for ${bench.lye_pot?.shares[i]?.batter ?? batter.formula}`,
    of(batter),
    "its own weighing, on the lye shelf",
  ]);
}

/** All of it, or that of one name. */
const alkali_of = (batter: Batter, name?: string): string =>
  batter.ingredients
    .filter((one) => (name ? one.name === name : is_alkali(one)))
    .map(in_grams)
    .join(" + ") || "none";

const own_water = (batter: Batter): string =>
  batter.ingredients
    .filter((one) => one.role === "water")
    .map(in_grams)
    .join(" + ") || "none";

export function working_of_pot_alkali(plan: Bench, name: string): Working {
  return {
    formula: "alkali in the pot = what each batter's own lye takes, added up, rounded down to the scale",
    with: [
      ...of_each(plan, name, (batter) => alkali_of(batter, name)),
      ["fine scale reads", asked("/scales/fine/reads"), run_file],
    ],
  };
}

export function working_of_pot_water(plan: Bench, pot: LyePot): Working {
  return {
    formula:
      "water in the pot = all the alkali × the least plain water for a gram of alkali that one of the batters takes, before its own scale rounded it; rounded to the scale",
    with: [
      ...of_each(plan, "water in the lye", own_water),
      ...pot.alkalis.map((one): Input => [one.name, pot_g(one, ""), "in the pot"]),
      ...of_each(plan, "alkali", (batter) => alkali_of(batter)),
    ],
  };
}

export function working_of_pot_lye(pot: LyePot): Working {
  return {
    formula:
      "lye in the pot = alkali + water, to the step the shares are weighed in; strength = pure alkali ÷ (pure alkali + water)",
    with: [
      ["water", pot_g(pot, "water_")],
      ...pot.alkalis.map((one): Input => [one.name, pot_g(one, "")]),
      ["strength", `${trimmed(pot.strength_percent, 2)} %`],
      ...(pot.full_pot_g === null
        ? []
        : ([
            ["the empty pot", asked("/lye_pot/pot_tare"), run_file],
            ["pot and lye", pot.full_pot_g_text === undefined ? weighed_g(pot.full_pot_g) : `${pot.full_pot_g_text} g`],
          ] as Input[])),
    ],
  };
}

export function working_of_pot_share(plan: Bench, pot: LyePot, i: number): Working {
  const share = pot.shares[i];
  const batter = in_pot(plan)[i];
  return {
    formula:
      "share = lye in the pot × this batter's alkali ÷ all the alkali, rounded down to the scale, as alkali is; what is left stays in the pot; superfat then = 1 − (1 − its own) × (alkali taken − acids) ÷ (alkali planned − acids)",
    with: [
      ["lye in the pot", pot_g(pot, "lye_")],
      ...of_each(plan, "alkali", (batter) => alkali_of(batter)),
      ["share", pot_g(share, "lye_")],
      ...(pot.left_g ? ([["left in the pot", `${pot.left_g_text ?? trimmed(pot.left_g, 3)} g`]] as Input[]) : []),
      ["superfat with its own lye", to_the_last(batter.superfat_percent.effective)],
      ["superfat out of the pot", to_the_last(share.superfat_percent)],
    ],
    sources: ["acids as KOH: each acid's equivalent, in the formula's additives"],
  };
}

export function working_of_pot_top_up(plan: Bench, pot: LyePot, i: number): Working {
  const batter = in_pot(plan)[i];
  return {
    formula:
      "plain water to add = the water of this batter's own lye − the water that is in its share, both before rounding; under half a gram is left out",
    with: [
      ["water of its own lye", own_water(batter), "its own weighing"],
      ["its share of the lye", pot_g(pot.shares[i], "lye_")],
      ["water in the pot", pot_g(pot, "water_")],
      ["lye in the pot", pot_g(pot, "lye_")],
      ["to add", pot_g(pot.shares[i], "top_up_")],
    ],
  };
}

export function working_of_bottle(bench: Bench, i: number, part: number): Working {
  const bottle = bench.bottles[i];
  const { part: name, g: gives, percent_of_batter } = bottle.parts[part];
  const { pour, pipe } = bench.whole;
  return {
    formula:
      "out of the bottle = what it holds × this batter ÷ all batters of the run, rounded down to the scale: one rate in all",
    with: [
      ["the bottle holds", asked(`/bottles/${i}/holds`), run_file],
      ["base, in the run", g(pour.make_g)],
      ...(pipe ? ([["topping, in the run", g(pipe.make_g)]] as Input[]) : []),
      [name, weighed_g(gives)],
      ["of the batter", `${percent_of_batter} %`],
    ],
  };
}

export type ShapeWay = "trials" | "beads" | "envelope";

const way_formulas: Record<ShapeWay, string> = {
  trials: "by trials = mean of the weighed trials ÷ density of their whip (its weigh-cup, net ÷ what it holds)",
  beads: "by beads = what the moves lay down, added up × the hand's factor of the tip, if it has one",
  envelope:
    "by outline = solid share × volume of a cone (π ÷ 12 × across² × high) or of half an ellipsoid (π ÷ 6 × across² × high)",
};

export function working_of_way(pipe: Topping, way: ShapeWay): Working {
  if (way === "beads")
    return {
      formula: way_formulas.beads,
      with: [
        ...(pipe.visible_by?.moves ?? []).map((move, i): Input => [
          `${i + 1}. ${asked(`/pipe/beads/moves/${i}/move`)}`,
          ml(move.volume_ml),
        ]),
        [
          "hand's factor",
          at(state.run.now, "/pipe/beads/tip/hand/factor") === undefined
            ? "as the tip's file says, else none"
            : asked("/pipe/beads/tip/hand/factor"),
        ],
      ],
    };
  const keys =
    way === "trials" ? ["weighed", "weigh_cup/net", "weigh_cup/holds"] : ["form", "diameter", "height", "solidity"];
  return {
    formula: way_formulas[way],
    with: keys.map((key): Input => [key.replace("weigh_cup/", "weigh-cup, "), asked(`/pipe/${way}/${key}`), run_file]),
  };
}

const move_formulas: Record<string, string> = {
  dollop: "half an ellipsoid = π ÷ 6 × across² × high",
  ring: "ring = section of the bead × 2 π × radius (Pappus)",
  spiral: "spiral = section of the bead × length of its path (arc-length integral)",
  tail: "tail = section of the bead × length ÷ 3, a cone",
  dots: "dots = how many × section of the bead × high × 2 ÷ 3",
  shells: "shells = how many × section of the bead × length ÷ 2",
  bead: "bead = section × length",
};

export function working_of_move(i: number, laid: { length_mm: number; volume_ml: number }, opening: string): Working {
  const here = `/pipe/beads/moves/${i}`;
  const said = Object.entries((at(state.run.now, here) ?? {}) as Record<string, Json>).filter(
    ([name]) => name !== "move",
  );
  return {
    formula: `${
      move_formulas[asked(`${here}/move`)] ?? "section of the bead × length"
    }; section = opening of the tip × swell`,
    with: [
      ["opening of the tip", opening],
      ["swell", asked("/pipe/beads/swell"), run_file],
      ...said.map(([name, value]): Input => [name.replaceAll("_", " "), words(value), run_file]),
      ...(laid.length_mm > 0 ? ([["path, pressing", `${trimmed(laid.length_mm, 1)} mm`]] as Input[]) : []),
      ["laid down", ml(laid.volume_ml)],
    ],
  };
}

export function working_of_topping(pipe: Topping): Working {
  const share = asked("/pipe/fills_headspace");
  return {
    formula: "topping = visible shape + share of the headspace × headspace; its mass = that × density of the whip",
    with: [
      ["visible shape", ml(pipe.visible_each_ml), visible_from()],
      ["share of the headspace", share, run_file],
      ["in the headspace", ml(pipe.in_headspace_each_ml)],
      ["together", ml(pipe.volume_each_ml)],
      ["density of the whip", `${pipe.density_g_per_ml} g/ml`, "weigh-cup"],
    ],
  };
}

function visible_from(): string {
  if (at(state.run.now, "/pipe/trials")) return "mean of the trials ÷ their weigh-cup's density";
  return at(state.run.now, "/pipe/beads") ? "the beads of the tip, move by move" : "the outline × its solid share";
}

export function working_of_now(pipe: Whipping): Working {
  return {
    formula: "this bowl pipes = batter left after losses ÷ today's density ÷ topping of one piece, rounded down",
    with: [
      ["today's weigh-cup", asked("/pipe/whip_now"), run_file],
      ["planned weigh-cup", asked("/pipe/whip"), run_file],
      ["topping of one piece", ml(pipe.volume_each_ml)],
      ["batter", g(pipe.make_g)],
      ["to pipe", String(pipe.pieces)],
    ],
  };
}

export function working_of_perch(perch: Perch, index: number): Working {
  const says = (name: string) => asked(`/perch/${index}/${name}`);
  return {
    formula: "melt = (casts × mass of one + film left in the jug × tray fills) ÷ (1 − melt loss)",
    with: [
      at(state.run.now, `/perch/${index}/per_piece`) === undefined
        ? ["in each cast", says("per_cast"), run_file]
        : ["on each piece", says("per_piece"), run_file],
      ["spares", says("spares"), run_file],
      ["casts", String(perch.casts)],
      ["mass of one", g(perch.mass_each_g, 3), `${ml(perch.volume_each_ml)} × ${says("density")}`],
      ["tray fills", String(perch.tray_fills), `${perch.cavity_fills} hollows filled`],
      ["film in the jug", says("jug_film"), run_file],
      ["melt loss", says("melt_loss"), run_file],
    ],
  };
}

export function working_of_cut(cut: Cut): Working {
  return {
    formula: "bars = rows × columns that fit after trimming, planing and the kerf of each cut",
    with: [
      ["rows", String(cut.rows)],
      ["columns", String(cut.columns)],
      ["bar", asked("/cut/bar"), run_file],
      ["kerf", asked("/cut/kerf"), run_file],
      ["smallest bar", ml(cut.bar_ml.least)],
      ["largest bar", ml(cut.bar_ml.greatest)],
    ],
  };
}

export function working_of_cost(plan: Plan): Working {
  const cost = plan.piece.cost!;
  return {
    formula: "cost of a piece = sum of (price ÷ pack × used) ÷ pieces to sell",
    with: [
      ...cost.materials.map((one): Input => [
        one.name,
        one.amount === null ? "unpriced" : `${one.amount} ${cost.currency}`,
        `${trimmed(one.g, 1)} g used`,
      ]),
      ["all materials", `${cost.total} ${cost.currency}`],
      ["to sell", String(plan.pieces.sell), run_file],
    ],
  };
}

export function working_of_piece(plan: Plan): Working {
  const parts = plan.piece.parts ?? [];
  return {
    formula: "cured = sum over the parts of dry matter + water × (1 − share lost in cure)",
    with: [
      ...parts.map((part): Input => [
        part.name,
        `${g(part.fresh_g)} fresh`,
        part.cured_g === null ? "" : `${g(part.cured_g)} cured`,
      ]),
      ["base, water lost in cure", of_formula("pour", "/water_lost_in_cure"), plan.pour.formula],
      ...(plan.pipe
        ? ([["topping, water lost in cure", of_formula("pipe", "/water_lost_in_cure"), plan.pipe.formula]] as Input[])
        : []),
      ["fresh", g(plan.piece.fresh_g)],
      ["cured", plan.piece.cured_g === null ? "not known" : g(plan.piece.cured_g)],
    ],
  };
}

/** Of something that each batch has weighed for itself. */
export function working_over_batches(plan: Plan, of: (batch: Plan["batches"][number]) => Input[]): Working {
  return {
    formula: "for the whole run = what is weighed for one batch × how often it is made, added up",
    with: plan.batches.flatMap((batch) =>
      of(batch).map(([name, value, from]): Input => [
        `${pieces_of(plan, batch)}, ${times(batch.count)}${name}`,
        value,
        from,
      ]),
    ),
  };
}
