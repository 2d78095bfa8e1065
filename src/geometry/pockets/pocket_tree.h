#pragma once

#include "geometry/pockets/pocket_surface.h"

#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// A hollow of air between two heights: what liquid fills from its floor until it spills.
struct Basin {
  double floor_mm = 0, brim_mm = 0;
  std::uint32_t floor_vertex = 0;  // a lowest point
  std::uint32_t spill_vertex = 0;  // a point of its rim where it spills
  std::uint32_t parent = 0;        // what it spills into
};

/// The join tree of the air below a rising level: which hollows there are and how they unite.
///
/// Basin 0 is the outside. A leaf begins at a floor; where two or more basins meet, they end at
/// that brim in a parent, or in the outside if that is among them. A parent's number is above its
/// children's. One whose parent is `never` is a sealed void. The hollow of a basin at a level
/// between its floor and brim is bounded by the facets whose lowest corners lie in it or in the
/// basins under it.
///
/// H. Carr, J. Snoeyink, U. Axen, Computational Geometry 24 (2003) 75, for the join tree of a
/// function; here the air itself has no mesh, so that parts of its surface which do not hang
/// together are joined by a plumb line from each lowest point with air below it.
struct AirTree {
  static constexpr std::uint32_t outside = 0;
  static constexpr std::uint32_t never = AirSurface::none;

  std::vector<Basin> basins;
  std::vector<std::uint32_t> basin_at;  // for each vertex, what it lies in at its own height
  std::vector<std::uint32_t> basin_of;  // for each facet, what its lowest corner lies in
};

AirTree air_tree(const AirSurface& surface);

}  // namespace brimwright::geometry
