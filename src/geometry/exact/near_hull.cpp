// NearHull, which needs nothing exact.
#include "geometry/exact/convex_hull.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/parallel.h"
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

/// A corner and how far it reaches.
struct Farthest {
  double reach = 0;
  const Point* at = nullptr;

  void look_at(const Farthest& other) {
    if (other.reach > reach) *this = other;
  }
};

/// Calls `see(p, near, part)` for each corner, a stretch of them by each thread.
template <class Part, class See>
std::vector<Part> by_stretches(const TriangleMesh& mesh, const Part& start, See see) {
  std::vector<Part> parts(things_at_once(), start);
  const std::size_t corners = mesh.vertices_mm.size();
  in_parallel(parts.size(), [&](std::size_t number) {
    NearHull::Near near;
    const std::size_t end = corners * (number + 1) / parts.size();
    for (std::size_t v = corners * number / parts.size(); v < end; ++v)
      see(mesh.vertices_mm.data()[v], near, parts[number]);
  });
  return parts;
}

/// The corners that reach farthest, one for each cell of directions where any reaches beyond
/// `least`.
template <class ReachOf>
void add_farthest(const TriangleMesh& mesh, const Vector& middle, double least, ReachOf reach_of,
                  std::vector<Point>& chosen) {
  using Cells = std::vector<Farthest>;
  const auto parts =
      by_stretches(mesh, Cells(cells, Farthest{.reach = least}),
                   [&](const Point& p, NearHull::Near& near, Cells& farthest) {
                     const double reach = reach_of(p, near);
                     if (reach > least)
                       farthest[cell_of(p - middle)].look_at({.reach = reach, .at = &p});
                   });
  for (std::size_t cell = 0; cell < cells; ++cell) {
    Farthest farthest{.reach = least};
    for (const Cells& part : parts) farthest.look_at(part[cell]);
    if (farthest.at != nullptr) chosen.push_back(*farthest.at);
  }
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

const NearHull::Side& NearHull::side_over(const Point& from_middle, Near& near) const {
  constexpr int longest_walk = 1000;
  std::uint32_t here = near.side;
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
      near.side = here;
      return side;
    }
    here = next;
  }
  // A walk that rounding sent in circles: the side looked for is the one that is reached farthest.
  return *std::max_element(sides_.begin(), sides_.end(), [&](const Side& a, const Side& b) {
    return dot(a.outward, from_middle) * b.height_mm < dot(b.outward, from_middle) * a.height_mm;
  });
}

double NearHull::reach(const Point& point_mm, Near& near) const {
  const Vector to = point_mm - middle_mm_;
  const Side& side = side_over(to, near);
  return dot(side.outward, to) / side.height_mm;
}

double NearHull::depth_at_most_mm(const Point& point_mm, Near& near) const {
  // Below any side of the grown solid is deep enough for a bound.
  const Vector to = point_mm - middle_mm_;
  const Side& side = side_over(to, near);
  return growth_ * side.height_mm - dot(side.outward, to);
}

std::optional<NearHull> NearHull::of(const TriangleMesh& mesh) {
  const Point middle = mean_of(mesh.vertices_mm);
  std::vector<Point> chosen;
  add_farthest(
      mesh, middle, 0, [&](const Point& p, Near&) { return length(p - middle); }, chosen);
  for (int round = 0; round < most_rounds; ++round) {
    const auto hull = convex_hull({chosen, {}});
    if (!hull) return std::nullopt;
    NearHull near(*hull, middle);
    if (!near.is_sound()) return std::nullopt;
    double farthest = 1;
    for (const double part :
         by_stretches(mesh, farthest, [&](const Point&p, Near&last, double&most) {
           most = std::max(most, near.reach(p, last));
         }))
      farthest = std::max(farthest, part);
    near.growth_ = farthest + rounding;
    if (farthest <= 1 + near_enough || round + 1 == most_rounds) return near;
    add_farthest(
        mesh, middle, 1 + near_enough / 2,
        [&](const Point& p, Near& last) { return near.reach(p, last); }, chosen);
  }
  return std::nullopt;
}

}  // namespace brimwright::geometry
