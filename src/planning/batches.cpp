#include "planning/batches.h"

#include "planning/batch_sums.h"
#include "planning/batching.h"
#include "planning/bench_heat.h"
#include "planning/cure.h"
#include "planning/layers.h"
#include "planning/piece_tally.h"
#include "planning/shared_pot.h"
#include "planning/weighing_remarks.h"

#include <functional>
#include <map>
#include <optional>
#include <utility>

namespace brimwright::planning {
namespace {

void pour(PourTally& tally, const Run& run, std::int64_t casts, BaseOfBatch base) {
  auto& batter = tally.batter;
  batter.in_pieces = static_cast<double>(casts) * batter.mass_each;
  batter.weighing = std::move(base.weighing);
  batter.heat = std::move(base.heat);
  batter.lost = batter.weighing.batter - batter.in_pieces;
  fill_jugs(tally.layers, run, casts, Share::of_one(batter.weighing.fats / batter.weighing.batter));
}

/// What dries out is the batter's water, in liquids and acids too; other additives keep theirs.
void cure_batter(BatterTally& batter, const chemistry::Formula& formula, double in_a_piece) {
  const auto& weighing = batter.weighing;
  const double water = (weighing.water + weighing.water_in_acids) / weighing.batter;
  const Mass fresh = in_a_piece * batter.mass_each;
  batter.cure = cure_of(formula, fresh, water * fresh);
}

chemistry::HeatFindings heat_told(const Weighing& weighing, const chemistry::Formula& formula,
                                  const std::optional<chemistry::HeatQuestion>& temperatures) {
  return heat_of(temperatures.value_or(chemistry::HeatQuestion{}), formula, weighing);
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
    whipping.pipe.batter.heat =
        heat_told(whipping.pipe.batter.weighing, run.pipe->formula, run.pipe->temperatures);
    whippings.push_back(std::move(whipping));
  }
  return whippings;
}

/// Marks what keeps the batches from being larger, where there are several.
void mark_what_sets(std::vector<Limit>& limits, std::int64_t most, std::int64_t batches) {
  for (Limit& limit : limits) limit.sets = !limit.is_least && batches > 1 && limit.casts == most;
}

/// Which of the batches, counted from 1 in the order of making, are of so many casts.
std::map<std::int64_t, std::vector<std::int64_t>, std::greater<>> numbers_by_casts(
    const std::vector<std::vector<std::int64_t>>& fillings) {
  std::map<std::int64_t, std::vector<std::int64_t>, std::greater<>> numbers;
  std::int64_t number = 0;
  for (const auto& filling : fillings)
    for (const std::int64_t casts : filling) numbers[casts].push_back(++number);
  return numbers;
}

std::int64_t count_of(const std::vector<std::vector<std::int64_t>>& fillings) {
  std::size_t count = 0;
  for (const auto& filling : fillings) count += filling.size();
  return static_cast<std::int64_t>(count);
}

}  // namespace

BaseOfBatch told_base(Weighing weighed, const Run& run, const Measured& measured) {
  const auto& formula = run.pour.formula;
  remark_on(weighed, formula, measured.pour.batter.per_fat, run.scales);
  auto& doubts = weighed.doubts;
  const auto& of_density = measured.density.remarks;
  doubts.insert(doubts.end(), of_density.begin(), of_density.end());
  auto heat = heat_told(weighed, formula, run.pour.temperatures);
  return {std::move(weighed), std::move(heat)};
}

Batch batch_of(const Run& run, const Measured& measured, std::int64_t casts, BatchTrials& trials,
               const BatchLimits& limits, BaseOfBatch base) {
  Batch batch;
  batch.casts = casts;
  batch.pour = measured.pour;
  pour(batch.pour, run, casts, std::move(base));
  cure_batter(batch.pour.batter, run.pour.formula, base_in_a_piece(measured.cut));
  if (!run.pipe) return batch;
  batch.whippings = whippings_of(run, casts, trials, limits, topping_in_a_piece(measured.cut));
  batch.pipe = sum_of(run, batch.whippings);
  if (run.lye_pot) share_lye(batch, run);
  return batch;
}

Batches batches_of(const Run& run, const Measured& measured, const Pieces& pieces,
                   BatchTrials& trials) {
  BatchLimits limits = limits_of(run, pieces, trials);
  const auto fillings = dealt_within(run, pieces, limits);
  Pieces counted = pieces;
  counted.batches = count_of(fillings);
  mark_what_sets(limits.of_batch, limits.most, counted.batches);
  mark_what_sets(limits.of_whipping, limits.most / run.batch.whippings, counted.batches);
  Batches batches{.count = counted.batches,
                  .different = {},
                  .limits = limits.of_batch,
                  .around = around(run, counted, limits)};
  for (auto& [casts, numbers] : numbers_by_casts(fillings)) {
    batches.different.push_back(batch_of(run, measured, casts, trials, limits,
                                         told_base(trials.base(casts), run, measured)));
    batches.different.back().pieces = casts * pieces.per_cast;
    batches.different.back().numbers = std::move(numbers);
  }
  return batches;
}

}  // namespace brimwright::planning
