#include "planning/plan.h"

#include "planning/batch_remarks.h"
#include "planning/batch_sums.h"
#include "planning/batching.h"
#include "planning/bench_heat.h"
#include "planning/cost.h"
#include "planning/cut_loaf.h"
#include "planning/decoration.h"
#include "planning/dusting.h"
#include "planning/embed.h"
#include "planning/fit_remarks.h"
#include "planning/fragrance.h"
#include "planning/layers.h"
#include "planning/named_things.h"
#include "planning/piece.h"
#include "planning/piece_tally.h"
#include "planning/plan_cautions.h"
#include "planning/topping.h"

#include <algorithm>
#include <functional>
#include <map>
#include <utility>

namespace brimwright::planning {
namespace {

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
PourTally poured_shape(const Run& run, std::vector<PerchFit>& fits, Length line,
                       const chemistry::BatterDensity& density) {
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
  batter.density = density.used;
  batter.density_computed = density.computed;
  batter.volume_each = curve.volume_below(line) - tally.displaced;
  batter.mass_each = batter.volume_each * batter.density;
  tally.poured_to = is_any_pressed_in(run) ? room.depth_at(batter.volume_each) : line;
  tally.layers = layers_of(run, room, tally.poured_to, density.used);
  return tally;
}

void weigh_pour(PourTally& tally, const Run& run, std::int64_t casts, Weighing weighed,
                const chemistry::BatterDensity& density) {
  auto& batter = tally.batter;
  batter.in_pieces = static_cast<double>(casts) * batter.mass_each;
  batter.weighing = std::move(weighed);
  batter.lost = batter.weighing.batter - batter.in_pieces;
  remark_on(batter.weighing, run.pour.formula, run.scales);
  auto& doubts = batter.weighing.doubts;
  doubts.insert(doubts.end(), density.remarks.begin(), density.remarks.end());
  fill_jugs(tally.layers, run, casts, Share::of_one(batter.weighing.fats / batter.weighing.batter));
}

/// What dries out is the batter's water, in liquids and acids too; other additives keep theirs.
void cure_batter(BatterTally& batter, const chemistry::Formula& formula, double in_a_piece) {
  const auto& weighing = batter.weighing;
  const double water = (weighing.water + weighing.water_in_acids) / weighing.batter;
  const Mass fresh = in_a_piece * batter.mass_each;
  batter.cure = cure_of(formula, fresh, water * fresh);
}

void add(std::vector<Caution>& all, const std::vector<Remark>& more, const std::string& whose,
         Concern concern, Topic topic = Topic::plan) {
  for (const auto& remark : more)
    all.push_back({{remark.severity, whose.empty() ? remark.text : whose + ": " + remark.text},
                   topic,
                   false,
                   concern});
}

/// What is doubtful in the formula's figures, a danger among it first of all.
void add_doubts(std::vector<Caution>& all, const std::vector<Remark>& doubts,
                const std::string& whose) {
  for (const Remark& doubt : doubts)
    add(all, {doubt}, whose,
        doubt.severity == Severity::danger ? Concern::superfat : Concern::data);
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
                               Topic::plan,
                               false,
                               Concern::label_and_cost});
  }
}

void tell_heat(BatterTally& batter, const chemistry::Formula& formula,
               const std::optional<chemistry::HeatQuestion>& warmth) {
  batter.heat = heat_of(warmth.value_or(chemistry::HeatQuestion{}), formula, batter.weighing);
}

void require_two_batters(const Run& run) {
  if (run.lye_pot && !run.pipe)
    throw UserError(run.lye_pot->where, "shares a pot of lye with a batter that is not there",
                    "a shared pot needs \"pour\" and \"pipe\"; leave \"lye_pot\" out");
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
  for (std::size_t i = 0; i < run.dust.size(); ++i) {
    plan.dust.push_back(dust_each(run, i, plan.pieces.per_cast, exposed_each));
    for (Batch& batch : plan.batches) {
      batch.dust.push_back(dust_for(plan.dust.back(), batch.pieces, run.scales));
      plan.dust.back().make += static_cast<double>(batch.count()) * batch.dust.back().make;
    }
  }
  if (!plan.cut) plan.piece.size = size_of(shape());
}

/// The topping of a batch, whipping by whipping.
std::vector<Whipping> whippings_of(const Run& run, std::int64_t casts, BatchTrials& trials,
                                   const BatchLimits& limits, double in_a_piece) {
  std::vector<Whipping> whippings;
  for (const std::int64_t each : casts_of_whippings(casts, run.batch.whippings)) {
    if (!whippings.empty() && whippings.back().casts == each) {
      ++whippings.back().count;
      continue;
    }
    Whipping whipping{1, each, trials.whipping(each)};
    tell_whipping(whipping.pipe, run, trials.topping());
    whipping.pipe.limits = limits.of_whipping;
    for (const Limit& limit : limits.of_whipping)
      if (limit.is_least) whipping.pipe.least_casts = limit.casts;
    cure_batter(whipping.pipe.batter, run.pipe->formula, in_a_piece);
    tell_heat(whipping.pipe.batter, run.pipe->formula, run.pipe->warmth);
    whippings.push_back(std::move(whipping));
  }
  return whippings;
}

Batch batch_of(const Run& run, std::int64_t casts, const PourTally& shape,
               const chemistry::BatterDensity& density, BatchTrials& trials,
               const BatchLimits& limits, const std::optional<CutTally>& cut) {
  Batch batch;
  batch.casts = casts;
  batch.pour = shape;
  weigh_pour(batch.pour, run, casts, trials.base(casts), density);
  cure_batter(batch.pour.batter, run.pour.formula, base_in_a_piece(cut));
  tell_heat(batch.pour.batter, run.pour.formula, run.pour.warmth);
  if (!run.pipe) return batch;
  batch.whippings = whippings_of(run, casts, trials, limits, topping_in_a_piece(cut));
  batch.pipe = sum_of(run, batch.whippings);
  if (!run.lye_pot) return batch;
  batch.lye_pot = lye_pot(batters_of_pot(run, batch), run.scales, *run.lye_pot);
  batch.pot_heat = heat_of_pot(warmth_of_pot(run), run.pour.formula, *batch.lye_pot);
  return batch;
}

/// Marks what keeps the batches from being larger, where there are several.
void mark_what_sets(std::vector<Limit>& limits, std::int64_t most, std::int64_t batches) {
  for (Limit& limit : limits) limit.sets = !limit.is_least && batches > 1 && limit.casts == most;
}

/// Counts the batches and weighs each different one.
void make_batches(Plan& plan, const Run& run, const PourTally& shape,
                  const chemistry::BatterDensity& density) {
  std::optional<Topping> topping;
  if (run.pipe) topping = topping_of(run, shape.headspace_volume);
  if (plan.cut && topping) plan.cut->topping = topping_parted(run, shape, *plan.cut, *topping);
  BatchTrials trials(run, shape, topping ? &*topping : nullptr);
  BatchLimits limits = limits_of(run, plan.pieces, trials);
  const Batching batching = batching_of(run, plan.pieces, limits);
  plan.pieces.batches = batching.batches;
  plan.around = around(run, plan.pieces, limits);
  mark_what_sets(limits.of_batch, limits.most, batching.batches);
  mark_what_sets(limits.of_whipping, limits.most / run.batch.whippings, batching.batches);

  std::map<std::int64_t, std::vector<std::int64_t>, std::greater<>> numbers;  // by casts
  std::int64_t number = 0;
  for (const auto& filling : batching.fillings)
    for (const std::int64_t casts : filling) numbers[casts].push_back(++number);
  for (auto& [casts, which] : numbers) {
    plan.batches.push_back(batch_of(run, casts, shape, density, trials, limits, plan.cut));
    plan.batches.back().pieces = casts * plan.pieces.per_cast;
    plan.batches.back().numbers = std::move(which);
  }
  plan.batch_limits = std::move(limits.of_batch);
  plan.pour = pour_of(run, plan.batches);
  if (run.pipe) plan.pipe = pipe_of(run, plan.batches);
}

}  // namespace

void collect_cautions(Plan& plan, const Run& run) {
  auto& all = plan.cautions;
  all.clear();
  const std::string base = plan.pipe ? "Base" : "";
  add(all, of_base(plan, Saying::alarms), base, Concern::superfat);
  add(all, of_topping(plan, Saying::alarms), "Topping", Concern::superfat);
  add(all, of_lye_pots(plan, Saying::alarms), "", Concern::superfat);
  add(all, of_base(plan, Saying::remarks), base, Concern::todays_batch);
  add(all, of_topping(plan, Saying::remarks), "Topping", Concern::todays_batch);
  add(all, of_heat(plan), "", Concern::todays_batch, Topic::heat);
  add(all, of_lye_pots(plan, Saying::remarks), "", Concern::todays_batch, Topic::lye);
  add(all, whip_remarks(plan), "", Concern::todays_batch);
  add(all, perch_remarks(run, plan), "", Concern::todays_batch);
  add(all, limit_cautions(run, plan), "", Concern::todays_batch);
  for (const auto& bottle : plan.bottles) add(all, bottle.remarks, "", Concern::todays_batch);
  add(all, of_counts(plan), "", Concern::todays_batch);
  add_doubts(all, of_base(plan, Saying::doubts), base);
  add_doubts(all, of_topping(plan, Saying::doubts), "Topping");
  add(all, run.pour.mould.remarks, "", Concern::data);
  for (const auto& decoration : run.perch)
    if (const auto* cast = std::get_if<InMould>(&decoration.made))
      add(all, cast->mould.remarks, decoration.name, Concern::data);
  add(all, run.remarks, "", Concern::data);
  add(all, hand_remarks(plan), "", Concern::data);
  if (run.pour.losses.overpour == Share{} && run.pour.losses.pot == Mass{} &&
      run.pour.losses.jugs == Mass{})
    all.push_back({{Severity::caution,
                    "No batter is allowed for pot, jugs and overpour; most runs lose some."},
                   Topic::plan});
  add(all, missing_limit_cautions(run, plan), "", Concern::label_and_cost);
  add(all, named_thing_remarks(run), "", Concern::label_and_cost);
  warn_of_unused_prices(plan, run);
  const auto bench = bench_cautions(run);
  all.insert(all.end(), bench.begin(), bench.end());
  put_in_order(all);
}

std::vector<PotBatter> batters_of_pot(const Run& run, const Batch& batch) {
  std::vector<PotBatter> batters{{run.pour.formula, batch.pour.batter.weighing, ""}};
  std::int64_t number = 0;
  for (const Whipping& whipping : batch.whippings)
    for (std::int64_t i = 0; i < whipping.count; ++i) {
      ++number;
      const std::string which = run.batch.whippings == 1 ? ""
                                                         : run.pipe->formula.name + ", whipping " +
                                                               std::to_string(number) + " of " +
                                                               std::to_string(run.batch.whippings);
      batters.push_back({run.pipe->formula, whipping.pipe.batter.weighing, which});
    }
  return batters;
}

Plan plan(const Run& run, const geometry::Progress& progress) {
  require_moves_over_the_cup(run);
  require_two_batters(run);
  Plan plan;
  plan.file = run.file;
  plan.name = run.name;
  const auto density =
      chemistry::batter_density(run.pour.formula, chemistry::proportions(run.pour.formula));
  const Length line = depth_of(run.pour.line, run.pour.mould, {run.file, "/pour/line"});
  auto fits = fits_of(run, line, progress);
  plan.pour = poured_shape(run, fits, line, density);
  if (run.cut) plan.cut = cut_tally(run, plan.pour, fits);
  plan.pieces =
      pieces_of(run, run.sell, plan.cut ? static_cast<std::int64_t>(plan.cut->bars.size()) : 1);
  make_batches(plan, run, PourTally(plan.pour), density);
  for (std::size_t i = 0; i < run.perch.size(); ++i)
    plan.perch.push_back(perch_tally(run, i, plan.pieces, std::move(fits[i])));
  measure_piece(plan, run);
  const auto size = plan.piece.size;
  plan.piece = piece_of(plan, run);
  plan.piece.size = size;
  if (run.label) plan.label = label_draft(run, plan);
  for (std::size_t i = 0; i < run.bottles.size(); ++i)
    share_bottle(plan, run, run.bottles[i],
                 {run.file, "/bottles/" + std::to_string(i) + "/shared"});
  if (run.money) plan.cost = cost_of(plan, *run.money);
  collect_cautions(plan, run);
  return plan;
}

}  // namespace brimwright::planning
