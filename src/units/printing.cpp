#include "units/printing.h"

#include "units/number_text.h"
#include "units/rounding.h"

#include <cmath>

namespace brimwright {

std::string fixed(double value, int decimals) {
  if (std::isnan(value)) return "not a number";
  std::string text = fixed_text(value, decimals);
  const bool is_zero = text.find_first_not_of("-0.") == std::string::npos;
  if (is_zero && text.starts_with('-')) text.erase(0, 1);
  return text;
}

std::string trimmed(double value, int decimals) {
  std::string text = fixed(value, decimals);
  if (text.find('.') == std::string::npos) return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.ends_with('.')) text.pop_back();
  return text;
}

std::string exact(double value) { return shortest_text(value); }

std::string in_inches(Length length) {
  const std::int64_t sixteenths = whole_nearest(length / inch * 16);
  if (sixteenths == 0) return "less than 1/16 in";
  const std::int64_t inches = sixteenths / 16;
  std::int64_t over = sixteenths % 16;
  std::int64_t under = 16;
  while (over != 0 && over % 2 == 0) {
    over /= 2;
    under /= 2;
  }
  const std::string fraction = std::to_string(over) + "/" + std::to_string(under);
  if (over == 0) return std::to_string(inches) + " in";
  if (inches == 0) return fraction + " in";
  return std::to_string(inches) + " " + fraction + " in";
}

std::string in_both_scales(Temperature t) {
  const std::string celsius = fixed(t.celsius(), 0) + " °C";
  const std::string fahrenheit = fixed(t.fahrenheit(), 0) + " °F";
  return t.given_in_fahrenheit() ? fahrenheit + " (" + celsius + ")"
                                 : celsius + " (" + fahrenheit + ")";
}

int decimals_for(Mass step) {
  int decimals = 0;
  double shown = step / gram;
  while (decimals < 6 && std::abs(shown - std::round(shown)) > 1e-6) {
    shown *= 10;
    ++decimals;
  }
  return decimals;
}

}  // namespace brimwright
