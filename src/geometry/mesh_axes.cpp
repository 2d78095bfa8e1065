#include "geometry/mesh_file.h"

#include <array>
#include <cstddef>

namespace brimwright::geometry {
namespace {

constexpr std::array unit_names = {"mm", "cm", "m", "in"};
constexpr std::array axis_names = {"+x", "-x", "+y", "-y", "+z", "-z"};

}  // namespace

LengthUnit length_unit(const std::string& text, const Place& where) {
  for (std::size_t i = 0; i < unit_names.size(); ++i) {
    if (text == unit_names[i]) return static_cast<LengthUnit>(i);
  }
  throw UserError(where, "\"" + text + "\" is not a unit of length known here",
                  "give mm, cm, m or in");
}

Axis axis(const std::string& text, const Place& where) {
  for (std::size_t i = 0; i < axis_names.size(); ++i) {
    if (text == axis_names[i]) return static_cast<Axis>(i);
  }
  throw UserError(where, "\"" + text + "\" is not a direction",
                  "give the one that points up: +x, -x, +y, -y, +z or -z");
}

std::string name_of(LengthUnit unit) { return unit_names[static_cast<std::size_t>(unit)]; }
std::string name_of(Axis up) { return axis_names[static_cast<std::size_t>(up)]; }

}  // namespace brimwright::geometry
