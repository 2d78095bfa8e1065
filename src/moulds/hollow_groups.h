#pragma once

#include "moulds/mesh_survey.h"
#include "units/quantity.h"
#include "units/share.h"

#include <cstddef>
#include <vector>

namespace brimwright::moulds {

/// Hollows that are alike, for people and for planning: within 0.5 % of each other in volume and in
/// depth.
struct HollowGroup {
  std::vector<std::size_t> members;  // ascending
  std::size_t typical;               // of those as good as of middle volume, the first in order
  Volume least, most;                // brimful
  Share spread() const { return Share::of_one(most / least - 1); }
};

/// Every hollow in one group, the groups by what they hold together, most first.
std::vector<HollowGroup> groups_of(const std::vector<Hollow>& hollows);

}  // namespace brimwright::moulds
