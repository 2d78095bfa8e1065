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

/// A unit with all that people call it; the first name is the one that refusals list.
template <class Unit>
struct UnitNames {
  std::vector<std::string_view> names;
  Unit unit;
};

/// What one kind of quantity accepts, and how to word a refusal.
template <class Unit>
struct Kind {
  std::string_view noun;     // "a length"
  std::string_view example;  // "5 mm"
  std::vector<UnitNames<Unit>> units;
  Unit most;
};

/// A unit's name as it is looked up: small letters, no full stops of short forms ("fl. oz."), one
/// blank where there are several.
std::string unit_key(std::string_view name) {
  std::string key;
  for (const char c : name) {
    if (c == '.' || (is_blank(c) && key.ends_with(' '))) continue;
    key += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : is_blank(c) ? ' ' : c;
  }
  while (key.ends_with(' ')) key.pop_back();
  return key;
}

template <class Unit>
const Unit* find_unit(const Kind<Unit>& kind, std::string_view name) {
  const std::string key = unit_key(name);
  for (const auto& candidate : kind.units)
    if (std::find(candidate.names.begin(), candidate.names.end(), key) != candidate.names.end())
      return &candidate.unit;
  return nullptr;
}

template <class Unit>
std::string unit_names(const Kind<Unit>& kind) {
  std::string names;
  for (const auto& unit : kind.units)
    names += (names.empty() ? "" : ", ") + std::string(unit.names.front());
  return names;
}

const Kind<Length>& lengths() {
  static const Kind<Length> kind{
      "a length",
      "5 mm",
      {{{"mm", "millimetre", "millimetres", "millimeter", "millimeters"}, millimetre},
       {{"cm", "centimetre", "centimetres", "centimeter", "centimeters"}, centimetre},
       {{"m", "metre", "metres", "meter", "meters"}, metre},
       {{"in", "\"", "inch", "inches"}, inch},
       {{"ft", "foot", "feet"}, 12 * inch}},
      10 * metre};
  return kind;
}

const Kind<Volume>& volumes() {
  static const Kind<Volume> kind{
      "a volume",
      "450 ml",
      {{{"ml", "millilitre", "millilitres", "milliliter", "milliliters", "cc"}, millilitre},
       {{"cl", "centilitre", "centilitres", "centiliter", "centiliters"}, 10 * millilitre},
       {{"l", "litre", "litres", "liter", "liters"}, litre},
       {{"cm3", "cubic centimetre", "cubic centimetres", "cubic centimeter", "cubic centimeters"},
        millilitre},
       {{"mm3"}, cubic_millimetre},
       {{"in3", "cu in", "cubic inch", "cubic inches"}, cubic_inch},
       {{"fl oz", "floz", "us fl oz", "fluid ounce", "fluid ounces"}, us_fluid_ounce},
       {{"imp fl oz"}, imperial_fluid_ounce},
       {{"tsp", "teaspoon", "teaspoons"}, us_teaspoon},
       {{"tbsp", "tablespoon", "tablespoons"}, us_tablespoon},
       {{"cup", "cups"}, us_cup}},
      1000 * litre};
  return kind;
}

const Kind<Mass>& masses() {
  static const Kind<Mass> kind{"a mass",
                               "450 g",
                               {{{"g", "gram", "grams"}, gram},
                                {{"kg", "kilogram", "kilograms", "kilo", "kilos"}, kilogram},
                                {{"mg", "milligram", "milligrams"}, milligram},
                                {{"oz", "ounce", "ounces"}, ounce},
                                {{"lb", "lbs", "pound", "pounds"}, pound}},
                               10000 * kilogram};
  return kind;
}

const Kind<Area>& areas() {
  static const Kind<Area> kind{"an area",
                               "12 cm2",
                               {{{"mm2", "sq mm"}, square_millimetre},
                                {{"cm2", "sq cm"}, square_centimetre},
                                {{"in2", "sq in", "square inch", "square inches"}, square_inch}},
                               square_metre};
  return kind;
}

const Kind<AreaDensity>& area_densities() {
  static const Kind<AreaDensity> kind{"a mass on an area",
                                      "2 mg/cm2",
                                      {{{"mg/cm2"}, milligram / square_centimetre},
                                       {{"g/cm2"}, gram / square_centimetre},
                                       {{"g/m2"}, gram / square_metre}},
                                      gram / square_centimetre};
  return kind;
}

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

/// "1 g 1 g" is a slip of the hand, and so is "4 oz 1 lb".
[[noreturn]] void refuse_order(std::string_view given, const Place& where,
                               const std::string& example) {
  throw UserError(where, quoted(given) + " names a unit again, or a larger one after a smaller",
                  "write each unit once, the larger first, such as " + example);
}

[[noreturn]] void refuse_too_much(std::string_view given, const Place& where) {
  throw UserError(where, quoted(given) + " is more than any studio handles",
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
Volume read_volume(std::string_view text, const Place& where) {
  return read_quantity(text, volumes(), where);
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

/// What stands on either side of "/" or "per": "g" and "ml" of "g/ml", "tsp" and "lb" of "tsp per
/// lb". Nothing without such a word.
struct Quotient {
  std::string over, under;
};
std::optional<Quotient> quotient_in(std::string_view unit) {
  const std::string key = unit_key(unit);
  for (const std::string_view between : {"/", " per "}) {
    const auto at = key.find(between);
    if (at == std::string::npos) continue;
    return Quotient{unit_key(without_blanks(key.substr(0, at))),
                    unit_key(without_blanks(key.substr(at + between.size())))};
  }
  return std::nullopt;
}

}  // namespace

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

bool is_per_cent(std::string_view unit_key) {
  return unit_key == "%" || unit_key == "percent" || unit_key == "per cent";
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
    throw UserError(where, quoted(given) + " is no temperature of a soap studio",
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

Share read_share(std::string_view given, const Place& where) {
  const auto [number, unit] = number_and_word(given, where, "\"5 %\"");
  if (!is_per_cent(unit_key(unit)))
    throw UserError(where, quoted(given) + (unit.empty() ? " has no unit" : " is not a share"),
                    "write it in per cent, such as \"5 %\"");
  if (number > 10000) throw UserError(where, quoted(given) + " is no share", "check the number");
  return Share::of_one(number / 100);
}

namespace {

using TimeUnits = Kind<double>;  // in seconds

/// "1 h 30 min", in seconds.
double read_time(std::string_view given, const TimeUnits& kind, const Place& where,
                 std::string_view written_example) {
  const std::string example = quoted(written_example);
  const std::string clean = plain(given);
  Text text{clean};
  double sum = 0;
  std::optional<double> last;
  do {
    const double number = take_number(text, given, where, example);
    const std::string_view name = take_unit(text);
    const double* unit = find_unit(kind, name);
    if (unit == nullptr)
      throw UserError(
          where,
          quoted(given) + (name.empty() ? " has no unit" : " is not " + std::string(kind.noun)),
          "write it as " + example + "; units are " + unit_names(kind));
    if (last && *unit >= *last) refuse_order(given, where, "\"1 h 30 min\"");
    last = *unit;
    sum += number * *unit;
  } while (!text.rest.empty());
  return sum;
}

constexpr double minute = 60, hour = 60 * minute, day = 24 * hour, week = 7 * day;
const UnitNames<double>& minutes() {
  static const UnitNames<double> names{{"min", "mins", "minute", "minutes"}, minute};
  return names;
}
const UnitNames<double>& hours() {
  static const UnitNames<double> names{{"h", "hr", "hrs", "hour", "hours"}, hour};
  return names;
}

}  // namespace

std::chrono::minutes read_duration(std::string_view given, const Place& where,
                                   std::string_view example) {
  static const TimeUnits kind{
      "a duration",
      "36 h",
      {minutes(), hours(), {{"days", "d", "day"}, day}, {{"weeks", "wk", "wks", "week"}, week}},
      3650 * day};
  const double seconds = read_time(given, kind, where, example);
  if (seconds > kind.most)
    throw UserError(where, quoted(given) + " is over ten years", "check the number and its unit");
  return std::chrono::minutes(static_cast<std::int64_t>(std::llround(seconds / minute)));
}

std::chrono::seconds read_short_time(std::string_view given, const Place& where,
                                     std::string_view example) {
  static const TimeUnits kind{
      "a time", "20 s", {{{"s", "sec", "secs", "second", "seconds"}, 1}, minutes(), hours()}, day};
  const double seconds = read_time(given, kind, where, example);
  if (seconds > kind.most)
    throw UserError(where, quoted(given) + " is over a day", "check the number and its unit");
  return std::chrono::seconds(static_cast<std::int64_t>(std::llround(seconds)));
}

namespace {

/// A rate's unit and what it is a share of: "%" and "fats" of "% of the oils". The trade's "ppo" is
/// per pound of oils.
struct UnitAndBasis {
  std::string unit, basis;
};
std::optional<UnitAndBasis> unit_and_basis(const std::string& rest) {
  const std::string key = unit_key(rest);
  constexpr std::string_view per_pound_of_oils = " ppo", of = " of ", the = "the ";
  if (key.ends_with(per_pound_of_oils))
    return UnitAndBasis{key.substr(0, key.size() - per_pound_of_oils.size()) + " per lb", "oils"};
  const auto at = key.find(of);
  if (at == std::string::npos) return std::nullopt;
  const std::string basis = key.substr(at + of.size());
  return UnitAndBasis{key.substr(0, at), basis.starts_with(the) ? basis.substr(the.size()) : basis};
}

/// By mass ("%", "g/kg", "oz per lb"), or by the spoon ("tsp/lb").
std::optional<std::variant<Share, SpecificVolume>> amount_of(double number,
                                                             const std::string& unit) {
  if (is_per_cent(unit)) return Share::of_one(number / 100);
  const auto each = quotient_in(unit);
  const Mass* of = each ? find_unit(masses(), each->under) : nullptr;
  if (of == nullptr) return std::nullopt;
  if (const Mass* mass = find_unit(masses(), each->over))
    return Share::of_one(number * (*mass / *of));
  if (const Volume* volume = find_unit(volumes(), each->over)) return number * (*volume / *of);
  return std::nullopt;
}

}  // namespace

Rate read_rate(std::string_view given, const Place& where) {
  const std::string examples =
      "\"2 % of fats\", \"3 % of batter\", \"8 g/kg of fats\" or \"1 tsp/lb of fats\"";
  const auto [number, rest] = number_and_word(given, where, examples);
  const auto said = unit_and_basis(rest);
  if (!said)
    throw UserError(where, quoted(given) + " does not say of what", "write it as " + examples);
  Rate rate;
  const std::array<std::string_view, 4> fats = {"fats", "fat", "oils", "oil"};
  if (said->basis == "batter")
    rate.of = RateBasis::batter;
  else if (std::find(fats.begin(), fats.end(), said->basis) == fats.end())
    throw UserError(where, quoted(given) + " is a share of " + quoted(said->basis),
                    "say \"of fats\" or \"of batter\"");
  const auto amount = amount_of(number, said->unit);
  if (!amount)
    throw UserError(where,
                    quoted(given) + " has a unit not known for a rate: " + quoted(said->unit),
                    "write it as " + examples);
  rate.amount = *amount;
  const Share* share = std::get_if<Share>(&rate.amount);
  if (share != nullptr && share->of_one() > 1)
    throw UserError(where, quoted(given) + " is more than the whole",
                    "check the number and its unit");
  return rate;
}

namespace {

constexpr std::string_view stirred_example = "\"1 tsp in 1 tbsp\" or \"5 g in 15 g\"";

/// By weight or in spoons, whichever its unit says.
Measure measure_of(const std::string& part, std::string_view given, const Place& where) {
  const auto [number, unit] = number_and_word(part, where, std::string(stirred_example));
  const Mass* mass = find_unit(masses(), unit);
  const Volume* volume = find_unit(volumes(), unit);
  if (mass == nullptr && volume == nullptr)
    throw UserError(
        where,
        quoted(given) + (unit.empty() ? " lacks a unit"
                                      : " has a unit that is not known here: " + quoted(unit)),
        "write it as " + std::string(stirred_example));
  if (!(number > 0))
    throw UserError(where, quoted(given) + " holds nothing of one of the two",
                    "write it as " + std::string(stirred_example));
  if (mass != nullptr) return number * *mass;
  return number * *volume;
}

}  // namespace

Stirred read_stirred(std::string_view given, const Place& where) {
  const std::string clean = plain(given);
  // "1 in" is no length here: nothing is stirred by the inch.
  constexpr std::string_view into = " in ";
  const auto at = clean.find(into);
  if (at == std::string::npos)
    throw UserError(where, quoted(given) + " does not say how much is stirred into how much",
                    "write it as " + std::string(stirred_example));
  std::string oil = clean.substr(at + into.size());
  for (const std::string_view end : {" of oil", " of fat", " oil"})
    if (oil.ends_with(end)) {
      oil.erase(oil.size() - end.size());
      break;
    }
  return {measure_of(clean.substr(0, at), given, where), measure_of(oil, given, where)};
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
