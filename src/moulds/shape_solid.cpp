#include "moulds/shape_solid.h"

#include "moulds/loft.h"
#include "moulds/shape_walls.h"

#include <algorithm>
#include <cmath>

namespace brimwright::moulds {
namespace {

using geometry::TriangleMesh;
using Point = std::array<double, 2>;

/// Facets round a circle: a multiple of four, so that round shapes are as wide as they say along x
/// and y.
int facets_round(int asked) { return std::max(8, (asked + 3) / 4 * 4); }

/// The point of the unit circle at `part` of `parts` of a full turn; exact at quarter turns.
Point on_circle(int part, int parts) {
  if (part * 4 % parts == 0) {
    constexpr std::array<Point, 4> quarters = {{{1, 0}, {0, 1}, {-1, 0}, {0, -1}}};
    return quarters.at(static_cast<std::size_t>(part * 4 / parts % 4));
  }
  const double angle = 2 * pi * part / parts;
  return {std::cos(angle), std::sin(angle)};
}

Ring circle(double radius_mm, double z_mm, int n) {
  Ring ring{{}, z_mm};
  for (int i = 0; i < n; ++i) {
    const Point p = on_circle(i, n);
    ring.points.push_back({radius_mm * p[0], radius_mm * p[1]});
  }
  return ring;
}

/// The solid under an open stack of rings, floor and lid being fans round `middle`.
TriangleMesh closed_stack(std::vector<Ring> rings, Point middle) {
  const std::size_t n = rings.front().points.size();
  if (!is_point(rings.front()))
    rings.insert(rings.begin(), point_ring(middle, n, rings.front().z_mm));
  if (!is_point(rings.back())) rings.push_back(point_ring(middle, n, rings.back().z_mm));
  return loft(rings, LoftEnds::open);
}

/// The solid swept by a profile of (radius, height) turned about the upright axis, from the axis to
/// the axis; a profile that ends off the axis gets a flat floor or lid.
TriangleMesh turned(const std::vector<Point>& profile, int n) {
  std::vector<Ring> rings;
  for (const auto& [radius, z] : profile) rings.push_back(circle(radius, z, n));
  return closed_stack(std::move(rings), {0, 0});
}

TriangleMesh turned_ring(const std::vector<Point>& section, int n) {
  std::vector<Ring> rings;
  for (const auto& [radius, z] : section) rings.push_back(circle(radius, z, n));
  return loft(rings, LoftEnds::joined);
}

/// A quarter of an ellipse from the lowest point (0, 0) to the widest (a, b), as `steps` chords.
std::vector<Point> quarter_ellipse(double a, double b, int steps) {
  std::vector<Point> profile;
  for (int i = 0; i <= steps; ++i) {
    const Point p = on_circle(i, 4 * steps);
    profile.push_back({a * p[1], b - b * p[0]});
  }
  return profile;
}

/// An arc of `steps` chords round `centre` from angle `from` to `to`, both in quarter turns.
void add_arc(Outline& outline, Point centre, double radius, int from, int to, int steps) {
  for (int i = 0; i <= steps; ++i) {
    const int part = from * steps + (to - from) * i + 4 * steps;
    const Point p = on_circle(part % (4 * steps), 4 * steps);
    outline.push_back({centre[0] + radius * p[0], centre[1] + radius * p[1]});
  }
}

Ring block_ring(const Block& block, Length height, int steps) {
  const double d = inset_at_floor(block.height - height, block.draft) / millimetre;
  const double r = std::max(block.corner_radius / millimetre - d, 0.0);
  const double x = block.length / millimetre / 2 - d - r, y = block.width / millimetre / 2 - d - r;
  Ring ring{{}, height / millimetre};
  add_arc(ring.points, {x, y}, r, 0, 1, steps);
  add_arc(ring.points, {-x, y}, r, 1, 2, steps);
  add_arc(ring.points, {-x, -y}, r, 2, 3, steps);
  add_arc(ring.points, {x, -y}, r, 3, 4, steps);
  return ring;
}

TriangleMesh solid(const Block& block, int n) {
  const double lean = std::tan(block.draft.radians());
  std::vector<Ring> rings = {block_ring(block, Length{}, n / 4)};
  if (lean > 0) {
    const Length radius_ends = block.height - block.corner_radius / lean;
    if (radius_ends > Length{} && radius_ends < block.height)
      rings.push_back(block_ring(block, radius_ends, n / 4));
  }
  rings.push_back(block_ring(block, block.height, n / 4));
  return closed_stack(std::move(rings), {0, 0});
}

TriangleMesh solid(const Frustum& cup, int n) {
  return turned({{cup.floor_diameter / millimetre / 2, 0},
                 {cup.brim_diameter / millimetre / 2, cup.height / millimetre}},
                n);
}

TriangleMesh solid(const FlutedCup& cup, int n) {
  const int each = std::max(8, (n + cup.flutes - 1) / cup.flutes);  // chords along one flute
  const double a = wave_of(cup);
  const auto ring = [&](Length diameter, Length height) {
    Ring waved = circle(diameter / millimetre / 2, height / millimetre, each * cup.flutes);
    for (std::size_t i = 0; i < waved.points.size(); ++i) {
      const double wave = 1 + a * on_circle(static_cast<int>(i) % each, each)[0];
      waved.points[i] = {wave * waved.points[i][0], wave * waved.points[i][1]};
    }
    return waved;
  };
  return closed_stack({ring(cup.floor_diameter, Length{}), ring(cup.brim_diameter, cup.height)},
                      {0, 0});
}

TriangleMesh solid(const RegularPolygon& polygon, int) {
  const double corner = 1 / std::cos(pi / polygon.sides);  // circumscribed / inscribed circle
  const Length brim = polygon.across_flats / 2;
  const Length floor = brim - inset_at_floor(polygon.height, polygon.draft);
  return turned({{corner * (floor / millimetre), 0},
                 {corner * (brim / millimetre), polygon.height / millimetre}},
                polygon.sides);
}

TriangleMesh solid(const FreeOutline& shape, int) {
  const Outline brim = outline_of(shape.points);
  const Outline floor = inset(brim, inset_at_floor(shape.height, shape.draft));
  TriangleMesh mesh = loft({{floor, 0}, {brim, shape.height / millimetre}}, LoftEnds::open);
  add_cap(mesh, floor, 0, CapFaces::down);
  add_cap(mesh, brim, static_cast<std::uint32_t>(floor.size()), CapFaces::up);
  return mesh;
}

TriangleMesh solid(const TurnedProfile& shape, int n) {
  const Length floor = shape.points.front().second;
  std::vector<Point> profile;
  for (const auto& [radius, height] : shape.points)
    profile.push_back({radius / millimetre, (height - floor) / millimetre});
  return turned(profile, n);
}

TriangleMesh solid(const Dome& dome, int n) {
  return turned(quarter_ellipse(dome.diameter / millimetre / 2, dome.height / millimetre, n / 4),
                n);
}

TriangleMesh solid(const HalfBall& ball, int n) {
  return solid(Dome{.diameter = ball.diameter, .height = ball.diameter / 2}, n);
}

TriangleMesh solid(const Ball& ball, int n) {
  const double r = ball.diameter / millimetre / 2;
  std::vector<Point> profile = quarter_ellipse(r, r, n / 4);
  for (std::size_t i = profile.size() - 1; i-- > 0;)
    profile.push_back({profile[i][0], 2 * r - profile[i][1]});
  return turned(profile, n);
}

TriangleMesh solid(const HalfTorus& ring, int n) {
  const double centre = ring.centre_diameter / millimetre / 2;
  const double r = ring.tube_diameter / millimetre / 2;
  std::vector<Point> section;
  const std::vector<Point> quarter = quarter_ellipse(r, r, n / 4);
  for (const Point& p : quarter) section.push_back({centre + p[0], p[1]});
  for (std::size_t i = quarter.size(); i-- > 1;)
    section.push_back({centre - quarter[i][0], quarter[i][1]});
  return turned_ring(section, n);
}

TriangleMesh solid(const TurnedRing& ring, int n) {
  const double brim = ring.height / millimetre;
  return turned_ring({{ring.outer_floor_diameter / millimetre / 2, 0},
                      {ring.outer_brim_diameter / millimetre / 2, brim},
                      {ring.post_brim_diameter / millimetre / 2, brim},
                      {ring.post_floor_diameter / millimetre / 2, 0}},
                     n);
}

/// The heart's outline moved inward by d: the tip, the right half disc, the arc round the cleft,
/// the left half disc; built on the square's own axes and turned to stand on its tip.
Ring heart_ring(const Heart& heart, Length height, int steps) {
  const double s = heart.side / millimetre;
  const double d = inset_at_floor(heart.height - height, heart.draft) / millimetre;
  Ring ring{{{d, d}}, height / millimetre};
  add_arc(ring.points, {s, s / 2}, s / 2 - d, -1, 1, 2 * steps);
  add_arc(ring.points, {s, s}, d, 3, 2, steps);
  add_arc(ring.points, {s / 2, s}, s / 2 - d, 0, 2, 2 * steps);
  for (Point& p : ring.points)
    p = {(p[0] - p[1]) / std::numbers::sqrt2, (p[0] + p[1]) / std::numbers::sqrt2};
  return ring;
}

TriangleMesh solid(const Heart& heart, int n) {
  // The square's middle sees the whole outline at every inset below s / 2.
  const Point middle = {0, heart.side / millimetre / std::numbers::sqrt2};
  return closed_stack({heart_ring(heart, Length{}, n / 4), heart_ring(heart, heart.height, n / 4)},
                      middle);
}

}  // namespace

TriangleMesh solid_of(const Shape& shape, int round_facets) {
  const int n = facets_round(round_facets);
  return std::visit([n](const auto& kind) { return solid(kind, n); }, shape);
}

}  // namespace brimwright::moulds
