#pragma once

#include "units/printing.h"

#include <charconv>
#include <string>

namespace brimwright::reports {

/// `value` as the double nearest to its text with `decimals` digits, so that JSON shows 198.4 and
/// never 198.40000000000001.
inline double to_decimals(double value, int decimals) {
  const std::string text = fixed(value, decimals);
  double rounded = 0;
  std::from_chars(text.data(), text.data() + text.size(), rounded);
  return rounded;
}

}  // namespace brimwright::reports
