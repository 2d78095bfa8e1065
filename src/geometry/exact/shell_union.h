#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <chrono>
#include <cstddef>
#include <string>
#include <vector>

namespace brimwright::geometry {

struct UnitedSolid {
  TriangleMesh solid;
  std::size_t swallowed = 0;  // solids that lay wholly inside the others
  double swallowed_mm3 = 0;
};

/// The time that all unions of one mesh may take together: as much as that of all its facets in one
/// would, for a thousand small ones each have a helper process of their own.
class UnionBudget {
 public:
  explicit UnionBudget(std::size_t facets);
  std::chrono::milliseconds left() const;

 private:
  std::chrono::steady_clock::time_point end_;
};

/// The union of closed, outward-facing solids that may overlap or touch, by CGAL's corefinement
/// with exact numbers; corners where surfaces cross are rounded to the nearest double at the end.
///
/// Done by the uniting helper program (see helpers/unite) in limited time (4 s, and more for many
/// facets) and memory (2 GiB), as CGAL 5.5 goes round for ever where solids touch each other along
/// an edge. UserError naming `file` and `place_mm` if a solid crosses itself, if the union touches
/// itself along an edge and so is no surface, if the limits are met, or the helper is not
/// installed.
UnitedSolid united(const std::vector<TriangleMesh>& solids, const UnionBudget& budget,
                   const Point& place_mm, const std::string& file);

}  // namespace brimwright::geometry
