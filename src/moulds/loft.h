#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "moulds/outline.h"

#include <vector>

namespace brimwright::moulds {

/// A level outline, anticlockwise from above, at height `z`.
struct Ring {
  Outline points;
  double z_mm = 0;
};

/// A ring of `n` points that are all the same: the tip of a cone, or the middle of a flat floor.
Ring point_ring(std::array<double, 2> point, std::size_t n, double z_mm);

bool is_point(const Ring& ring);

enum class LoftEnds { open, joined };

/// The surface through `rings`, which have equally many points, from each to the next; facing
/// outward where the rings run upward. Neighbours in a ring that differ by no more than rounding
/// (1e-10 mm) become one point. With ends joined the last ring is followed by the first: a
/// ring-shaped solid.
geometry::TriangleMesh loft(const std::vector<Ring>& rings, LoftEnds ends);

/// Facets that close `mesh` over an outline whose points are its vertices from `first` on.
enum class CapFaces { down, up };
void add_cap(geometry::TriangleMesh& mesh, const Outline& outline, std::uint32_t first,
             CapFaces faces);

}  // namespace brimwright::moulds
