#pragma once

#include "chemistry/superfat.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "units/quantity.h"
#include "units/remark.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// What rows are noted to have weighed, by their keys, all of a row's times together.
using WeighedRows = std::map<std::string, Mass>;

/// A batter of a batch as planned and as it was weighed. What it has of a shared pot is its share
/// of the alkali that went into that.
struct BatterAsWeighed {
  std::string name;
  std::int64_t times = 1;  // made so often
  Share planned;
  chemistry::EffectiveSuperfat now;  // of its weights each having an equal part
  /// Of one of them that had all the lye that is more, and lacked all the fats that are less.
  std::optional<chemistry::EffectiveSuperfat> worst = {};
  bool has_more_lye = false;  // more alkali than planned
  /// Where less of its lye solution was weighed than was made: if the lye itself is missing, and
  /// not only water.
  std::optional<Share> if_lye_is_missing = {};
};

struct BatchAsWeighed {
  std::vector<BatterAsWeighed> batters;
  std::vector<Remark> of_pot = {};  // of shares and a pot that do not go together
};
/// By the plan whose batch it is. What is not in `rows` was weighed as planned; a shared pot was
/// topped up to its weight, which leaves the lye as strong as it can be.
BatchAsWeighed as_weighed(const planning::Run& run, const planning::Plan& plan,
                          const planning::Batch& batch, const WeighedRows& rows);

}  // namespace brimwright::service
