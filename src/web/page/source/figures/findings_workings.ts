// How what the lanes tell in sentences and small tables comes about; sums.ts has the weights.
import type { Slot } from "../documents/file_types";
import { state } from "../documents/state";
import type { Batter, Perch, Plan, Whipping } from "../program/answers";
import { trimmed } from "../program/numbers";
import { type Input, type Working, asked, g, measured_by, ml, run_file } from "./workings";

const mm = (value: number | null): string => (value === null ? "not known" : `${trimmed(value, 2)} mm`);

/** Of what the run says, if it says it. */
const said = (name: string, pointer: string): Input[] => {
  const value = asked(pointer);
  return value === "not said" ? [] : [[name, value, run_file]];
};

export function working_of_heat(slot: Slot, batter: Batter): Working {
  const found = batter.heat;
  return {
    formula:
      "hottest lye: where its enthalpy is that of the cold water and the dry alkali together, all at once in a pot that takes none of it; cooling time = mass × heat capacity ÷ (U × area) × ln((from − around) ÷ (to − around))",
    with: [
      ["strength", `${trimmed(batter.lye_strength_percent, 1)} %`],
      ["water at", `${found.water_at_c} °C`],
      ...said("lye made at", `/${slot}/warmth/lye_made_at`),
      ...said("lye used at", `/${slot}/warmth/lye_used_at`),
      ...said("fats at", `/${slot}/warmth/fats_at`),
      ...said("cooled in", `/${slot}/warmth/cooled_in`),
    ],
    sources: [
      "NaOH: enthalpy and vapour pressure by Olsson, Jernqvist and Aly, Int. J. Thermophysics 18 (1997)",
      "KOH: heat of solution at infinite dilution (CRC Handbook), which is too warm, never too cool",
      "U: 50 to 300 W/(m² K) in water, 5 to 20 in air, by published coefficients of free convection; Newton's law of cooling",
    ],
  };
}

/** Of one bowl, which makes so many pieces. */
export function working_of_readings(pipe: Whipping): Working {
  return {
    formula:
      "pieces = batter left after losses ÷ (net weight ÷ cup) ÷ topping of one piece, rounded down; overrun = plain density ÷ whipped density − 1",
    with: [
      ["batter", g(pipe.make_g)],
      ["losses together", g(pipe.lost_g)],
      ["cup holds", asked("/pipe/whip/holds"), run_file],
      ["topping of one piece", ml(pipe.volume_each_ml)],
      ["plain density", `${pipe.plain_density_computed_g_per_ml} g/ml`, "computed, before whipping"],
      ["to pipe", String(pipe.pieces)],
    ],
  };
}

export function working_of_limits(pipe: Whipping): Working {
  return {
    formula:
      "piping = pieces × one piece + bag changes; least = what the whisk catches ÷ plain batter of one piece; most = share of the bowl ÷ whipped batter of one piece, and open time ÷ one piece; spoonfuls = lye ÷ spoon",
    with: [
      ["pieces", String(pipe.pieces)],
      ...said("one piece takes", "/pipe/pace/each"),
      ...said("a bag change", "/pipe/pace/bag_change"),
      ...(pipe.loads ? ([["bag loads", String(pipe.loads), `bag of ${asked("/pipe/bag_holds")}`]] as Input[]) : []),
      ...said("stays open", "/pipe/pace/stays_open"),
      ...said("bowl holds", "/pipe/bowl/holds"),
      ...said("whisk catches", "/pipe/bowl/whisk_catches"),
      ...said("spoon holds", "/pipe/lye_spoon/holds"),
      ...said("from one spoonful to the next", "/pipe/lye_spoon/each"),
    ],
    sources: ["how full a bowl may be whipped: common practice, no source"],
  };
}

export function working_of_fit({ on_top, buried }: Perch, index: number): Working {
  const here = `/perch/${index}`;
  return {
    formula: on_top
      ? "it stands proud by its height less what is pressed in; it rests on a circle as large as its section at that depth"
      : "cover = least distance between the surfaces of the embed and of wall, floor, pour line or next embed; pushed aside = its volume below the line",
    with: on_top
      ? [
          ...said("pressed in", `${here}/on_top/sinks`),
          ["of it below the top", ml(on_top.sunk_ml)],
          ["rests on a circle of", mm(on_top.contact_mm)],
          ["flat of the peak", mm(on_top.peak_flat_mm), "by the topping's shape"],
        ]
      : [
          ...said("cover wanted", `${here}/buried/cover`),
          ...(buried?.embeds ?? []).map(({ middle_mm, floor_cover_mm, wall_cover_mm, apart_mm }, i): Input => [
            `${i + 1}. middle at ${middle_mm.map((value) => trimmed(value, 1)).join(", ")} mm`,
            `floor ${mm(floor_cover_mm)}, wall ${mm(wall_cover_mm)}`,
            apart_mm === null ? "" : `next one ${mm(apart_mm)}`,
          ]),
        ],
    sources: ["measured between the facets of mould and embed as they are drawn"],
  };
}

export function working_of_brimful(): Working {
  const { gauge } = state.measured!;
  const pocket = gauge.pockets[0];
  return {
    formula:
      "to the brim = area of the level section, summed from floor to brim; of a mesh by the signed tetrahedra of its facets (divergence theorem); with water = net weight ÷ density of water",
    with: [
      ["one cavity", ml(pocket.brimful_ml)],
      ["floor", mm(pocket.floor_mm)],
      ["brim", mm(pocket.brim_mm)],
      ["opening", `${trimmed(pocket.opening_cm2, 2)} cm²`],
      ["cavities", String(gauge.pockets.length)],
      ["all of them", ml(gauge.total_ml)],
    ],
    sources: measured_by(),
  };
}

export function working_of_size(plan: Plan): Working {
  const size = plan.piece.size!;
  return {
    formula: "the box that the model of base, topping and decoration just fits, standing as it was poured",
    with: [
      ["wide", mm(size.width_mm)],
      ["deep", mm(size.depth_mm)],
      ["high", mm(size.height_mm)],
      ["of it base to the pour line", mm(plan.pour.depth_mm)],
    ],
  };
}
