#include "planning/batch_sums.h"

#include <algorithm>

namespace brimwright::planning {
namespace {

struct Batters {
  std::int64_t count;
  const BatterTally& each;
};

/// Into `sum`, which is the first of them.
void sum_up(BatterTally& sum, const chemistry::Formula& formula, const std::vector<Batters>& all) {
  std::vector<Weighings> weighings;
  sum.in_pieces = sum.lost = Mass{};
  for (const auto& [count, each] : all) {
    weighings.push_back({count, each.weighing});
    sum.in_pieces += static_cast<double>(count) * each.in_pieces;
    sum.lost += static_cast<double>(count) * each.lost;
    if (each.cure && each.cure->cured < sum.cure->cured) sum.cure = each.cure;
  }
  sum.weighing = sum_of(formula, weighings);
}

struct Pipes {
  std::int64_t count;
  const PipeTally& each;
};

PipeTally sum_of_pipes(const Run& run, const std::vector<Pipes>& all) {
  PipeTally sum = all.front().each;
  std::vector<Batters> batters;
  sum.whippings = 0;
  sum.left_behind = Mass{};
  if (sum.loads) sum.loads = 0;
  for (const auto& [count, each] : all) {
    batters.push_back({count, each.batter});
    sum.whippings += count * each.whippings;
    sum.left_behind += static_cast<double>(count) * each.left_behind;
    if (sum.loads) *sum.loads += count * *each.loads;
  }
  sum_up(sum.batter, run.pipe->formula, batters);
  return sum;
}

void sum_up_layers(PourTally& sum, const std::vector<Batch>& batches) {
  for (std::size_t i = 0; i < sum.layers.size(); ++i) {
    LayerTally& layer = sum.layers[i];
    layer.mass = Mass{};
    for (auto& colour : layer.colours) colour.exact = colour.weighed = Mass{};
    for (auto& colour : layer.colours)
      if (colour.spoonful) colour.spoonful = Volume{};
    for (const Batch& batch : batches) {
      const auto times = static_cast<double>(batch.count());
      const LayerTally& one = batch.pour.layers[i];
      layer.mass += times * one.mass;
      for (std::size_t k = 0; k < one.colours.size(); ++k) {
        layer.colours[k].exact += times * one.colours[k].exact;
        layer.colours[k].weighed += times * one.colours[k].weighed;
        layer.colours[k].step = std::min(layer.colours[k].step, one.colours[k].step);
        if (one.colours[k].spoonful) *layer.colours[k].spoonful += times * *one.colours[k].spoonful;
      }
    }
  }
}

}  // namespace

PipeTally sum_of(const Run& run, const std::vector<Whipping>& whippings) {
  std::vector<Pipes> all;
  for (const Whipping& whipping : whippings) all.push_back({whipping.count, whipping.pipe});
  return sum_of_pipes(run, all);
}

PourTally pour_of(const Run& run, const std::vector<Batch>& batches) {
  PourTally sum = batches.front().pour;
  std::vector<Batters> batters;
  for (const Batch& batch : batches) batters.push_back({batch.count(), batch.pour.batter});
  sum_up(sum.batter, run.pour.formula, batters);
  sum_up_layers(sum, batches);
  return sum;
}

PipeTally pipe_of(const Run& run, const std::vector<Batch>& batches) {
  std::vector<Pipes> all;
  for (const Batch& batch : batches) all.push_back({batch.count(), *batch.pipe});
  return sum_of_pipes(run, all);
}

}  // namespace brimwright::planning
