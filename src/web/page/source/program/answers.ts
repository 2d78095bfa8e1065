// What the program answers, as far as the page reads it. Keys may be missing: then nothing is shown.

import type { Weighed, WeighedAs } from "./numbers";

export interface Caution {
  severity: string;
  topic?: string;
  text: string;
}

export interface Ingredient extends Weighed {
  name: string;
  goes_into: string;
  teaspoons?: number;
  set_aside_for_colours_g?: number;
}

/** In per cent of the fats. */
export interface Superfat {
  effective: number;
  low: number;
  high: number;
  likely_low?: number;
  likely_high?: number;
  likely_means?: string;
  doubts?: { cause: string; remedy: string; percent_of_variance: number }[];
}

export interface Heat {
  water_at_c: number;
  peak_c: number;
  boils_at_c: number;
  at_pour_c: number | null;
  cooling: { in: string; shortest_min: number; longest_min: number }[];
}

export interface Batter {
  formula: string;
  volume_each_ml: number;
  mass_each_g: number;
  density_g_per_ml: number;
  plain_density_computed_g_per_ml?: number;
  in_pieces_g: number;
  lost_g: number;
  make_g: number;
  fats_g: number;
  naoh_g: number;
  koh_g: number;
  water_g: number;
  lye_strength_percent: number;
  water_to_pure_alkali: number;
  water_percent_of_fats: number;
  superfat_percent: Superfat & { aim: number };
  heat?: Heat;
  ingredients: Ingredient[];
}

export interface Layer extends Weighed {
  name: string;
  from_mm: number;
  to_mm: number;
  volume_each_ml: number;
  mass_each_g: number;
  colours: Ingredient[];
  surface?: { over_origin_mm: number; rise_x: number; rise_y: number }; // set while the mould was propped
}

export interface Pour extends Batter {
  mould: string;
  brimful_ml: number;
  depth_mm: number;
  below_brim_mm: number;
  poured_to_mm?: number;
  displaced_ml?: number;
  ml_per_mm: number;
  layers?: Layer[];
}

/** What keeps a batch, or a whipping, from being larger or smaller. */
export interface Limit {
  what: string;
  least_pieces?: number;
  most_pieces?: number;
  sets: boolean; // it is what keeps the batches from being larger
  text: string;
}

export interface Pipe extends Batter {
  visible_each_ml: number;
  in_headspace_each_ml: number;
  overrun_percent: number;
  loads?: number | null;
  pieces_now?: number | null;
  readings?: { net_g: number; density_g_per_ml: number; overrun_percent: number; pieces: number; planned: boolean }[];
  limits?: Limit[];
  visible_by?: {
    trials_ml?: number | null;
    beads_ml?: number | null;
    envelope_ml?: number | null;
    moves?: { length_mm: number; volume_ml: number }[];
    hand_suggested?: { factor: number; trials: number };
  };
  least_pieces?: number;
  piping_s?: number | null;
  lye_spoonfuls?: { count: number; each_s: number; altogether_s: number };
}

export interface Perch extends WeighedAs<"make_"> {
  name: string;
  material: string;
  casts: number;
  cavity_fills: number;
  tray_fills: number;
  volume_each_ml: number;
  mass_each_g: number;
  casting_s?: number | null;
  on_top?: { contact_mm: number; peak_flat_mm: number | null; stands_proud_mm: number; sunk_ml: number };
  buried?: {
    displaced_ml: number;
    embeds: {
      middle_mm: [number, number, number];
      turn: [number, number, number][]; // rows of a rotation
      floor_cover_mm: number | null;
      wall_cover_mm: number | null;
      pour_line_cover_mm: number;
      apart_mm: number | null;
    }[];
  };
}

export interface Cut {
  bars_each: number;
  along?: string;
  columns: number;
  rows: number;
  bars_the_other_way?: number | null;
  bar_ml: { least: number; mean: number; greatest: number };
  offcuts_ml: number;
  offcuts_g: number; // of all that is cut off: batter, embeds, topping
  kerf_ml?: number;
  planing_ml?: number;
  one_more?: { direction: string; size_mm: number; size_text: string; bars: number }[];
  bars: { fresh_g: number; cured_g: number | null }[];
}

/** One lye for both batters; of its shares the base's is the first. */
export interface Pot extends WeighedAs<"water_">, WeighedAs<"lye_"> {
  alkalis: (Weighed & { name: string })[];
  strength_percent: number;
  full_pot_g: number | null;
  full_pot_g_text?: string;
  full_pot_oz_text?: string;
  left_g?: number; // for the shares are rounded down
  left_g_text?: string;
  left_oz_text?: string;
  heat?: Heat | null;
  shares: PotShare[];
}

interface PotShare extends WeighedAs<"lye_">, WeighedAs<"top_up_"> {
  batter: string;
  superfat_percent: number;
  superfat?: Superfat; // as far as the program knows how it may fall
}

/** A topping whipped in one go: one bowl, weighed out by itself. */
export interface Whipping extends Pipe {
  count: number; // how often a batch has it
  pieces: number;
  casts: number;
}

export interface Dust extends Weighed {
  name: string;
  exposed_cm2?: number;
}

export interface Bottle {
  name: string;
  holds_g: number;
  parts: (Weighed & { part: string; percent_of_batter: number })[];
}

/** What is weighed, poured, whipped and piped in one go, and how often it is. */
export interface Batch {
  count: number;
  pieces: number;
  casts: number;
  numbers: number[]; // which ones they are, in the order of making
  pour: Pour;
  pipe?: Pipe & { whippings: Whipping[] };
  dust?: Dust[];
  lye_pot?: Pot | null;
  bottles?: Bottle[];
}

/** Masses in it are sums over all batches; what is weighed for one of them stands in `batches`. */
export interface Plan {
  run: string;
  pieces: {
    sell: number;
    make: number;
    fillings: number;
    cavities: number;
    casts: number;
    per_cast: number;
    batches: number;
    to_stock: number;
  };
  batches: Batch[]; // each size once, the largest first
  batch_limits: Limit[];
  around: { sell: number; fillings: number; batches: number; text: string }[]; // what one fewer and one more would do
  pour: Pour;
  pipe?: Pipe;
  perch?: Perch[];
  dust?: Dust[];
  cut?: Cut;
  piece: {
    fresh_g: number;
    cured_g: number | null;
    label_g: number | null;
    is?: "piece" | "bar on average";
    lightest?: { fresh_g: number; cured_g: number | null } | null; // of a cut loaf's bars
    parts?: { name: string; fresh_g: number; cured_g: number | null }[];
    size?: { width_mm: number; depth_mm: number; height_mm: number } | null;
    cost: {
      amount: string | null; // none where nothing is priced
      currency: string;
      total: string | null;
      unpriced: string[];
      materials: { name: string; g: number; amount: string | null }[];
    } | null;
  };
  lye_pot?: Pot | null;
  bottles?: Bottle[];
  label?: {
    market: string;
    net_quantity?: { statement: string; because: string } | null;
    as_saponified?: { text: string } | null;
    as_charged?: { text: string } | null;
    allergens?: { name: string; percent: number; named: boolean }[];
    remarks?: Caution[];
  } | null;
  cautions: Caution[];
}

interface Pocket {
  brimful_ml: number;
  floor_mm: number;
  brim_mm: number;
  opening_cm2: number;
  trapped_air_ml: number;
  levels: { depth_mm: number; volume_ml: number; ml_per_mm: number }[];
}

export interface Gauge {
  source: string;
  name?: string;
  role: string;
  unit: string;
  pockets: Pocket[];
  total_ml: number;
  measurements?: { by: string; brimful_ml: number }[];
  detail_factor?: number;
  notes: Caution[];
}

export interface CatalogueMould {
  path: string;
  name: string;
  description: string;
  cavities: number;
  brimful_ml: number;
  depth_mm: number;
}

export interface Fat {
  id: string;
  name: string;
  saponification_value_mg_koh_per_g?: { low: number; typical: number; high: number; source: string };
  density_g_per_ml?: { low: number; high: number; at_celsius: number; source: string };
  own?: string; // the saponification value as it stands in a file of her own
}
