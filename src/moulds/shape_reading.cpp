#include "moulds/shape_reading.h"

#include "moulds/outline.h"
#include "moulds/shape_curve.h"
#include "moulds/shape_walls.h"
#include "moulds/usual_moulds.h"
#include "units/advice_text.h"
#include "units/complaint_facts.h"
#include "units/printing.h"
#include "units/wording.h"

#include <cmath>

namespace brimwright::moulds {
namespace {

using Points = std::vector<std::pair<Length, Length>>;

// Checking every pair of edges for a meeting costs the square of this.
constexpr std::size_t most_points = 500;

Angle draft_of(const Fields& fields) {
  return fields.has("draft") ? fields.angle("draft") : Angle{};
}

/// Refuses a draft whose wall, at the floor, has moved inward by `room` or more.
void check_floor(const Fields& fields, Length height, Angle draft, Length room) {
  // The margin of a millionth keeps a floor that exists in figures only from passing.
  if (inset_at_floor(height, draft) < room * (1 - 1e-6)) return;
  const double most = std::atan(room / height) * 180 / pi;
  throw UserError(fields.place("draft"),
                  "walls leaning " + trimmed(draft.degrees(), 2) + "\u00b0 over " +
                      in_mm(height, 2) + " of height meet before the floor",
                  "give the draft of one wall from upright, below " +
                      fixed(std::floor(most * 10) / 10, 1) + "\u00b0 here");
}

Block read_block(const Fields& fields) {
  Block block{.length = fields.positive_length("length", "80 mm"),
              .width = fields.positive_length("width", "60 mm"),
              .height = fields.positive_length("height", "30 mm"),
              .draft = draft_of(fields),
              .corner_radius = {}};
  if (fields.has("corner_radius")) block.corner_radius = fields.length("corner_radius");
  const Length half_width = std::min(block.length, block.width) / 2;
  if (block.corner_radius > half_width)
    throw UserError(
        fields.place("corner_radius"),
        in_mm(block.corner_radius, 2) + " is more than half the narrower side",
        "give the radius of the upright edges at the brim, at most " + most_text(half_width));
  check_floor(fields, block.height, block.draft, half_width);
  return block;
}

Frustum read_frustum(const Fields& fields) {
  return {.floor_diameter = fields.length("floor_diameter", "60 mm"),
          .brim_diameter = fields.positive_length("brim_diameter", "70 mm"),
          .height = fields.positive_length("height", "30 mm")};
}

FlutedCup read_fluted_cup(const Fields& fields) {
  const FlutedCup cup{.floor_diameter = fields.length("floor_diameter", "60 mm"),
                      .brim_diameter = fields.positive_length("brim_diameter", "70 mm"),
                      .height = fields.positive_length("height", "30 mm"),
                      .flutes = static_cast<int>(fields.whole_number("flutes", 3, 200)),
                      .flute_depth = fields.length("flute_depth")};
  if (cup.flute_depth >= cup.brim_diameter / 2)
    throw UserError(fields.place("flute_depth"),
                    in_mm(cup.flute_depth, 2) + " is too deep for a cup " +
                        in_mm(cup.brim_diameter, 2) + " across",
                    "give the depth from a flute's crest to its trough at the brim, below " +
                        in_mm(cup.brim_diameter / 2, 2));
  return cup;
}

RegularPolygon read_polygon(const Fields& fields) {
  const RegularPolygon polygon{.sides = static_cast<int>(fields.whole_number("sides", 3, 100)),
                               .across_flats = fields.positive_length("across_flats", "70 mm"),
                               .height = fields.positive_length("height", "30 mm"),
                               .draft = draft_of(fields)};
  check_floor(fields, polygon.height, polygon.draft, polygon.across_flats / 2);
  return polygon;
}

Points read_points(const Fields& fields, const char* first, const char* second, std::size_t least) {
  Points points;
  for (const Fields& point : fields.objects("points", most_points)) {
    points.emplace_back(point.length(first), point.length(second));
    point.refuse_unknown();
  }
  if (points.size() < least)
    throw UserError(fields.place("points"), "has " + std::to_string(points.size()) + " points",
                    "give " + std::to_string(least) + " to " + std::to_string(most_points) +
                        " points, each with \"" + first + "\" and \"" + second + "\"");
  return points;
}

FreeOutline read_outline(const Fields& fields) {
  const FreeOutline shape{.points = read_points(fields, "x", "y", 3),
                          .height = fields.positive_length("height", "30 mm"),
                          .draft = draft_of(fields)};
  if (const auto flaw = flaw_of(shape.points))
    throw UserErrorWithFacts(fields.place("points"), flaw->words,
                             "give the corners in the order in which one walks round the brim",
                             {.entry = flaw->point});
  check_floor(fields, shape.height, shape.draft, greatest_inset(outline_of(shape.points)));
  return shape;
}

void check_profile(const Points& points, const Fields& fields) {
  const Place where = fields.place("points");
  const auto place_of = [&](std::size_t i) {
    return Place{where.file, where.field + "/" + std::to_string(i)};
  };
  for (std::size_t i = 1; i < points.size(); ++i) {
    if (points[i].second < points[i - 1].second)
      throw UserError(place_of(i), "lies lower than the point before it",
                      "give the profile from the lowest point up to the brim");
    if (points[i] == points[i - 1])
      throw UserError(place_of(i), "repeats the point before it", "leave one of them out");
    if (points[i].first == Length{})
      throw UserError(place_of(i), "closes the cavity on its middle line",
                      "only the first point, the middle of the floor, may have radius 0");
  }
  if (points.back().second == points.front().second)
    throw UserError(where, "all points lie at one height", "give the heights up to the brim");
  const std::size_t last = points.size() - 1;
  if (points[last].second == points[last - 1].second)
    throw UserError(place_of(last), "runs level at the brim, where nothing can be filled",
                    "end the profile at the wall's top edge");
}

TurnedProfile read_turned_profile(const Fields& fields) {
  TurnedProfile profile{read_points(fields, "radius", "height", 2)};
  const Length floor = profile.points.front().second;
  for (auto& [radius, height] : profile.points) height -= floor;
  check_profile(profile.points, fields);
  return profile;
}

Dome read_dome(const Fields& fields) {
  return {.diameter = fields.positive_length("diameter", "70 mm"),
          .height = fields.positive_length("height", "30 mm")};
}

HalfTorus read_half_ring(const Fields& fields) {
  const HalfTorus ring{.centre_diameter = fields.positive_length("centre_diameter", "60 mm"),
                       .tube_diameter = fields.positive_length("tube_diameter", "30 mm")};
  if (ring.tube_diameter >= ring.centre_diameter)
    throw UserError(fields.place("tube_diameter"),
                    "a tube of " + in_mm(ring.tube_diameter, 2) + " leaves no hole in a ring of " +
                        in_mm(ring.centre_diameter, 2),
                    "give the ring's diameter from middle to middle of the tube as "
                    "\"centre_diameter\", and the tube's own width as \"tube_diameter\"");
  return ring;
}

void check_post(const Fields& fields, const char* key, Length post, Length cup) {
  if (post < cup) return;
  throw UserError(
      fields.place(key),
      "a post " + in_mm(post, 2) + " across leaves no room in a cup of " + in_mm(cup, 2),
      "give the post's diameter, less than the cup's at the same height");
}

TurnedRing read_turned_ring(const Fields& fields) {
  const TurnedRing ring{
      .outer_floor_diameter = fields.positive_length("outer_floor_diameter", "75 mm"),
      .outer_brim_diameter = fields.positive_length("outer_brim_diameter", "80 mm"),
      .post_floor_diameter = fields.positive_length("post_floor_diameter", "25 mm"),
      .post_brim_diameter = fields.positive_length("post_brim_diameter", "20 mm"),
      .height = fields.positive_length("height", "30 mm")};
  check_post(fields, "post_floor_diameter", ring.post_floor_diameter, ring.outer_floor_diameter);
  check_post(fields, "post_brim_diameter", ring.post_brim_diameter, ring.outer_brim_diameter);
  return ring;
}

Heart read_heart(const Fields& fields) {
  const Heart heart{.side = fields.positive_length("side", "50 mm"),
                    .height = fields.positive_length("height", "30 mm"),
                    .draft = draft_of(fields)};
  check_floor(fields, heart.height, heart.draft, heart.side / 2);
  return heart;
}

Shape read_kind(const Fields& fields, const std::string& kind) {
  if (kind == "block") return read_block(fields);
  if (kind == "frustum") return read_frustum(fields);
  if (kind == "fluted_cup") return read_fluted_cup(fields);
  if (kind == "polygon") return read_polygon(fields);
  if (kind == "outline") return read_outline(fields);
  if (kind == "turned_profile") return read_turned_profile(fields);
  if (kind == "dome") return read_dome(fields);
  if (kind == "ball") return Ball{.diameter = fields.positive_length("diameter", "70 mm")};
  if (kind == "half_ball") return HalfBall{.diameter = fields.positive_length("diameter", "70 mm")};
  if (kind == "half_ring") return read_half_ring(fields);
  if (kind == "turned_ring") return read_turned_ring(fields);
  return read_heart(fields);
}

/// Refuses what is too small to be a cavity at all, and what would drown in rounding.
void check_size(const Fields& fields, const Shape& shape) {
  if (level_curve(shape).brimful() >= cubic_millimetre) return;
  throw UserError(fields.place(), "these measures make a cavity of less than 1 mm³",
                  "check the units, such as mm, cm or in");
}

}  // namespace

Shape read_shape(const Fields& fields) {
  const std::string kind = fields.choice(
      "kind", {"block", "frustum", "fluted_cup", "polygon", "outline", "turned_profile", "dome",
               "ball", "half_ball", "half_ring", "turned_ring", "heart"});
  Shape shape = read_kind(fields, kind);
  fields.has("confirmed");  // known here; ask_for_size says of what
  fields.refuse_unknown();
  check_size(fields, shape);
  ask_for_size(fields, shape);
  return shape;
}

}  // namespace brimwright::moulds
