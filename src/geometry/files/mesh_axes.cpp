#include "geometry/files/mesh_file.h"
#include "units/number_text.h"
#include "units/printing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace brimwright::geometry {
namespace {

constexpr std::array unit_names = {"mm", "cm", "m", "in"};
constexpr std::array axis_names = {"+x", "-x", "+y", "-y", "+z", "-z"};

/// What `turn` made `p`: dot products with what the axes became, a rotation's inverse.
template <class Turn>
Point turned_back(const Point& p, Turn turn) {
  Point back{};
  for (std::size_t i = 0; i < 3; ++i) {
    Point axis{};
    axis[i] = 1;
    const Point became = turn(axis);
    for (std::size_t k = 0; k < 3; ++k) back[i] += became[k] * p[k];
  }
  return back;
}

}  // namespace

LengthUnit length_unit(const std::string& text, const Place& where) {
  for (std::size_t i = 0; i < unit_names.size(); ++i)
    if (text == unit_names[i]) return static_cast<LengthUnit>(i);
  throw UserError(where, "\"" + text + "\" is not a unit of length known here",
                  "give mm, cm, m or in");
}

Axis axis(const std::string& text, const Place& where) {
  for (std::size_t i = 0; i < axis_names.size(); ++i)
    if (text == axis_names[i]) return static_cast<Axis>(i);
  throw UserError(where, "\"" + text + "\" is not a direction",
                  "give the one that points up: +x, -x, +y, -y, +z or -z");
}

Point direction(const std::string& text, const Place& where) {
  Point parts{};
  std::string_view rest = text;
  bool is_sound = true;
  for (std::size_t i = 0; i < 3 && is_sound; ++i) {
    const auto number = leading_number(rest);
    is_sound = number && std::isfinite(number->value);
    if (!is_sound) break;
    parts[i] = number->value;
    rest.remove_prefix(number->length);
    is_sound = i == 2 ? rest.empty() : rest.starts_with(',');
    if (i < 2 && is_sound) rest.remove_prefix(1);
  }
  const double size = std::hypot(parts[0], parts[1], parts[2]);
  if (!is_sound || !(size > 0) || !std::isfinite(size))
    throw UserError(where, "\"" + text + "\" is not a direction",
                    "give an axis such as +y, or three numbers such as 0.05,0,0.99");
  if (parts[2] < 0.5 * size)
    throw UserError(where, "\"" + text + "\" leans more than 60° from upright",
                    "name the axis that points up, such as -z");
  return {parts[0] / size, parts[1] / size, parts[2] / size};
}

std::string name_of(LengthUnit unit) { return unit_names[static_cast<std::size_t>(unit)]; }
std::string name_of(Axis up) { return axis_names[static_cast<std::size_t>(up)]; }

Point straightened(const Point& p, const Point& up) {
  const auto [x, y, z] = up;
  // Rodrigues' rotation about up x z, whose sine is |(x, y)| and cosine z.
  const double k = 1 / (1 + z);
  return {(1 - k * x * x) * p[0] - k * x * y * p[1] - x * p[2],
          -k * x * y * p[0] + (1 - k * y * y) * p[1] - y * p[2], x * p[0] + y * p[1] + z * p[2]};
}

Point upright(const Point& p, Axis up) {
  const auto [x, y, z] = p;
  switch (up) {
    case Axis::plus_x:
      return {-z, y, x};
    case Axis::minus_x:
      return {z, y, -x};
    case Axis::plus_y:
      return {x, -z, y};
    case Axis::minus_y:
      return {x, z, -y};
    case Axis::plus_z:
      return p;
    case Axis::minus_z:
      return {x, -y, -z};
  }
  return p;
}

Point place_in_file(const Point& at_mm, const FileFrame& frame) {
  Point p = at_mm;
  if (frame.straight_up)
    p = turned_back(p, [&](const Point& axis) { return straightened(axis, *frame.straight_up); });
  p = turned_back(p, [&](const Point& axis) { return upright(axis, frame.up); });
  for (double& coordinate : p) coordinate /= frame.in_mm;
  return p;
}

std::string place_text(const Point& at_mm, const FileFrame& frame) {
  const Point p = place_in_file(at_mm, frame);
  // A hundredth of a millimetre, in whatever unit.
  const int decimals = std::clamp(2 + static_cast<int>(std::ceil(std::log10(frame.in_mm))), 0, 6);
  std::string text = "at (";
  for (std::size_t i = 0; i < 3; ++i) text += (i > 0 ? ", " : "") + trimmed(p[i], decimals);
  return text + ") " + frame.unit;
}

}  // namespace brimwright::geometry
