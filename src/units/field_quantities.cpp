#include "units/fields.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <utility>

namespace brimwright {
namespace {

template <class Q>
Q above_zero(Q value, const Place& where) {
  if (!(value.base() > 0)) throw UserError(where, "is zero", "give a value above zero");
  return value;
}

}  // namespace

Length Fields::length(std::string_view key, std::string_view example) const {
  return read_length(quantity(key, example), place(key), example);
}
Length Fields::positive_length(std::string_view key, std::string_view example) const {
  return above_zero(length(key, example), place(key));
}
Length Fields::signed_length(std::string_view key) const {
  const std::string text = plain(quantity(key, "-12 mm"));
  const bool is_negative = text.starts_with('-');
  const Length size = read_length(is_negative ? text.substr(1) : text, place(key));
  return is_negative ? -size : size;
}

Area Fields::positive_area(std::string_view key) const {
  return above_zero(read_area(quantity(key, "12 cm2"), place(key)), place(key));
}
AreaDensity Fields::positive_area_density(std::string_view key) const {
  return above_zero(read_area_density(quantity(key, "2 mg/cm2"), place(key)), place(key));
}
Volume Fields::positive_volume(std::string_view key, std::string_view example) const {
  return above_zero(read_volume(quantity(key, example), place(key), example), place(key));
}
Mass Fields::mass(std::string_view key, std::string_view example) const {
  return read_mass(quantity(key, example), place(key), example);
}
Mass Fields::positive_mass(std::string_view key, std::string_view example) const {
  return above_zero(mass(key, example), place(key));
}

Density Fields::density(std::string_view key) const {
  const Density value = read_density(quantity(key, "1.02 g/ml"), place(key));
  if (value < 0.3 * gram_per_millilitre || value > 3 * gram_per_millilitre)
    throw UserError(
        place(key), "is " + in_g_per_ml(value, 4),
        "a batter or liquid lies between 0.3 and 3 g/ml; check the number and its unit");
  return value;
}

Temperature Fields::temperature(std::string_view key) const {
  return read_temperature(quantity(key, "40 °C"), place(key));
}

Angle Fields::angle(std::string_view key) const {
  const Angle value = read_angle(quantity(key, "3°"), place(key));
  if (value.degrees() >= 90)
    throw UserError(place(key), "is " + trimmed(value.degrees(), 2) + " degrees",
                    "give less than 90");
  return value;
}

Angle Fields::turn(std::string_view key) const {
  return read_angle(quantity(key, "90 deg"), place(key));
}

Share Fields::share(std::string_view key, Share least, Share most, std::string_view example) const {
  const std::string text = quantity(key, example);
  const std::string bounds = trimmed(least.in_percent(), 4) + " to " + in_percent(most, 4);
  if (plain(text).starts_with('-'))
    throw UserError(
        place(key), brimwright::quoted(text) + " is negative",
        (least > Share{} ? "give a share from " : "give 0 or more: a share from ") + bounds);
  const Share value = read_share(text, place(key), example);
  if (value < least || value > most)
    throw UserError(place(key), "is " + in_percent(value, 4), "give a share from " + bounds);
  return value;
}

std::chrono::minutes Fields::duration(std::string_view key, std::string_view example) const {
  return read_duration(quantity(key, example), place(key), example);
}

std::chrono::seconds Fields::positive_short_time(std::string_view key,
                                                 std::string_view example) const {
  const auto value = read_short_time(quantity(key, example), place(key), example);
  if (value.count() <= 0)
    throw UserError(place(key), "is zero",
                    "give a time above zero, such as " + brimwright::quoted(example));
  return value;
}

Rate Fields::rate(std::string_view key) const {
  return read_rate(quantity(key, "2 % of fats"), place(key));
}

}  // namespace brimwright
