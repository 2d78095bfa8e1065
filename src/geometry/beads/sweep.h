#pragma once

#include "geometry/beads/bead_path.h"
#include "geometry/beads/flat_outline.h"
#include "geometry/surface/triangle_mesh.h"
#include "geometry/surface/vectors.h"

#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// A figure to be swept: anticlockwise, its centre of area at the origin, x aside and y up.
struct Section {
  FlatOutline corners_mm;
  std::vector<std::array<std::uint32_t, 3>> filling;  // triangles of its corners
};
Section section_of(FlatOutline corners_mm);

/// A direction across and one up, at right angles to each other.
struct Frame {
  Vector aside, up;
};

/// The section carried along the path, with flat ends, or closed like the path.
///
/// It is turned as little as the path lets it, by double reflection: W. Wang, B. Juettler,
/// D. Zheng, Y. Liu, ACM Transactions on Graphics 27 (2008), article 2. It is widened towards the
/// bend, by x / sin x where steps turn by x, so that the facets enclose section x length; and held
/// at the bend's centre where it would reach beyond, so that the surface winds round no point
/// backwards.
TriangleMesh swept_along(const BeadPath& path, const Section& section);

/// How a bead narrows: at a share of its length, the section as a share of its width.
struct Narrowing {
  double along, width;
};
/// The section at `foot`, narrowed step by step along `axis` (its length is the bead's) to a point.
///
/// `volume_share`: of section x length, to which the facets are widened. `lying`: not about the
/// section's middle, but so that its lowest corner stays level.
struct Taper {
  std::vector<Narrowing> steps;  // from {0, 1}; the point at {1, 0} is left out
  double volume_share = 0;
  bool lying = false;
};
TriangleMesh tapered(const Section& section, const Vector& foot, const Frame& frame,
                     const Vector& axis, const Taper& taper);

}  // namespace brimwright::geometry
