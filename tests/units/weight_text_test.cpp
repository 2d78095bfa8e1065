#include "units/weight_text.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

using namespace brimwright;

namespace {

constexpr double grams_per_ounce = 28.349523125;  // exact by definition, typed here anew

}  // namespace

TEST_CASE("alkali in ounces reads no more than its grams", "[units]") {
  // 322.4 g / 28.349523125 = 11.37233 oz: 11.4 oz would be 323.2 g, 0.8 g of lye too many.
  const auto text = weight_text(322.4 * gram, 0.1 * gram, Rounded::down);
  CHECK(text.grams == "322.4");
  CHECK(text.ounces == "11.372");
  CHECK(on_scale(322.4 * gram, 0.1 * gram, Rounded::down) == "322.4 g");
  CHECK(beside_scale(322.4 * gram, 0.1 * gram, Rounded::down) == "11.372 oz");
}

TEST_CASE("a scale that reads ounces shows ounces at its step, and grams as fine", "[units]") {
  // 194.477729 g is 6.86 oz, which a scale of 0.01 oz shows; its step is 0.28 g.
  const Mass step = 0.01 * ounce;
  CHECK(reads_ounces(step));
  CHECK(on_scale(6.86 * ounce, step, Rounded::down) == "6.86 oz");
  CHECK(beside_scale(6.86 * ounce, step, Rounded::down) == "194.4 g");
  CHECK(beside_scale(6.86 * ounce, step, Rounded::up) == "194.5 g");
  CHECK(on_scale(2.25 * ounce, ounce / 4, Rounded::nearest) == "2.25 oz");
}

TEST_CASE("a scale in grams, kilograms or their fractions does not read ounces", "[units]") {
  for (const double step_g : {0.001, 0.01, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0})
    CHECK_FALSE(reads_ounces(step_g * gram));
  for (const double parts : {1.0, 2.0, 4.0, 8.0, 10.0, 20.0, 32.0, 100.0})
    CHECK(reads_ounces(ounce / parts));
  CHECK(reads_ounces(0.1 * pound));
}

TEST_CASE("a weight shown downward is never more, and less by no more than a step",
          "[units][law]") {
  rc::prop("in both units, on scales of both", [] {
    const Mass unit = *rc::gen::element(gram, ounce);
    const Mass step = *rc::gen::element(0.01, 0.05, 0.1, 0.2, 0.5, 1.0) * unit;
    const Mass mass = *rc::gen::inRange(1, 200'000) * step;
    const double noise = 1e-8 * (mass / gram);
    const auto down = weight_text(mass, step, Rounded::down);
    const auto up = weight_text(mass, step, Rounded::up);
    for (const double grams : {std::stod(down.grams), std::stod(down.ounces) * grams_per_ounce}) {
      RC_ASSERT(grams <= mass / gram + noise);
      RC_ASSERT(grams >= (mass - step) / gram - noise);
    }
    for (const double grams : {std::stod(up.grams), std::stod(up.ounces) * grams_per_ounce}) {
      RC_ASSERT(grams >= mass / gram - noise);
      RC_ASSERT(grams <= (mass + step) / gram + noise);
    }
  });
}

TEST_CASE("the end of a range is not shown nearer to zero than it is", "[units]") {
  CHECK(rounded_text(-0.04, 1, Rounded::down) == "-0.1");
  CHECK(rounded_text(-0.04, 1, Rounded::nearest) == "0.0");
  CHECK(rounded_text(0.04, 1, Rounded::up) == "0.1");
  CHECK(rounded_text(5.1, 1, Rounded::down) == "5.1");  // noise of binary fractions is none
  CHECK(rounded_text(1e300, 1, Rounded::down) != "");
}
