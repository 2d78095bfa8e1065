#include "moulds/outline.h"

#include "geometry/surface/vectors.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace brimwright::moulds {
namespace {

using Point = geometry::FlatPoint;
using geometry::cross;
using geometry::dot;
using geometry::length;
using geometry::turn;
using geometry::operator-;
using geometry::operator+;
using geometry::operator*;

std::size_t after(std::size_t i, std::size_t n) { return i + 1 == n ? 0 : i + 1; }
std::size_t before(std::size_t i, std::size_t n) { return i == 0 ? n - 1 : i - 1; }

Point direction(const Outline& outline, std::size_t edge) {
  const Point along = outline[after(edge, outline.size())] - outline[edge];
  return along * (1 / length(along));
}

double edge_length(const Outline& outline, std::size_t edge) {
  return length(outline[after(edge, outline.size())] - outline[edge]);
}

/// cot(half the interior angle) at a corner between unit directions u (arriving) and v (leaving).
/// The turning angle is pi - interior, so this is tan(turning / 2) = sin / (1 + cos).
double half_angle_cotangent(const Outline& outline, std::size_t corner) {
  const Point u = direction(outline, before(corner, outline.size()));
  const Point v = direction(outline, corner);
  return cross(u, v) / (1 + dot(u, v));
}

/// How far a corner moves for each millimetre of inset: inward by one from both of its edges.
Point corner_motion(const Outline& outline, std::size_t corner) {
  const Point v = direction(outline, corner);
  return Point{-v[1], v[0]} + v * half_angle_cotangent(outline, corner);
}

Outline as_given(const std::vector<std::pair<Length, Length>>& points) {
  Outline outline;
  outline.reserve(points.size());
  for (const auto& [x, y] : points) outline.push_back({x / millimetre, y / millimetre});
  return outline;
}

bool lies_within(const Point& p, const Point& a, const Point& b) {
  return std::min(a[0], b[0]) <= p[0] && p[0] <= std::max(a[0], b[0]) &&
         std::min(a[1], b[1]) <= p[1] && p[1] <= std::max(a[1], b[1]);
}

/// Whether two closed segments share a point (Cormen et al., Introduction to Algorithms, 33.1).
bool meet(const Point& a, const Point& b, const Point& c, const Point& d) {
  const double c_side = turn(a, b, c), d_side = turn(a, b, d);
  const double a_side = turn(c, d, a), b_side = turn(c, d, b);
  if (((c_side > 0 && d_side < 0) || (c_side < 0 && d_side > 0)) &&
      ((a_side > 0 && b_side < 0) || (a_side < 0 && b_side > 0)))
    return true;
  return (c_side == 0 && lies_within(c, a, b)) || (d_side == 0 && lies_within(d, a, b)) ||
         (a_side == 0 && lies_within(a, c, d)) || (b_side == 0 && lies_within(b, c, d));
}

std::string edge_name(std::size_t edge, std::size_t n) {
  return "the edge from point " + std::to_string(edge + 1) + " to " +
         std::to_string(after(edge, n) + 1);
}

/// The inset at which `corner` comes to lie on `edge`, both moving inward; infinity if it never
/// does.
double meeting_inset(const Outline& outline, std::size_t corner, std::size_t edge) {
  constexpr double never = std::numeric_limits<double>::infinity();
  const std::size_t end = after(edge, outline.size());
  const Point along = direction(outline, edge);
  const Point inward = {-along[1], along[0]};
  const Point motion = corner_motion(outline, corner);
  const double distance = dot(outline[corner] - outline[edge], inward);
  const double closing = 1 - dot(motion, inward);
  const double d = distance / closing;
  if (!(d > 0) || !std::isfinite(d)) return never;
  const Point start_then = outline[edge] + corner_motion(outline, edge) * d;
  const Point end_then = outline[end] + corner_motion(outline, end) * d;
  const Point corner_then = outline[corner] + motion * d;
  const double place = dot(corner_then - start_then, along);
  // An edge's own ends count: two corners may meet. The slack keeps rounding from missing that.
  const double slack = 1e-9 * edge_length(outline, edge);
  return place >= -slack && place <= dot(end_then - start_then, along) + slack ? d : never;
}

/// Whether corner `b` of the polygon that `left` still lists is an ear: a turn to the left whose
/// triangle holds no other corner.
bool is_ear(const Outline& outline, const std::vector<std::uint32_t>& left, std::size_t b) {
  const Point& p = outline[left[before(b, left.size())]];
  const Point& q = outline[left[b]];
  const Point& r = outline[left[after(b, left.size())]];
  if (turn(p, q, r) <= 0) return false;
  return std::none_of(left.begin(), left.end(), [&](std::uint32_t i) {
    const Point& x = outline[i];
    if (x == p || x == q || x == r) return false;
    return turn(p, q, x) >= 0 && turn(q, r, x) >= 0 && turn(r, p, x) >= 0;
  });
}

}  // namespace

Outline outline_of(const std::vector<std::pair<Length, Length>>& points) {
  Outline outline = as_given(points);
  if (inset_area(outline).area < Area{}) std::reverse(outline.begin(), outline.end());
  return outline;
}

std::optional<OutlineFlaw> flaw_of(const std::vector<std::pair<Length, Length>>& points) {
  const Outline outline = as_given(points);
  const std::size_t n = outline.size();
  if (n < 3) return OutlineFlaw{"has fewer than three points", {}};
  for (std::size_t i = 0; i < n; ++i)
    if (edge_length(outline, i) < 1e-3)  // a micrometre: nobody means two points so close
      return OutlineFlaw{"points " + std::to_string(i + 1) + " and " +
                             std::to_string(after(i, n) + 1) + " are the same",
                         i};
  for (std::size_t i = 0; i < n; ++i) {
    const Point u = direction(outline, before(i, n)), v = direction(outline, i);
    if (dot(u, v) < -1 + 1e-9)
      return OutlineFlaw{"the outline folds back on itself at point " + std::to_string(i + 1), i};
  }
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i + 2; j < n; ++j)
      if (after(j, n) != i && meet(outline[i], outline[i + 1], outline[j], outline[after(j, n)]))
        return OutlineFlaw{edge_name(i, n) + " meets " + edge_name(j, n), i};
  return std::nullopt;
}

InsetArea inset_area(const Outline& outline) {
  const std::size_t n = outline.size();
  double twice_area = 0, perimeter = 0, c = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const Point& next = outline[after(i, n)];
    twice_area += cross(outline[i] - outline[0], next - outline[0]);
    perimeter += edge_length(outline, i);
    c += half_angle_cotangent(outline, i);
  }
  return {twice_area / 2 * square_millimetre, perimeter * millimetre, c};
}

Outline inset(const Outline& outline, Length d) {
  Outline moved;
  moved.reserve(outline.size());
  for (std::size_t i = 0; i < outline.size(); ++i)
    moved.push_back(outline[i] + corner_motion(outline, i) * (d / millimetre));
  return moved;
}

Length greatest_inset(const Outline& outline) {
  const std::size_t n = outline.size();
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t edge = 0; edge < n; ++edge) {
    const double shrinks =
        half_angle_cotangent(outline, edge) + half_angle_cotangent(outline, after(edge, n));
    if (shrinks > 0) least = std::min(least, edge_length(outline, edge) / shrinks);
    for (std::size_t corner = 0; corner < n; ++corner)
      if (corner != edge && corner != after(edge, n))
        least = std::min(least, meeting_inset(outline, corner, edge));
  }
  return least * millimetre;
}

std::vector<std::array<std::uint32_t, 3>> filled(const Outline& outline) {
  std::vector<std::uint32_t> left(outline.size());
  std::iota(left.begin(), left.end(), 0U);
  std::vector<std::array<std::uint32_t, 3>> triangles;
  while (left.size() > 3) {
    std::size_t ear = 0;
    while (ear < left.size() && !is_ear(outline, left, ear)) ++ear;
    // A sound outline always has an ear; only rounding on a sliver can hide it, and then any cut
    // does.
    if (ear == left.size()) ear = 0;
    triangles.push_back({left[before(ear, left.size())], left[ear], left[after(ear, left.size())]});
    left.erase(left.begin() + static_cast<std::ptrdiff_t>(ear));
  }
  triangles.push_back({left[0], left[1], left[2]});
  return triangles;
}

}  // namespace brimwright::moulds
