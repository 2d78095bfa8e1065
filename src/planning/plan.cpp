#include "planning/plan.h"

#include "geometry/enclosed_volume.h"
#include "planning/bench_heat.h"
#include "planning/cost.h"
#include "planning/decoration.h"
#include "planning/dusting.h"
#include "planning/embed.h"
#include "planning/fit_remarks.h"
#include "planning/fragrance.h"
#include "planning/layers.h"
#include "planning/piece.h"
#include "planning/piece_tally.h"
#include "planning/topping.h"
#include "units/rounding.h"

#include <algorithm>

namespace brimwright::planning {
namespace {

Pieces pieces_of(const Run& run, std::int64_t per_cast) {
  Pieces pieces;
  pieces.sell = run.sell;
  pieces.make = whole_up(static_cast<double>(run.sell) / (1 - run.spoilage.of_one()));
  pieces.per_cast = per_cast;
  pieces.casts = (pieces.make + per_cast - 1) / per_cast;
  pieces.cavities = std::int64_t{run.pour.mould.cavities} * run.pour.mould.owned;
  pieces.fillings = (pieces.casts + pieces.cavities - 1) / pieces.cavities;
  return pieces;
}

/// Buried embeds of all decorations, where they lie and what they displace.
std::vector<PerchFit> fits_of(const Run& run, Length line, const geometry::Progress& progress) {
  std::vector<PerchFit> fits(run.perch.size());
  std::optional<Hollow> hollow;  // made once, and only if something is buried
  for (std::size_t i = 0; i < run.perch.size(); ++i) {
    const auto& where = run.perch[i].where;
    if (std::holds_alternative<OnTop>(where)) fits[i] = fit_on_top(run, i);
    if (!std::holds_alternative<Buried>(where)) continue;
    if (!hollow) hollow = hollow_of(run, line);
    fits[i] = fit_buried(run, i, *hollow, progress);
  }
  require_apart(run, fits);
  return fits;
}

bool is_any_pressed_in(const Run& run) {
  return std::any_of(run.perch.begin(), run.perch.end(), [](const Decoration& decoration) {
    const auto* buried = std::get_if<Buried>(&decoration.where);
    return buried != nullptr && buried->pressed_in;
  });
}

/// What batter the cavity has room for: round the embeds that are there when it is poured.
FreeCurve room_at_the_pour(const Run& run, const std::vector<PerchFit>& fits) {
  std::vector<PerchFit> there = fits;
  for (std::size_t i = 0; i < fits.size(); ++i) {
    const auto* buried = std::get_if<Buried>(&run.perch[i].where);
    if (buried == nullptr || buried->pressed_in) there[i] = {};
  }
  return FreeCurve(run.pour.mould.curve, submerged(run, there));
}

/// Depths, volumes and layers of one cavity's pour. Embeds take up their room whenever they go in:
/// those pressed in afterwards raise a lower pour to the line.
PourTally poured_shape(const Run& run, std::vector<PerchFit>& fits, Length line, Density density) {
  const auto& curve = run.pour.mould.curve;
  PourTally tally;
  tally.line = line;
  tally.headspace = curve.height() - line;
  tally.brimful = curve.brimful();
  tally.surface = curve.free_surface(line);
  tally.headspace_volume = tally.brimful - curve.volume_below(line);
  for (const auto& fit : fits) {
    tally.displaced += fit.displaced;
    tally.headspace_volume -= fit.in_headspace;
  }
  const FreeCurve room = room_at_the_pour(run, fits);
  auto& batter = tally.batter;
  batter.density = density;
  batter.volume_each = curve.volume_below(line) - tally.displaced;
  tally.poured_to = is_any_pressed_in(run) ? room.depth_at(batter.volume_each) : line;
  tally.layers = layers_of(run, room, tally.poured_to, density);
  return tally;
}

void weigh_pour(PourTally& tally, const Run& run, const Pieces& pieces,
                const chemistry::BatterDensity& density) {
  auto& batter = tally.batter;
  batter.density_computed = density.computed;
  batter.mass_each = batter.volume_each * batter.density;
  batter.in_pieces = static_cast<double>(pieces.casts) * batter.mass_each;
  const auto& losses = run.pour.losses;
  const Mass to_make = batter.in_pieces * (1 + losses.overpour.of_one()) + losses.pot +
                       losses.jugs + losses.test_piece;
  batter.weighing = weighing_of(run.pour.formula, to_make, run.scales);
  batter.lost = batter.weighing.batter - batter.in_pieces;
  auto& remarks = batter.weighing.remarks;
  remarks.insert(remarks.end(), density.remarks.begin(), density.remarks.end());
  share_batter(tally.layers, run, batter.weighing.batter,
               Share::of_one(batter.weighing.fats / batter.weighing.batter));
}

/// What dries out is the batter's water, in liquids and acids too; other additives keep theirs.
void cure_batter(BatterTally& batter, const chemistry::Formula& formula) {
  const auto& weighing = batter.weighing;
  const double water = (weighing.water + weighing.water_in_acids) / weighing.batter;
  batter.cure = cure_of(formula, batter.mass_each, water * batter.mass_each);
}

void add(std::vector<Caution>& all, const std::vector<Remark>& more, const std::string& whose,
         Topic topic = Topic::plan) {
  for (const auto& remark : more)
    all.push_back(
        {{remark.severity, whose.empty() ? remark.text : whose + ": " + remark.text}, topic});
}

/// Of the lyes that are made: the shared one instead of each batter's own.
void add_heat(std::vector<Caution>& all, const Plan& plan) {
  const auto& base = *plan.pour.batter.heat;
  add(all, plan.pot_heat ? plan.pot_heat->remarks : base.remarks, "", Topic::heat);
  add(all, base.pour_remarks, "", Topic::heat);
  if (!plan.pipe) return;
  const auto& topping = *plan.pipe->batter.heat;
  if (!plan.pot_heat) add(all, topping.remarks, "", Topic::heat);
  add(all, topping.pour_remarks, "", Topic::heat);
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

void collect_cautions(Plan& plan, const Run& run) {
  auto& all = plan.cautions;
  // First of their severity, as the sort below keeps the order.
  add(all, plan.pour.batter.weighing.alarms, plan.pipe ? "Base" : "");
  if (plan.pipe) add(all, plan.pipe->batter.weighing.alarms, "Topping");
  if (plan.lye_pot) add(all, plan.lye_pot->alarms, "");
  add(all, plan.pour.batter.weighing.remarks, plan.pipe ? "Base" : "");
  if (plan.pipe) add(all, plan.pipe->batter.weighing.remarks, "Topping");
  add_heat(all, plan);
  if (plan.lye_pot) add(all, plan.lye_pot->remarks, "", Topic::lye);
  add(all, run.pour.mould.remarks, "");
  for (const auto& decoration : run.perch)
    if (const auto* cast = std::get_if<InMould>(&decoration.made))
      add(all, cast->mould.remarks, decoration.name);
  add(all, whip_remarks(plan), "");
  add(all, perch_remarks(run, plan), "");
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

void tell_heat(BatterTally& batter, const chemistry::Formula& formula,
               const std::optional<chemistry::HeatQuestion>& warmth) {
  batter.heat = heat_of(warmth.value_or(chemistry::HeatQuestion{}), formula, batter.weighing);
}

std::optional<LyePot> shared_pot(const Run& run, const Plan& plan) {
  if (!run.lye_pot) return std::nullopt;
  if (!plan.pipe)
    throw UserError(run.lye_pot->where, "shares a pot of lye with a batter that is not there",
                    "a shared pot needs \"pour\" and \"pipe\"; leave \"lye_pot\" out");
  return lye_pot({{run.pour.formula, plan.pour.batter.weighing},
                  {run.pipe->formula, plan.pipe->batter.weighing}},
                 run.scales, *run.lye_pot);
}

/// Where the batters' benches differ, what makes the pot hotter, and the colder of its uses.
chemistry::HeatQuestion warmth_of_pot(const Run& run) {
  auto pot = run.pour.warmth.value_or(chemistry::HeatQuestion{});
  const auto topping = run.pipe->warmth.value_or(chemistry::HeatQuestion{});
  const auto warmer = [](auto& one, const auto& other) { one = std::max(one, other); };
  warmer(pot.lye_made_at, topping.lye_made_at);
  warmer(pot.water_at, topping.water_at);
  pot.ice_share = std::min(pot.ice_share, topping.ice_share);
  if (!pot.lye_used_at || (topping.lye_used_at && *topping.lye_used_at < *pot.lye_used_at)) {
    pot.lye_used_at = topping.lye_used_at;
    pot.cooled_in = topping.cooled_in;
  }
  return pot;
}

CutTally cut_tally(const Run& run, const PourTally& pour) {
  const auto layers = base_solids(run, pour);
  Volume solids;
  for (const auto& layer : layers) solids += geometry::enclosed_volume(layer);
  const Volume loaf = pour.batter.volume_each + pour.displaced;
  return cut_of(*run.cut, layers, loaf / solids, {run.file, "/cut"});
}

/// The shape of the whole piece, and the surface that powders go over.
void measure_piece(Plan& plan, const Run& run) {
  std::optional<PieceModel> model;  // made once, and only if it is asked for
  std::optional<Area> exposed;      // one for all powders
  const auto shape = [&]() -> const PieceModel& {
    if (!model) model = piece_model(run, plan);
    return *model;
  };
  const auto exposed_each = [&] {
    if (!exposed) exposed = exposed_area(run, shape());
    return *exposed;
  };
  for (std::size_t i = 0; i < run.dust.size(); ++i)
    plan.dust.push_back(dust_tally(run, i, plan.pieces, exposed_each));
  if (!plan.cut) plan.piece.size = size_of(shape());
}

}  // namespace

Plan plan(const Run& run, const geometry::Progress& progress) {
  require_moves_over_the_cup(run);
  Plan plan;
  plan.file = run.file;
  plan.name = run.name;
  const auto density =
      chemistry::batter_density(run.pour.formula, chemistry::proportions(run.pour.formula));
  const Length line = depth_of(run.pour.line, run.pour.mould, {run.file, "/pour/line"});
  auto fits = fits_of(run, line, progress);
  plan.pour = poured_shape(run, fits, line, density.used);
  if (run.cut) plan.cut = cut_tally(run, plan.pour);
  plan.pieces = pieces_of(run, plan.cut ? static_cast<std::int64_t>(plan.cut->bars.size()) : 1);
  weigh_pour(plan.pour, run, plan.pieces, density);
  if (run.pipe) plan.pipe = pipe_tally(run, plan.pieces, plan.pour.headspace_volume);
  for (std::size_t i = 0; i < run.perch.size(); ++i)
    plan.perch.push_back(perch_tally(run, i, plan.pieces, std::move(fits[i])));
  measure_piece(plan, run);
  cure_batter(plan.pour.batter, run.pour.formula);
  tell_heat(plan.pour.batter, run.pour.formula, run.pour.warmth);
  if (plan.pipe) {
    cure_batter(plan.pipe->batter, run.pipe->formula);
    tell_heat(plan.pipe->batter, run.pipe->formula, run.pipe->warmth);
  }
  plan.lye_pot = shared_pot(run, plan);
  if (plan.lye_pot)
    plan.pot_heat = heat_of_pot(warmth_of_pot(run), run.pour.formula, *plan.lye_pot);
  const auto size = plan.piece.size;
  plan.piece = piece_of(plan, run);
  plan.piece.size = size;
  if (run.label) plan.label = label_draft(run, plan);
  for (std::size_t i = 0; i < run.bottles.size(); ++i)
    plan.bottles.push_back(bottle_tally(run, plan, run.bottles[i],
                                        {run.file, "/bottles/" + std::to_string(i) + "/shared"}));
  if (run.money) plan.cost = cost_of(plan, *run.money);
  collect_cautions(plan, run);
  return plan;
}

}  // namespace brimwright::planning
