#include "units/reading.h"

#include "units/unit_names.h"

#include <optional>
#include <string>

namespace brimwright {
namespace {

/// A word about the mix-ups that spoil batches: ounces by weight against fluid ounces.
std::string mix_up(std::string_view noun, std::string_view unit) {
  const Mass* mass = noun == "a volume" ? find_unit(masses(), unit) : nullptr;
  if (mass != nullptr)
    return (*mass == ounce ? "\"oz\"" : "that") +
           std::string(" is a mass; for a volume write \"fl oz\" (US) or \"ml\"");
  if (noun == "a mass" && find_unit(volumes(), unit) != nullptr)
    return "that is a volume; weigh it and write grams or \"oz\"";
  return "";
}

template <class Unit>
Unit unit_after(Text& text, const Kind<Unit>& kind, std::string_view whole_text, const Place& where,
                const std::string& example) {
  const std::string_view name = take_unit(text);
  if (name.empty())
    throw UserError(where, quoted(whole_text) + " has no unit",
                    "write " + std::string(kind.noun) + " with its unit, such as " + example);
  if (const Unit* unit = find_unit(kind, name)) return *unit;
  const std::string hint = mix_up(kind.noun, name);
  throw UserError(where,
                  quoted(whole_text) + " is not " + std::string(kind.noun) + ": unit " +
                      quoted(name) + " is not known here",
                  hint.empty() ? "use one of " + unit_names(kind) : hint);
}

[[noreturn]] void refuse_too_much(std::string_view given, const Place& where) {
  throw UserError(where, quoted(given) + " is too large to be right",
                  "check the number and its unit");
}

template <class Unit>
Unit read_quantity(std::string_view given, const Kind<Unit>& kind, const Place& where,
                   std::string_view written_example = {}) {
  const std::string example = quoted(written_example.empty() ? kind.example : written_example);
  const std::string clean = plain(given);
  Text text{clean};
  const double number = take_number(text, given, where, example);
  const Unit value = number * unit_after(text, kind, given, where, example);
  if (!text.rest.empty())
    throw UserError(where, quoted(given) + " is more than one quantity",
                    "write " + std::string(kind.noun) + " such as " + example);
  if (!(value <= kind.most)) refuse_too_much(given, where);
  return value;
}

}  // namespace

Length read_length(std::string_view text, const Place& where, std::string_view example) {
  return read_quantity(text, lengths(), where, example);
}
Volume read_volume(std::string_view text, const Place& where, std::string_view example) {
  return read_quantity(text, volumes(), where, example);
}
Area read_area(std::string_view text, const Place& where) {
  return read_quantity(text, areas(), where);
}
AreaDensity read_area_density(std::string_view text, const Place& where) {
  return read_quantity(text, area_densities(), where);
}

Mass read_mass(std::string_view given, const Place& where, std::string_view written_example) {
  const std::string example = quoted(written_example);
  const std::string clean = plain(given);
  Text text{clean};
  const Kind<Mass>& kind = masses();
  Mass sum;
  std::optional<Mass> last;
  do {  // "1 lb 4 oz"
    const double number = take_number(text, given, where, example);
    const Mass unit = unit_after(text, kind, given, where, example);
    if (last && !(unit < *last)) refuse_order(given, where, "\"1 lb 4 oz\"");
    last = unit;
    sum += number * unit;
  } while (!text.rest.empty());
  if (!(sum <= kind.most)) refuse_too_much(given, where);
  return sum;
}

Density read_density(std::string_view given, const Place& where) {
  const std::string example = "\"1.02 g/ml\"";
  const auto [number, unit] = number_and_word(given, where, example);
  if (unit.empty())
    throw UserError(where, quoted(given) + " has no unit",
                    "write a density with its unit, such as " + example);
  const auto of = quotient_in(unit);
  const Mass* mass = of ? find_unit(masses(), of->over) : nullptr;
  const Volume* volume = of ? find_unit(volumes(), of->under) : nullptr;
  const Volume cubic_metre = 1000 * litre;
  if (of && of->under == "m3") volume = &cubic_metre;
  if (mass == nullptr || volume == nullptr)
    throw UserError(
        where, quoted(given) + " is not a density: unit " + quoted(unit) + " is not known here",
        "write a mass for a volume, such as " + example + ", \"1020 kg/m3\", or \"2.5 g/tsp\"");
  const Density density = number * (*mass / *volume);
  if (!(density <= 25 * gram_per_millilitre)) refuse_too_much(given, where);
  return density;
}

namespace {

/// What is left of a unit without its sign or word for a degree: "f" of "°F", "deg F" or "degrees
/// F", nothing of "°".
std::string without_degree(std::string_view unit) {
  const std::string key = unit_key(unit);
  for (const std::string_view degree : {"degrees", "degree", "deg", "°", "\u00ba"})
    if (key.starts_with(degree))
      return std::string(without_blanks(std::string_view(key).substr(degree.size())));
  return key;
}

}  // namespace

Temperature read_temperature(std::string_view given, const Place& where) {
  const std::string example = "\"40 °C\" or \"104 °F\"";
  const std::string clean = plain(given);
  const bool below_zero = clean.starts_with('-');
  const auto [size, unit] = number_and_word(below_zero ? clean.substr(1) : clean, where, example);
  const double number = below_zero ? -size : size;
  const std::string scale = without_degree(unit);
  Temperature t = Temperature::in_celsius(number);
  if (scale == "f" || scale == "fahrenheit")
    t = Temperature::in_fahrenheit(number);
  else if (scale != "c" && scale != "celsius")
    throw UserError(where,
                    quoted(given) + (unit.empty()    ? " has no unit"
                                     : scale.empty() ? " does not say degrees of which scale"
                                                     : " is not a temperature"),
                    "write it as " + example);
  // A freezer holds -30 degC and no soap pot passes 200 degC: common practice, no source.
  if (t.celsius() < -40 || t.celsius() > 200)
    throw UserError(where, quoted(given) + " is outside -40 to 200 °C",
                    "check the number and its unit");
  return t;
}

Angle read_angle(std::string_view given, const Place& where) {
  const auto [number, unit] = number_and_word(given, where, "\"3°\"");
  if (unit.empty() || !without_degree(unit).empty())
    throw UserError(where, quoted(given) + (unit.empty() ? " has no unit" : " is not an angle"),
                    "write it in degrees, as \"3°\" or \"3 deg\"");
  if (number > 360)
    throw UserError(where, quoted(given) + " is more than a full turn", "check the number");
  return Angle::in_degrees(number);
}

Share read_share(std::string_view given, const Place& where, std::string_view written_example) {
  const std::string example = quoted(written_example);
  const auto [number, unit] = number_and_word(given, where, example);
  if (!is_per_cent(unit_key(unit)))
    throw UserError(where, quoted(given) + (unit.empty() ? " has no unit" : " is not a share"),
                    "write it in per cent, such as " + example);
  if (number > 10000)
    throw UserError(where, quoted(given) + " is too large to be right", "check the number");
  return Share::of_one(number / 100);
}

double read_number(std::string_view given, const Place& where) {
  const std::string clean = plain(given);
  const std::string alone = "write a number alone, such as 12";
  if (clean.find_first_of("0123456789.-") != 0)
    throw UserError(where, quoted(given) + " is not a number", alone);
  Text text{clean};
  const double number = take_number(text, given, where, "\"12\"");
  if (!text.rest.empty()) throw UserError(where, quoted(given) + " is not a plain number", alone);
  return number;
}

}  // namespace brimwright
