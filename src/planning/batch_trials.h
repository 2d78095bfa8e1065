#pragma once

#include "planning/measured.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "planning/topping.h"

#include <cstdint>
#include <map>
#include <optional>

namespace brimwright::planning {

/// Weighs batters for any number of casts, each once, without what is to be said of them.
class BatchTrials {
 public:
  /// `measured` is of `run`; both outlive the trials.
  BatchTrials(const Run& run, const Measured& measured) : run_(run), measured_(measured) {}

  const Weighing& base(std::int64_t casts);
  const PipeTally& whipping(std::int64_t casts);
  Density base_density() const { return measured_.pour.batter.density; }
  const Topping& topping() const { return *measured_.topping; }

 private:
  const Run& run_;
  const Measured& measured_;
  std::map<std::int64_t, Weighing> bases_;
  std::map<std::int64_t, PipeTally> whippings_;
};

/// Base to make for so many casts: in the pieces, poured over, and left in pot, jugs and test
/// piece.
Mass base_to_make(const Run& run, const PourTally& shape, std::int64_t casts);

/// Casts of each whipping of a batch, as even as can be, the larger first.
std::vector<std::int64_t> casts_of_whippings(std::int64_t casts, std::int64_t whippings);

}  // namespace brimwright::planning
