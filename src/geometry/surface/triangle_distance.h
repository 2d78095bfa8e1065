#pragma once

#include "geometry/surface/vectors.h"

#include <array>
#include <limits>

namespace brimwright::geometry {

/// A triangle made ready for questions of nearness. It may be a needle or no more than a point.
struct Facet {
  std::array<Vector, 3> corner;
  std::array<Vector, 3> along;    // edges, from each corner to the next
  Vector normal;                  // twice its area long
  std::array<Vector, 3> outward;  // across each edge, in its plane

  Facet(const Vector& a, const Vector& b, const Vector& c);
};

/// A nearest pair of points so far, one on each side.
struct NearestPair {
  double distance_mm = std::numeric_limits<double>::infinity();
  Vector on_first{}, on_second{};
};

/// Lowers `nearest` to the least distance between two triangles if that is below it, and tells
/// whether it was: 0 where they cross, otherwise a vertex against a face or an edge against an
/// edge. Good to 1e-9 of the coordinates for facets up to a million times as long as they are wide.
bool lower_to_distance(const Facet& first, const Facet& second, NearestPair& nearest);

/// The same for a point.
bool lower_to_distance(const Vector& point, const Facet& facet, NearestPair& nearest);

}  // namespace brimwright::geometry
