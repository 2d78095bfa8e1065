#include "moulds/shape_curve.h"

#include "moulds/outline.h"
#include "moulds/shape_walls.h"

#include <algorithm>
#include <cmath>

namespace brimwright::moulds {
namespace {

using geometry::LevelCurve;
using Bands = std::vector<LevelCurve::Band>;

/// The slice between `bottom` and `top` of a cavity of depth `height` whose wall leans by `draft`
/// from `brim`: at depth h the wall has moved inward by (height - h) tan(draft).
LevelCurve::Band drafted_band(const InsetArea& brim, Length height, Angle draft, Length bottom,
                              Length top) {
  const double lean = std::tan(draft.radians());
  const Length in = (height - bottom) * lean;  // at the band's bottom; less by `lean` each mm up
  return LevelCurve::quadratic_band(bottom, top, brim.at(in),
                                    lean * brim.perimeter - 2 * brim.c * lean * in,
                                    brim.c * lean * lean);
}

LevelCurve drafted_curve(const InsetArea& brim, Length height, Angle draft) {
  return LevelCurve::of_bands({drafted_band(brim, height, draft, Length{}, height)});
}

/// A straight round wall from radius `low` at `bottom` to radius `high` at `top`, its section
/// `fullness` times the circle's: pi fullness (low + slope t)^2.
struct RoundWall {
  Length low, high;
  double fullness = 1;
};
LevelCurve::Band round_band(const RoundWall& wall, Length bottom, Length top) {
  const double slope = (wall.high - wall.low) / (top - bottom);
  const double k = pi * wall.fullness;
  return LevelCurve::quadratic_band(bottom, top, k * wall.low * wall.low, 2 * k * slope * wall.low,
                                    k * slope * slope);
}

LevelCurve round_curve(const RoundWall& wall, Length height) {
  return LevelCurve::of_bands({round_band(wall, Length{}, height)});
}

LevelCurve curve_of(const Block& block) {
  const InsetArea sharp{
      .area = block.length * block.width, .perimeter = 2 * (block.length + block.width), .c = 4};
  // (L - 2d)(W - 2d) - (4 - pi)(r - d)^2 while the radius lasts, written out in powers of d.
  const double missing = 4 - pi;
  const Length r = block.corner_radius;
  const InsetArea rounded{.area = sharp.area - missing * r * r,
                          .perimeter = sharp.perimeter - 2 * missing * r,
                          .c = sharp.c - missing};
  const double lean = std::tan(block.draft.radians());
  const Length radius_ends = lean > 0 ? std::max(block.height - r / lean, Length{}) : Length{};
  Bands bands;
  if (radius_ends > Length{})
    bands.push_back(drafted_band(sharp, block.height, block.draft, Length{},
                                 std::min(radius_ends, block.height)));
  if (radius_ends < block.height)
    bands.push_back(drafted_band(rounded, block.height, block.draft, radius_ends, block.height));
  return LevelCurve::of_bands(std::move(bands));
}

LevelCurve curve_of(const Frustum& cup) {
  return round_curve({.low = cup.floor_diameter / 2, .high = cup.brim_diameter / 2}, cup.height);
}

/// Half the integral of R^2 (1 + a cos n t)^2 round the circle is pi R^2 (1 + a^2 / 2).
LevelCurve curve_of(const FlutedCup& cup) {
  const double a = wave_of(cup);
  return round_curve(
      {.low = cup.floor_diameter / 2, .high = cup.brim_diameter / 2, .fullness = 1 + a * a / 2},
      cup.height);
}

/// n p^2 tan(pi / n) with the inscribed circle's radius p (Zwillinger, CRC Standard Mathematical
/// Tables, regular polygons); moving the wall inward by d makes it p - d.
LevelCurve curve_of(const RegularPolygon& polygon) {
  const Length p = polygon.across_flats / 2;
  const double n_tan = polygon.sides * std::tan(pi / polygon.sides);
  return drafted_curve({.area = n_tan * p * p, .perimeter = 2 * n_tan * p, .c = n_tan},
                       polygon.height, polygon.draft);
}

LevelCurve curve_of(const FreeOutline& shape) {
  return drafted_curve(inset_area(outline_of(shape.points)), shape.height, shape.draft);
}

LevelCurve curve_of(const TurnedProfile& profile) {
  const Length floor = profile.points.front().second;
  Bands bands;
  for (std::size_t i = 1; i < profile.points.size(); ++i) {
    const auto& [low_radius, low] = profile.points[i - 1];
    const auto& [high_radius, high] = profile.points[i];
    const Length bottom = low - floor, top = high - floor;
    if (top > bottom)
      bands.push_back(round_band({.low = low_radius, .high = high_radius}, bottom, top));
  }
  return LevelCurve::of_bands(std::move(bands));
}

/// The lower part of an ellipsoid of revolution with half-axes a, a, b, up to depth `top`: a
/// spherical cap, pi h^2 (3 b - h) / 3 (Zwillinger, CRC Standard Mathematical Tables), stretched
/// a / b times both ways.
LevelCurve ellipsoid_curve(Length a, Length b, Length top) {
  const double widened = pi * (a / b) * (a / b);
  const auto section = [b, widened](Length h) { return widened * h * (2 * b - h); };
  const auto contents = [b, widened](Length h) { return widened * h * h * (3 * b - h) / 3; };
  return LevelCurve::of_bands(
      {{.bottom = Length{}, .top = top, .section = section, .contents = contents}});
}

LevelCurve curve_of(const Dome& dome) {
  return ellipsoid_curve(dome.diameter / 2, dome.height, dome.height);
}
LevelCurve curve_of(const Ball& ball) {
  return ellipsoid_curve(ball.diameter / 2, ball.diameter / 2, ball.diameter);
}
LevelCurve curve_of(const HalfBall& ball) {
  return ellipsoid_curve(ball.diameter / 2, ball.diameter / 2, ball.diameter / 2);
}

/// u - sin u. Near zero the difference would lose every digit, so there its Taylor series; at u =
/// 1/2 the first term left out is 1e-16 of the sum.
double beyond_sine(double u) {
  if (u > 0.5) return u - std::sin(u);
  double term = u * u * u / 6, sum = 0;
  for (int k = 4; k <= 14; k += 2) {
    sum += term;
    term *= -u * u / (k * (k + 1));
  }
  return sum;
}

/// At depth h the free surface is a flat ring between R - s and R + s, s being half the tube's
/// chord there, so 4 pi R s; below it lie 2 pi R times the tube's circular segment, whose area is
/// r^2 (u - sin u) / 2 with the central angle u (Zwillinger, CRC Standard Mathematical Tables).
LevelCurve curve_of(const HalfTorus& ring) {
  const Length R = ring.centre_diameter / 2, r = ring.tube_diameter / 2;
  const auto section = [R, r](Length h) { return 4 * pi * R * sqrt(h * (2 * r - h)); };
  const auto contents = [R, r](Length h) {
    const double u = 4 * std::asin(std::sqrt(h / (2 * r)));
    return 2 * pi * R * (r * r) * (beyond_sine(u) / 2);
  };
  return LevelCurve::of_bands(
      {{.bottom = Length{}, .top = r, .section = section, .contents = contents}});
}

LevelCurve curve_of(const TurnedRing& ring) {
  const Length cup = ring.outer_floor_diameter / 2, post = ring.post_floor_diameter / 2;
  const double cup_slope = (ring.outer_brim_diameter / 2 - cup) / ring.height;
  const double post_slope = (ring.post_brim_diameter / 2 - post) / ring.height;
  return LevelCurve::of_bands(
      {LevelCurve::quadratic_band(Length{}, ring.height, pi * (cup * cup - post * post),
                                  2 * pi * (cup_slope * cup - post_slope * post),
                                  pi * (cup_slope * cup_slope - post_slope * post_slope))});
}

/// A square of side s and two half discs of diameter s on two sides that meet in a corner, the
/// cleft. What lies at least d inside the wall is the square from d to s both ways, less the
/// quarter disc of radius d round the cleft (where the wall turns inward, the points at distance d
/// form an arc), plus two half discs of radius s/2 - d: (s - d)^2 - pi d^2 / 4 + pi (s/2 - d)^2.
LevelCurve curve_of(const Heart& heart) {
  const Length s = heart.side;
  return drafted_curve(
      {.area = (1 + pi / 4) * s * s, .perimeter = (2 + pi) * s, .c = 1 - pi / 4 + pi}, heart.height,
      heart.draft);
}

}  // namespace

LevelCurve level_curve(const Shape& shape) {
  return std::visit([](const auto& kind) { return curve_of(kind); }, shape);
}

}  // namespace brimwright::moulds
