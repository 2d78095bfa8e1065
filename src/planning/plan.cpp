#include "planning/plan.h"

#include "planning/cost.h"
#include "planning/decoration.h"
#include "planning/fragrance.h"
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

/// What dries out is the batter's water, in liquids too; other additives keep theirs.
void cure_batter(BatterTally& batter, const chemistry::Formula& formula) {
  const double water = batter.weighing.water / batter.weighing.batter;
  batter.cure = cure_of(formula, batter.mass_each, water * batter.mass_each);
}

PieceTally piece_of(const Plan& plan) {
  PieceTally piece;
  for (const auto& decoration : plan.perch)
    piece.fresh += static_cast<double>(decoration.per_piece) * decoration.mass_each;
  for (const auto& dust : plan.dust) piece.fresh += dust.each;
  piece.cured = piece.fresh;
  std::vector<const BatterTally*> batters{&plan.pour.batter};
  if (plan.pipe) batters.push_back(&plan.pipe->batter);
  for (const BatterTally* batter : batters) {
    piece.fresh += batter->mass_each;
    piece.cured = piece.cured && batter->cure ? std::optional(*piece.cured + batter->cure->cured)
                                              : std::nullopt;
  }
  return piece;
}

void add(std::vector<Caution>& all, const std::vector<Remark>& more, const std::string& whose) {
  for (const auto& remark : more)
    all.push_back(
        {{remark.severity, whose.empty() ? remark.text : whose + ": " + remark.text}, Topic::plan});
}

void warn_of_unused_prices(Plan& plan, const Run& run) {
  if (!plan.cost) return;
  for (const auto& [name, price] : run.money->prices) {
    const auto& lines = plan.cost->lines;
    const bool is_used =
        std::any_of(lines.begin(), lines.end(), [&](const CostLine& l) { return l.name == name; });
    if (!is_used)
      plan.cautions.push_back({{Severity::note, "The price of \"" + name +
                                                    "\" is not used: nothing of that name goes "
                                                    "into this run."},
                               Topic::plan});
  }
}

void warn_of_the_whip(Plan& plan) {
  const auto& now = plan.pipe ? plan.pipe->pieces_now : std::nullopt;
  if (!now || *now >= plan.pieces.make) return;
  const std::int64_t short_by = plan.pieces.make - *now;
  plan.cautions.push_back(
      {{Severity::caution, "At today's whip the bowl pipes " + std::to_string(*now) + " of " +
                               std::to_string(plan.pieces.make) + " pieces: short by " +
                               std::to_string(short_by) + ". Whip lighter or make more."},
       Topic::plan});
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
    all.push_back({{Severity::caution,
                    "No batter is allowed for pot, jugs and overpour; most runs lose some."},
                   Topic::plan});
  add(all, limit_cautions(run, plan), "");
  for (const auto& bottle : plan.bottles) add(all, bottle.remarks, "");
  const auto bench = bench_cautions(run);
  all.insert(all.end(), bench.begin(), bench.end());
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
  cure_batter(plan.pour.batter, run.pour.formula);
  if (plan.pipe) cure_batter(plan.pipe->batter, run.pipe->formula);
  plan.piece = piece_of(plan);
  if (run.label) plan.label = label_draft(run, plan);
  for (std::size_t i = 0; i < run.bottles.size(); ++i)
    plan.bottles.push_back(bottle_tally(run, plan, run.bottles[i],
                                        {run.file, "/bottles/" + std::to_string(i) + "/shared"}));
  if (run.money) plan.cost = cost_of(plan, *run.money);
  collect_cautions(plan, run);
  return plan;
}

}  // namespace brimwright::planning
