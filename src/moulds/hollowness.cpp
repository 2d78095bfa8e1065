#include "moulds/hollowness.h"

#include "geometry/distance/surface_tree.h"
#include "geometry/exact/convex_hull.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace brimwright::moulds {

using namespace geometry;  // of meshes from end to end

namespace {

// A facet longer than this share of the part is looked at in several places, so that the long
// facets of a trough or tube, whose corners all lie at its ends, do not hide its hollow.
constexpr double finest_look = 1.0 / 12;

double least_extent_mm(const Box& box) {
  return std::min({box.high_mm[0] - box.low_mm[0], box.high_mm[1] - box.low_mm[1],
                   box.high_mm[2] - box.low_mm[2]});
}

/// Calls `see` with the middles of the n x n like facets that a facet is cut into.
template <class See>
void for_each_look(const Vector& a, const Vector& b, const Vector& c, int n, See see) {
  const Vector u = (b - a) * (1.0 / n), v = (c - a) * (1.0 / n);
  for (int i = 0; i < n; ++i) {
    for (int j = 0; i + j < n; ++j) {
      see(a + u * (i + 1.0 / 3) + v * (j + 1.0 / 3));
      if (i + j + 1 < n) see(a + u * (i + 2.0 / 3) + v * (j + 2.0 / 3));
    }
  }
}

/// The greatest depth of all looks at a part; `depth_mm(p, near)` tells a point's, and may keep in
/// `near` where it looked.
template <class Near, class DepthAt>
Length deepest_of(const TriangleMesh& part, DepthAt depth_mm) {
  struct Looks {
    Near near = {};
    double deepest_mm = 0;
  };
  const Box box = bounding_box(part);
  const double step =
      finest_look * std::max({box.high_mm[0] - box.low_mm[0], box.high_mm[1] - box.low_mm[1],
                              box.high_mm[2] - box.low_mm[2]});
  const auto parts = in_parts<Looks>(part.triangles.size(), [&](std::size_t facet, Looks& looks) {
    const auto& corners = part.triangles.data()[facet];
    const Vector& a = part.vertices_mm.data()[corners[0]];
    const Vector& b = part.vertices_mm.data()[corners[1]];
    const Vector& c = part.vertices_mm.data()[corners[2]];
    const double longest = std::max(std::max(length(b - a), length(c - b)), length(a - c));
    const int n = std::clamp(static_cast<int>(std::ceil(longest / step)), 1, 12);
    for_each_look(a, b, c, n, [&](const Vector& p) {
      looks.deepest_mm = std::max(looks.deepest_mm, depth_mm(p, looks.near));
    });
  });
  double deepest_mm = 0;
  for (const Looks& looks : parts) deepest_mm = std::max(deepest_mm, looks.deepest_mm);
  return deepest_mm * millimetre;
}

}  // namespace

std::size_t holes_through(const TriangleMesh& solid, const SurfaceEdges& edges) {
  const auto vertices = static_cast<long>(solid.vertices_mm.size());
  const auto facets = static_cast<long>(solid.triangles.size());
  // V - E + F = 2 (shells - handles), and E = 3 F / 2.
  const long twice = 2 * long{edges.shells} - (vertices - facets / 2);
  return static_cast<std::size_t>(std::max(0L, (twice + 1) / 2));
}

Hollowness hollowness_of(const TriangleMesh& part) {
  const auto hull = convex_hull(part);
  if (!hull) return {};
  const SurfaceTree around(*hull);
  Hollowness found;
  found.fill = enclosed_volume(part) / enclosed_volume(*hull);
  struct Nowhere {};
  found.deepest = deepest_of<Nowhere>(
      part, [&](const Vector& p, Nowhere&) { return -around.signed_distance_mm(p); });
  found.depth_share = found.deepest / (least_extent_mm(bounding_box(part)) * millimetre);
  return found;
}

std::optional<HollownessBounds> hollowness_bounds(const TriangleMesh& part) {
  const auto near = NearHull::of(part);
  if (!near) return std::nullopt;
  const Volume own = enclosed_volume(part);
  HollownessBounds bounds{.fill_at_least = own / near->volume_at_most(),
                          .fill_at_most = own / near->volume_at_least()};
  bounds.deepest_at_most = deepest_of<NearHull::Near>(
      part, [&](const Vector& p, NearHull::Near& last) { return near->depth_at_most_mm(p, last); });
  bounds.depth_share_at_most =
      bounds.deepest_at_most / (least_extent_mm(bounding_box(part)) * millimetre);
  return bounds;
}

}  // namespace brimwright::moulds
