#include "units/bounded_text.h"

#include "units/reading.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <charconv>
#include <cmath>

using namespace brimwright;

namespace {

double number_in(const std::string& text) {
  double value = 0;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

/// The two lengths in "30.25 mm (1.19 in)", as they are read back when typed.
std::pair<Length, Length> typed_back(const std::string& text) {
  const std::size_t open = text.find(" (");
  return {read_length(text.substr(0, open), {}),
          read_length(text.substr(open + 2, text.size() - open - 3), {})};
}

}  // namespace

TEST_CASE("a bound that is shown, typed back, is never beyond what it bounds", "[units][law]") {
  rc::prop("at most and at least", [] {
    const double value = *rc::gen::inRange(0, 2'000'000'000) / 7.0e5;
    const int decimals = *rc::gen::inRange(0, 5);
    const double most = number_in(at_most(value, decimals));
    const double least = number_in(at_least(value, decimals));
    const double step = std::pow(10.0, -decimals);
    RC_ASSERT(most <= value);
    RC_ASSERT(least >= value);
    RC_ASSERT(least - most <= 1.01 * step);
    const Length length = value * millimetre;
    const auto [mm_most, in_most] = typed_back(at_most_text(length));
    const auto [mm_least, in_least] = typed_back(at_least_text(length));
    RC_ASSERT(mm_most <= length);
    RC_ASSERT(in_most <= length);
    RC_ASSERT(mm_least >= length);
    RC_ASSERT(in_least >= length);
    RC_ASSERT(in_most > length - 0.0255 * millimetre);
  });
}

TEST_CASE("a bound that needs no rounding is shown as it is", "[units]") {
  CHECK(at_most(38, 2) == "38");
  CHECK(at_least(38.5, 2) == "38.5");
  CHECK(at_most(37.999999, 2) == "37.99");
  CHECK(at_least(38.000001, 2) == "38.01");
  CHECK(at_most_text(38.1 * millimetre) == "38.1 mm (1.5 in)");
}
