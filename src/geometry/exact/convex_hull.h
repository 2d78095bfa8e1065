#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::geometry {

/// The least convex solid that holds all vertices, facing outward; nothing for what is flat.
std::optional<TriangleMesh> convex_hull(const TriangleMesh& mesh);

/// Bounds on the least convex solid round a mesh, in a few looks at each of its corners: a convex
/// solid of some of them, and by how much that must grow, about a point in it, to hold all.
class NearHull {
 public:
  /// Nothing where the mesh is too flat for it, or its corners too many on one side.
  static std::optional<NearHull> of(const TriangleMesh& mesh);

  Volume volume_at_least() const { return volume_; }
  Volume volume_at_most() const { return growth_ * growth_ * growth_ * volume_; }
  /// Where it was looked last, of points that come one beside the other: each thread has its own.
  struct Near {
    std::uint32_t side = 0;
  };
  /// No less than how far a point of the mesh lies below the least convex solid's surface.
  double depth_at_most_mm(const Point& point_mm, Near& near) const;

 private:
  /// A facet, seen from the middle.
  struct Side {
    Point outward;                // of length one
    double height_mm;             // of the middle below it
    std::array<Point, 3> inward;  // of the planes through the middle and each edge
    std::array<std::uint32_t, 3> across;
  };
  NearHull(const TriangleMesh& hull, const Point& middle_mm);
  bool is_sound() const;
  const Side& side_over(const Point& from_middle, Near& near) const;
  /// Above 1 for a point outside.
  double reach(const Point& point_mm, Near& near) const;

  Point middle_mm_;
  std::vector<Side> sides_;
  Volume volume_;
  double growth_ = 1;
};

}  // namespace brimwright::geometry
