#pragma once

#include "units/angle.h"
#include "units/quantity.h"

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace brimwright::moulds {

// Inside measures of a cavity. Depth is counted from the lowest point upward; the opening is at the
// top.

/// A box: `length` and `width` at the brim; walls lean outward by `draft`; upright edges rounded by
/// `corner_radius` at the brim (the wall's true offset: the radius shrinks downward, down to
/// sharp).
struct Block {
  Length length, width, height;
  Angle draft;
  Length corner_radius;
};
/// A round cup with a straight wall.
struct Frustum {
  Length floor_diameter, brim_diameter, height;
};
/// A round cup whose wall waves: r = R (1 + a cos n t), R growing straight from floor to brim and
/// the crest-to-trough depth of a flute being `flute_depth` at the brim (so a = flute_depth / brim
/// diameter).
struct FlutedCup {
  Length floor_diameter, brim_diameter, height;  // mean diameters, between crest and trough
  int flutes;
  Length flute_depth;
};
/// An upright wall round a polygon, given at the brim, leaning outward by `draft`.
struct RegularPolygon {
  int sides;
  Length across_flats;  // twice the inscribed circle's radius
  Length height;
  Angle draft;
};
struct FreeOutline {
  std::vector<std::pair<Length, Length>>
      points;  // x, y at the brim, either way round, not crossing
  Length height;
  Angle draft;
};
/// A profile revolved about the upright axis: radius against height, from the floor's centre (or
/// the lowest rim) up to the brim, heights never falling.
struct TurnedProfile {
  std::vector<std::pair<Length, Length>> points;  // radius, height
};
/// A bowl that is half an ellipsoid of revolution, opening at its widest.
struct Dome {
  Length diameter, height;
};
struct Ball {
  Length diameter;  // filled through a hole: a whole ball
};
struct HalfBall {
  Length diameter;  // open at its widest
};
/// A ring whose section is the lower half of a circle: half a torus, open at its widest.
struct HalfTorus {
  Length centre_diameter, tube_diameter;
};
/// A round cup with a straight wall round a post with a straight wall, both as high as the brim.
struct TurnedRing {
  Length outer_floor_diameter, outer_brim_diameter;
  Length post_floor_diameter, post_brim_diameter;
  Length height;
};
/// An upright wall round a heart made of a square and two half discs on two of its sides.
struct Heart {
  Length side;  // of the square, at the brim
  Length height;
  Angle draft;
};

using Shape = std::variant<Block, Frustum, FlutedCup, RegularPolygon, FreeOutline, TurnedProfile,
                           Dome, Ball, HalfBall, HalfTorus, TurnedRing, Heart>;

/// A few words: "fluted cup 48 to 70 mm, 38 mm high".
std::string described(const Shape& shape);

}  // namespace brimwright::moulds
