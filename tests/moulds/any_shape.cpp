#include "any_shape.h"

#include <algorithm>
#include <cmath>

namespace brimwright::moulds {
namespace {

/// A length from `least` to `most` millimetres, in tenths.
Length mm(int least, int most) {
  return *rc::gen::inRange(least * 10, most * 10 + 1) * (millimetre / 10);
}

double part(double least, double most) {
  return least + (most - least) * (*rc::gen::inRange(0, 1001) / 1000.0);
}

/// A draft that leaves at least a tenth of `room` at the floor.
Angle draft(Length room, Length height) {
  return Angle::in_radians(std::min(part(0, 0.5), std::atan(0.9 * (room / height))));
}

Block any_block() {
  Block block{.length = mm(20, 300),
              .width = mm(20, 300),
              .height = mm(5, 120),
              .draft = {},
              .corner_radius = {}};
  const Length half = std::min(block.length, block.width) / 2;
  block.corner_radius = part(0, 1) * half;
  block.draft = draft(half, block.height);
  return block;
}

FlutedCup any_fluted_cup() {
  const Length brim = mm(30, 120);
  return {.floor_diameter = mm(10, 120),
          .brim_diameter = brim,
          .height = mm(10, 90),
          .flutes = *rc::gen::inRange(3, 30),
          .flute_depth = part(0, 0.45) * brim};
}

RegularPolygon any_polygon() {
  RegularPolygon polygon{.sides = *rc::gen::inRange(3, 13),
                         .across_flats = mm(20, 120),
                         .height = mm(5, 60),
                         .draft = {}};
  polygon.draft = draft(polygon.across_flats / 2, polygon.height);
  return polygon;
}

/// An L: one corner turns inward. Its arms are at least twice the inset at the floor.
FreeOutline any_outline() {
  const Length arm = mm(20, 40), x = arm + mm(20, 60), y = arm + mm(20, 60), height = mm(5, 60);
  const Length o;
  FreeOutline shape{.points = {{o, o}, {x, o}, {x, arm}, {arm, arm}, {arm, y}, {o, y}},
                    .height = height,
                    .draft = draft(8 * millimetre, height)};
  if (*rc::gen::arbitrary<bool>()) std::reverse(shape.points.begin(), shape.points.end());
  return shape;
}

TurnedProfile any_profile() {
  TurnedProfile profile;
  Length height = mm(0, 10);
  profile.points.emplace_back(*rc::gen::arbitrary<bool>() ? Length{} : mm(5, 40), height);
  for (int i = *rc::gen::inRange(1, 6); i > 0; --i) {
    height += mm(1, 20);
    profile.points.emplace_back(mm(5, 60), height);
    if (*rc::gen::arbitrary<bool>())
      profile.points.emplace_back(profile.points.back().first + mm(1, 9), height);
  }
  profile.points.emplace_back(mm(5, 60), height + mm(1, 20));
  return profile;
}

HalfTorus any_half_ring() {
  const Length ring = mm(20, 150);
  return {.centre_diameter = ring, .tube_diameter = part(0.1, 0.95) * ring};
}

TurnedRing any_turned_ring() {
  const Length floor = mm(20, 150), brim = mm(20, 150);
  return {.outer_floor_diameter = floor,
          .outer_brim_diameter = brim,
          .post_floor_diameter = part(0.1, 0.9) * floor,
          .post_brim_diameter = part(0.1, 0.9) * brim,
          .height = mm(5, 90)};
}

Heart any_heart() {
  Heart heart{.side = mm(20, 120), .height = mm(5, 60), .draft = {}};
  heart.draft = draft(heart.side / 2, heart.height);
  return heart;
}

Shape any_of_kind(int kind) {
  switch (kind) {
    case 0:
      return any_block();
    case 1:
      return Frustum{
          .floor_diameter = mm(0, 120), .brim_diameter = mm(20, 120), .height = mm(5, 120)};
    case 2:
      return any_fluted_cup();
    case 3:
      return any_polygon();
    case 4:
      return any_outline();
    case 5:
      return any_profile();
    case 6:
      return Dome{.diameter = mm(10, 150), .height = mm(5, 90)};
    case 7:
      return Ball{.diameter = mm(8, 100)};
    case 8:
      return HalfBall{.diameter = mm(8, 150)};
    case 9:
      return any_half_ring();
    case 10:
      return any_turned_ring();
    default:
      return any_heart();
  }
}

struct Enlarge {
  double f;

  std::vector<std::pair<Length, Length>> operator()(
      std::vector<std::pair<Length, Length>> points) const {
    for (auto& [a, b] : points) {
      a *= f;
      b *= f;
    }
    return points;
  }
  Shape operator()(const Block& s) const {
    return Block{f * s.length, f * s.width, f * s.height, s.draft, f * s.corner_radius};
  }
  Shape operator()(const Frustum& s) const {
    return Frustum{f * s.floor_diameter, f * s.brim_diameter, f * s.height};
  }
  Shape operator()(const FlutedCup& s) const {
    return FlutedCup{f * s.floor_diameter, f * s.brim_diameter, f * s.height, s.flutes,
                     f * s.flute_depth};
  }
  Shape operator()(const RegularPolygon& s) const {
    return RegularPolygon{s.sides, f * s.across_flats, f * s.height, s.draft};
  }
  Shape operator()(const FreeOutline& s) const {
    return FreeOutline{(*this)(s.points), f * s.height, s.draft};
  }
  Shape operator()(const TurnedProfile& s) const { return TurnedProfile{(*this)(s.points)}; }
  Shape operator()(const Dome& s) const { return Dome{f * s.diameter, f * s.height}; }
  Shape operator()(const Ball& s) const { return Ball{f * s.diameter}; }
  Shape operator()(const HalfBall& s) const { return HalfBall{f * s.diameter}; }
  Shape operator()(const HalfTorus& s) const {
    return HalfTorus{f * s.centre_diameter, f * s.tube_diameter};
  }
  Shape operator()(const TurnedRing& s) const {
    return TurnedRing{f * s.outer_floor_diameter, f * s.outer_brim_diameter,
                      f * s.post_floor_diameter, f * s.post_brim_diameter, f * s.height};
  }
  Shape operator()(const Heart& s) const { return Heart{f * s.side, f * s.height, s.draft}; }
};

}  // namespace

rc::Gen<Shape> any_shape() {
  return rc::gen::exec([] { return any_of_kind(*rc::gen::inRange(0, 12)); });
}

Shape enlarged(const Shape& shape, double factor) { return std::visit(Enlarge{factor}, shape); }

}  // namespace brimwright::moulds
