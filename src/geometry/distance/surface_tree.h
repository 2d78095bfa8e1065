#pragma once

#include "geometry/distance/placement.h"
#include "geometry/surface/triangle_mesh.h"
#include "geometry/surface/vectors.h"
#include "units/quantity.h"

#include <memory>

namespace brimwright::geometry {

/// The narrowest place between two surfaces: a point on each, a nearest pair.
struct Gap {
  Length width;  // 0 where they meet or cross
  Vector on_first_mm, on_second_mm;
  Vector second_normal;  // of the second's facet there
};

struct SurfaceBoxes;  // implementation

/// A closed, outward-facing surface made ready for many questions of nearness. Facets are kept in
/// a tree of boxes. Copies are cheap (they share it).
class SurfaceTree {
 public:
  explicit SurfaceTree(const TriangleMesh& solid);

  /// Least distance between the surfaces themselves, facet against facet in both directions, never
  /// by vertices alone; 0 where they cross. (One solid inside the other has a gap too.) Good to
  /// 1e-9 of the coordinates. `second` may be placed elsewhere than it was made; the points are
  /// where the placed solids lie.
  friend Gap gap_between(const SurfaceTree& first, const Placement& first_at,
                         const SurfaceTree& second, const Placement& second_at);
  /// Whether it is at least `width`: quicker than asking for the gap.
  friend bool is_gap_at_least(Length width, const SurfaceTree& first, const Placement& first_at,
                              const SurfaceTree& second, const Placement& second_at);

  /// By how many times the surface winds round the point; on the surface, either side's answer.
  bool contains(const Vector& point_mm) const;
  /// Distance to the surface, negative inside.
  double signed_distance_mm(const Vector& point_mm) const;

  const TriangleMesh& solid() const;

 private:
  std::shared_ptr<const SurfaceBoxes> boxes_;
};

Gap gap_between(const SurfaceTree& first, const Placement& first_at, const SurfaceTree& second,
                const Placement& second_at);
bool is_gap_at_least(Length width, const SurfaceTree& first, const Placement& first_at,
                     const SurfaceTree& second, const Placement& second_at);

}  // namespace brimwright::geometry
