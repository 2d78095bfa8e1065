#pragma once

#include "planning/plan.h"
#include "planning/run.h"
#include "planning/topping.h"

#include <cstdint>
#include <map>
#include <optional>

namespace brimwright::planning {

/// Weighs batters for any number of casts, each once, without what is to be said of them.
class BatchTrials {
 public:
  /// `topping` where the run pipes. All three outlive the trials.
  BatchTrials(const Run& run, const PourTally& shape, const Topping* topping)
      : run_(run), shape_(shape), topping_(topping) {}

  const Weighing& base(std::int64_t casts);
  const PipeTally& whipping(std::int64_t casts);
  Density base_density() const { return shape_.batter.density; }
  const Topping& topping() const { return *topping_; }

 private:
  const Run& run_;
  const PourTally& shape_;
  const Topping* topping_;
  std::map<std::int64_t, Weighing> bases_;
  std::map<std::int64_t, PipeTally> whippings_;
};

/// Base to make for so many casts: in the pieces, poured over, and left in pot, jugs and test
/// piece.
Mass base_to_make(const Run& run, const PourTally& shape, std::int64_t casts);

/// Casts of each whipping of a batch, as even as can be, the larger first.
std::vector<std::int64_t> casts_of_whippings(std::int64_t casts, std::int64_t whippings);

}  // namespace brimwright::planning
