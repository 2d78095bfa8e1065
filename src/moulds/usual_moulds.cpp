#include "moulds/usual_moulds.h"

#include "moulds/shape_curve.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <string>

namespace brimwright::embedded {
std::string_view usual_moulds_json();
}

namespace brimwright::moulds {
namespace {

/// All measures across a cavity that any kind of shape has.
constexpr std::string_view widths[] = {
    "length",          "width",         "diameter",           "floor_diameter",
    "brim_diameter",   "side",          "across_flats",       "outer_floor_diameter",
    "centre_diameter", "tube_diameter", "outer_brim_diameter"};

/// "412 ml": as it is printed, and as "confirmed" names it.
std::string ml(Volume volume) { return fixed_ml(volume, volume < 10 * millilitre ? 1 : 0); }

bool is_tapering(const Frustum& cup) { return cup.floor_diameter != cup.brim_diameter; }

/// Whether a cast of this shape is one piece: not one with upright walls, which may be cut.
bool holds_one_piece(const Shape& shape) {
  if (const auto* cup = std::get_if<Frustum>(&shape))
    return is_tapering(*cup) || cup->height < cup->brim_diameter;
  return !std::holds_alternative<Block>(shape) && !std::holds_alternative<RegularPolygon>(shape) &&
         !std::holds_alternative<FreeOutline>(shape) && !std::holds_alternative<Heart>(shape);
}

void ask_for_proportion(const Fields& fields, Length floor, Length brim, Length height) {
  const double times = height / std::max(floor, brim);
  usual_moulds().ask_found(fields, "cup's height for its width", times,
                           trimmed(times, 2) + " times as tall as wide");
}

}  // namespace

const UsualMeasures& usual_moulds() {
  static const UsualMeasures usual(embedded::usual_moulds_json(), "data/usual_moulds.json");
  return usual;
}

void ask_for_size(const Fields& fields, const Shape& shape) {
  for (const std::string_view width : widths)
    if (fields.has(width)) usual_moulds().ask(fields, width, "width", fields.length(width));
  if (fields.has("height")) usual_moulds().ask(fields, "height", "height", fields.length("height"));
  if (const auto* cup = std::get_if<Frustum>(&shape); cup != nullptr && is_tapering(*cup))
    ask_for_proportion(fields, cup->floor_diameter, cup->brim_diameter, cup->height);
  if (const auto* cup = std::get_if<FlutedCup>(&shape))
    ask_for_proportion(fields, cup->floor_diameter, cup->brim_diameter, cup->height);
  const Volume brimful = level_curve(shape).brimful();
  usual_moulds().ask_found(fields, holds_one_piece(shape) ? "cup" : "cavity", brimful, ml(brimful));
}

}  // namespace brimwright::moulds
