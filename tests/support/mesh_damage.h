#pragma once

// Ways in which a good mesh gets broken. The facets broken are always the same ones.

#include "geometry/surface/triangle_mesh.h"
#include "solids.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace brimwright::geometry::test {

/// Three corners for each facet, each moved by up to `by` along x, y and z.
TriangleMesh jittered(const TriangleMesh& mesh, double by, std::uint32_t seed = 1);
TriangleMesh without_facets(TriangleMesh mesh, const std::vector<std::size_t>& facets);
/// The facet cut in two at a corner set in the middle of its first edge and moved by `off`, while
/// the facet across keeps its edge: a slit.
TriangleMesh with_slit(TriangleMesh mesh, std::size_t facet, const Point& off = {0, 0, 0});
TriangleMesh with_facet_again(TriangleMesh mesh, std::size_t facet);
TriangleMesh with_back_of_facet(TriangleMesh mesh, std::size_t facet);
TriangleMesh two_sided(const TriangleMesh& mesh);
/// A facet on the facet's first edge and a second vertex in the place of the edge's end.
TriangleMesh with_collapsed_facet(TriangleMesh mesh, std::size_t facet);
TriangleMesh with_facets_turned(TriangleMesh mesh, const std::vector<std::size_t>& facets);

}  // namespace brimwright::geometry::test
