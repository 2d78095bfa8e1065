#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <vector>

namespace brimwright::geometry {

/// For each vertex of a closed surface, whether the facets round it surely lie as if spread out on
/// a plane: seen along some direction, all of them show the same side and together go round the
/// vertex once. Then no two of them meet but at what they share, and they are one fan.
///
/// Thirteen directions are tried, and what rounding leaves open counts as no. For a welded mesh
/// whose edges all have two facets, turned alike.
std::vector<char> spread_stars(const TriangleMesh& mesh);

}  // namespace brimwright::geometry
