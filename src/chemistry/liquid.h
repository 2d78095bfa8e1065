#pragma once

#include "units/share.h"

#include <optional>
#include <string>

namespace brimwright::chemistry {

/// What makes an additive a liquid that stands in for water: milk, coconut milk, purée, brine. Its
/// fat and acid are the additive's `contains_fat` and `contains_acid`; shares are of what is
/// weighed.
struct Liquid {
  Share water, sugar, salt;
  std::optional<Share> replaces;  // of the formula's water; absent: dosed by a rate
  bool frozen = false;            // goes in as ice
  std::string source;             // the label, or the shipped composition's source in words
};

}  // namespace brimwright::chemistry
