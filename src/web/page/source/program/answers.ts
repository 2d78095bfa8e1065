// What the program answers: made of src/schemas by answers.mjs, and not changed by hand.

export type AimedSuperfat = Superfat & {
  /**
   * As the formula says, in per cent.
   */
  aim: number;
};
/**
 * One thing to weigh.
 */
export type Ingredient = Weighed & {
  /**
   * For people: "Olive oil", "NaOH, 99 % pure".
   */
  name: string;
  /**
   * What it is in the batter; blend holds several of its fats, melted together; extra_oil disperses a colour and is no fat of the formula, liquid stands in for water, acid takes alkali.
   */
  role: "fat" | "blend" | "extra_oil" | "alkali" | "water" | "liquid" | "acid" | "additive" | "fragrance" | "colour";
  goes_into: "fats" | "lye" | "batter";
  /**
   * Of a fat: its id in files of fats.
   */
  fat?: string;
  /**
   * Of a blend: what of it is each fat, by its id.
   */
  holds?: {
    fat: string;
    percent: number;
  }[];
  /**
   * The same by US teaspoons, where a bulk density is known.
   */
  teaspoons?: number;
  /**
   * Of a fat: the part that first disperses colours, in grams.
   */
  set_aside_for_colours_g?: number;
};
/**
 * How serious it is; a danger can hurt someone or spoil a batch.
 */
export type Severity = "note" | "caution" | "danger";
export type NamedWeight = Weighed & {
  /**
   * For people.
   */
  name: string;
};
export type PotSuperfat = Superfat;
/**
 * How the price is calculated.
 */
export type AskedBy =
  | {
      margin_percent: number;
    }
  | {
      markup_percent: number;
    }
  | {
      price: string;
    };
/**
 * The base.
 */
export type Pour = Batter & {
  /**
   * Its name.
   */
  mould: string;
  /**
   * Of one cavity.
   */
  brimful_ml: number;
  /**
   * Of the pour line, above the lowest point.
   */
  depth_mm: number;
  /**
   * Headspace.
   */
  below_brim_mm: number;
  /**
   * The line, or lower where embeds pressed in raise it to the line.
   */
  poured_to_mm: number;
  /**
   * By embeds below the line: not poured.
   */
  displaced_ml: number;
  cure: Cure | null;
  /**
   * What one millimetre at the line is worth.
   */
  ml_per_mm: number;
  /**
   * Lowest first; absent for one plain pour.
   */
  layers?: Layer[];
};
/**
 * A layer of the base.
 */
export type Layer = Weighed & {
  /**
   * As the run says.
   */
  name: string;
  /**
   * Lowest depth it reaches, above the lowest point.
   */
  from_mm: number;
  /**
   * Highest.
   */
  to_mm: number;
  /**
   * In one piece.
   */
  volume_each_ml: number;
  /**
   * In one piece.
   */
  mass_each_g: number;
  /**
   * Stirred into this layer.
   */
  colours: Ingredient[];
  surface?: SlopingSurface;
};
export type MendIngredient = Weighed & {
  /**
   * For people.
   */
  name: string;
  /**
   * Of a fat: its id.
   */
  fat?: string;
};
/**
 * The topping of the run.
 */
export type Pipe = Batter &
  Piped & {
    /**
     * How many in all.
     */
    whippings: number;
  };
/**
 * The topping of one batch: the sum of its whippings.
 */
export type BatchPipe = Batter &
  Piped & {
    /**
     * Largest first.
     *
     * @minItems 1
     */
    whippings: Whipping[];
  };
/**
 * A topping whipped in one go, with a weighing of its own.
 */
export type Whipping = Batter &
  Piped & {
    /**
     * Of these in the batch.
     */
    count: number;
    /**
     * That each is piped on.
     */
    pieces: number;
    /**
     * That each is piped on.
     */
    casts: number;
    /**
     * One.
     */
    whippings: number;
  };
/**
 * What goes into one batter.
 */
export type BottlePart = Weighed & {
  /**
   * "Base", "Topping".
   */
  part: string;
  /**
   * Of these, each of which gets it.
   */
  count: number;
  /**
   * Mass share.
   */
  percent_of_batter: number;
};
/**
 * A powder dusted over the pieces.
 */
export type Dust = Weighed & {
  /**
   * As the run says.
   */
  name: string;
  /**
   * Used up for a piece, what misses it included.
   */
  each_g: number;
  /**
   * Surface of a piece's topping and decoration, where its amount is given by that.
   */
  exposed_cm2?: number;
};
/**
 * Where a lot is from: "before records" stood there when records began.
 */
export type LotOrigin = "bought" | "made" | "before records";

/**
 * What the program answers, by the schema that tells of it.
 */
export interface Answers {
  buy?: BuyingList;
  common?: AnswerParts;
  complaint?: ComplaintLine;
  days?: Days;
  explain?: Explanation;
  gauge?: Gauge;
  inspection?: Inspection;
  learned?: Learned;
  list?: Catalogue;
  note?: Note;
  order_quote?: OrderQuote;
  plan?: Plan;
  quote?: Quote;
  records_overview?: RecordsOverview;
  stock?: StockList;
  trail?: Trail;
}
/**
 * The answer of `buy --json`: what runs need together, and the packs that cover it at least cost.
 */
export interface BuyingList {
  schema: "brimwright.buy/1";
  /**
   * The file that packs, sellers, stock and waste are from.
   */
  studio: string;
  /**
   * What is bought for, as asked.
   */
  runs: RunToBuyFor[];
  /**
   * Lines of orders whose base is mixed as one, and bought for once.
   */
  together: PouredTogether[];
  /**
   * Of each order; `runs` has what is left to make of it.
   */
  ready: ReadyOfOrder[];
  /**
   * All that the runs use.
   */
  materials: MaterialToBuy[];
  /**
   * One for each seller that is bought of.
   */
  deliveries: Delivery[];
  /**
   * ISO 4217; null where nothing with a price is bought.
   */
  currency: string | null;
  /**
   * Packs and all postage that is known; null where nothing with a price is bought.
   */
  total: string | null;
  /**
   * No other purchase of whole packs, each for one material, costs less.
   */
  proved_cheapest: boolean;
  /**
   * What no purchase is below, where the total is not proved to be the cheapest.
   */
  at_least?: string;
  /**
   * Materials to buy of which no pack is listed.
   */
  unpriced: string[];
  with_stock?: WithStock;
  /**
   * What goes with the list.
   */
  notes: Remark[];
}
export interface RunToBuyFor {
  /**
   * As it was named.
   */
  file: string;
  /**
   * For people.
   */
  name: string;
  /**
   * Saleable pieces.
   */
  sell: number;
  /**
   * Pieces cast, rejects included.
   */
  make: number;
  /**
   * The file of the order that it is a line of.
   */
  order?: string;
}
/**
 * Lines of an order whose base is mixed as one.
 */
export interface PouredTogether {
  /**
   * That the lines have in common.
   */
  word: string;
  /**
   * The base's name.
   */
  formula: string;
  /**
   * Of the order, from 0.
   */
  lines: number[];
  /**
   * Times that moulds are locked.
   */
  fillings: number;
  /**
   * Base in all batches.
   */
  make_g: number;
  /**
   * The different ones, largest first.
   *
   * @minItems 1
   */
  batches: SharedBatch[];
  /**
   * Of this base, worst first.
   */
  cautions: Remark[];
  /**
   * In a list to buy: the order's file.
   */
  order?: string;
}
export interface SharedBatch {
  /**
   * Of these.
   */
  count: number;
  /**
   * Which of the base's batches they are, in the order of making.
   */
  numbers: number[];
  /**
   * Of all lines.
   */
  pieces: number;
  base: SharedBase;
  /**
   * Planned to stay in the pot, and in the jug of all that is poured plain.
   */
  left_behind_g: number;
  /**
   * By rounding up to the scale. What the lines take, left_behind_g and this are make_g of the base.
   */
  over_g: number;
  /**
   * Those that take part.
   *
   * @minItems 1
   */
  lines: SharedBatchLine[];
  /**
   * The same for the same weigh_out, and for no other.
   */
  mark: string;
  /**
   * The base, then the jugs of each line with the share of the base that they take.
   */
  weigh_out: Vessel[];
}
/**
 * The masses of one batch. in_pieces_g + lost_g = make_g.
 */
export interface SharedBase {
  /**
   * Its formula's name.
   */
  formula: string;
  /**
   * That turns the one into the other; whipped, of a topping.
   */
  density_g_per_ml: number;
  /**
   * Of the plain batter, from its ingredients.
   */
  plain_density_computed_g_per_ml: number;
  /**
   * In all pieces.
   */
  in_pieces_g: number;
  /**
   * All losses together.
   */
  lost_g: number;
  /**
   * The sum of what is weighed.
   */
  make_g: number;
  /**
   * The formula's fats.
   */
  fats_g: number;
  /**
   * As weighed, with its impurity; of a solution the pure NaOH in it.
   */
  naoh_g: number;
  /**
   * As weighed, with its impurity; of a solution the pure KOH in it.
   */
  koh_g: number;
  /**
   * All of it: plain, in solutions, and in liquids that stand in for it.
   */
  water_g: number;
  /**
   * Of it, what is weighed as water.
   */
  plain_water_g: number;
  /**
   * Each alkali that is weighed as a solution that stands ready, not dry.
   */
  solutions: ReadySolution[];
  /**
   * Vinegar's and the like, beside water_g.
   */
  water_in_acids_g: number;
  /**
   * Pure alkali / (pure alkali + all water).
   */
  lye_strength_percent: number;
  /**
   * The same in the pot of lye solution, before what goes into the batter.
   */
  pot_strength_percent: number;
  /**
   * Mass of water / mass of pure alkali.
   */
  water_to_pure_alkali: number;
  /**
   * Water as a share of the fats.
   */
  water_percent_of_fats: number;
  superfat_percent: AimedSuperfat;
  heat: Heat;
  /**
   * In the order you work: what is wet before the alkali.
   */
  ingredients: Ingredient[];
}
/**
 * An alkali as it is weighed: dissolved, of that strength.
 */
export interface ReadySolution {
  /**
   * As the studio calls it.
   */
  solution: string;
  alkali: "NaOH" | "KOH";
  /**
   * Of the solution, as its ingredient.
   */
  g: number;
  strength_percent: {
    /**
     * Pure alkali in the solution.
     */
    stated: number;
    /**
     * The weakest it may be.
     */
    low: number;
    /**
     * The strongest it may be.
     */
    high: number;
  };
  /**
   * Water in what is weighed of it.
   */
  brings_water_g: number;
}
/**
 * Superfat as weighed, in per cent of the alkali that the fats need.
 */
export interface Superfat {
  /**
   * By typical values.
   */
  effective: number;
  /**
   * If every range falls the wrong way; rounded down.
   */
  low: number;
  /**
   * If every range falls the other way; rounded up.
   */
  high: number;
  /**
   * Lower end of the likely band; rounded down.
   */
  likely_low: number;
  /**
   * Upper end of the likely band; rounded up.
   */
  likely_high: number;
  /**
   * What "likely" means, in words.
   */
  likely_means: string;
  /**
   * Half width of the band by the steps of the scales alone.
   */
  likely_by_scales: number;
  /**
   * The greatest first.
   */
  uncertainties: Doubt[];
}
/**
 * One cause why the superfat may fall otherwise.
 */
export interface Doubt {
  /**
   * Such as "the purity of NaOH (98 to 100 %)".
   */
  cause: string;
  /**
   * What makes it smaller.
   */
  remedy: string;
  /**
   * Its share of the variance, in per cent.
   */
  percent_of_variance: number;
}
/**
 * How warm fresh lye solution may get, and how long it takes to cool.
 */
export interface Heat {
  /**
   * Temperature of the water, in degrees Celsius.
   */
  water_at_c: number;
  /**
   * That temperature is assumed, not given.
   */
  assumed: boolean;
  /**
   * Hottest lye solution, in degrees Celsius; null where a KOH solution is diluted, of which it is not known.
   */
  peak_c: number | null;
  /**
   * In degrees Celsius.
   */
  boils_at_c: number;
  /**
   * To the temperature it is used at; none where the run does not give it.
   */
  cooling: CoolingTime[];
  /**
   * Batter when lye solution and fats are mixed as the run says, in degrees Celsius.
   */
  at_pour_c: number | null;
}
/**
 * How long the lye solution takes to cool.
 */
export interface CoolingTime {
  /**
   * "cold water", "a fridge without food".
   */
  in: string;
  /**
   * In minutes.
   */
  shortest_min: number;
  /**
   * In minutes.
   */
  longest_min: number;
}
/**
 * A mass as it is weighed.
 */
export interface Weighed {
  /**
   * Mass, in grams, to the milligram
   */
  g: number;
  /**
   * As the scale shows it, in grams; alkali never rounded up.
   */
  g_text: string;
  /**
   * The same in avoirdupois ounces.
   */
  oz_text: string;
  /**
   * Unit of the scale it is weighed on.
   */
  reads: "g" | "oz";
  /**
   * Step of that scale's display, in grams.
   */
  scale_step_g: number;
}
export interface SharedBatchLine {
  /**
   * Of the order.
   */
  line: number;
  /**
   * Its name.
   */
  run: string;
  pieces: number;
  /**
   * Cavities filled.
   */
  casts: number;
  /**
   * Which of the line's own batches they are: it counts those alone that it takes part in.
   */
  numbers: number[];
  /**
   * Base in one cast.
   */
  mass_each_g: number;
  /**
   * In all of them.
   */
  in_pieces_g: number;
  /**
   * In the pieces and poured over them, in its test piece, and left in the jugs of its layers.
   */
  takes_g: number;
  /**
   * Of what all lines take, to the ten-thousandth.
   */
  share_percent: number;
}
/**
 * A jug, a pot or a row of cups that is weighed out in one go; what the bench sheet prints under one title.
 */
export interface Vessel {
  /**
   * Its own in the batch; the same for any number of pieces.
   */
  key: string;
  /**
   * Absent: of no batter, or of all.
   */
  batter?: "pour" | "pipe";
  /**
   * share: lye solution that stands ready, weighed out of the pot or topped up; batter: what is added to it; layers: its jugs with their colours.
   */
  vessel: "fats" | "lye" | "lye_pot" | "share" | "batter" | "layers" | "melt" | "dust";
  /**
   * As on the sheet.
   */
  title: string;
  /**
   * So often is it weighed in this batch; absent: once.
   */
  times?: number;
  /**
   * Absent: on the day itself.
   */
  day_before?: true;
  /**
   * In the order they go in.
   *
   * @minItems 1
   */
  rows: WeighOutRow[];
  /**
   * To be read at this vessel.
   */
  words: VesselWords[];
  /**
   * Of the rows, without what is set aside; in grams.
   */
  total_g: number;
  /**
   * With its unit, as the scale shows it.
   */
  total_shown: string;
}
/**
 * One thing to weigh.
 */
export interface WeighOutRow {
  /**
   * Its own in the batch; made of what it is, whatever it weighs.
   */
  key: string;
  /**
   * For people.
   */
  name: string;
  role:
    | "fat"
    | "alkali"
    | "water"
    | "ice"
    | "liquid"
    | "additive"
    | "fragrance"
    | "colour"
    | "batter"
    | "lye_solution"
    | "melt"
    | "powder";
  /**
   * Mass, in grams, to the milligram.
   */
  g: number;
  /**
   * Step of that scale's display, in grams.
   */
  step_g: number;
  /**
   * With its unit, as the scale shows it; alkali never rounded up.
   */
  shown: string;
  /**
   * The same in the other unit.
   */
  beside: string;
  /**
   * What belongs beside it; absent: nothing.
   */
  note?: string;
  /**
   * What it goes into, where the title does not say it.
   */
  adding?: string;
  /**
   * In the vessel then, without what is set aside; absent: it has a cup of its own.
   */
  running_g?: number;
  /**
   * The same on the scale that the vessel stands on, down where lye is in it.
   */
  running_shown?: string;
}
export interface VesselWords {
  /**
   * Whole sentences.
   */
  text: string;
  /**
   * What the hands do.
   */
  is_order: boolean;
}
/**
 * A sentence for the maker.
 */
export interface Remark {
  severity: Severity;
  /**
   * Whole sentences.
   */
  text: string;
}
/**
 * An order beside the records: what is delivered, what it takes of pieces that are made, what is left to make.
 */
export interface ReadyOfOrder {
  /**
   * Its file.
   */
  order: string;
  /**
   * The order's, in its order.
   *
   * @minItems 1
   */
  lines: ReadyOfLine[];
  /**
   * Of all that is taken; null where nothing is. It is in no other sum.
   */
  cost: PaidForMaterials | null;
  /**
   * Batches that are not in it, by their codes.
   */
  costs_unknown: string[];
  /**
   * What is made and not counted, and why.
   */
  notes: Remark[];
}
export interface ReadyOfLine {
  /**
   * The run's file.
   */
  run: string;
  /**
   * For people.
   */
  name: string;
  wanted: number;
  /**
   * Sold to this very order.
   */
  delivered: number;
  /**
   * Of pieces that are made already.
   */
  taken: number;
  /**
   * Saleable; all else rests on these.
   */
  to_make: number;
  /**
   * What is taken, by batch; those that are ready first.
   */
  batches: ReadyOfBatch[];
  /**
   * Batches that would be taken, had the run, a formula or a mould not changed since; named under the line's "ready" they are.
   */
  made_otherwise: MadeOtherwise[];
  /**
   * The same in a sentence; empty where nothing is delivered and nothing taken.
   */
  text: string;
}
export interface ReadyOfBatch {
  /**
   * Its code.
   */
  batch: string;
  pieces: number;
  /**
   * Null where they stand ready.
   */
  ready_on: string | null;
  /**
   * What these pieces' materials did cost; null where what the batch weighed was not recorded.
   */
  cost: PaidForMaterials | null;
}
/**
 * What materials did cost by their lots, to the coin.
 */
export interface PaidForMaterials {
  /**
   * One sum a currency.
   */
  materials: MaterialsSum[];
  /**
   * What has no price, or is of an unknown lot; in no sum.
   */
  unpriced: string[];
}
export interface MaterialsSum {
  /**
   * A decimal text.
   */
  amount: string;
  /**
   * ISO 4217.
   */
  currency: string;
}
export interface MadeOtherwise {
  /**
   * Its code.
   */
  batch: string;
  pieces: number;
  /**
   * That are others today.
   *
   * @minItems 1
   */
  files: string[];
}
export interface MaterialToBuy {
  /**
   * As prices call it: a fat's id, NaOH, an additive's name.
   */
  material: string;
  /**
   * For people.
   */
  shown_as: string;
  /**
   * Weighed out for all runs together, losses included.
   */
  used_g?: number;
  /**
   * The same of what is counted.
   */
  used_pieces?: number;
  /**
   * The studio's, on top of what is used.
   */
  waste_percent: number;
  /**
   * With waste.
   */
  needed_g?: number;
  /**
   * The same of what is counted.
   */
  needed_pieces?: number;
  /**
   * On the shelf.
   */
  have_g?: number;
  /**
   * The same of what is counted.
   */
  have_pieces?: number;
  /**
   * Needed, less what is on the shelf.
   */
  to_buy_g?: number;
  /**
   * The same of what is counted.
   */
  to_buy_pieces?: number;
  /**
   * Of what she makes ahead herself, less what is on the shelf.
   */
  to_make_g?: number;
  /**
   * In whole packs.
   */
  bought_g?: number;
  /**
   * The same of what is counted.
   */
  bought_pieces?: number;
  /**
   * When all is made; of the shelf and of new packs.
   */
  left_g?: number;
  /**
   * The same of what is counted.
   */
  left_pieces?: number;
  /**
   * It must be bought, and no pack of it is listed: it is not in the sum.
   */
  unpriced: boolean;
}
export interface Delivery {
  /**
   * Null: the packs name none.
   */
  seller: string | null;
  /**
   * What is bought of him.
   *
   * @minItems 1
   */
  packs: PackBought[];
  /**
   * Sum of the packs.
   */
  goods: string;
  /**
   * Null: the studio does not give it, and it is not in the sum.
   */
  postage: string | null;
  /**
   * Because of the sum of goods.
   */
  postage_falls_away: boolean;
  /**
   * From ordering to having it.
   */
  lead_days?: number;
}
export interface PackBought {
  /**
   * As under materials.
   */
  material: string;
  /**
   * For people, with what it is bought in place of.
   */
  shown_as: string;
  /**
   * Of goods that serve as the material: what they are called themselves.
   */
  make?: string;
  /**
   * Whole packs.
   */
  count: number;
  /**
   * One pack.
   */
  holds_g?: number;
  /**
   * The same of what is counted.
   */
  holds_pieces?: number;
  /**
   * One pack.
   */
  paid: string;
  /**
   * All of these packs.
   */
  sum: string;
  /**
   * The day of the price.
   */
  as_of?: string;
}
/**
 * How far the shelf reaches as it is, for a single run.
 */
export interface WithStock {
  /**
   * Saleable pieces that can be made; 0: none.
   */
  pieces: number;
  /**
   * In so many batches.
   */
  batches: number;
  /**
   * The next number of pieces that could be made but for the shelf; null where the whole run can be made.
   */
  short_for: number | null;
  /**
   * What is short for that number.
   */
  limited_by: ShortMaterial[];
}
export interface ShortMaterial {
  /**
   * As under materials.
   */
  material: string;
  /**
   * For people.
   */
  shown_as: string;
  /**
   * For that number, with waste.
   */
  needed_g: number;
  /**
   * On the shelf.
   */
  have_g: number;
}
/**
 * What several answers are made of.
 */
export interface AnswerParts {
  [k: string]: unknown;
}
/**
 * What a command with --json says on standard error where it cannot answer: one line. Standard output stays empty; exit status 1 where the input needs correcting, 2 for an internal error.
 */
export interface ComplaintLine {
  schema: "brimwright.complaint/1";
  /**
   * The file, or "command line"; empty for an internal error.
   */
  file: string;
  /**
   * A JSON pointer, a line, a place in a mesh or an option; empty where it is the whole.
   */
  field: string;
  /**
   * What is wrong.
   */
  problem: string;
  /**
   * What to do.
   */
  remedy: string;
  /**
   * Where something is asked: the ways to answer.
   */
  choices?: ComplaintChoice[];
}
export interface ComplaintChoice {
  /**
   * The words to add to the command, such as --unit and mm.
   */
  add: string[];
  /**
   * How large the thing then is.
   *
   * @minItems 3
   * @maxItems 3
   */
  size_mm?: number[];
}
/**
 * The answer of `days --json`: when runs and orders are made.
 */
export interface Days {
  schema: "brimwright.days/1";
  /**
   * The file that making days, moulds and work are from.
   */
  studio: string;
  /**
   * The day that stands for today: nothing is done before it.
   */
  from: string;
  /**
   * Whether every due day is kept; null where there is none.
   */
  kept: boolean | null;
  /**
   * The last day on which the work may begin; null where there is no due day, or one cannot be kept.
   */
  latest_start: string | null;
  /**
   * That no later start keeps the due days.
   */
  latest_start_proved: boolean;
  /**
   * The day for which all can be promised, begun on `from`.
   */
  promise: string;
  /**
   * That no earlier day can be kept.
   */
  promise_proved: boolean;
  /**
   * Of what cannot be kept: that no more pieces are in time, and the rest is ready no earlier.
   */
  in_time_proved: boolean;
  /**
   * The runs and orders asked about.
   *
   * @minItems 1
   */
  asked: AskedFor[];
  /**
   * The days on which something is done, in their order.
   */
  days: DayOfWork[];
  /**
   * Each day from the first of `days` to the last.
   *
   * @minItems 1
   */
  calendar: CalendarDay[];
  /**
   * Each batch from the pour to the end of its cure.
   */
  batches: BatchOnDays[];
  /**
   * Lye solutions that are made for several batches of a day at once, in place of those of their own plans.
   */
  lyes: DayLye[];
  /**
   * Wider limits that help, each found by planning it, the most helpful first.
   */
  what_if: WiderLimit[];
  /**
   * What base that is left over fills whole, of the studio's other moulds; not counted to what is asked.
   */
  extras: ExtraCast[];
  notes: DaysNote[];
}
export interface AskedFor {
  /**
   * As it was named.
   */
  file: string;
  /**
   * The file's own, where it has one.
   */
  id?: string;
  /**
   * For people.
   */
  name: string;
  due: string | null;
  /**
   * Null where there is no due day.
   */
  kept: boolean | null;
  /**
   * To be sold.
   */
  pieces: number;
  /**
   * Of these, by the due day.
   */
  in_time: number | null;
  /**
   * When the others are ready.
   */
  rest_on: string | null;
  /**
   * The last day on which any of it may be poured for its due day.
   */
  last_making_day: string | null;
  /**
   * Of an order: what is made already; null of a run.
   */
  ready: ReadyOfOrder | null;
  /**
   * Of what is to make.
   */
  lines: LineAskedFor[];
}
export interface LineAskedFor {
  /**
   * The run's file; several where they are poured together.
   *
   * @minItems 1
   */
  runs: string[];
  name: string;
  /**
   * Of each of these runs.
   *
   * @minItems 1
   */
  moulds: string[];
  sell: number;
  make: number;
  batches: number;
  /**
   * What keeps them from being larger, in words; of several batches of a run by itself.
   */
  batch_limits: string[];
}
export interface DayOfWork {
  day: string;
  /**
   * Minutes of a making day; 0 of any other.
   */
  hours_min: number;
  /**
   * Of these, by what is done.
   */
  used_min: number;
  /**
   * A day off.
   */
  off: boolean;
  /**
   * @minItems 1
   */
  acts: DayAct[];
}
export interface DayAct {
  act: "order" | "cast" | "chill" | "make" | "unmould" | "cured" | "pack" | "due";
  /**
   * The same whatever the day: with the file's id the UID of its calendar entry.
   */
  key: string;
  /**
   * Which of `asked`.
   */
  of: number;
  /**
   * For people, on one line.
   */
  text: string;
  /**
   * What to mind with it.
   */
  caution?: string;
  /**
   * The files of its runs; none of what is done for all of it.
   */
  runs: string[];
  /**
   * Of the run, counted from 1.
   */
  batches: number[];
  pieces: number;
  /**
   * Minutes that it takes of the day's hours.
   */
  min: number;
}
export interface CalendarDay {
  day: string;
  /**
   * Minutes of a making day; 0 of any other.
   */
  hours_min: number;
  /**
   * Of these, by what is done.
   */
  used_min: number;
  /**
   * A day off.
   */
  off: boolean;
}
export interface BatchOnDays {
  /**
   * Which of `asked`.
   */
  of: number;
  /**
   * @minItems 1
   */
  runs: string[];
  batch: number;
  pieces: number;
  /**
   * @minItems 1
   */
  moulds: string[];
  poured: string;
  unmoulded: string;
  cured: string;
}
export interface DayLye {
  /**
   * On the evening of that day.
   */
  made: string;
  /**
   * The batches' day.
   */
  poured: string;
  /**
   * Of each batch.
   */
  lye_of: "base" | "topping" | "all";
  /**
   * The batches, for people.
   */
  for: string;
  /**
   * @minItems 2
   */
  batches: BatchOfLye[];
  pot: LyePot;
  /**
   * Worst first.
   */
  cautions: Remark[];
}
export interface BatchOfLye {
  /**
   * Which of `asked`.
   */
  of: number;
  /**
   * @minItems 1
   */
  runs: string[];
  batch: number;
  /**
   * Which of the pot's shares are this batch's.
   *
   * @minItems 1
   */
  shares: number[];
}
/**
 * One lye solution for all batters of a batch.
 */
export interface LyePot {
  /**
   * Water, in grams, to the milligram
   */
  water_g: number;
  /**
   * As the scale shows it, in grams; alkali never rounded up.
   */
  water_g_text: string;
  /**
   * The same in avoirdupois ounces.
   */
  water_oz_text: string;
  /**
   * Unit of the scale it is weighed on.
   */
  water_reads: "g" | "oz";
  /**
   * Step of that scale's display, in grams.
   */
  water_scale_step_g: number;
  /**
   * As weighed.
   *
   * @minItems 1
   */
  alkalis: NamedWeight[];
  /**
   * Lye solution in the pot, in grams, to the milligram
   */
  lye_g: number;
  /**
   * As the scale shows it, in grams; alkali never rounded up.
   */
  lye_g_text: string;
  /**
   * The same in avoirdupois ounces.
   */
  lye_oz_text: string;
  /**
   * Unit of the scale it is weighed on.
   */
  lye_reads: "g" | "oz";
  /**
   * Step of that scale's display, in grams.
   */
  lye_scale_step_g: number;
  /**
   * Pure alkali / (pure alkali + water).
   */
  strength_percent: number;
  /**
   * Pot and lye solution, in grams, to the milligram
   */
  full_pot_g: number | null;
  /**
   * As the scale shows it, in grams; alkali never rounded up.
   */
  full_pot_g_text?: string;
  /**
   * The same in avoirdupois ounces.
   */
  full_pot_oz_text?: string;
  /**
   * Unit of the scale it is weighed on.
   */
  full_pot_reads?: "g" | "oz";
  /**
   * Step of that scale's display, in grams.
   */
  full_pot_scale_step_g?: number;
  /**
   * What the shares leave, in grams, to the milligram
   */
  left_g: number;
  /**
   * As the scale shows it, in grams; alkali never rounded up.
   */
  left_g_text: string;
  /**
   * The same in avoirdupois ounces.
   */
  left_oz_text: string;
  /**
   * Unit of the scale it is weighed on.
   */
  left_reads: "g" | "oz";
  /**
   * Step of that scale's display, in grams.
   */
  left_scale_step_g: number;
  /**
   * The base's first.
   *
   * @minItems 2
   */
  shares: PotShare[];
  heat: Heat;
}
/**
 * What one batter takes of the shared lye.
 */
export interface PotShare {
  /**
   * Its formula's name.
   */
  batter: string;
  /**
   * Lye to take, in grams, to the milligram
   */
  lye_g: number;
  /**
   * As the scale shows it, in grams; alkali never rounded up.
   */
  lye_g_text: string;
  /**
   * The same in avoirdupois ounces.
   */
  lye_oz_text: string;
  /**
   * Unit of the scale it is weighed on.
   */
  lye_reads: "g" | "oz";
  /**
   * Step of that scale's display, in grams.
   */
  lye_scale_step_g: number;
  /**
   * Plain water to add, in grams, to the milligram
   */
  top_up_g: number;
  /**
   * As the scale shows it, in grams; alkali never rounded up.
   */
  top_up_g_text: string;
  /**
   * The same in avoirdupois ounces.
   */
  top_up_oz_text: string;
  /**
   * Unit of the scale it is weighed on.
   */
  top_up_reads: "g" | "oz";
  /**
   * Step of that scale's display, in grams.
   */
  top_up_scale_step_g: number;
  /**
   * Effective, out of the pot.
   */
  superfat_percent: number;
  superfat: PotSuperfat;
}
export interface WiderLimit {
  limit: "moulds" | "making days" | "hours" | "pots" | "bowls" | "rack" | "casting" | "lead times" | "trays";
  text: string;
  /**
   * Every due day is kept then.
   */
  keeps_due: boolean;
  latest_start: string | null;
  promise: string | null;
  proved: boolean;
}
export interface ExtraCast {
  run: string;
  batch: number;
  mould: string;
  cavities: number;
}
export interface DaysNote {
  severity: Severity;
  /**
   * Whole sentences.
   */
  text: string;
  /**
   * Where the studio does not say it, as a JSON pointer.
   */
  field?: string;
}
/**
 * The answer of `plan RUN --explain [FIGURE] --json`: how figures of the plan are calculated.
 */
export interface Explanation {
  schema: "brimwright.explain/1";
  /**
   * Its name.
   */
  run: string;
  /**
   * The figure of that name and those below it; all, where none is named.
   *
   * @minItems 1
   */
  how: Working[];
}
/**
 * How one figure is calculated, from the file that computes it.
 */
export interface Working {
  /**
   * Its place in the answer, numbers from 0: "batches.0.pour.make_g".
   */
  of: string;
  /**
   * In words.
   */
  formula: string;
  /**
   * What goes into it.
   */
  with: Given[];
  /**
   * The formula with the figures in it, where it is plain arithmetic.
   */
  sum?: string;
  /**
   * Then, such as "up to 1 g"; absent: shown as it comes.
   */
  rounded?: string;
  /**
   * The figure with its unit.
   */
  comes_to?: string;
  /**
   * Documents and assumptions.
   */
  sources: string[];
}
/**
 * One figure that it is made from.
 */
export interface Given {
  /**
   * Such as "losses together".
   */
  name: string;
  /**
   * With its unit.
   */
  value: string;
  /**
   * Such as "the run".
   */
  from?: string;
}
/**
 * The answer of `gauge FILE --json`. Heights in the file's frame after up is applied.
 */
export interface Gauge {
  schema: "brimwright.gauge/1";
  /**
   * The file, as named.
   */
  source: string;
  /**
   * The mould's.
   */
  name: string;
  /**
   * What a mesh is of; a mould file's shape is a cavity.
   */
  role: "cavity" | "body" | "skin";
  /**
   * That a mesh counts in.
   */
  unit: "mm" | "cm" | "m" | "in";
  /**
   * One for each cavity.
   */
  pockets: Pocket[];
  /**
   * All of them.
   */
  total_ml: number;
  ways?: MouldWays;
  /**
   * The one used first.
   */
  measurements: Measurement[];
  /**
   * Volume used / volume by dimensions or mesh.
   */
  detail_factor: number;
  /**
   * The one that was chosen, by its number.
   */
  cavity?: number;
  /**
   * Of a body.
   */
  joint_basins?: JointBasin[];
  fit?: ScaledMould;
  casting?: Casting;
  poured?: Poured;
  tilted?: Tilted;
  embeds?: Packing;
  /**
   * Files that were written.
   */
  written?: string[];
  /**
   * What was found, repaired, assumed.
   */
  notes: Remark[];
  /**
   * How pockets.0.brimful_ml is calculated.
   *
   * @minItems 1
   */
  how: Working[];
}
/**
 * One cavity.
 */
export interface Pocket {
  /**
   * To the brim.
   */
  brimful_ml: number;
  /**
   * Height of its lowest point.
   */
  floor_mm: number;
  /**
   * Height at which it spills.
   */
  brim_mm: number;
  /**
   * Free surface at the brim.
   */
  opening_cm2: number;
  /**
   * Kept below overhangs; null: not measured.
   */
  trapped_air_ml: number | null;
  /**
   * At the depths asked for.
   */
  levels: Level[];
  /**
   * x, y of its opening, where each is shown for itself.
   *
   * @minItems 2
   * @maxItems 2
   */
  middle_mm?: number[];
  /**
   * Where, when its rim is not level.
   *
   * @minItems 3
   * @maxItems 3
   */
  spills_at_mm?: number[];
  /**
   * How far the rim rises above that.
   */
  rim_above_brim_mm?: number;
}
export interface Level {
  /**
   * Above the lowest point.
   */
  depth_mm: number;
  /**
   * Below it.
   */
  volume_ml: number;
  /**
   * What one millimetre there is worth.
   */
  ml_per_mm: number;
}
/**
 * Of a mould file: one cavity by each way of finding out what it holds, side by side.
 */
export interface MouldWays {
  /**
   * The pour line; null where none is known.
   */
  below_brim_mm: number | null;
  /**
   * Whose line that is, in words.
   */
  line_of: string;
  /**
   * Which way the plan uses, and why.
   */
  used_because: string;
  /**
   * The most trusted measures first, then what batches say.
   */
  ways: MouldWay[];
  remarks: string[];
}
export interface MouldWay {
  by: string;
  brimful_ml: number;
  at_line_ml: number | null;
  /**
   * To the line, or where none is known to the brim; null where this way does not tell how sure it is.
   */
  low_ml: number | null;
  high_ml: number | null;
  /**
   * What low_ml and high_ml rest on.
   */
  rests_on: string;
  /**
   * From the one that is used.
   */
  differs_percent: number;
  /**
   * By the plan.
   */
  used: boolean;
}
export interface Measurement {
  by: "dimensions" | "mesh" | "water";
  /**
   * Of one cavity.
   */
  brimful_ml: number;
}
/**
 * Cavities that run together below their rim.
 */
export interface JointBasin {
  /**
   * Their places, from 0.
   */
  pockets: number[];
  /**
   * Together.
   */
  brimful_ml: number;
  /**
   * Height.
   */
  brim_mm: number;
}
/**
 * The mould scaled to a wish.
 */
export interface ScaledMould {
  /**
   * Wanted.
   */
  pour_ml: number;
  /**
   * Factor.
   */
  across: number;
  /**
   * Factor.
   */
  depth: number;
  /**
   * Then.
   */
  length_mm: number;
  /**
   * Then.
   */
  width_mm: number;
  /**
   * Then.
   */
  height_mm: number;
  /**
   * Then.
   */
  brimful_ml: number;
}
/**
 * What it takes to cast a mould round it.
 */
export interface Casting {
  /**
   * To mix.
   */
  material_ml: number;
  /**
   * Of the master.
   */
  master_ml: number;
  /**
   * Of the box.
   */
  length_mm: number;
  /**
   * Of the box.
   */
  width_mm: number;
  /**
   * Of the box.
   */
  height_mm: number;
  /**
   * Where its density is given.
   */
  material_g?: number;
}
/**
 * A volume poured into one cavity; either length, typed back, holds no more.
 */
export interface Poured {
  /**
   * Poured.
   */
  pour_ml: number;
  /**
   * It stands at.
   */
  depth_mm: number;
  /**
   * It stands at.
   */
  below_brim_mm: number;
  /**
   * There.
   */
  ml_per_mm: number;
}
/**
 * A pour into the tilted mould.
 */
export interface Tilted {
  /**
   * Tilt.
   */
  angle_degrees: number;
  /**
   * From +x, anticlockwise.
   */
  low_side_degrees: number;
  /**
   * Up the low wall.
   */
  mark_mm: number;
  /**
   * Poured.
   */
  pour_ml: number;
  /**
   * Up the low wall.
   */
  spills_at_mark_mm: number;
  /**
   * It holds so.
   */
  most_ml: number;
  /**
   * Separate pools that the pour makes.
   */
  pools: number;
  /**
   * Of the mould set level again: the sloping layer is just covered.
   */
  covered_at_depth_mm: number;
  /**
   * To depths asked for.
   */
  second_pours: SecondPour[];
}
export interface SecondPour {
  /**
   * Level.
   */
  depth_mm: number;
  /**
   * Over the set layer.
   */
  volume_ml: number;
}
/**
 * How many embeds fit.
 */
export interface Packing {
  /**
   * Its name.
   */
  embed: string;
  lying: "level" | "layered" | "free";
  /**
   * Wanted.
   */
  cover_mm: number;
  /**
   * Of the batter.
   */
  fill_depth_mm: number;
  /**
   * That fit.
   */
  count: number;
  /**
   * By all of them.
   */
  displaced_ml: number;
  /**
   * Each one's.
   */
  places: Place[];
  /**
   * To wall and line.
   */
  least_cover_mm?: number;
  /**
   * Of one to the next.
   */
  least_apart_mm?: number;
  /**
   * Of an embed of which one would fit.
   */
  scale_that_fits?: number;
}
export interface Place {
  /**
   * x, y, z in the cavity's frame.
   *
   * @minItems 3
   * @maxItems 3
   */
  middle_mm: number[];
  /**
   * Rows of its rotation.
   *
   * @minItems 3
   * @maxItems 3
   */
  turn: number[][];
}
/**
 * The answer of `gauge --inspect FILE --json`: what a mesh is like as it stands.
 */
export interface Inspection {
  schema: "brimwright.inspection/1";
  /**
   * The file, as it was named.
   */
  source: string;
  /**
   * Of the file's numbers; places are in it.
   */
  unit: string;
  /**
   * All of them.
   */
  facets: number;
  /**
   * Pieces of surface that hang together by edges.
   */
  shells: number;
  /**
   * Each edge has two facets, equal corners being one.
   */
  closed: boolean;
  /**
   * Facets show the same side as their neighbours.
   */
  facing_consistently: boolean;
  /**
   * With a facet on one side only.
   */
  open_edges: number;
  /**
   * Closed lines of open edges, small gaps and slits being closed.
   */
  rims: number;
  widest_rim?: WidestRim;
  /**
   * One of each kind that was found.
   */
  defects: MeshDefect[];
}
export interface WidestRim {
  /**
   * The diagonal of its box.
   */
  width_mm: number;
  /**
   * The mean of its corners, in the file's own numbers and axes.
   *
   * @minItems 3
   * @maxItems 3
   */
  middle: number[];
}
export interface MeshDefect {
  /**
   * In two words, such as "open edges".
   */
  kind: string;
  /**
   * How many there are.
   */
  count: number;
  /**
   * Where the first is, in the file's own numbers and axes.
   *
   * @minItems 3
   * @maxItems 3
   */
  first_at: number[];
  /**
   * The same for people.
   */
  text: string;
}
/**
 * The answer of `learn FILE --json`: what batches tell for the next plan, each figure apart from the others.
 */
export interface Learned {
  schema: "brimwright.learned/1";
  /**
   * The run's or the studio's file.
   */
  source: string;
  /**
   * In the records beside it.
   */
  batches: number;
  /**
   * Of another formula, mould or topping under the same name.
   */
  left_out: number;
  /**
   * In which batches were made, the first one first.
   */
  years: number[];
  /**
   * Told by three batches or more.
   */
  figures: LearnedFigure[];
  /**
   * What notes cannot tell.
   */
  untold: Untold[];
  /**
   * Batches whose masses are not counted.
   */
  contradictions: Contradiction[];
}
export interface LearnedFigure {
  /**
   * As it is taken by.
   */
  name: string;
  words: string;
  /**
   * mm, ml, g, g/ml, %, factor or min. A volume is given as a pour line so much higher.
   */
  unit: string;
  /**
   * The Hodges-Lehmann estimate of the values.
   */
  value: number;
  low: number;
  high: number;
  /**
   * How often such a range holds the true figure; null below six values, where it is from the least to the greatest.
   */
  level_percent: number | null;
  /**
   * By the plan.
   */
  used_now: number | null;
  /**
   * Whether it is suggested to be taken, or why not.
   */
  standing: "stands nowhere" | "too few" | "as planned" | "suggested";
  /**
   * Where it stands, or would once it is taken; null where there is no place for it.
   */
  in_file: LearnedInFile | null;
  /**
   * Of one that is suggested: what the run's plan comes to, now and once it is taken.
   */
  with_it: LearnedEffect[];
  /**
   * Why the run could not be planned with it.
   */
  no_plan_with_it?: string;
  values: LearnedValue[];
}
export interface LearnedInFile {
  file: string;
  /**
   * As it stands there now; null where nothing does.
   */
  says: string | null;
  /**
   * Once it is taken.
   */
  would_say: string;
  /**
   * This very figure stands there already, from these batches.
   */
  is_taken: boolean;
  /**
   * How what stands there was taken; null where it was not, or was written anew since.
   */
  taken: LearnedTaking | null;
  refused?: LearnedRefusal;
}
export interface LearnedTaking {
  batches: number;
  /**
   * ISO 8601.
   */
  on: string;
  /**
   * What stood there, and stands there again once it is taken back; null where nothing did.
   */
  before: string | null;
  /**
   * So many takings, one after the other, that can be taken back.
   */
  steps: number;
}
/**
 * Why it cannot be taken.
 */
export interface LearnedRefusal {
  problem: string;
  remedy: string;
}
export interface LearnedEffect {
  of: string;
  /**
   * ml or g.
   */
  unit: string;
  now: number;
  then: number;
}
export interface LearnedValue {
  /**
   * Its code.
   */
  batch: string;
  /**
   * ISO 8601.
   */
  date: string;
  value: number;
}
export interface Untold {
  name: string;
  words: string;
  /**
   * That cannot tell it.
   */
  batches: number;
  /**
   * Why, and what to note next time.
   */
  text: string;
}
export interface Contradiction {
  batch: string;
  /**
   * Made less what was noted of where it went.
   */
  unaccounted_g: number;
  text: string;
}
/**
 * The answer of `list --json`: what is built in. Each list is there where it was asked for.
 */
export interface Catalogue {
  schema: "brimwright.list/1";
  /**
   * Built-in moulds.
   */
  moulds?: CatalogueMould[];
  /**
   * Built-in fats.
   */
  fats?: Fat[];
  /**
   * Built-in piping tips.
   */
  tips?: CatalogueTip[];
}
export interface CatalogueMould {
  /**
   * As a run names it.
   */
  path: string;
  /**
   * For people.
   */
  name: string;
  /**
   * Shape and size.
   */
  description: string;
  /**
   * Of one mould.
   */
  cavities: number;
  /**
   * Of one cavity.
   */
  brimful_ml: number;
  /**
   * Of one cavity.
   */
  depth_mm: number;
}
/**
 * A fat, wax or fatty acid; no figure is without its source.
 */
export interface Fat {
  /**
   * As a formula names it.
   */
  id: string;
  /**
   * For people.
   */
  name: string;
  /**
   * Other names by which it is found: plain, botanical, in other languages. Each is one fat's alone.
   *
   * Items: A name.
   */
  also_called: string[];
  kind: "triglyceride" | "wax_ester" | "free_fatty_acid";
  /**
   * By its melting range or iodine value.
   */
  liquid_at_room_temperature: boolean;
  /**
   * INCI name.
   */
  inci: string;
  /**
   * In a document.
   */
  inci_read: boolean;
  /**
   * INCI name of its soap.
   */
  inci_sodium_soap: string;
  /**
   * Where that name is from.
   */
  inci_sodium_soap_confidence: string;
  /**
   * INCI name of its soap.
   */
  inci_potassium_soap: string;
  /**
   * Where that name is from.
   */
  inci_potassium_soap_confidence: string;
  saponification_value_mg_koh_per_g: SaponificationValue;
  theoretical_value_mg_koh_per_g: TheoreticalValue | null;
  iodine_value_g_i2_per_100g?: CitedRange;
  density_g_per_ml?: FatDensity;
  melting_range_celsius?: CitedRange;
  unsaponifiable?: Unsaponifiable;
  mean_molar_mass_g_per_mol?: CitedValue;
  fatty_acids?: FattyAcidProfile;
  saponifies_slowly?: SaponifiesSlowly;
  /**
   * Free words.
   */
  note?: string;
}
export interface SaponificationValue {
  /**
   * Over all documents, in mg KOH/g.
   */
  low: number;
  /**
   * Over all documents, in mg KOH/g.
   */
  high: number;
  /**
   * The value used.
   */
  typical: number;
  /**
   * How it was chosen.
   */
  typical_chosen: string;
  /**
   * Every document's own range.
   */
  readings: SaponificationReading[];
  read_elsewhere?: CitedRange;
  /**
   * Document.
   */
  source: string;
  /**
   * It has been checked in that document.
   */
  read: boolean;
  /**
   * What other documents say.
   */
  also?: string;
}
export interface SaponificationReading {
  /**
   * Null: states no least.
   */
  low: number | null;
  /**
   * Null: states no most.
   */
  high: number | null;
  /**
   * Document.
   */
  source: string;
  /**
   * In that document.
   */
  read: boolean;
  /**
   * Which grade or edition.
   */
  note?: string;
}
export interface CitedRange {
  /**
   * Published.
   */
  low: number;
  /**
   * Published.
   */
  high: number;
  /**
   * Document.
   */
  source: string;
  /**
   * It has been checked in that document.
   */
  read: boolean;
  /**
   * What other documents say.
   */
  also?: string;
}
/**
 * By the fatty acids, in mg KOH/g.
 */
export interface TheoreticalValue {
  /**
   * Pure.
   */
  low: number;
  /**
   * Pure.
   */
  middle: number;
  /**
   * Pure.
   */
  high: number;
  /**
   * The least.
   */
  low_with_unsaponifiable: number;
  /**
   * Counted.
   */
  unsaponifiable_percent: number;
  /**
   * Not published for this fat.
   */
  unsaponifiable_assumed: boolean;
  /**
   * With the published range, in words.
   */
  disagreement: string | null;
}
export interface FatDensity {
  /**
   * In g/ml.
   */
  low: number;
  /**
   * In g/ml.
   */
  high: number;
  /**
   * At this temperature.
   */
  at_celsius: number;
  /**
   * Slope, in g/ml a kelvin.
   */
  per_kelvin: number;
  /**
   * Document.
   */
  per_kelvin_source: string;
  /**
   * Document.
   */
  source: string;
  /**
   * In that document.
   */
  read: boolean;
}
export interface Unsaponifiable {
  /**
   * At most.
   */
  most_percent: number;
  /**
   * Document.
   */
  source: string;
  /**
   * It has been checked in that document.
   */
  read: boolean;
  /**
   * What other documents say.
   */
  also?: string;
}
export interface CitedValue {
  /**
   * Published.
   */
  value: number;
  /**
   * Document.
   */
  source: string;
  /**
   * It has been checked in that document.
   */
  read: boolean;
  /**
   * What other documents say.
   */
  also?: string;
}
export interface FattyAcidProfile {
  /**
   * Document.
   */
  source: string;
  /**
   * All of it, in that document.
   */
  read: boolean;
  /**
   * Each one.
   */
  acids: FattyAcid[];
}
export interface FattyAcid {
  /**
   * "C18:1".
   */
  name: string;
  /**
   * "oleic".
   */
  common_name: string;
  /**
   * Atoms.
   */
  carbons: number;
  /**
   * In one molecule.
   */
  double_bonds: number;
  /**
   * Of all fatty acids.
   */
  low_percent: number;
  /**
   * Of all fatty acids.
   */
  high_percent: number;
  /**
   * In that document.
   */
  read: boolean;
}
/**
 * Of a wax of which nobody knows how much becomes soap in a pot: why, and what is sure to react.
 */
export interface SaponifiesSlowly {
  /**
   * What is known of it.
   */
  how: string;
  /**
   * Document.
   */
  source: string;
  /**
   * It has been checked in that document.
   */
  read: boolean;
  sure_mg_koh_per_g: CitedValue;
}
export interface CatalogueTip {
  /**
   * As a run names it.
   */
  name: string;
  /**
   * In words.
   */
  opening: string;
  /**
   * Of the opening.
   */
  area_mm2: number;
}
/**
 * The answer of `note --json`: what may be noted of batches of a run, or of a base that lines of an order are poured from, and what is.
 */
export interface Note {
  schema: "brimwright.note/1";
  /**
   * Its name.
   */
  run: string;
  /**
   * Its file's name, in the folder of the records.
   */
  file: string;
  /**
   * Its own; null where its file has none.
   */
  id: string | null;
  /**
   * How many batches the run is planned in; null where none was begun or looked at.
   */
  run_batches: number | null;
  /**
   * What was done, in sentences.
   */
  done: string[];
  /**
   * What came up with it.
   */
  remarks: Remark[];
  /**
   * The one that was asked for, or all that were begun, by their day.
   */
  batches: NotedBatch[];
}
export interface NotedBatch {
  /**
   * Which of the run's batches.
   */
  number: number;
  /**
   * null: it has not been.
   */
  begun: BegunBatch | null;
  /**
   * That waits for its next making.
   */
  reserved_code: string | null;
  /**
   * The code of the base that was mixed for several runs, where it is poured from one.
   */
  poured_from: string | null;
  /**
   * What is poured from it, where it is such a base.
   */
  lines: PouredLine[];
  /**
   * Tested and passed, ready, not held back.
   */
  for_sale: boolean;
  /**
   * Absent: it is, or it has not been begun.
   */
  not_for_sale_because?: string;
  /**
   * As its plan was frozen, or by today's.
   */
  blanks: NotedBlank[];
  /**
   * Weighings of cured pieces, by day.
   */
  cured: CuredWeighing[];
  /**
   * What it weighs, in the order of the work; none before it is begun.
   */
  rows: NotedRow[];
  /**
   * What comes of its lye, where something was weighed otherwise than planned.
   */
  as_weighed: Remark[];
}
export interface BegunBatch {
  /**
   * A UUID.
   */
  id: string;
  /**
   * On its sheet and labels.
   */
  code: string;
  begun_on: string;
  /**
   * When that was recorded, with its offset.
   */
  begun_at: string;
  /**
   * Planned.
   */
  pieces: number;
  /**
   * The version that planned it.
   */
  program: string;
  /**
   * Of its frozen plan: batches planned alike have the same.
   */
  plan_sha256: string;
}
export interface PouredLine {
  /**
   * A UUID.
   */
  id: string;
  /**
   * Of its batch.
   */
  code: string;
  run: string;
  /**
   * Its run's, in the folder of the records.
   */
  file: string;
  /**
   * Which of that run's batches.
   */
  number: number;
  /**
   * Planned.
   */
  pieces: number;
}
export interface NotedBlank {
  key: string;
  /**
   * base, topping, a decoration's name; absent: of the batch.
   */
  of?: string;
  /**
   * As on the sheet.
   */
  words: string;
  /**
   * weighing: cured pieces on a day, any number of them, each by its own key "cured.2026-12-29".
   */
  kind: "mass" | "temperature" | "minutes" | "date" | "count" | "length" | "volume" | "choice" | "text" | "weighing";
  /**
   * Where it stands in the order of the work.
   */
  when: "day_before" | "base_mixed" | "poured" | "topping_mixed" | "whipped" | "piped" | "afterwards";
  /**
   * As on paper; absent: none.
   */
  unit?: "g" | "oz" | "°" | "min" | "mm" | "ml";
  /**
   * As it may be typed; absent: nothing is planned.
   */
  planned?: string;
  choices?: string[];
  /**
   * As typed; absent: nothing.
   */
  noted?: string;
  /**
   * When, with its offset.
   */
  noted_at?: string;
}
export interface CuredWeighing {
  on: string;
  pieces: number;
  /**
   * What they weigh together, as typed.
   */
  written: string;
  together_g: number;
}
/**
 * Something weighed, and what it really weighed where that is noted.
 */
export interface NotedRow {
  /**
   * "weighed." and its key in the plan.
   */
  key: string;
  /**
   * What it is weighed into.
   */
  of: string;
  /**
   * What it is called.
   */
  words: string;
  role:
    | "fat"
    | "alkali"
    | "water"
    | "ice"
    | "liquid"
    | "additive"
    | "fragrance"
    | "colour"
    | "batter"
    | "lye_solution"
    | "melt"
    | "powder";
  /**
   * That its scale shows.
   */
  unit: string;
  /**
   * As often as it is weighed, together.
   */
  planned: string;
  /**
   * As typed; absent: as planned.
   */
  noted?: string;
  /**
   * When, with its offset.
   */
  noted_at?: string;
}
/**
 * The answer of `quote ORDER --json`: what an order costs and what to ask for it, for each number of times that it is made. Money is a decimal text in `currency`, without its code.
 */
export interface OrderQuote {
  schema: "brimwright.order_quote/1";
  /**
   * The order's file.
   */
  source: string;
  /**
   * Who ordered it; may be empty.
   */
  for: string;
  /**
   * ISO 8601.
   */
  due: string | null;
  /**
   * ISO 4217.
   */
  currency: string;
  /**
   * Costs are told without tax, and prices say what of them is tax.
   */
  has_tax: boolean;
  /**
   * As asked for, in that order.
   *
   * @minItems 1
   */
  times: OrderTimes[];
  /**
   * On how the order is read.
   */
  remarks: string[];
}
export interface OrderTimes {
  times: number;
  /**
   * Of all lines.
   */
  pieces: number;
  /**
   * Of all lines, as they are printed.
   */
  cost: string;
  unpriced: string[];
  /**
   * In the order's order. What each order costs in fees is spread over all pieces; what a shared base and its batches cost is shared by what each line takes of it.
   *
   * @minItems 1
   */
  lines: QuotedNumber[];
  /**
   * Of the whole order, by each way of selling; `ask` is the sum of what the pieces are asked for.
   */
  prices: QuotedPrice[];
  /**
   * Lines whose base is mixed as one, by their words.
   */
  together: PouredTogether[];
  cash: QuoteCash;
  ready: ReadyOfOrder;
  /**
   * What is left to make, and what that costs; null where nothing is. Cost, lines and prices beside it are of all pieces made anew; `cash` is for the rest, and for packing what is not delivered.
   */
  rest: RestOfOrder | null;
}
export interface QuotedNumber {
  sell: number;
  /**
   * Rejects included.
   */
  make: number;
  fillings: number;
  batches: number;
  /**
   * Pieces beyond those; they bear none of the cost.
   */
  to_stock: number;
  /**
   * Of a piece that is sold: the run's cost / sell. Leaves out what is unpriced.
   */
  cost_each: string;
  /**
   * Of the run.
   */
  cost: string;
  /**
   * Of a piece that is sold; they add to cost_each.
   */
  parts: QuotePart[];
  /**
   * Of the run, each material or kind of work in each part; they add to cost.
   */
  items: QuoteItem[];
  /**
   * What has no price. While there is any, there is no price to ask.
   */
  unpriced: string[];
  /**
   * By each way of selling.
   */
  prices: QuotedPrice[];
  /**
   * What another number of pieces does.
   */
  around: QuoteAround[];
  /**
   * Of the plan: what could make a soap that burns.
   */
  dangers: string[];
  cash?: QuoteCash;
  /**
   * Of a line of an order: the run's name.
   */
  run?: string;
}
export interface QuotePart {
  part: string;
  each: string;
}
export interface QuoteItem {
  part: string;
  name: string;
  /**
   * With its unit.
   */
  amount: string;
  /**
   * null: unpriced.
   */
  cost: string | null;
  /**
   * The sum it comes of; empty where it is unpriced.
   */
  how: string;
  /**
   * Water without a price: it costs nothing.
   */
  from_tap: boolean;
}
export interface QuotedPrice {
  /**
   * What the studio calls it, such as "retail".
   */
  way: string;
  by: AskedBy;
  /**
   * For a piece, rounded up to the coin or to an ending; with tax where the prices asked contain it.
   */
  ask: string;
  with_tax: string;
  without_tax: string;
  tax: string;
  /**
   * What selling takes of a piece.
   */
  fees: string;
  /**
   * without_tax - fees - cost of a piece; negative below cost.
   */
  profit: string;
  /**
   * Profit by the price without tax, at the price as asked.
   */
  margin_percent: number;
  /**
   * Profit by the cost, at the price as asked.
   */
  markup_percent: number;
  is_below_cost: boolean;
}
export interface QuoteAround {
  sell: number;
  text: string;
}
/**
 * What is to lay out now: the cheapest whole packs for all that is used, less what is on the shelf. Of a whole order it stands once, not in its lines.
 */
export interface QuoteCash {
  /**
   * Packs and postage, as paid; null: nothing is bought that has a price.
   */
  total: string | null;
  proved_cheapest: boolean;
  packs: QuotePack[];
  /**
   * Of what is bought, when all is made.
   */
  left: QuoteLeft[];
  /**
   * What must be bought, and no pack of it is listed: not in the total.
   */
  unpriced: string[];
}
export interface QuotePack {
  /**
   * Empty: the pack names none.
   */
  seller: string;
  /**
   * The material, for people, with what is bought in its place.
   */
  shown_as: string;
  count: number;
  /**
   * One pack, with its unit.
   */
  holds: string;
  /**
   * All of these packs.
   */
  sum: string;
}
export interface QuoteLeft {
  shown_as: string;
  /**
   * With its unit.
   */
  left: string;
}
/**
 * What of an order is not made already.
 */
export interface RestOfOrder {
  /**
   * Of all these lines.
   */
  pieces: number;
  /**
   * Of all these lines, as they are printed.
   */
  cost: string;
  unpriced: string[];
  /**
   * Those of which something is to make, in the order's order.
   *
   * @minItems 1
   */
  lines: QuotedNumber[];
}
/**
 * The answer of `plan RUN --json`. Masses in pour and pipe are sums over the batches, their superfat the worst batch's; what belongs to one pot or bowl is the largest batch's.
 */
export interface Plan {
  schema: "brimwright.plan/1";
  /**
   * Its name.
   */
  run: string;
  /**
   * Its file, as named.
   */
  source: string;
  pieces: Pieces;
  from_studio?: FromStudio;
  lye_of_day?: LyeOfDay;
  pour: Pour;
  /**
   * Where the request gives alkali already weighed.
   */
  made_lye?: MadeLye[];
  pipe?: Pipe;
  /**
   * The different ones, largest first.
   *
   * @minItems 1
   */
  batches: Batch[];
  /**
   * To one batch.
   */
  batch_limits: Limit[];
  /**
   * One fewer and one more.
   */
  around: Around[];
  /**
   * What is set on or in a piece, in the run's order.
   */
  decorations: Decoration[];
  /**
   * Of the run.
   */
  dust: Dust[];
  cut?: Cut;
  /**
   * Of the run.
   */
  bottles: Bottle[];
  lye_pot: LyePot | null;
  piece: Piece;
  label: Label | null;
  /**
   * Worst first.
   */
  cautions: Caution[];
  assumptions: Assumptions;
  first_aid: FirstAid;
}
export interface Pieces {
  /**
   * Wanted saleable.
   */
  sell: number;
  /**
   * Rejects included.
   */
  make: number;
  /**
   * Times that moulds are locked.
   */
  fillings: number;
  /**
   * In all moulds owned.
   */
  cavities: number;
  /**
   * Cavities filled.
   */
  casts: number;
  /**
   * Pieces that one cavity yields: bars of a loaf.
   */
  per_cast: number;
  /**
   * In all.
   */
  batches: number;
  /**
   * Beyond sell and rejects.
   */
  to_stock: number;
}
/**
 * Where the run left something to its studio.
 */
export interface FromStudio {
  /**
   * The studio's.
   */
  file: string;
  /**
   * What was taken, as the studio's file calls it.
   *
   * @minItems 1
   */
  sections: string[];
  /**
   * The same in words.
   */
  text: string;
}
/**
 * Where the studio mixes one lye solution for several batches of a day.
 */
export interface LyeOfDay {
  /**
   * Whether a batch of this run may get its lye out of such a pot; the days tell which does.
   */
  may_be_shared: boolean;
  /**
   * Whole sentences.
   */
  text: string;
}
/**
 * The masses of one batter. in_pieces_g + lost_g = make_g.
 */
export interface Batter {
  /**
   * Its formula's name.
   */
  formula: string;
  /**
   * In one piece or cast.
   */
  volume_each_ml: number;
  /**
   * In one piece or cast.
   */
  mass_each_g: number;
  /**
   * That turns the one into the other; whipped, of a topping.
   */
  density_g_per_ml: number;
  /**
   * Of the plain batter, from its ingredients.
   */
  plain_density_computed_g_per_ml: number;
  /**
   * In all pieces.
   */
  in_pieces_g: number;
  /**
   * All losses together.
   */
  lost_g: number;
  /**
   * The sum of what is weighed.
   */
  make_g: number;
  /**
   * The formula's fats.
   */
  fats_g: number;
  /**
   * As weighed, with its impurity; of a solution the pure NaOH in it.
   */
  naoh_g: number;
  /**
   * As weighed, with its impurity; of a solution the pure KOH in it.
   */
  koh_g: number;
  /**
   * All of it: plain, in solutions, and in liquids that stand in for it.
   */
  water_g: number;
  /**
   * Of it, what is weighed as water.
   */
  plain_water_g: number;
  /**
   * Each alkali that is weighed as a solution that stands ready, not dry.
   */
  solutions: ReadySolution[];
  /**
   * Vinegar's and the like, beside water_g.
   */
  water_in_acids_g: number;
  /**
   * Pure alkali / (pure alkali + all water).
   */
  lye_strength_percent: number;
  /**
   * The same in the pot of lye solution, before what goes into the batter.
   */
  pot_strength_percent: number;
  /**
   * Mass of water / mass of pure alkali.
   */
  water_to_pure_alkali: number;
  /**
   * Water as a share of the fats.
   */
  water_percent_of_fats: number;
  superfat_percent: AimedSuperfat;
  heat: Heat;
  /**
   * In the order you work: what is wet before the alkali.
   */
  ingredients: Ingredient[];
}
/**
 * How one piece's part loses its water, by its maker's weighings.
 */
export interface Cure {
  /**
   * After the cure, in grams.
   */
  cured_g: number;
  /**
   * In the end, in grams.
   */
  end_g: number;
  /**
   * Water that goes, in grams.
   */
  to_lose_g: number;
  /**
   * After which 63 % of it is gone.
   */
  time_constant_days: number;
  fit?: CureFit;
}
/**
 * Of the curve to the weighings.
 */
export interface CureFit {
  /**
   * Taken.
   */
  weighings: number;
  /**
   * Standard deviation about the curve, in grams.
   */
  spread_g: number | null;
}
/**
 * A surface that set while the mould was tilted.
 */
export interface SlopingSurface {
  /**
   * Its depth there, above the cavity's lowest point.
   */
  over_origin_mm: number;
  /**
   * Millimetres a millimetre along x.
   */
  rise_x: number;
  /**
   * Millimetres a millimetre along y.
   */
  rise_y: number;
}
/**
 * Alkali already weighed, and what corrects it.
 */
export interface MadeLye {
  /**
   * Its number.
   */
  batch: number;
  /**
   * "Base", "Topping".
   */
  batter: string;
  severity: Severity;
  /**
   * In words.
   */
  text: string;
  /**
   * As it was weighed.
   */
  alkali: NamedWeight[];
  /**
   * Planned superfat.
   */
  aim_percent: number;
  superfat_percent: PotSuperfat;
  to_aim: Mend | null;
  to_zero: Mend | null;
  missing: Mend | null;
}
/**
 * What corrects a weighing already made.
 */
export interface Mend {
  /**
   * What goes in besides.
   */
  add: MendIngredient[];
  /**
   * The batter then.
   */
  make_g: number;
  superfat_percent: PotSuperfat;
  /**
   * Of its own, that alkali still to add is dissolved in.
   */
  water_g?: number;
}
/**
 * What all whipped batter has: the run's, a batch's and a whipping's. What belongs to one bowl is the largest bowl's.
 */
export interface Piped {
  /**
   * Above the foot of one topping.
   */
  visible_each_ml: number;
  /**
   * In the headspace below the brim.
   */
  in_headspace_each_ml: number;
  visible_by: VisibleTopping;
  /**
   * Plain density / whipped density - 1.
   */
  overrun_percent: number;
  /**
   * Bag loads, where the bag's size is given.
   */
  loads: number | null;
  /**
   * By today's weigh-cup reading.
   */
  pieces_now: number | null;
  /**
   * By today's weigh-cup reading.
   */
  casts_now: number | null;
  /**
   * Around the plan's.
   */
  readings: WhipReading[];
  /**
   * To one whipping.
   */
  limits: Limit[];
  /**
   * The smallest whipping.
   */
  least_pieces: number;
  /**
   * The smallest whipping.
   */
  least_casts: number;
  /**
   * Seconds to pipe it, bag changes included.
   */
  piping_s: number | null;
  lye_spoonfuls?: LyeSpoonfuls;
  cure: Cure | null;
}
/**
 * One topping above its foot, by each way that the run gives.
 */
export interface VisibleTopping {
  /**
   * As the run gives it, in place of its trials; only where it does.
   */
  given_ml?: number;
  /**
   * By weighed trials.
   */
  trials_ml: number | null;
  /**
   * By the beads' geometry.
   */
  beads_ml: number | null;
  /**
   * By its outline.
   */
  envelope_ml: number | null;
  /**
   * In the run's order.
   */
  moves: LaidBead[];
  suggested_correction?: HandFactor;
}
/**
 * What one move lays down.
 */
export interface LaidBead {
  /**
   * Of its path.
   */
  length_mm: number;
  /**
   * By geometry alone.
   */
  volume_ml: number;
}
/**
 * Weighed / computed, where both are given.
 */
export interface HandFactor {
  /**
   * For your hand with this tip.
   */
  correction: number;
  /**
   * That it comes from.
   */
  trials: number;
}
/**
 * What a weigh-cup reading means for the bowl.
 */
export interface WhipReading {
  /**
   * Net weight of the level cup.
   */
  net_g: number;
  /**
   * Of the whip.
   */
  density_g_per_ml: number;
  /**
   * Plain density / whipped density - 1.
   */
  overrun_percent: number;
  /**
   * That the bowl pipes.
   */
  pieces: number;
  /**
   * That it pipes.
   */
  casts: number;
  /**
   * The reading that the plan is for.
   */
  planned: boolean;
}
/**
 * What keeps a batch or a whipping from being larger, or smaller; one of least and most.
 */
export interface Limit {
  what: "cavities" | "wish" | "pot" | "lye jug" | "bowl" | "open time" | "whisk";
  /**
   * At least.
   */
  least_pieces?: number;
  /**
   * At least.
   */
  least_casts?: number;
  /**
   * At most.
   */
  most_pieces?: number;
  /**
   * At most.
   */
  most_casts?: number;
  /**
   * It is what keeps the batches from being larger.
   */
  sets: boolean;
  /**
   * In words, with its number.
   */
  text: string;
}
/**
 * Lye whipped in by the spoonful.
 */
export interface LyeSpoonfuls {
  /**
   * Spoonfuls.
   */
  count: number;
  /**
   * Seconds for each.
   */
  each_s: number;
  /**
   * Seconds for all.
   */
  altogether_s: number;
}
/**
 * What is mixed, poured, whipped and piped in one go.
 */
export interface Batch {
  /**
   * Of these in the run.
   */
  count: number;
  /**
   * In each.
   */
  pieces: number;
  /**
   * In each.
   */
  casts: number;
  /**
   * Which of the run's batches they are, in the order of making.
   */
  numbers: number[];
  pour: Pour;
  pipe?: BatchPipe;
  lye_pot: LyePot | null;
  /**
   * Of this batch.
   */
  bottles: Bottle[];
  /**
   * Of this batch.
   */
  dust: Dust[];
  /**
   * What is to be noted of it, in the order of the work.
   *
   * @minItems 1
   */
  blanks: Blank[];
  /**
   * The same for the same weigh_out, and for no other.
   */
  mark: string;
  /**
   * All that is weighed, in the order of the work.
   */
  weigh_out: Vessel[];
}
/**
 * A bottle of fragrance over the batters.
 */
export interface Bottle {
  /**
   * As the run says.
   */
  name: string;
  /**
   * What it holds.
   */
  holds_g: number;
  /**
   * A batter each.
   */
  parts: BottlePart[];
}
/**
 * Something to fill in when a batch is made: by hand on the bench sheet, by its key with brimwright note. What is outside least and most, or above another, is asked about once.
 */
export interface Blank {
  /**
   * Its own in the batch; the same for any number of pieces.
   */
  key: string;
  /**
   * base, topping, a decoration's name; absent: of the batch.
   */
  of?: string;
  /**
   * As on the sheet.
   */
  words: string;
  /**
   * weighing: cured pieces on a day, any number of them, each by its own key "cured.2026-12-29".
   */
  kind: "mass" | "temperature" | "minutes" | "date" | "count" | "length" | "volume" | "choice" | "text" | "weighing";
  /**
   * Where it stands in the order of the work.
   */
  when: "day_before" | "base_mixed" | "poured" | "topping_mixed" | "whipped" | "piped" | "afterwards";
  /**
   * As on paper; absent: none.
   */
  unit?: "g" | "oz" | "°" | "min" | "mm" | "ml";
  /**
   * As it may be typed; absent: nothing is planned.
   */
  planned?: string;
  /**
   * With its unit; of a cup its density; of a day how long after the beginning.
   */
  least?: string;
  /**
   * With its unit; of a cup its density.
   */
  most?: string;
  /**
   * The one that it is a part of.
   */
  not_above?: string;
  /**
   * Of a full cup: its volume, with its unit.
   */
  cup_holds?: string;
  /**
   * Where the cup's volume is noted.
   */
  cup_holds_key?: string;
  choices?: ("pass" | "hold")[];
  /**
   * Asked of this batch of the run alone; absent: of each.
   */
  batch?: 1;
}
/**
 * What another number of pieces would do.
 */
export interface Around {
  /**
   * Pieces.
   */
  sell: number;
  /**
   * Then.
   */
  fillings: number;
  /**
   * Then.
   */
  batches: number;
  /**
   * In words.
   */
  text: string;
}
/**
 * A decoration cast beforehand, or one that is bought and only counted: of that, nothing is melted.
 */
export interface Decoration {
  /**
   * As the run says.
   */
  name: string;
  /**
   * What is melted, or bought.
   */
  material: string;
  /**
   * As it is, not cast.
   */
  bought: boolean;
  /**
   * Spares included.
   */
  casts: number;
  /**
   * Fewer than one where a loaf's are shared by its bars.
   */
  per_piece: number;
  /**
   * Cavities filled.
   */
  cavity_fills: number;
  /**
   * Times that all trays owned are filled.
   */
  tray_fills: number;
  /**
   * Of one.
   */
  volume_each_ml: number;
  /**
   * Of one; null of one that is bought and whose weight is not given.
   */
  mass_each_g: number | null;
  /**
   * Seconds to cast all of them.
   */
  casting_s: number | null;
  /**
   * To melt, losses included, in grams, to the milligram
   */
  make_g: number;
  /**
   * As the scale shows it, in grams; alkali never rounded up.
   */
  make_g_text: string;
  /**
   * The same in avoirdupois ounces.
   */
  make_oz_text: string;
  /**
   * Unit of the scale it is weighed on.
   */
  make_reads: "g" | "oz";
  /**
   * Step of that scale's display, in grams.
   */
  make_scale_step_g: number;
  on_top?: OnTop;
  buried?: Buried;
}
/**
 * Does it sit?
 */
export interface OnTop {
  /**
   * Across the circle that it rests on.
   */
  contact_mm: number;
  /**
   * Across the flat of the peak.
   */
  peak_flat_mm: number | null;
  /**
   * How far it sticks out of what it was pressed into.
   */
  stands_proud_mm: number;
  /**
   * Below that surface.
   */
  sunk_ml: number;
}
export interface Buried {
  /**
   * By all of them, below the pour line.
   */
  displaced_ml: number;
  /**
   * And between it and the brim: not piped.
   */
  in_headspace_ml: number;
  /**
   * Each one.
   */
  embeds: Embed[];
}
/**
 * Where one decoration lies in the base.
 */
export interface Embed {
  /**
   * x, y, z in the cavity's frame.
   *
   * @minItems 3
   * @maxItems 3
   */
  middle_mm: number[];
  /**
   * Rows of its rotation.
   *
   * @minItems 3
   * @maxItems 3
   */
  turn: number[][];
  /**
   * Least gap to what lies below.
   */
  floor_cover_mm: number | null;
  /**
   * To the sides.
   */
  wall_cover_mm: number | null;
  /**
   * From its top to the pour line; negative: it sticks out.
   */
  pour_line_cover_mm: number;
  /**
   * Least gap to another embed of the piece.
   */
  apart_mm: number | null;
  /**
   * Below the pour line.
   */
  displaced_ml: number;
}
/**
 * How a loaf or slab is cut.
 */
export interface Cut {
  /**
   * Bars of one loaf.
   */
  bars_each: number;
  /**
   * The axis that columns are counted along.
   */
  along: "x" | "y";
  /**
   * Of bars.
   */
  columns: number;
  /**
   * Of bars.
   */
  rows: number;
  /**
   * With the cut turned.
   */
  bars_the_other_way: number | null;
  bar_ml: BarVolumes;
  /**
   * Of one loaf.
   */
  loaf_ml: number;
  /**
   * Of one loaf.
   */
  offcuts_ml: number;
  /**
   * Of one loaf.
   */
  kerf_ml: number;
  /**
   * Of one loaf.
   */
  planing_ml: number;
  /**
   * Of one loaf, of all materials.
   */
  offcuts_g: number;
  /**
   * The same.
   */
  kerf_g: number;
  /**
   * The same.
   */
  planing_g: number;
  /**
   * Its place in bars, from 0.
   */
  lightest_bar: number;
  /**
   * For each direction in which it is possible.
   */
  one_more: OneMoreBar[];
  /**
   * Each bar of a loaf.
   *
   * @minItems 1
   */
  bars: Bar[];
}
export interface BarVolumes {
  /**
   * In ml.
   */
  least: number;
  /**
   * In ml.
   */
  mean: number;
  /**
   * In ml.
   */
  greatest: number;
}
export interface OneMoreBar {
  direction: "x" | "y";
  /**
   * At which one more bar comes out.
   */
  size_mm: number;
  /**
   * In mm and inches.
   */
  size_text: string;
  /**
   * Then.
   */
  bars: number;
}
/**
 * One bar of a loaf that is cut.
 */
export interface Bar {
  /**
   * Size.
   */
  along_mm: number;
  /**
   * Size.
   */
  across_mm: number;
  /**
   * Size.
   */
  height_mm: number;
  /**
   * Of it.
   */
  volume_ml: number;
  /**
   * Of each layer.
   */
  layers_ml: number[];
  /**
   * By what is sure to be in it.
   */
  fresh_g: number;
  /**
   * After the cure.
   */
  cured_g: number | null;
  /**
   * Fresh, part by part as piece.parts.
   */
  parts_g: number[];
}
/**
 * One finished piece.
 */
export interface Piece {
  is: "piece" | "bar on average";
  /**
   * Of a cut loaf's bars; rounded down.
   */
  lightest: LightestBar | null;
  /**
   * When made.
   */
  fresh_g: number;
  /**
   * When each formula says how its water is lost.
   */
  cured_g: number | null;
  /**
   * Net quantity that the label states.
   */
  label_g: number | null;
  /**
   * Base first.
   */
  parts: Part[];
  /**
   * The box that the finished piece just fits.
   */
  size: PieceSize | null;
  cost: Cost | null;
}
export interface LightestBar {
  /**
   * In grams.
   */
  fresh_g: number;
  /**
   * In grams.
   */
  cured_g: number | null;
}
export interface Part {
  /**
   * Of the formula or decoration.
   */
  name: string;
  /**
   * In grams.
   */
  fresh_g: number;
  /**
   * In grams.
   */
  cured_g: number | null;
}
export interface PieceSize {
  /**
   * Along x.
   */
  width_mm: number;
  /**
   * Along y.
   */
  depth_mm: number;
  /**
   * Along z.
   */
  height_mm: number;
}
/**
 * Material used, in money. What is unpriced is left out, and named.
 */
export interface Cost {
  /**
   * Of one saleable piece; null where nothing is priced.
   */
  amount: string | null;
  /**
   * ISO 4217 code.
   */
  currency: string;
  /**
   * Of the run.
   */
  total: string | null;
  /**
   * By name.
   */
  unpriced: string[];
  /**
   * Each one.
   */
  materials: Material[];
}
export interface Material {
  /**
   * As the run's prices call it.
   */
  name: string;
  /**
   * For people: a fat's name, where its price goes by its id.
   */
  shown_as: string;
  /**
   * Used.
   */
  g?: number;
  /**
   * Used, of what is bought by the piece.
   */
  pieces?: number;
  /**
   * Null: unpriced.
   */
  amount: string | null;
  /**
   * Water without a price: it costs nothing.
   */
  from_tap?: true;
}
/**
 * The draft of a label, for a licensed assessor.
 */
export interface Label {
  market: "EU" | "US";
  net_quantity: NetQuantity | null;
  /**
   * The pieces weighed, checked against the statement.
   */
  pieces_weighed: PiecesWeighed | null;
  as_saponified: IngredientList;
  as_charged: IngredientList;
  /**
   * Of all fragrances.
   */
  allergens: Allergen[];
  /**
   * Of the run's batches, where the records beside it have them.
   */
  batch_codes: LabelBatchCode[];
  /**
   * About the label.
   */
  remarks: Remark[];
}
export interface NetQuantity {
  /**
   * As it is printed.
   */
  statement: string;
  /**
   * In grams.
   */
  stated_g: number;
  /**
   * Lightest piece to expect.
   */
  lightest_g: number;
  /**
   * In grams.
   */
  mean_g: number;
  /**
   * Where the lightest comes from.
   */
  because: string;
  /**
   * Tolerable deficiency.
   */
  tolerance_g: number;
  /**
   * Least height of the figures.
   */
  figures_mm: number | null;
}
export interface PiecesWeighed {
  /**
   * Weighed.
   */
  pieces: number;
  /**
   * In grams.
   */
  held_against_g: number;
  /**
   * In grams.
   */
  mean_g: number;
  /**
   * The statement.
   */
  mean_reaches: boolean;
  /**
   * Below it by more than the tolerance.
   */
  short: number;
  /**
   * By more than twice the tolerance.
   */
  short_twice: number;
  /**
   * All told.
   */
  passes: boolean;
}
/**
 * INCI names in descending mass.
 */
export interface IngredientList {
  /**
   * As it may be printed.
   */
  text: string;
  /**
   * Of the whole piece.
   */
  piece_g: number;
  /**
   * Each one.
   */
  ingredients: ListedIngredient[];
}
export interface ListedIngredient {
  /**
   * INCI name, or the maker's own.
   */
  name: string;
  /**
   * In one piece.
   */
  g: number;
  /**
   * Of it.
   */
  percent: number;
  /**
   * The name is no INCI name.
   */
  inci_given?: false;
  colour?: true;
  allergen?: true;
}
export interface Allergen {
  /**
   * As the market's list names it.
   */
  name: string;
  /**
   * Of the piece.
   */
  percent: number;
  /**
   * It is to be named.
   */
  named: boolean;
  /**
   * The market's list has it.
   */
  listed: boolean;
  /**
   * That state its share.
   */
  documents: string[];
  /**
   * It is an ingredient by itself.
   */
  ingredient?: true;
}
export interface LabelBatchCode {
  /**
   * Its number in the run.
   */
  batch: number;
  /**
   * As it stands on sheet and label.
   */
  code: string;
}
export interface Caution {
  severity: Severity;
  topic:
    | "plan"
    | "lye"
    | "heat"
    | "aluminium"
    | "chilled lye"
    | "melting"
    | "whipping"
    | "look-alike"
    | "small parts"
    | "dust"
    | "allergens"
    | "test";
  /**
   * It holds for any batch like this, not for this very one.
   */
  general: boolean;
  /**
   * Whole sentences.
   */
  text: string;
  /**
   * The one it is about; absent: not about one alone.
   */
  batter?: "pour" | "pipe";
  /**
   * The size of the batches it is about; absent: about all.
   */
  batch_pieces?: number;
}
/**
 * What the plan takes for granted and batches can tell otherwise, as measured and as used. It is kept with each batch that is begun.
 */
export interface Assumptions {
  pour: PourAssumptions;
  pipe?: PipeAssumptions;
  decorations: DecorationAssumptions[];
  cure: CureAssumptions | null;
}
export interface PourAssumptions {
  /**
   * Its file.
   */
  formula: string;
  /**
   * Of the plain batter, from its ingredients.
   */
  computed_g_per_ml: number;
  /**
   * Used.
   */
  g_per_ml: number;
  /**
   * Its file.
   */
  mould: string;
  /**
   * Of one cavity, before its poured_factor.
   */
  measured_brimful_ml: number;
  /**
   * What a cavity takes by batches / what was measured.
   */
  poured_factor: number;
  /**
   * Of what is in the pieces.
   */
  overpour_percent: number;
  pot_g: number;
  jugs_g: number;
  test_piece_g: number;
  /**
   * As measured, about the line that is poured to. None where the mould is tilted.
   */
  levels?: AssumedLevel[];
}
export interface AssumedLevel {
  /**
   * Above the planned line; below 0 under it.
   */
  line_off_mm: number;
  /**
   * Batter in one cavity up to there.
   */
  volume_each_ml: number;
  ml_per_mm: number;
}
export interface PipeAssumptions {
  /**
   * Its file.
   */
  formula: string;
  /**
   * Whipped.
   */
  g_per_ml: number;
  /**
   * What the topping was measured by: its trials, what its moves lay down, or what its outline encloses.
   */
  sized_by_ml: number;
  visible_each_ml: number;
  in_headspace_each_ml: number;
  fills_headspace_percent: number;
  bowl_and_whisk_g: number;
  bag_g: number;
  tip_g: number;
  each_bag_change_g: number;
  /**
   * Where the moves of a tip are given.
   */
  tip?: string;
  /**
   * Of tip and moves alone, before any correction for the hand.
   */
  by_moves_ml?: number;
  /**
   * Used.
   */
  hand_correction?: number;
}
export interface DecorationAssumptions {
  name: string;
  melt_loss_percent: number;
  left_in_jug_g: number;
}
export interface CureAssumptions {
  sold_on_day: number;
  /**
   * Of the fresh base.
   */
  water_percent: number;
  /**
   * Of that water, by the day of sale, where the formula says.
   */
  lost_percent?: number;
  /**
   * No topping and no decoration.
   */
  plain_piece: boolean;
}
export interface FirstAid {
  /**
   * In order.
   */
  lines: FirstAidLine[];
  /**
   * After which texts.
   */
  source: string;
}
export interface FirstAidLine {
  /**
   * Such as "Eyes".
   */
  what: string;
  /**
   * What to do.
   */
  do: string;
}
/**
 * The answer of `quote RUN --json`: what a piece costs and what to ask for it, for several numbers of pieces side by side. Money is a decimal text in `currency`, without its code.
 */
export interface Quote {
  schema: "brimwright.quote/1";
  /**
   * Its name.
   */
  run: string;
  /**
   * The run's file.
   */
  source: string;
  /**
   * ISO 4217.
   */
  currency: string;
  /**
   * Costs are told without tax, and prices say what of them is tax.
   */
  has_tax: boolean;
  /**
   * As asked for, in that order.
   *
   * @minItems 1
   */
  numbers: QuotedNumber[];
  /**
   * Where another whole begins, from 2 pieces to twice the largest number asked about.
   */
  steps: QuoteStep[];
  /**
   * Where another pack begins, over the same numbers: of each material by itself the cheapest whole packs for its need less the shelf, without postage, and where they come to more.
   */
  pack_steps: QuotePackStep[];
  /**
   * Materials of which it is not told where another pack begins, so that `pack_steps` lacks it between these numbers of pieces.
   */
  pack_steps_untold: QuoteUntoldPacks[];
  /**
   * Numbers of pieces that cannot be made, and why the largest of them cannot.
   */
  gaps: QuoteGap[];
  /**
   * What must be known to take the figures right: packaging of the run's own, water from the tap.
   */
  remarks: string[];
  /**
   * What a piece costs at every number up to twice the largest asked about, where it can be made and all is priced.
   */
  costs: QuoteCostAt[];
}
export interface QuoteStep {
  /**
   * The first number of pieces that needs it.
   */
  sell: number;
  /**
   * In words: "another filling and another batch".
   */
  begins: string;
  fillings: number;
  batches: number;
  tray_fills: number;
  /**
   * Bag loads of topping; 0 where the run names no bag.
   */
  bags: number;
  /**
   * What the run costs more than with one piece fewer; null while something is unpriced.
   */
  more: string | null;
}
export interface QuotePackStep {
  /**
   * The first number of pieces that needs it.
   */
  sell: number;
  /**
   * As prices call it.
   */
  material: string;
  /**
   * For people.
   */
  shown_as: string;
  /**
   * What its packs come to more than with one piece fewer.
   */
  more: string;
}
export interface QuoteUntoldPacks {
  /**
   * As prices call it.
   */
  material: string;
  /**
   * For people.
   */
  shown_as: string;
  from: number;
  to: number;
  why: string;
}
export interface QuoteGap {
  from: number;
  to: number;
  why: string;
}
export interface QuoteCostAt {
  sell: number;
  each: string;
}
/**
 * The answer of `records --json`: what a folder's records hold in all.
 */
export interface RecordsOverview {
  schema: "brimwright.records_overview/1";
  /**
   * Of the records, there or not.
   */
  file: string;
  /**
   * What was done, in sentences.
   */
  done: string[];
  /**
   * null: there are none.
   */
  records: RecordsInAll | null;
  /**
   * Files beside it that look like other copies of it, and are in no answer.
   */
  look_alikes: string[];
}
export interface RecordsInAll {
  /**
   * Of the file.
   */
  version: number;
  batches: number;
  lots: number;
  /**
   * What was ever recorded.
   */
  acts: number;
  /**
   * The first act's moment.
   */
  since: string | null;
  /**
   * The last one's.
   */
  latest: string | null;
  bytes: number;
  /**
   * By SQLite's own check of the whole file.
   */
  sound: boolean;
  faults: string[];
}
/**
 * The answer of `stock --json`: what there is of lots and pieces, or of those that were just changed.
 */
export interface StockList {
  schema: "brimwright.stock/1";
  /**
   * Where the records are.
   */
  folder: string;
  /**
   * The day that it is of.
   */
  day: string;
  /**
   * Whether anything is recorded there.
   */
  has_records: boolean;
  /**
   * What was recorded just now, for people; then only what that touched is listed.
   */
  done: string[];
  /**
   * Of which a lot has something left.
   */
  materials: MaterialInStock[];
  /**
   * Batches that have pieces, or of which nobody noted how many.
   */
  pieces: PiecesInStock[];
  /**
   * What the studio's "have" lists and no lot has yet: it can be taken over.
   */
  not_counted: string[];
  /**
   * What goes with the list.
   */
  notes: Remark[];
  names?: NamesInStock;
}
/**
 * Its lots in the order in which they are taken.
 */
export interface MaterialInStock {
  /**
   * As weighings call it.
   */
  material: string;
  /**
   * For people.
   */
  shown_as: string;
  /**
   * The first is taken first.
   */
  lots: StockLot[];
}
/**
 * A delivery, all its packs together.
 */
export interface StockLot {
  /**
   * Its code: the supplier's, or her own.
   */
  lot: string;
  /**
   * As weighings call it: a fat's id, NaOH, an additive's name.
   */
  material: string;
  /**
   * Of goods that serve as the material: what they are called themselves.
   */
  make: string | null;
  origin: LotOrigin;
  /**
   * The day it was bought, made or first counted.
   */
  on: string;
  /**
   * Null: not given.
   */
  seller: string | null;
  /**
   * A day; null: it has none.
   */
  best_before: string | null;
  /**
   * It is past that day: no batch takes it unless it is chosen.
   */
  is_past: boolean;
  /**
   * How many packs came.
   */
  packs: number;
  /**
   * One pack, as it was typed.
   */
  pack: string;
  /**
   * For all packs; null: unpriced.
   */
  paid: string | null;
  /**
   * ISO 4217; null where it is unpriced.
   */
  currency: string | null;
  holds: StockAmount;
  left: StockAmount;
}
/**
 * So much of a material, by weight or by the piece.
 */
export interface StockAmount {
  /**
   * Grams; below 0 where more was taken than was recorded.
   */
  g?: number;
  /**
   * Of what is counted.
   */
  pieces?: number;
}
/**
 * Pieces of one batch.
 */
export interface PiecesInStock {
  /**
   * Its code.
   */
  batch: string;
  /**
   * Which no other batch has, whatever its code.
   */
  id: string;
  /**
   * For people.
   */
  run: string;
  /**
   * The run's file.
   */
  file: string;
  /**
   * A day.
   */
  begun_on: string;
  /**
   * As noted; null: nobody noted it, and nothing else is known.
   */
  made: number | null;
  /**
   * As noted.
   */
  rejected?: number;
  /**
   * Recorded as sold.
   */
  sold?: number;
  /**
   * Given away.
   */
  given?: number;
  /**
   * Since they were made.
   */
  spoilt?: number;
  /**
   * What counts put right: below 0 where some were missing.
   */
  counted?: number;
  /**
   * What is there of them.
   */
  there?: number;
  /**
   * By its formulas, counted from its lye; null: over, or not given.
   */
  cures_until: string | null;
  /**
   * Tested, passed, ready and not held back.
   */
  for_sale: boolean;
  /**
   * Null where they are for sale.
   */
  why_not: string | null;
}
/**
 * What is called how there; only where it was asked.
 */
export interface NamesInStock {
  /**
   * Of a price without one; null: none is known.
   */
  currency: string | null;
  /**
   * Of the studio, of its runs and formulas.
   */
  materials: string[];
  /**
   * Lye solutions and blends of the studio.
   */
  made_ahead: string[];
  /**
   * Of the studio and of its lots.
   */
  sellers: string[];
}
/**
 * The answer of `trail --json`: a lot, a batch or an order, followed both ways.
 */
export interface Trail {
  schema: "brimwright.trail/1";
  /**
   * As it was asked.
   */
  asked: string;
  /**
   * What that is.
   */
  is: "lot" | "batch" | "order";
  /**
   * The day that it is of.
   */
  day: string;
  /**
   * Lots on the way, what they are made of and made into.
   */
  lots: TrailLot[];
  /**
   * Batches on the way, by day.
   */
  batches: TrailBatch[];
  /**
   * Batches that may have the lot too, since that of a row is unknown.
   */
  gaps: TrailGap[];
}
/**
 * A lot on the way.
 */
export interface TrailLot {
  /**
   * Its code: the supplier's, or her own.
   */
  lot: string;
  /**
   * As weighings call it: a fat's id, NaOH, an additive's name.
   */
  material: string;
  /**
   * Of goods that serve as the material: what they are called themselves.
   */
  make: string | null;
  origin: LotOrigin;
  /**
   * The day it was bought, made or first counted.
   */
  on: string;
  /**
   * Null: not given.
   */
  seller: string | null;
  /**
   * A day; null: it has none.
   */
  best_before: string | null;
  /**
   * It is past that day: no batch takes it unless it is chosen.
   */
  is_past: boolean;
  /**
   * How many packs came.
   */
  packs: number;
  /**
   * One pack, as it was typed.
   */
  pack: string;
  /**
   * For all packs; null: unpriced.
   */
  paid: string | null;
  /**
   * ISO 4217; null where it is unpriced.
   */
  currency: string | null;
  holds: StockAmount;
  left: StockAmount;
  /**
   * The material, for people.
   */
  shown_as: string;
  /**
   * Lots that she made it of.
   */
  from_lots: OtherLot[];
  /**
   * Lots that were made of it.
   */
  into_lots: OtherLot[];
  /**
   * Corrections.
   */
  counts: LotCount[];
}
/**
 * Another lot.
 */
export interface OtherLot {
  /**
   * Its code.
   */
  lot: string;
  /**
   * For people.
   */
  material: string;
  amount: StockAmount;
}
/**
 * A count put it right.
 */
export interface LotCount {
  /**
   * A day.
   */
  on: string;
  by: StockAmount;
  /**
   * Null: no reason was given.
   */
  why: string | null;
}
/**
 * A batch on the way.
 */
export interface TrailBatch {
  /**
   * Its code.
   */
  batch: string;
  /**
   * Which no other batch has, whatever its code.
   */
  id: string;
  /**
   * For people.
   */
  run: string;
  /**
   * The run's file.
   */
  file: string;
  /**
   * Which of the run's batches.
   */
  number: number;
  /**
   * A day.
   */
  begun_on: string;
  /**
   * The base that was mixed for several runs, where it is poured from one.
   */
  poured_from: TrailBase | null;
  /**
   * Of such a base: the codes of what was poured from it.
   */
  lines: string[];
  /**
   * What it weighed: all, or what is of the lots asked about.
   */
  rows: TrailRow[];
  /**
   * Whether those are all.
   */
  all_rows: boolean;
  /**
   * Null where only some rows are asked about.
   */
  cost: BatchPaid | null;
  pieces: TrailPieces;
  /**
   * By day.
   */
  went: PiecesGone[];
}
export interface TrailBase {
  /**
   * Its code.
   */
  batch: string;
  /**
   * Of what is poured from it, by the plan.
   */
  share_percent: number;
}
/**
 * What a batch weighed in one row.
 */
export interface TrailRow {
  /**
   * Its key in the plan.
   */
  row: string;
  /**
   * As weighings call it.
   */
  material: string;
  /**
   * For people.
   */
  shown_as: string;
  weighed: StockAmount;
  /**
   * The lots it is from.
   */
  from: TrailSource[];
  unknown: StockAmount;
}
/**
 * So much of a lot.
 */
export interface TrailSource {
  /**
   * Its code.
   */
  lot: string;
  /**
   * Of goods that serve as the material.
   */
  make: string | null;
  amount: StockAmount;
}
/**
 * What its materials did cost by their lots, to the coin.
 */
export interface BatchPaid {
  /**
   * One sum a currency.
   */
  materials: PaidSum[];
  /**
   * What is in no sum.
   */
  unpriced: string[];
}
/**
 * Without what is unpriced.
 */
export interface PaidSum {
  /**
   * To the coin.
   */
  amount: string;
  /**
   * ISO 4217.
   */
  currency: string;
}
/**
 * Where its pieces are.
 */
export interface TrailPieces {
  /**
   * As noted; null: nobody noted it, and nothing else is known.
   */
  made: number | null;
  /**
   * As noted.
   */
  rejected?: number;
  /**
   * Recorded as sold.
   */
  sold?: number;
  /**
   * Given away.
   */
  given?: number;
  /**
   * Since they were made.
   */
  spoilt?: number;
  /**
   * What counts put right: below 0 where some were missing.
   */
  counted?: number;
  /**
   * What is there of them.
   */
  there?: number;
}
/**
 * Where pieces went, or what a count put right.
 */
export interface PiecesGone {
  /**
   * What became of them.
   */
  what: "sold" | "given" | "spoilt" | "counted";
  /**
   * Added to those there: below 0 where they went.
   */
  pieces: number;
  /**
   * A day.
   */
  on: string;
  /**
   * The order's id, or its file after "file:".
   */
  order: string | null;
  /**
   * For whom.
   */
  for: string | null;
  /**
   * Null: no reason was given.
   */
  why: string | null;
}
/**
 * A row of an unknown lot.
 */
export interface TrailGap {
  /**
   * Its code.
   */
  batch: string;
  /**
   * For people.
   */
  run: string;
  /**
   * The material, for people.
   */
  shown_as: string;
}
