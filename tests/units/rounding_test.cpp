#include "units/rounding.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace brimwright;

TEST_CASE("exactly 24 pieces never become 23 or 25 by noise", "[units]") {
  // IEEE 754: 0.1 added ten times is 0.9999999999999999, so the sum below is short of 24.
  double noisy = 0;
  for (int i = 0; i < 240; ++i) noisy += 0.1;
  REQUIRE(noisy != 24);
  CHECK(whole_down(noisy) == 24);
  CHECK(whole_up(noisy) == 24);
  CHECK(whole_up(48 * (1 - 0.5)) == 24);
  CHECK(whole_down(23.999999) == 23);  // a millionth short is short
  CHECK(whole_up(24.000001) == 25);
}

TEST_CASE("a mass on the scale is a multiple of its step", "[units]") {
  CHECK(rounded_up(12.01 * gram, 0.1 * gram) / gram == Approx(12.1));
  CHECK(rounded_up(0.3 * gram, 0.1 * gram) / gram == Approx(0.3));
  CHECK(rounded_down(12.09 * gram, 0.1 * gram) / gram == Approx(12.0));
  CHECK(rounded_nearest(12.5 * gram, 1 * gram) / gram == Approx(13));
  CHECK(rounded_nearest(2.5 * gram, 5 * gram) / gram == Approx(5));
}

TEST_CASE("rounding moves a mass by less than a step", "[units][law]") {
  rc::prop("down <= mass <= up, at most one step apart", [] {
    const Mass mass = *rc::gen::inRange(0, 100'000'000) / 1000.0 * gram;
    const Mass step = *rc::gen::element(0.01, 0.1, 0.5, 1.0, 5.0) * gram;
    const Mass slack = 1e-8 * mass + 1e-9 * gram;
    RC_ASSERT(rounded_down(mass, step) <= mass + slack);
    RC_ASSERT(rounded_up(mass, step) >= mass - slack);
    RC_ASSERT(rounded_up(mass, step) - rounded_down(mass, step) <= step + slack);
  });
}
