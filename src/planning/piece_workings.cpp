#include "planning/piece_workings.h"

#include "planning/cost.h"
#include "units/printing.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>
#include <string>

namespace brimwright::planning {
namespace {

constexpr auto the_run = "the run";

Working make_working(const Run& run, const Pieces& pieces) {
  std::vector<Given> with = {{"to sell", in_figures(pieces.sell), the_run},
                             {"spoilage", in_figures(run.spoilage), the_run}};
  if (!run.batch.fills_moulds)
    return {.of = "make",
            .formula = "pieces to make = pieces to sell ÷ (1 − spoilage)",
            .with = with,
            .sum = in_figures(pieces.sell) + " ÷ (1 − " + in_figures(run.spoilage) + ")",
            .rounded = to_whole(Rounded::up),
            .comes_to = in_figures(pieces.make)};
  with.push_back({"fillings", in_figures(pieces.fillings)});
  with.push_back({"cavities", in_figures(pieces.cavities), "all moulds owned"});
  return {.of = "make",
          .formula =
              "pieces to make = fillings × cavities × pieces of one cast, as the moulds are "
              "all filled; no fewer than pieces to sell ÷ (1 − spoilage)",
          .with = with,
          .sum = in_figures(pieces.fillings) + " × " + in_figures(pieces.cavities) + " × " +
                 in_figures(pieces.per_cast),
          .comes_to = in_figures(pieces.make)};
}

Working fillings_working(const Pieces& pieces) {
  return {.of = "fillings",
          .formula = "fillings = cavities to fill ÷ cavities of all moulds owned",
          .with = {{"cavities to fill", in_figures(pieces.casts)},
                   {"cavities", in_figures(pieces.cavities), "all moulds owned"}},
          .sum = in_figures(pieces.casts) + " ÷ " + in_figures(pieces.cavities),
          .rounded = to_whole(Rounded::up),
          .comes_to = in_figures(pieces.fillings)};
}

Working batches_working(const Plan& plan) {
  Working working{.of = "batches",
                  .formula =
                      "batches = as few as the fillings and what sets their size allow, and "
                      "as even as can be",
                  .comes_to = in_figures(plan.pieces.batches)};
  for (const Batch& batch : plan.batches)
    working.with.push_back(
        {counted(batch.count(), "batch", "batches"), counted(batch.pieces, "piece")});
  for (const Limit& limit : plan.batch_limits)
    if (limit.sets) working.with.push_back({limit.what, limit.text});
  return working;
}

/// What of one batter is left after the cure.
Working cured_working(const chemistry::Formula& formula, const BatterTally& batter,
                      const PartMass& part) {
  const PartCure& cure = *batter.cure;
  Working working{
      .of = "cured_g",
      .formula = "cured = fresh × what the cure leaves of it; " + std::string("only water leaves"),
      .with = {{"fresh", in_figures(part.fresh)}},
      .comes_to = in_figures(*part.cured)};
  if (cure.curve) {
    working.formula =
        "cured = what stays in the end + what goes × e^(−days ÷ days to 63 %), of the fresh part";
    working.with.push_back({"stays in the end", in_figures(cure.curve->end)});
    working.with.push_back({"goes", in_figures(cure.curve->to_lose)});
    working.with.push_back(
        {"days to 63 %", trimmed(cure.curve->tau_days, 2) + " days", formula.name});
    return working;
  }
  const Weighing& weighing = batter.weighing;
  const Mass water = weighing.water + weighing.water_in_acids;
  const std::string lost = in_figures(*formula.water_lost_in_cure);
  working.with.push_back({"water of the batter", in_figures(water)});
  working.with.push_back({"the batter", in_figures(weighing.batter)});
  working.with.push_back({"of that water lost in cure", lost, formula.name});
  working.sum = in_figures(part.fresh) + " × (1 − " + in_figures(water) + " ÷ " +
                in_figures(weighing.batter) + " × " + lost + ")";
  return working;
}

/// The batch whose soap keeps least, which the plan tells of.
template <class Take>
const BatterTally& keeps_least(const Plan& plan, Take take) {
  const BatterTally* least = &take(plan.batches.front());
  for (const Batch& batch : plan.batches)
    if (take(batch).cure->cured < least->cure->cured) least = &take(batch);
  return *least;
}

/// Of a batch's topping, the whipping that keeps least.
const BatterTally& topping_of(const Batch& batch) {
  const BatterTally* least = &batch.whippings.front().pipe.batter;
  for (const Whipping& whipping : batch.whippings)
    if (whipping.pipe.batter.cure->cured < least->cure->cured) least = &whipping.pipe.batter;
  return *least;
}

Working sum_of_parts(const std::string& of, const std::vector<PartMass>& parts, Mass total,
                     bool is_cured) {
  Working working{.of = of,
                  .formula = is_cured
                                 ? "cured = sum over the parts of dry matter + water × (1 − share "
                                   "lost in cure)"
                                 : "fresh = sum of its parts",
                  .comes_to = in_figures(total)};
  std::vector<std::string> terms;
  for (const PartMass& part : parts) {
    terms.push_back(in_figures(is_cured ? *part.cured : part.fresh));
    working.with.push_back({part.name, in_figures(part.fresh) + " fresh",
                            part.cured ? in_figures(*part.cured) + " cured" : ""});
  }
  working.sum = added(terms);
  return working;
}

std::vector<Working> mass_workings(const Run& run, const Plan& plan) {
  const PieceTally& piece = plan.piece;
  std::vector<Working> all{sum_of_parts("fresh_g", piece.parts, piece.fresh, false)};
  if (piece.cured) all.push_back(sum_of_parts("cured_g", piece.parts, *piece.cured, true));
  if (piece.parts[0].cured)
    append_at(all, "parts.0",
              {cured_working(run.pour.formula,
                             keeps_least(plan,
                                         [](const Batch& batch) -> const BatterTally& {
                                           return batch.pour.batter;
                                         }),
                             piece.parts[0])});
  if (plan.pipe && piece.parts[1].cured)
    append_at(all, "parts.1",
              {cured_working(run.pipe->formula, keeps_least(plan, topping_of), piece.parts[1])});
  return all;
}

Working size_working(const Plan& plan) {
  const PieceSize& size = *plan.piece.size;
  return {.of = "size",
          .formula =
              "the box that the model of base, topping and decoration just fits, standing as "
              "it was poured",
          .with = {{"wide", in_figures(size.width)},
                   {"deep", in_figures(size.depth)},
                   {"high", in_figures(size.height)},
                   {"of it base to the pour line", in_figures(plan.pour.line)}}};
}

std::string in_money(const Money& money) { return amount_text(money) + " " + money.currency.code; }

std::string to_coin(const Currency& currency) {
  return "to the nearest " + amount_text({1, currency}) + " " + currency.code;
}

std::vector<Working> cost_workings(const Purse& purse, const Cost& cost, std::int64_t sell) {
  Working total{.of = "cost.total",
                .formula = "all materials = sum of (price ÷ pack × used), each to the coin",
                .comes_to = in_money(cost.total)};
  std::vector<std::string> terms;
  for (const CostLine& line : cost.lines) {
    const std::string used = in_figures(line.used) + " used";
    if (!line.cost) {
      total.with.push_back({line.name, "unpriced", used});
      continue;
    }
    if (line.is_from_tap) {
      total.with.push_back({line.name, "nothing", used + ", from the tap"});
      continue;
    }
    const Price& price = purse.prices.at(line.name);
    terms.push_back(in_money(*line.cost));
    total.with.push_back({line.name, terms.back(),
                          used + ", " + in_money(price.paid) + " for " + in_figures(price.pack)});
  }
  total.sum = added(terms);
  return {
      total,
      {.of = "cost.amount",
       .formula = "cost of a piece = all materials ÷ pieces to sell",
       .with = {{"all materials", in_money(cost.total)}, {"to sell", in_figures(sell), the_run}},
       .sum = in_money(cost.total) + " ÷ " + in_figures(sell),
       .rounded = to_coin(purse.currency),
       .comes_to = in_money(cost.per_piece)}};
}

constexpr Mass shown_of_a_bar = 0.1 * gram;

/// The lightest bar's weights, part by part as the piece's.
std::vector<Working> lightest_bar_workings(const PieceTally& piece) {
  const BarMass& bar = piece.bars[piece.lightest_bar];
  Working fresh{.of = "lightest.fresh_g",
                .formula = "the lightest bar, fresh = sum of what is sure to be in it",
                .rounded = to_step(Rounded::down, shown_of_a_bar),
                .comes_to = in_figures(bar.fresh)};
  Working cured{.of = "lightest.cured_g",
                .formula =
                    "the lightest bar, cured = sum over its parts of fresh × what the cure "
                    "leaves of such a part",
                .rounded = to_step(Rounded::down, shown_of_a_bar)};
  std::vector<std::string> all_fresh, all_cured;
  for (std::size_t i = 0; i < bar.parts.size(); ++i) {
    const PartMass& part = piece.parts[i];
    const std::string in_bar = in_figures(bar.parts[i]);
    all_fresh.push_back(in_bar);
    fresh.with.push_back({part.name, in_bar});
    if (!part.cured || !(part.fresh > Mass{})) continue;
    const std::string kept = in_figures(Share::of_one(*part.cured / part.fresh));
    all_cured.push_back(std::string(in_bar).append(" × ").append(kept));
    cured.with.push_back({part.name, in_bar + " fresh", kept + " left by the cure"});
  }
  fresh.sum = added(all_fresh);
  if (!bar.cured) return {fresh};
  cured.sum = added(all_cured);
  cured.comes_to = in_figures(*bar.cured);
  return {fresh, cured};
}

Working label_working(const LabelDraft& label) {
  return {.of = "label_g",
          .formula =
              "net quantity = the lightest piece to expect, down to what the label's rules let it "
              "state",
          .with = {{"lightest piece to expect", in_figures(label.lightest->mass),
                    label.lightest->because},
                   {"mean", in_figures(label.lightest->mean)}},
          .comes_to = in_figures(label.net->stated)};
}

}  // namespace

std::vector<Working> pieces_workings(const Run& run, const Plan& plan) {
  return {make_working(run, plan.pieces), fillings_working(plan.pieces), batches_working(plan)};
}

std::vector<Working> piece_workings(const Run& run, const Plan& plan) {
  std::vector<Working> all = mass_workings(run, plan);
  if (plan.cut) append_at(all, "", lightest_bar_workings(plan.piece));
  if (plan.piece.size) all.push_back(size_working(plan));
  if (plan.cost && is_any_priced(*plan.cost))
    append_at(all, "", cost_workings(*run.money, *plan.cost, plan.pieces.sell));
  if (plan.label && plan.label->net) all.push_back(label_working(*plan.label));
  return all;
}

std::vector<Working> label_workings(const LabelDraft& label) {
  if (!label.net) return {};
  const LightestPiece& lightest = *label.lightest;
  Working working{.of = "net_quantity.lightest_g",
                  .formula = "lightest piece to expect = " + lightest.from_what +
                             " − all that may be missing from it",
                  .with = {{lightest.from_what, in_figures(lightest.from)}},
                  .sum = in_figures(lightest.from),
                  .comes_to = in_figures(lightest.mass)};
  for (const auto& less : lightest.less) {
    working.with.push_back({less.for_what, in_figures(less.mass)});
    working.sum += " − " + in_figures(less.mass);
  }
  return {working};
}

std::vector<Working> cut_workings(const Run& run, const CutTally& cut, const PieceTally& piece) {
  const auto bars = static_cast<std::int64_t>(cut.bars.size());
  std::vector<Given> with = {{"rows", in_figures(cut.rows)},
                             {"columns", in_figures(cut.columns)},
                             {"usable along", in_figures(cut.usable_along), "what trimming leaves"},
                             {"usable across", in_figures(cut.usable_across)},
                             {"kerf", in_figures(run.cut->kerf), the_run},
                             {"smallest bar", in_figures(cut.least)},
                             {"largest bar", in_figures(cut.greatest)}};
  Working count{.of = "bars_each",
                .formula =
                    "bars = rows × columns that fit after trimming, planing and the kerf of "
                    "each cut",
                .with = with,
                .comes_to = in_figures(bars)};
  if (bars == cut.rows * cut.columns)
    count.sum = in_figures(cut.rows) + " × " + in_figures(cut.columns);
  else
    count.formula += "; a piece of less than half the largest is an offcut";
  return {count,
          {.of = "offcuts_ml",
           .formula = "offcuts = loaf − bars − kerf − planing, cut by planes",
           .with = {{"loaf", in_figures(cut.loaf)},
                    {"bars", in_figures(cut.in_bars())},
                    {"kerf", in_figures(cut.kerf)},
                    {"planing", in_figures(cut.planing)}},
           .sum = in_figures(cut.loaf) + " − " + in_figures(cut.in_bars()) + " − " +
                  in_figures(cut.kerf) + " − " + in_figures(cut.planing),
           .comes_to = in_figures(cut.offcuts)},
          {.of = "offcuts_g",
           .formula = "offcuts = what is cut off of each material × its density, added up",
           .with = {{"of all materials, in volume", in_figures(cut.offcuts)}},
           .comes_to = in_figures(piece.cut_off.offcuts)}};
}

std::vector<Working> bottle_part_workings(const BottleTally::Part& part, Mass holds, Mass batter,
                                          Mass all_batter) {
  return {{.of = "g",
           .formula = "out of the bottle = what it holds × this batter ÷ all batters of the run: "
                      "one rate in all",
           .with = {{"the bottle holds", in_figures(holds), the_run},
                    {"this batter", in_figures(batter)},
                    {"all batters of the run", in_figures(all_batter)}},
           .sum = in_figures(holds) + " × " + in_figures(batter) + " ÷ " + in_figures(all_batter),
           .rounded = to_step(Rounded::down, part.step),
           .comes_to = on_scale(part.gives, part.step)},
          {.of = "percent_of_batter",
           .formula = "of the batter = what it gets ÷ the batter",
           .with = {{"gets", in_figures(part.gives)}, {"the batter", in_figures(batter)}},
           .sum = in_figures(part.gives) + " ÷ " + in_figures(batter),
           .comes_to = in_figures(part.of_batter)}};
}

}  // namespace brimwright::planning
