#include "planning/plan.h"

#include "planning/cost.h"
#include "planning/decoration.h"
#include "planning/layers.h"
#include "planning/topping.h"
#include "units/printing.h"
#include "units/rounding.h"

#include <algorithm>

namespace brimwright::planning {
namespace {

Pieces pieces_of(const Run& run) {
  Pieces pieces;
  pieces.sell = run.sell;
  pieces.make = whole_up(static_cast<double>(run.sell) / (1 - run.spoilage.of_one()));
  pieces.cavities = std::int64_t{run.pour.mould.cavities} * run.pour.mould.owned;
  pieces.fillings =
      whole_up(static_cast<double>(pieces.make) / static_cast<double>(pieces.cavities));
  return pieces;
}

PourTally pour_tally(const Run& run, const Pieces& pieces) {
  const Pour& pour = run.pour;
  const auto& curve = pour.mould.curve;
  PourTally tally;
  tally.line = depth_of(pour.line, pour.mould, {run.file, "/pour/line"});
  tally.headspace = curve.height() - tally.line;
  tally.brimful = curve.brimful();
  tally.surface = curve.free_surface(tally.line);
  auto& batter = tally.batter;
  batter.volume_each = curve.volume_below(tally.line);
  tally.headspace_volume = tally.brimful - batter.volume_each;

  const auto per_fat = chemistry::proportions(pour.formula);
  const auto density = chemistry::batter_density(pour.formula, per_fat);
  batter.density = density.used;
  batter.density_computed = density.computed;
  batter.mass_each = batter.volume_each * batter.density;
  batter.in_pieces = static_cast<double>(pieces.make) * batter.mass_each;
  const auto& losses = pour.losses;
  const Mass to_make = batter.in_pieces * (1 + losses.overpour.of_one()) + losses.pot +
                       losses.jugs + losses.test_piece;
  batter.weighing = weighing_of(pour.formula, to_make, run.scales);
  batter.lost = batter.weighing.batter - batter.in_pieces;
  auto& remarks = batter.weighing.remarks;
  remarks.insert(remarks.end(), density.remarks.begin(), density.remarks.end());

  tally.layers = layers_of(run, tally.line, batter.density);
  share_batter(tally.layers, run, batter.weighing.batter,
               Share::of_one(batter.weighing.fats / batter.weighing.batter));
  return tally;
}

DustTally dust_tally(const Dusting& dusting, const Pieces& pieces, const Scales& scales) {
  const Mass all = static_cast<double>(pieces.make) * dusting.per_piece;
  return {dusting.name, dusting.per_piece, rounded_up(all, scales.fine.reads)};
}

/// Dry matter and what is left of the water; additives' own water is counted as staying.
std::optional<Mass> cured(const BatterTally& batter, const chemistry::Formula& formula) {
  if (!formula.water_lost_in_cure) return std::nullopt;
  const double water = batter.weighing.water / batter.weighing.batter;
  return batter.mass_each * (1 - water * formula.water_lost_in_cure->of_one());
}

PieceTally piece_of(const Plan& plan, const Run& run) {
  PieceTally piece;
  piece.fresh = plan.pour.batter.mass_each;
  piece.cured = cured(plan.pour.batter, run.pour.formula);
  if (plan.pipe) {
    piece.fresh += plan.pipe->batter.mass_each;
    const auto topping = cured(plan.pipe->batter, run.pipe->formula);
    piece.cured = piece.cured && topping ? std::optional(*piece.cured + *topping) : std::nullopt;
  }
  Mass dry;
  for (const auto& decoration : plan.perch)
    dry += static_cast<double>(decoration.per_piece) * decoration.mass_each;
  for (const auto& dust : plan.dust) dry += dust.each;
  piece.fresh += dry;
  if (piece.cured) *piece.cured += dry;
  return piece;
}

void add(std::vector<Remark>& all, const std::vector<Remark>& more, const std::string& whose) {
  for (const auto& remark : more)
    all.push_back({remark.severity, whose.empty() ? remark.text : whose + ": " + remark.text});
}

/// Work that can hurt. The usual cautions of lye and of hot, strong and sensitising things.
std::vector<Remark> bench_cautions(const Run& run) {
  std::vector<Remark> cautions = {
      {Severity::caution,
       "Lye burns skin and eyes and heats up as it dissolves. Goggles, gloves, long sleeves, fresh "
       "air; add the alkali to the water, never water to alkali. Stainless steel or suitable "
       "plastic, never aluminium. On skin: rinse long with water; in eyes: rinse and get help."},
      {Severity::caution,
       "Check these weights with a second source before a first making, and test a piece before "
       "you sell. Local rules on chemicals, cosmetics and labels come first."}};
  if (run.pipe || !run.perch.empty())
    cautions.push_back({Severity::caution,
                        "A piece that looks like food, or has small parts that come off, can be "
                        "swallowed: mind the rules for look-alike products where you sell."});
  if (!run.dust.empty())
    cautions.push_back(
        {Severity::caution, "Dust powders low and slowly, with a mask on, away from the fan."});
  return cautions;
}

void warn_of_unused_prices(Plan& plan, const Run& run) {
  if (!plan.cost) return;
  for (const auto& [name, price] : run.money->prices) {
    const auto& lines = plan.cost->lines;
    const bool is_used =
        std::any_of(lines.begin(), lines.end(), [&](const CostLine& l) { return l.name == name; });
    if (!is_used)
      plan.cautions.push_back({Severity::note, "The price of \"" + name +
                                                   "\" is not used: nothing of that name goes "
                                                   "into this run."});
  }
}

void warn_of_the_whip(Plan& plan) {
  const auto& now = plan.pipe ? plan.pipe->pieces_now : std::nullopt;
  if (!now || *now >= plan.pieces.make) return;
  const std::int64_t short_by = plan.pieces.make - *now;
  plan.cautions.push_back(
      {Severity::caution, "At today's whip the bowl pipes " + std::to_string(*now) + " of " +
                              std::to_string(plan.pieces.make) + " pieces: short by " +
                              std::to_string(short_by) + ". Whip lighter or make more."});
}

void collect_cautions(Plan& plan, const Run& run) {
  auto& all = plan.cautions;
  add(all, plan.pour.batter.weighing.remarks, plan.pipe ? "Base" : "");
  if (plan.pipe) add(all, plan.pipe->batter.weighing.remarks, "Topping");
  add(all, run.pour.mould.remarks, "");
  for (const auto& decoration : run.perch) add(all, decoration.mould.remarks, decoration.name);
  warn_of_the_whip(plan);
  warn_of_unused_prices(plan, run);
  if (run.pour.losses.overpour == Share{} && run.pour.losses.pot == Mass{} &&
      run.pour.losses.jugs == Mass{})
    all.push_back({Severity::caution,
                   "No batter is allowed for pot, jugs and overpour; most runs lose some."});
  add(all, bench_cautions(run), "");
  std::stable_sort(all.begin(), all.end(),
                   [](const Remark& a, const Remark& b) { return a.severity > b.severity; });
}

}  // namespace

Plan plan(const Run& run) {
  Plan plan;
  plan.file = run.file;
  plan.name = run.name;
  plan.pieces = pieces_of(run);
  plan.pour = pour_tally(run, plan.pieces);
  if (run.pipe) plan.pipe = pipe_tally(run, plan.pieces, plan.pour.headspace_volume);
  for (std::size_t i = 0; i < run.perch.size(); ++i)
    plan.perch.push_back(perch_tally(run, i, plan.pieces));
  for (const auto& dusting : run.dust)
    plan.dust.push_back(dust_tally(dusting, plan.pieces, run.scales));
  plan.piece = piece_of(plan, run);
  if (run.money) plan.cost = cost_of(plan, *run.money);
  collect_cautions(plan, run);
  return plan;
}

}  // namespace brimwright::planning
