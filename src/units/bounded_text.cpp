#include "units/bounded_text.h"

#include "units/number_text.h"
#include "units/printing.h"

#include <cmath>

namespace brimwright {
namespace {

// A hundredth of a millimetre, and a thousandth of an inch.
constexpr int decimals_mm = 2, decimals_in = 3;

/// The nearest text, or the next one towards `way` (-1 down, 1 up) where that is beyond the value.
template <class IsBeyond>
std::string bounded(double value, int decimals, int way, IsBeyond is_beyond) {
  std::string text = trimmed(value, decimals);
  const double step = std::pow(10.0, -decimals);
  for (int steps = 1; is_beyond(number_of(text).value()) && steps < 4; ++steps)
    text = trimmed(value + way * steps * step, decimals);
  return text;
}

}  // namespace

std::string at_most(double value, int decimals) {
  return bounded(value, decimals, -1, [&](double shown) { return shown > value; });
}

std::string at_least(double value, int decimals) {
  return bounded(value, decimals, 1, [&](double shown) { return shown < value; });
}

std::string at_most_text(Length length) {
  return bounded(length / millimetre, decimals_mm, -1,
                 [&](double shown) { return shown * millimetre > length; }) +
         " mm (" +
         bounded(length / inch, decimals_in, -1,
                 [&](double shown) { return shown * inch > length; }) +
         " in)";
}

std::string at_least_text(Length length) {
  return bounded(length / millimetre, decimals_mm, 1,
                 [&](double shown) { return shown * millimetre < length; }) +
         " mm (" +
         bounded(length / inch, decimals_in, 1,
                 [&](double shown) { return shown * inch < length; }) +
         " in)";
}

}  // namespace brimwright
