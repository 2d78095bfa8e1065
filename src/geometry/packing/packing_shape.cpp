#include "geometry/packing/packing_shape.h"

#include "geometry/packing/packing_pose.h"
#include "geometry/surface/enclosed_volume.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace brimwright::geometry {
namespace {

constexpr std::size_t thrown_points = 3000;  // enough for a spread of some hundreds

Vector thrown_on(const TriangleMesh& solid, const std::array<std::uint32_t, 3>& corners,
                 Dice& dice) {
  const auto& v = solid.vertices_mm;
  const double root = std::sqrt(dice.share()), share = dice.share();
  return v[corners[0]] * (1 - root) + v[corners[1]] * (root * (1 - share)) +
         v[corners[2]] * (root * share);
}

/// Some vertices, because what sticks out farthest is always one, and points thrown by area.
std::vector<Vector> candidates_on(const TriangleMesh& solid) {
  std::vector<Vector> points;
  const std::size_t vertices = solid.vertices_mm.size();
  const std::size_t stride = 1 + vertices / thrown_points;
  for (std::size_t i = 0; i < vertices; i += stride) points.push_back(solid.vertices_mm[i]);
  std::vector<double> up_to;
  double area = 0;
  for (const auto& corners : solid.triangles) up_to.push_back(area += area_mm2(solid, corners));
  Dice dice(1);
  for (std::size_t i = 0; i < thrown_points && area > 0; ++i) {
    const auto facet = std::upper_bound(up_to.begin(), up_to.end(), dice.share() * area);
    const auto index =
        std::min<std::ptrdiff_t>(facet - up_to.begin(), std::ssize(solid.triangles) - 1);
    points.push_back(thrown_on(solid, solid.triangles[static_cast<std::size_t>(index)], dice));
  }
  return points;
}

std::uint32_t root_of(std::vector<std::uint32_t>& parent, std::uint32_t vertex) {
  while (parent[vertex] != vertex) vertex = parent[vertex] = parent[parent[vertex]];
  return vertex;
}

/// The ball moved to where it can be larger, by steps that halve.
Probe grown(const SurfaceTree& body, Probe ball, double step) {
  for (int halving = 0; halving < 6; ++halving, step /= 2) {
    for (const double way : {step, -step}) {
      for (std::size_t axis = 0; axis < 3; ++axis) {
        Probe next = ball;
        next.at_mm[axis] += way;
        next.radius_mm = -body.signed_distance_mm(next.at_mm);
        if (next.radius_mm > ball.radius_mm) ball = next;
      }
    }
  }
  return ball;
}

}  // namespace

std::vector<Vector> spread_points(const TriangleMesh& solid, std::size_t count) {
  const std::vector<Vector> candidates = candidates_on(solid);
  const Box box = bounding_box(solid);
  Vector last = (box.low_mm + box.high_mm) * 0.5;  // the first is the one farthest from the middle
  std::vector<double> nearest(candidates.size(), std::numeric_limits<double>::infinity());
  std::vector<Vector> points;
  while (points.size() < std::min(count, candidates.size())) {
    std::size_t farthest = 0;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
      const Vector apart = candidates[i] - last;
      nearest[i] = std::min(nearest[i], dot(apart, apart));
      if (nearest[i] > nearest[farthest]) farthest = i;
    }
    if (points.empty()) nearest.assign(candidates.size(), std::numeric_limits<double>::infinity());
    points.push_back(last = candidates[farthest]);
  }
  return points;
}

std::vector<Probe> inner_balls(const SurfaceTree& body, const DistanceField& inside,
                               std::size_t most) {
  std::vector<Probe> deep = inside.inner_points();
  std::stable_sort(deep.begin(), deep.end(),
                   [](const Probe& a, const Probe& b) { return a.radius_mm > b.radius_mm; });
  std::vector<Probe> balls;
  for (const Probe& ball : deep) {
    if (balls.size() == most || ball.radius_mm < deep.front().radius_mm / 4) break;
    const bool is_new = std::none_of(balls.begin(), balls.end(), [&](const Probe& other) {
      return length(other.at_mm - ball.at_mm) < other.radius_mm;
    });
    if (is_new) balls.push_back(grown(body, ball, inside.step_mm() / 2));
  }
  return balls;
}

std::vector<Vector> shell_points(const TriangleMesh& surface) {
  std::vector<std::uint32_t> parent(surface.vertices_mm.size());
  std::iota(parent.begin(), parent.end(), 0u);
  for (const auto& corners : surface.triangles) {
    const std::uint32_t root = root_of(parent, corners[0]);
    parent[root_of(parent, corners[1])] = root;
    parent[root_of(parent, corners[2])] = root;
  }
  std::vector<bool> is_seen(parent.size(), false);
  std::vector<Vector> points;
  for (const auto& corners : surface.triangles) {
    const std::uint32_t root = root_of(parent, corners[0]);
    if (!is_seen[root]) points.push_back(surface.vertices_mm[corners[0]]);
    is_seen[root] = true;
  }
  return points;
}

}  // namespace brimwright::geometry
