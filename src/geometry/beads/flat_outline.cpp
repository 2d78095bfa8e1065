#include "geometry/beads/flat_outline.h"

#include <algorithm>
#include <cmath>

namespace brimwright::geometry {
namespace {

double distance_mm(const FlatPoint& p, const FlatPoint& a, const FlatPoint& b) {
  const FlatPoint along = b - a;
  const double whole = dot(along, along);
  const double share = whole > 0 ? std::clamp(dot(p - a, along) / whole, 0.0, 1.0) : 0;
  return length(p - a - along * share);
}

struct Side {
  FlatPoint from, to;
};

bool cross_each_other(const Side& a, const Side& b) {
  return turn(a.from, a.to, b.from) * turn(a.from, a.to, b.to) < 0 &&
         turn(b.from, b.to, a.from) * turn(b.from, b.to, a.to) < 0;
}

bool boxes_apart(const Side& a, const Side& b, double touching_mm) {
  for (std::size_t i = 0; i < 2; ++i) {
    const auto [a_low, a_high] = std::minmax(a.from[i], a.to[i]);
    const auto [b_low, b_high] = std::minmax(b.from[i], b.to[i]);
    if (a_low > b_high + touching_mm || b_low > a_high + touching_mm) return true;
  }
  return false;
}

bool meet(const Side& a, const Side& b) {
  constexpr double touching_mm = 1e-6;  // far below what can be drawn, far above rounding
  if (boxes_apart(a, b, touching_mm)) return false;
  return cross_each_other(a, b) || distance_mm(a.from, b.from, b.to) <= touching_mm ||
         distance_mm(a.to, b.from, b.to) <= touching_mm ||
         distance_mm(b.from, a.from, a.to) <= touching_mm ||
         distance_mm(b.to, a.from, a.to) <= touching_mm;
}

/// Whether a side runs back along the one before it, or has no length.
bool turns_back(const Side& before, const Side& after) {
  constexpr double touching_mm = 1e-6;
  return distance_mm(after.to, before.from, before.to) <= touching_mm ||
         distance_mm(before.from, after.from, after.to) <= touching_mm;
}

/// What is left of an outline while ears are cut off it.
class Remainder {
 public:
  explicit Remainder(const FlatOutline& outline) : outline_(outline) {
    for (std::uint32_t i = 0; i < outline.size(); ++i) left_.push_back(i);
  }

  std::size_t size() const { return left_.size(); }
  std::array<std::uint32_t, 3> ear_at(std::size_t i) const {
    return {left_[(i + size() - 1) % size()], left_[i], left_[(i + 1) % size()]};
  }

  /// Whether the triangle at this corner lies in the outline and no other corner in the triangle.
  bool is_ear(std::size_t i) const {
    const auto ear = ear_at(i);
    const FlatPoint &a = outline_[ear[0]], &b = outline_[ear[1]], &c = outline_[ear[2]];
    if (turn(a, b, c) <= 0) return false;
    return std::none_of(left_.begin(), left_.end(), [&](std::uint32_t other) {
      if (other == ear[0] || other == ear[1] || other == ear[2]) return false;
      const FlatPoint& p = outline_[other];
      return turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0;
    });
  }

  /// The next ear from `start` on; should rounding leave none, the corner there.
  std::size_t next_ear(std::size_t start) const {
    for (std::size_t step = 0; step < size(); ++step)
      if (is_ear((start + step) % size())) return (start + step) % size();
    return start % size();
  }

  void cut(std::size_t i) { left_.erase(left_.begin() + static_cast<std::ptrdiff_t>(i)); }

 private:
  const FlatOutline& outline_;
  std::vector<std::uint32_t> left_;
};

}  // namespace

double signed_area_mm2(const FlatOutline& outline) {
  double doubled = 0;
  for (std::size_t i = 0; i < outline.size(); ++i)
    doubled += turn(outline.front(), outline[i], outline[(i + 1) % outline.size()]);
  return doubled / 2;
}

FlatPoint centre_of_area(const FlatOutline& outline) {
  const FlatPoint& origin = outline.front();
  double doubled = 0;
  FlatPoint sum{};
  for (std::size_t i = 1; i + 1 < outline.size(); ++i) {
    const double part = turn(origin, outline[i], outline[i + 1]);
    doubled += part;
    for (std::size_t axis = 0; axis < 2; ++axis)
      sum[axis] += part * ((outline[i] - origin)[axis] + (outline[i + 1] - origin)[axis]) / 3;
  }
  return {origin[0] + sum[0] / doubled, origin[1] + sum[1] / doubled};
}

std::optional<std::array<std::size_t, 2>> meeting_sides(const FlatOutline& outline) {
  const std::size_t count = outline.size();
  const auto side = [&](std::size_t i) { return Side{outline[i], outline[(i + 1) % count]}; };
  for (std::size_t i = 0; i < count; ++i) {
    if (turns_back(side(i), side((i + 1) % count))) return {{i, (i + 1) % count}};
    for (std::size_t j = i + 2; j < count; ++j) {
      const bool neighbours = i == 0 && j + 1 == count;
      if (!neighbours && meet(side(i), side(j))) return {{i, j}};
    }
  }
  return std::nullopt;
}

std::vector<std::array<std::uint32_t, 3>> triangulated(const FlatOutline& outline) {
  std::vector<std::array<std::uint32_t, 3>> triangles;
  Remainder left(outline);
  std::size_t at = 0;
  while (left.size() > 3) {
    at = left.next_ear(at);
    triangles.push_back(left.ear_at(at));
    left.cut(at);
    at += 1;  // not the neighbour at once: a fan of needles would come of it
  }
  if (left.size() == 3) triangles.push_back(left.ear_at(1));
  return triangles;
}

}  // namespace brimwright::geometry
