#include "planning/day_lye.h"

#include "chemistry/batter_density.h"
#include "planning/batch_limits.h"
#include "planning/bench_heat.h"
#include "planning/shared_pot.h"
#include "units/rounding.h"
#include "units/share_of.h"

#include <algorithm>
#include <cmath>

namespace brimwright::planning {
namespace {

Mass sum_of(const PotBatter& batter, Role role) {
  Mass sum;
  for (const Ingredient& i : batter.weighing.ingredients)
    if (i.role == role) sum += role == Role::water ? i.exact : i.weighed;
  return sum;
}

bool is_one_alkali(const chemistry::FormulaAlkali& one, const chemistry::FormulaAlkali& other) {
  constexpr double nothing = 1e-9;
  return one.alkali == other.alkali && std::abs((one.share - other.share).of_one()) < nothing &&
         std::abs((one.purity - other.purity).of_one()) < nothing;
}

/// Water for each gram of alkali may differ by what no scale shows.
bool is_one_lye(const PotBatter& one, const PotBatter& other) {
  const auto& ours = one.formula.alkalis;
  const auto& others = other.formula.alkalis;
  if (!std::equal(ours.begin(), ours.end(), others.begin(), others.end(), is_one_alkali))
    return false;
  const auto water = [](const PotBatter& batter) {
    return sum_of(batter, Role::water) / sum_of(batter, Role::alkali);
  };
  constexpr double apart = 0.001;
  return std::abs(water(one) - water(other)) <= apart * std::max(water(one), water(other));
}

bool has_each_of(const PotOfBatch& one, const PotOfBatch& other) {
  return std::all_of(one.batters.begin(), one.batters.end(), [&](const PotBatter& batter) {
    return std::any_of(other.batters.begin(), other.batters.end(),
                       [&](const PotBatter& its) { return is_one_lye(batter, its); });
  });
}

Volume volume_of(const PotOfBatch& pot) {
  Volume volume;
  for (const PotBatter& batter : pot.batters) {
    std::vector<Mass> alkalis(batter.formula.alkalis.size());
    for (const Ingredient& i : batter.weighing.ingredients)
      if (i.role == Role::alkali) alkalis[i.index] += i.weighed;
    volume += chemistry::lye_volume(batter.formula, alkalis, batter.weighing.plain_water());
  }
  return volume;
}

}  // namespace

std::vector<PotOfBatch> pots_of(const Run& run, const Batch& batch) {
  using For = PotOfBatch::For;
  const auto all = run.pipe
                       ? batters_of_pot(run, batch)
                       : std::vector<PotBatter>{{run.pour.formula, batch.pour.batter.weighing, ""}};
  if (run.lye_pot && run.pipe) return {{For::all, all, temperatures_of_pot(run)}};
  const chemistry::HeatQuestion unknown;
  std::vector<PotOfBatch> pots = {
      {For::base, {all.front()}, run.pour.temperatures.value_or(unknown)}};
  if (run.pipe && !batch.whippings.empty())
    pots.push_back(
        {For::topping, {all.begin() + 1, all.end()}, run.pipe->temperatures.value_or(unknown)});
  return pots;
}

std::string keeps_its_own(const PotOfBatch& pot) {
  for (const PotBatter& batter : pot.batters) {
    for (const auto& alkali : batter.formula.alkalis)
      if (alkali.solution) return "the lye solution of " + batter.formula.name + " stands ready";
    if (batter.weighing.water_in_liquids > Mass{})
      return "other liquids take the place of water in " + batter.formula.name;
  }
  return "";
}

bool take_the_same_lye(const PotOfBatch& one, const PotOfBatch& other) {
  return one.what == other.what && has_each_of(one, other) && has_each_of(other, one);
}

std::int64_t batches_in_pot(Volume holds, const std::vector<PotOfBatch>& pots) {
  Volume largest;
  for (const PotOfBatch& pot : pots) largest = std::max(largest, volume_of(pot));
  return whole_down(fullest_lye_jug * holds / largest);
}

chemistry::HeatFindings heat_of_day_pot(const std::vector<chemistry::HeatQuestion>& benches,
                                        const chemistry::Formula& formula, const LyePot& pot) {
  chemistry::HeatFindings hottest = heat_of_pot(benches.front(), formula, pot);
  for (const auto& bench : benches) {
    auto heat = heat_of_pot(bench, formula, pot);
    if (heat.peak.peak > hottest.peak.peak) hottest = std::move(heat);
  }
  return hottest;
}

}  // namespace brimwright::planning
