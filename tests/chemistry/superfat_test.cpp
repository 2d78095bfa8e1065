#include "chemistry/superfat.h"

#include "formulas.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using test::any_formula;
using test::Weighing;
using test::weighing_of;

SaponificationRange mg_per_g(double low, double typical, double high) {
  return {SaponificationValue::mg_koh_per_g(low), SaponificationValue::mg_koh_per_g(typical),
          SaponificationValue::mg_koh_per_g(high)};
}

/// 1000 g of a fat whose 190 mg/g is known exactly, with 180.5 g of pure KOH: superfat 5 % on
/// paper.
Weighing certain() {
  return {{{"olive", mg_per_g(190, 190, 190), 1000 * gram, Mass()}},
          {{Alkali::potassium_hydroxide, whole, whole, whole, 180.5 * gram, Mass()}},
          {}};
}

TEST_CASE("superfat is the share of the lye that is left out", "[chemistry]") {
  // By definition: 1 - 180.5 / (1000 x 0.190) = 0.05.
  const auto superfat = certain().superfat();
  CHECK_THAT(superfat.nominal.in_percent(), WithinAbs(5, 1e-12));
  CHECK(superfat.low == superfat.nominal);
  CHECK(superfat.high == superfat.nominal);
  CHECK(superfat.dominant_cause.empty());
}

TEST_CASE("NaOH counts by its molar mass and its purity", "[chemistry]") {
  // 180.5 g KOH x 39.99677 / 56.1053 (IUPAC 2021) / 0.98.
  Weighing w = certain();
  w.alkalis = {{Alkali::sodium_hydroxide, 98 * percent, 98 * percent, 98 * percent,
                180.5 * 39.99677 / 56.1053 / 0.98 * gram, Mass()}};
  CHECK_THAT(w.superfat().nominal.in_percent(), WithinAbs(5, 1e-5));
}

TEST_CASE("acid that nobody reckoned with raises the superfat", "[chemistry]") {
  // 10 g of anhydrous citric acid take 8.7608 g KOH: 1 - (180.5 - 8.7608) / 190 = 9.611 %.
  Weighing w = certain();
  w.acids = {{"citric acid", 0.87608, 10 * gram, Mass()}};
  CHECK_THAT(w.superfat().nominal.in_percent(), WithinAbs(9.611, 0.0005));
}

TEST_CASE("the interval is that of the worst luck", "[chemistry]") {
  // On paper: the fat at 185 to 195 mg/g and half a gram off, the KOH half a gram off and 1 %
  // purer.
  Weighing w = certain();
  w.fats[0].saponification = mg_per_g(185, 190, 195);
  w.fats[0].step = gram;
  w.alkalis[0] = {Alkali::potassium_hydroxide, 98 * percent, 97 * percent, 99 * percent,
                  180.5 / 0.98 * gram,         gram};
  const auto superfat = w.superfat();
  const double kohs = 180.5 / 0.98;
  CHECK_THAT(superfat.low.of_one(), WithinAbs(1 - (kohs + 0.5) * 0.99 / (999.5 * 0.185), 1e-12));
  CHECK_THAT(superfat.nominal.of_one(), WithinAbs(0.05, 1e-12));
  CHECK_THAT(superfat.high.of_one(), WithinAbs(1 - (kohs - 0.5) * 0.97 / (1000.5 * 0.195), 1e-12));
}

TEST_CASE("the widest doubt is named with its remedy", "[chemistry]") {
  Weighing w = certain();
  SECTION("shea of any origin") {
    w.fats[0] = {"Shea butter", mg_per_g(160, 177.5, 195), 1000 * gram, gram};
    CHECK_THAT(w.superfat().dominant_cause, Contains("Shea butter (160 to 195 mg KOH/g)"));
    CHECK_THAT(w.superfat().remedy, Contains("supplier"));
  }
  SECTION("a small batch on a kitchen scale") {
    w.fats[0].mass = 20 * gram;
    w.alkalis[0].mass = 3.61 * gram;
    w.alkalis[0].step = gram;
    CHECK_THAT(w.superfat().dominant_cause, Contains("step of 1 g for KOH"));
    CHECK_THAT(w.superfat().remedy, Contains("finer scale"));
    CHECK(w.superfat().low < Share());
  }
  SECTION("KOH of doubtful purity") {
    w.alkalis[0] = {Alkali::potassium_hydroxide, 90 * percent, 88 * percent, 92 * percent,
                    180.5 / 0.9 * gram,          0.1 * gram};
    CHECK_THAT(w.superfat().dominant_cause, Contains("purity of KOH (88 to 92 %)"));
    CHECK_THAT(w.superfat().remedy, Contains("purity"));
  }
  SECTION("acid weighed on too coarse a scale") {
    w.acids = {{"citric acid", 0.87608, 4 * gram, 5 * gram}};
    CHECK_THAT(w.superfat().dominant_cause, Contains("step of 5 g for citric acid"));
  }
}

TEST_CASE("unrounded lye leaves exactly the superfat aimed at", "[chemistry][law]") {
  rc::prop("effective superfat is the aim, with acids, milk fat, extra oil and both alkalis", [] {
    const Formula formula = any_formula();
    const Mass fats = *rc::gen::inRange(10, 20000) * gram;
    const auto superfat = weighing_of(formula, fats, Mass()).superfat();
    RC_ASSERT(std::abs(superfat.nominal.of_one() - formula.superfat.of_one()) < 1e-12);
  });
}

TEST_CASE("what comes out lies inside what may come out", "[chemistry][law]") {
  rc::prop("low <= nominal <= high, and a cause is named when low is lower", [] {
    const Mass step = *rc::gen::element(0.01, 0.1, 1.0, 5.0) * gram;
    const auto superfat =
        weighing_of(any_formula(), *rc::gen::inRange(10, 5000) * gram, step).superfat();
    RC_ASSERT(superfat.low <= superfat.nominal);
    RC_ASSERT(superfat.nominal <= superfat.high);
    RC_ASSERT(superfat.dominant_cause.empty() == (superfat.low == superfat.nominal));
  });
}

TEST_CASE("a finer scale never widens the interval", "[chemistry][law]") {
  rc::prop("half the step, no lower low and no higher high", [] {
    const Formula formula = any_formula();
    const Mass fats = *rc::gen::inRange(10, 5000) * gram;
    const Mass step = *rc::gen::inRange(1, 100) * 0.1 * gram;
    const auto coarse = weighing_of(formula, fats, step).superfat();
    const auto fine = weighing_of(formula, fats, step / 2).superfat();
    RC_ASSERT(fine.low >= coarse.low);
    RC_ASSERT(fine.high <= coarse.high);
    RC_ASSERT(fine.nominal == coarse.nominal);
  });
}

}  // namespace
}  // namespace brimwright::chemistry
