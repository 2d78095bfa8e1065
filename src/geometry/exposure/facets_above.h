#pragma once

#include "geometry/surface/vectors.h"

#include <array>
#include <vector>

namespace brimwright::geometry {

using FacetCorners = std::array<Vector, 3>;  // anticlockwise seen from outside

/// What is over a point.
struct Above {
  int winding = 0;  // how many times the closed surfaces wind round it
  bool any = false;
};

/// For each point, by the facets that a plumb line through it meets above it. A line through an
/// edge or corner meets just one of the facets there, and always the same, as if it had been moved
/// by next to nothing.
///
/// The points are sorted into squares seen from above, and each facet asks those that it may lie
/// over: facets may differ in size as they like. TooManyLayers after two thousand million
/// questions.
std::vector<Above> facets_above(const std::vector<Vector>& points,
                                const std::vector<FacetCorners>& facets);

}  // namespace brimwright::geometry
