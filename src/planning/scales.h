#pragma once

#include "planning/run.h"
#include "units/quantity.h"

#include <cstdint>

namespace brimwright::planning {

/// A mass put on the finest scale that suits it.
struct OnScale {
  Mass step;
  std::int64_t weighings;
};

/// For fats, water and melt: always the large scale.
OnScale on_large_scale(const Scales& scales, Mass mass);
/// For alkali, additives and powders: the fine scale while it holds the mass, else the large one.
OnScale on_fine_scale(const Scales& scales, Mass mass);

}  // namespace brimwright::planning
