#include "units/unit_names.h"

namespace brimwright {

std::string unit_key(std::string_view name) {
  std::string key;
  for (const char c : name) {
    if (c == '.' || (is_blank(c) && key.ends_with(' '))) continue;
    key += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : is_blank(c) ? ' ' : c;
  }
  while (key.ends_with(' ')) key.pop_back();
  return key;
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

bool is_per_cent(std::string_view unit_key) {
  return unit_key == "%" || unit_key == "percent" || unit_key == "per cent";
}

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

NumberAndWord number_and_word(std::string_view given, const Place& where,
                              const std::string& example) {
  const std::string clean = plain(given);
  Text text{clean};
  const double number = take_number(text, given, where, example);
  text.skip_blanks();
  return {number, std::string(text.rest)};
}

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

[[noreturn]] void refuse_order(std::string_view given, const Place& where,
                               const std::string& example) {
  throw UserError(where, quoted(given) + " names a unit again, or a larger one after a smaller",
                  "write each unit once, the larger first, such as " + example);
}

}  // namespace brimwright
