#include "moulds/shape.h"

#include "units/printing.h"

#include <algorithm>

namespace brimwright::moulds {
namespace {

std::string mm(Length length) { return trimmed(length / millimetre, 2); }

std::string high(Length height) { return ", " + mm(height) + " mm high"; }

std::string leaning(Angle draft) {
  return draft > Angle{} ? ", draft " + trimmed(draft.degrees(), 1) + "\u00b0" : "";
}

/// "48 to 70 mm", or "60 mm" for an upright wall.
std::string from_to(Length floor, Length brim) {
  return (floor == brim ? "" : mm(floor) + " to ") + mm(brim) + " mm";
}

std::string words_for(const Block& block) {
  const std::string corners =
      block.corner_radius > Length{} ? ", corner radius " + mm(block.corner_radius) + " mm" : "";
  return "block " + mm(block.length) + " x " + mm(block.width) + " mm" + high(block.height) +
         leaning(block.draft) + corners;
}
std::string words_for(const Frustum& cup) {
  return "round cup " + from_to(cup.floor_diameter, cup.brim_diameter) + high(cup.height);
}
std::string words_for(const FlutedCup& cup) {
  return "fluted cup " + from_to(cup.floor_diameter, cup.brim_diameter) + high(cup.height) + ", " +
         std::to_string(cup.flutes) + " flutes " + mm(cup.flute_depth) + " mm deep";
}
std::string words_for(const RegularPolygon& polygon) {
  return std::to_string(polygon.sides) + "-sided bar " + mm(polygon.across_flats) +
         " mm across flats" + high(polygon.height) + leaning(polygon.draft);
}
std::string words_for(const FreeOutline& shape) {
  return "outline of " + std::to_string(shape.points.size()) + " points" + high(shape.height) +
         leaning(shape.draft);
}
std::string words_for(const TurnedProfile& profile) {
  const auto widest = std::max_element(profile.points.begin(), profile.points.end());
  return "turned profile " + mm(2 * widest->first) + " mm across" +
         high(profile.points.back().second - profile.points.front().second);
}
std::string words_for(const Dome& dome) {
  return "dome " + mm(dome.diameter) + " mm across" + high(dome.height);
}
std::string words_for(const Ball& ball) { return "ball " + mm(ball.diameter) + " mm across"; }
std::string words_for(const HalfBall& ball) {
  return "half ball " + mm(ball.diameter) + " mm across";
}
std::string words_for(const HalfTorus& ring) {
  return "half ring " + mm(ring.centre_diameter + ring.tube_diameter) + " mm across, tube " +
         mm(ring.tube_diameter) + " mm";
}
std::string words_for(const TurnedRing& ring) {
  return "ring " + from_to(ring.outer_floor_diameter, ring.outer_brim_diameter) + " round a post " +
         from_to(ring.post_floor_diameter, ring.post_brim_diameter) + high(ring.height);
}
std::string words_for(const Heart& heart) {
  return "heart of side " + mm(heart.side) + " mm" + high(heart.height) + leaning(heart.draft);
}

}  // namespace

std::string described(const Shape& shape) {
  return std::visit([](const auto& kind) { return words_for(kind); }, shape);
}

}  // namespace brimwright::moulds
