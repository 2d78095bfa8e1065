#include "units/reading.h"

#include "units/printing.h"
#include "units/written_number.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace brimwright {
namespace {

template <class Unit>
struct UnitName {
  std::string_view name;
  Unit unit;
};

/// What one kind of quantity accepts, and how to word a refusal.
template <class Unit>
struct Kind {
  std::string_view noun;  // "a length"
  std::string example;    // "\"5 mm\""
  std::vector<UnitName<Unit>> units;
  Unit most;
};

template <class Unit>
const Unit* find_unit(const Kind<Unit>& kind, std::string_view name) {
  for (const auto& candidate : kind.units)
    if (candidate.name == name) return &candidate.unit;
  return nullptr;
}

template <class Unit>
std::string unit_names(const Kind<Unit>& kind) {
  std::string names;
  for (const auto& unit : kind.units) names += (names.empty() ? "" : ", ") + std::string(unit.name);
  return names;
}

/// A word about the mix-ups that spoil batches: ounces by weight against fluid ounces.
std::string mix_up(std::string_view noun, std::string_view unit) {
  if (noun == "a volume" && (unit == "oz" || unit == "ounce" || unit == "ounces"))
    return "\"oz\" is a mass; for a volume write \"fl oz\" (US) or \"ml\"";
  if (noun == "a mass" && (unit == "fl oz" || unit == "floz" || unit == "ml" || unit == "cup"))
    return "that is a volume; weigh it and write grams or \"oz\"";
  return "";
}

/// What stands up to the next number that follows a blank, or to the end.
std::string_view take_unit(Text& text) {
  text.skip_blanks();
  std::size_t n = 0;
  while (n < text.rest.size() &&
         !(text.rest[n] >= '0' && text.rest[n] <= '9' && n > 0 && is_blank(text.rest[n - 1])))
    ++n;
  std::string_view name = text.rest.substr(0, n);
  text.rest.remove_prefix(n);
  while (!name.empty() && is_blank(name.back())) name.remove_suffix(1);
  return name;
}

template <class Unit>
Unit unit_after(Text& text, const Kind<Unit>& kind, std::string_view whole_text,
                const Place& where) {
  const std::string_view name = take_unit(text);
  if (name.empty())
    throw UserError(where, quoted(whole_text) + " has no unit",
                    "write " + std::string(kind.noun) + " with its unit, such as " + kind.example);
  if (const Unit* unit = find_unit(kind, name)) return *unit;
  const std::string hint = mix_up(kind.noun, name);
  throw UserError(where,
                  quoted(whole_text) + " is not " + std::string(kind.noun) + ": unit " +
                      quoted(name) + " is not known here",
                  hint.empty() ? "use one of " + unit_names(kind) : hint);
}

/// "1 g 1 g" is a slip of the hand, and so is "4 oz 1 lb".
[[noreturn]] void refuse_order(std::string_view given, const Place& where,
                               const std::string& example) {
  throw UserError(where, quoted(given) + " names a unit again, or a larger one after a smaller",
                  "write each unit once, the larger first, such as " + example);
}

template <class Unit>
Unit read_quantity(std::string_view given, const Kind<Unit>& kind, const Place& where) {
  const std::string clean = plain(given);
  Text text{clean};
  const double number = take_number(text, given, where, kind.example);
  const Unit value = number * unit_after(text, kind, given, where);
  if (!text.rest.empty())
    throw UserError(where, quoted(given) + " is more than one quantity",
                    "write " + std::string(kind.noun) + " such as " + kind.example);
  if (!(value <= kind.most))
    throw UserError(where, quoted(given) + " is more than any studio handles",
                    "check the number and its unit");
  return value;
}

const Kind<Length>& lengths() {
  static const Kind<Length> kind{"a length",
                                 "\"5 mm\"",
                                 {{"mm", millimetre},
                                  {"cm", centimetre},
                                  {"m", metre},
                                  {"in", inch},
                                  {"\"", inch},
                                  {"inch", inch},
                                  {"inches", inch},
                                  {"ft", 12 * inch}},
                                 10 * metre};
  return kind;
}

const Kind<Volume>& volumes() {
  static const Kind<Volume> kind{"a volume",
                                 "\"450 ml\"",
                                 {{"ml", millilitre},
                                  {"mL", millilitre},
                                  {"cl", 10 * millilitre},
                                  {"l", litre},
                                  {"L", litre},
                                  {"cm3", millilitre},
                                  {"mm3", cubic_millimetre},
                                  {"in3", cubic_inch},
                                  {"fl oz", us_fluid_ounce},
                                  {"US fl oz", us_fluid_ounce},
                                  {"imp fl oz", imperial_fluid_ounce},
                                  {"tsp", us_teaspoon},
                                  {"tbsp", us_tablespoon},
                                  {"cup", us_cup},
                                  {"cups", us_cup}},
                                 1000 * litre};
  return kind;
}

const Kind<Mass>& masses() {
  static const Kind<Mass> kind{"a mass",
                               "\"450 g\"",
                               {{"g", gram},
                                {"kg", kilogram},
                                {"mg", milligram},
                                {"oz", ounce},
                                {"lb", pound},
                                {"lbs", pound}},
                               10000 * kilogram};
  return kind;
}

const Kind<Density>& densities() {
  static const Kind<Density> kind{"a density",
                                  "\"1.02 g/ml\"",
                                  {{"g/ml", gram_per_millilitre},
                                   {"g/mL", gram_per_millilitre},
                                   {"g/cm3", gram_per_millilitre},
                                   {"kg/l", gram_per_millilitre},
                                   {"kg/L", gram_per_millilitre},
                                   {"kg/m3", kilogram_per_cubic_metre}},
                                  25 * gram_per_millilitre};
  return kind;
}

const Kind<Area>& areas() {
  static const Kind<Area> kind{
      "an area",
      "\"12 cm2\"",
      {{"mm2", square_millimetre}, {"cm2", square_centimetre}, {"in2", square_inch}},
      square_metre};
  return kind;
}

const Kind<AreaDensity>& area_densities() {
  static const Kind<AreaDensity> kind{"a mass on an area",
                                      "\"2 mg/cm2\"",
                                      {{"mg/cm2", milligram / square_centimetre},
                                       {"g/cm2", gram / square_centimetre},
                                       {"g/m2", gram / square_metre}},
                                      gram / square_centimetre};
  return kind;
}

}  // namespace

Length read_length(std::string_view text, const Place& where) {
  return read_quantity(text, lengths(), where);
}
Volume read_volume(std::string_view text, const Place& where) {
  return read_quantity(text, volumes(), where);
}
Area read_area(std::string_view text, const Place& where) {
  return read_quantity(text, areas(), where);
}
AreaDensity read_area_density(std::string_view text, const Place& where) {
  return read_quantity(text, area_densities(), where);
}
Density read_density(std::string_view text, const Place& where) {
  return read_quantity(text, densities(), where);
}

Mass read_mass(std::string_view given, const Place& where) {
  const std::string clean = plain(given);
  Text text{clean};
  const Kind<Mass>& kind = masses();
  Mass sum;
  std::optional<Mass> last;
  do {  // "1 lb 4 oz"
    const double number = take_number(text, given, where, kind.example);
    const Mass unit = unit_after(text, kind, given, where);
    if (last && !(unit < *last)) refuse_order(given, where, "\"1 lb 4 oz\"");
    last = unit;
    sum += number * unit;
  } while (!text.rest.empty());
  if (!(sum <= kind.most))
    throw UserError(where, quoted(given) + " is more than any studio handles",
                    "check the number and its unit");
  return sum;
}

namespace {

/// The number in front of a unit that is one of a few words, and the word.
struct NumberAndWord {
  double number;
  std::string word;
};
NumberAndWord number_and_word(std::string_view given, const Place& where,
                              const std::string& example) {
  const std::string clean = plain(given);
  Text text{clean};
  const double number = take_number(text, given, where, example);
  text.skip_blanks();
  return {number, std::string(text.rest)};
}

}  // namespace

Temperature read_temperature(std::string_view given, const Place& where) {
  const std::string example = "\"40 °C\" or \"104 °F\"";
  const std::string clean = plain(given);
  const bool below_zero = clean.starts_with('-');
  const auto [size, unit] = number_and_word(below_zero ? clean.substr(1) : clean, where, example);
  const double number = below_zero ? -size : size;
  Temperature t = Temperature::in_celsius(number);
  if (unit == "°F" || unit == "F")
    t = Temperature::in_fahrenheit(number);
  else if (unit != "°C" && unit != "C")
    throw UserError(where,
                    quoted(given) + (unit.empty() ? " has no unit" : " is not a temperature"),
                    "write it as " + example);
  // A freezer holds -30 degC and no soap pot passes 200 degC: common practice, no source.
  if (t.celsius() < -40 || t.celsius() > 200)
    throw UserError(where, quoted(given) + " is no temperature of a soap studio",
                    "check the number and its unit");
  return t;
}

Angle read_angle(std::string_view given, const Place& where) {
  const auto [number, unit] = number_and_word(given, where, "\"3°\"");
  if (unit != "°" && unit != "deg" && unit != "degrees")
    throw UserError(where, quoted(given) + (unit.empty() ? " has no unit" : " is not an angle"),
                    "write it in degrees, as \"3°\" or \"3 deg\"");
  if (number > 360)
    throw UserError(where, quoted(given) + " is more than a full turn", "check the number");
  return Angle::in_degrees(number);
}

Share read_share(std::string_view given, const Place& where) {
  const auto [number, unit] = number_and_word(given, where, "\"5 %\"");
  if (unit != "%")
    throw UserError(where, quoted(given) + (unit.empty() ? " has no unit" : " is not a share"),
                    "write it in per cent, such as \"5 %\"");
  if (number > 10000) throw UserError(where, quoted(given) + " is no share", "check the number");
  return Share::of_one(number / 100);
}

namespace {

struct TimeUnit {
  std::string_view name;
  double in_seconds;
};

/// "1 h 30 min", in seconds; `expected` words the refusal of a unit that is none of `units`.
template <std::size_t N>
double read_time(std::string_view given, const std::array<TimeUnit, N>& units, const Place& where,
                 const std::string& noun, const std::string& example, const std::string& listed) {
  const std::string clean = plain(given);
  Text text{clean};
  double sum = 0;
  const TimeUnit* last = nullptr;
  do {
    const double number = take_number(text, given, where, example);
    const std::string_view name = take_unit(text);
    const auto unit = std::find_if(units.begin(), units.end(),
                                   [&](const TimeUnit& known) { return known.name == name; });
    if (unit == units.end())
      throw UserError(where, quoted(given) + (name.empty() ? " has no unit" : " is not " + noun),
                      "write it as " + example + "; units are " + listed);
    if (last != nullptr && unit->in_seconds >= last->in_seconds)
      refuse_order(given, where, "\"1 h 30 min\"");
    last = &*unit;
    sum += number * unit->in_seconds;
  } while (!text.rest.empty());
  return sum;
}

}  // namespace

std::chrono::minutes read_duration(std::string_view given, const Place& where) {
  constexpr double minute = 60, hour = 60 * minute, day = 24 * hour, week = 7 * day;
  constexpr std::array units = {
      TimeUnit{"min", minute}, TimeUnit{"h", hour},    TimeUnit{"hour", hour},
      TimeUnit{"hours", hour}, TimeUnit{"d", day},     TimeUnit{"day", day},
      TimeUnit{"days", day},   TimeUnit{"week", week}, TimeUnit{"weeks", week}};
  const double seconds = read_time(given, units, where, "a duration", "\"36 h\" or \"28 days\"",
                                   "min, h, days, weeks");
  if (seconds > 3650 * day)
    throw UserError(where, quoted(given) + " is over ten years", "check the number and its unit");
  return std::chrono::minutes(static_cast<std::int64_t>(std::llround(seconds / minute)));
}

std::chrono::seconds read_short_time(std::string_view given, const Place& where) {
  constexpr std::array units = {TimeUnit{"s", 1}, TimeUnit{"min", 60}, TimeUnit{"h", 3600}};
  const double seconds =
      read_time(given, units, where, "a time", "\"20 s\" or \"25 min\"", "s, min, h");
  if (seconds > 24.0 * 3600)
    throw UserError(where, quoted(given) + " is over a day", "check the number and its unit");
  return std::chrono::seconds(static_cast<std::int64_t>(std::llround(seconds)));
}

Rate read_rate(std::string_view given, const Place& where) {
  const std::string examples =
      "\"2 % of fats\", \"3 % of batter\", \"8 g/kg of fats\" or \"1 tsp/lb of fats\"";
  auto [number, rest] = number_and_word(given, where, examples);
  const auto of = rest.find(" of ");
  if (of == std::string::npos)
    throw UserError(where, quoted(given) + " does not say of what", "write it as " + examples);
  const std::string unit = rest.substr(0, of);
  const std::string basis = rest.substr(of + 4);
  Rate rate;
  if (basis == "batter")
    rate.of = RateBasis::batter;
  else if (basis != "fats")
    throw UserError(where, quoted(given) + " is a share of " + quoted(basis),
                    "say \"of fats\" or \"of batter\"");
  if (unit == "%")
    rate.amount = Share::of_one(number / 100);
  else if (unit == "g/kg")
    rate.amount = Share::of_one(number / 1000);
  else if (unit == "tsp/lb")
    rate.amount = number * (us_teaspoon / pound);
  else if (unit == "tbsp/lb")
    rate.amount = number * (us_tablespoon / pound);
  else if (unit == "tsp/kg")
    rate.amount = number * (us_teaspoon / kilogram);
  else
    throw UserError(where, quoted(given) + " has a unit not known for a rate: " + quoted(unit),
                    "write it as " + examples);
  const Share* share = std::get_if<Share>(&rate.amount);
  if (share != nullptr && share->of_one() > 1)
    throw UserError(where, quoted(given) + " is more than the whole",
                    "check the number and its unit");
  return rate;
}

std::chrono::year_month_day read_date(std::string_view given, const Place& where) {
  const std::string text = plain(given);
  const auto is_written_so = [](std::string_view date) {
    constexpr std::string_view form = "0000-00-00";
    return date.size() == form.size() &&
           std::equal(date.begin(), date.end(), form.begin(), [](char c, char in_form) {
             return in_form == '0' ? c >= '0' && c <= '9' : c == in_form;
           });
  };
  const std::string example = "write year, month and day as in 2026-11-14";
  if (!is_written_so(text)) throw UserError(where, quoted(given) + " is not a date", example);
  const auto digits = [&](std::size_t from, std::size_t count) {
    return std::stoi(text.substr(from, count));
  };
  const std::chrono::year_month_day date{std::chrono::year(digits(0, 4)),
                                         std::chrono::month(static_cast<unsigned>(digits(5, 2))),
                                         std::chrono::day(static_cast<unsigned>(digits(8, 2)))};
  if (!date.ok()) throw UserError(where, quoted(given) + " is no day of the calendar", example);
  return date;
}

double read_number(std::string_view given, const Place& where) {
  const std::string clean = plain(given);
  Text text{clean};
  const double number = take_number(text, given, where, "\"12\"");
  if (!text.rest.empty())
    throw UserError(where, quoted(given) + " is not a plain number", "write the number alone");
  return number;
}

}  // namespace brimwright
