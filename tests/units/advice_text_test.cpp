#include "units/advice_text.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>
#include <string>

using namespace brimwright;

TEST_CASE("a limit of 23.48 mm is not shown as 23.5", "[units]") {
  // 23.48 mm / 25.4 = 0.9244 in.
  CHECK(most_text(23.48 * millimetre) == "23.4 mm (0.92 in)");
  CHECK(least_text(23.48 * millimetre) == "23.5 mm (0.93 in)");
  CHECK(most_text(23.48 * millilitre) == "23.4 ml");
  CHECK(least_text(23.41 * millilitre) == "23.5 ml");
  CHECK(most_text(100 * gram) == "100 g (3.52 oz)");  // 3.5274 oz
  CHECK(least_text(100 * gram) == "100 g (3.53 oz)");
  CHECK(most_text(33.39 * percent) == "33.3 %");
  CHECK(most_text(0.04 * millimetre) == "0.04 mm (0.001 in)");
}

TEST_CASE("a figure to use, typed back in either unit, is on the safe side of its limit",
          "[units][law]") {
  rc::prop("and within a step of it", [] {
    const Length limit = *rc::gen::inRange(1, 1000000) * 0.001 * millimetre;
    const std::string most = most_text(limit), least = least_text(limit);
    const auto in_mm = [](const std::string& text) { return std::stod(text) * millimetre; };
    const auto in_inches = [](const std::string& text) {
      return std::stod(text.substr(text.find('(') + 1)) * inch;
    };
    const double hair = 1 + 2e-9;
    RC_ASSERT(in_mm(most) <= limit * hair && in_mm(most) > limit - 0.1 * millimetre);
    RC_ASSERT(in_inches(most) <= limit * hair && in_inches(most) > limit - 0.01 * inch);
    RC_ASSERT(in_mm(least) * hair >= limit && in_mm(least) < limit + 0.1 * millimetre);
    RC_ASSERT(in_inches(least) * hair >= limit && in_inches(least) < limit + 0.01 * inch);
  });
}
