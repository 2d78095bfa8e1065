#pragma once

#include "geometry/pockets/pocket_tree.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// Which basins of the air a maker would call pockets.
struct PocketChoice {
  struct Joint {
    std::uint32_t basin;
    std::vector<std::size_t> pockets;
  };
  std::vector<std::uint32_t> pockets;  // basins
  std::vector<Joint> joints;           // what lies within another before it
  std::size_t dents = 0;               // other hollows that spill to the outside
  double dents_mm3 = 0;
  std::size_t sealed_voids = 0;
  double sealed_mm3 = 0;
};

/// By the rules of pockets_of_body.
PocketChoice chosen_pockets(const AirSurface& surface, const AirTree& tree);

/// For each basin the place in `chosen` of the chosen basin that it is or lies in, else never.
std::vector<std::uint32_t> groups_by(const AirTree& tree, const std::vector<std::uint32_t>& chosen);

}  // namespace brimwright::geometry
