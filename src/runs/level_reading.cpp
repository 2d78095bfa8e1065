#include "runs/level_reading.h"

#include "units/reading.h"

#include <array>

namespace brimwright::runs {

planning::FillLevel read_fill_level(const Fields& section, std::string_view key) {
  const Fields level = section.object(key);
  const bool below = level.has("below_brim");
  if (below == level.has("depth"))
    throw UserError(level.place(), below ? "gives the level twice" : "gives no level",
                    "give either \"below_brim\" or \"depth\"");
  const planning::FillLevel result =
      below ? planning::FillLevel(planning::BelowBrim{level.length("below_brim")})
            : planning::FillLevel(planning::FromFloor{level.positive_length("depth", "25 mm")});
  level.refuse_unknown();
  return result;
}

geometry::Tilt read_tilt(const Fields& tilted) {
  const geometry::Tilt tilt{tilted.angle("angle"),
                            read_low_side(tilted.text("low_side"), tilted.place("low_side"))};
  tilted.refuse_unknown();
  return tilt;
}

Angle read_low_side(const std::string& text, const Place& where) {
  const std::array<std::string, 4> sides = {"+x", "+y", "-x", "-y"};
  for (std::size_t i = 0; i < sides.size(); ++i)
    if (text == sides[i]) return Angle::in_degrees(90.0 * static_cast<double>(i));
  return read_angle(text, where);
}

}  // namespace brimwright::runs
