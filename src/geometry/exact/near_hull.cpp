// NearHull, which needs nothing exact.
#include "geometry/exact/convex_hull.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <map>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr std::size_t cells_across = 40;  // of each side of a cube round the middle
constexpr std::size_t cells = 6 * cells_across * cells_across;
constexpr int most_rounds = 4;
constexpr double near_enough = 1e-3;  // of the way from the middle: a hundredth of what is asked
constexpr double rounding = 1e-9;     // far above that of the sums here, far below what is asked

/// Directions from the middle, parted by a cube's sides and a grid on each.
std::size_t cell_of(const Vector& from_middle) {
  std::size_t axis = 0;
  for (std::size_t i = 1; i < 3; ++i)
    if (std::abs(from_middle[i]) > std::abs(from_middle[axis])) axis = i;
  const double size = std::abs(from_middle[axis]);
  if (!(size > 0)) return 0;
  const auto place = [&](double x) {
    const double share = (x / size + 1) / 2 * static_cast<double>(cells_across);
    return std::min(static_cast<std::size_t>(std::max(share, 0.0)), cells_across - 1);
  };
  const std::size_t side = 2 * axis + (from_middle[axis] < 0 ? 1 : 0);
  return (side * cells_across + place(from_middle[(axis + 1) % 3])) * cells_across +
         place(from_middle[(axis + 2) % 3]);
}

/// The corners that reach farthest, one for each cell of directions where any reaches beyond
/// `least`.
template <class ReachOf>
void add_farthest(const TriangleMesh& mesh, const Vector& middle, double least, ReachOf reach_of,
                  std::vector<Point>& chosen) {
  std::vector<double> farthest(cells, least);
  std::vector<const Point*> at(cells, nullptr);
  for (const Point& p : mesh.vertices_mm) {
    const double reach = reach_of(p);
    if (!(reach > least)) continue;
    const std::size_t cell = cell_of(p - middle);
    if (!(reach > farthest[cell])) continue;
    farthest[cell] = reach;
    at[cell] = &p;
  }
  for (const Point* p : at)
    if (p != nullptr) chosen.push_back(*p);
}

Point mean_of(const std::vector<Point>& points) {
  Vector sum{};
  for (const Point& p : points) sum = sum + p;
  return sum * (1 / static_cast<double>(points.size()));
}

}  // namespace

NearHull::NearHull(const TriangleMesh& hull, const Point& middle_mm)
    : middle_mm_(middle_mm), volume_(enclosed_volume(hull)) {
  std::map<std::pair<std::uint32_t, std::uint32_t>, std::uint32_t> side_at;  // by its edges
  for (std::uint32_t side = 0; side < hull.triangles.size(); ++side)
    for (std::size_t i = 0; i < 3; ++i)
      side_at[{hull.triangles[side][i], hull.triangles[side][(i + 1) % 3]}] = side;
  for (const auto& corners : hull.triangles) {
    std::array<Vector, 3> to;
    for (std::size_t i = 0; i < 3; ++i) to[i] = hull.vertices_mm[corners[i]] - middle_mm;
    const Vector normal = doubled_area(to[0], to[1], to[2]);
    Side side{};
    side.outward = normal * (1 / length(normal));
    side.height_mm = dot(side.outward, to[0]);
    for (std::size_t i = 0; i < 3; ++i) {
      side.inward[i] = cross(to[i], to[(i + 1) % 3]);
      side.across[i] = side_at.at({corners[(i + 1) % 3], corners[i]});
    }
    sides_.push_back(side);
  }
}

bool NearHull::is_sound() const {
  double least = std::numeric_limits<double>::infinity(), most = 0;
  for (const Side& side : sides_) {
    least = std::min(least, side.height_mm);  // not a number for a facet without area
    most = std::max(most, side.height_mm);
    if (!(side.height_mm > 0)) return false;
  }
  return least > 1e-3 * most;
}

const NearHull::Side& NearHull::side_over(const Point& from_middle) const {
  constexpr int longest_walk = 1000;
  std::uint32_t here = last_;
  for (int step = 0; step < longest_walk; ++step) {
    const Side& side = sides_[here];
    double worst = 0;
    std::uint32_t next = here;
    for (std::size_t i = 0; i < 3; ++i) {
      const double inside = dot(side.inward[i], from_middle);
      if (inside >= worst) continue;
      worst = inside;
      next = side.across[i];
    }
    if (next == here) {
      last_ = here;
      return side;
    }
    here = next;
  }
  // A walk that rounding sent in circles: the side looked for is the one that is reached farthest.
  return *std::max_element(sides_.begin(), sides_.end(), [&](const Side& a, const Side& b) {
    return dot(a.outward, from_middle) * b.height_mm < dot(b.outward, from_middle) * a.height_mm;
  });
}

double NearHull::reach(const Point& point_mm) const {
  const Vector to = point_mm - middle_mm_;
  const Side& side = side_over(to);
  return dot(side.outward, to) / side.height_mm;
}

double NearHull::depth_at_most_mm(const Point& point_mm) const {
  // Below any side of the grown solid is deep enough for a bound.
  const Vector to = point_mm - middle_mm_;
  const Side& side = side_over(to);
  return growth_ * side.height_mm - dot(side.outward, to);
}

std::optional<NearHull> NearHull::of(const TriangleMesh& mesh) {
  const Point middle = mean_of(mesh.vertices_mm);
  std::vector<Point> chosen;
  add_farthest(
      mesh, middle, 0, [&](const Point& p) { return length(p - middle); }, chosen);
  for (int round = 0; round < most_rounds; ++round) {
    const auto hull = convex_hull({chosen, {}});
    if (!hull) return std::nullopt;
    NearHull near(*hull, middle);
    if (!near.is_sound()) return std::nullopt;
    double farthest = 1;
    for (const Point& p : mesh.vertices_mm) farthest = std::max(farthest, near.reach(p));
    near.growth_ = farthest + rounding;
    if (farthest <= 1 + near_enough || round + 1 == most_rounds) return near;
    add_farthest(
        mesh, middle, 1 + near_enough / 2, [&](const Point& p) { return near.reach(p); }, chosen);
  }
  return std::nullopt;
}

}  // namespace brimwright::geometry
