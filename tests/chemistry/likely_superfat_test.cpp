#include "chemistry/least_batch.h"
#include "chemistry/superfat.h"
#include "formulas.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::any_formula;
using test::Weighing;
using test::weighing_of;

SaponificationRange mg_per_g(double low, double typical, double high) {
  return {SaponificationValue::mg_koh_per_g(low), SaponificationValue::mg_koh_per_g(typical),
          SaponificationValue::mg_koh_per_g(high)};
}

/// 600 g of olive, 300 g of coconut, 100 g of shea at the ranges of CXS 33, 210 and 325R, some
/// vinegar, and NaOH of 98 to 100 % for about 5 % of superfat, on a kitchen scale and a fine one.
Weighing studio_batch() {
  return {{{"olive", mg_per_g(184, 190, 196), 600 * gram, gram},
           {"coconut", mg_per_g(248, 256.5, 265), 300 * gram, gram},
           {"shea", mg_per_g(160, 177.5, 195), 100 * gram, gram}},
          {{Alkali::sodium_hydroxide, 99 * percent, 98 * percent, whole, 143.6 * gram, 0.1 * gram}},
          {{"vinegar", 0.0467, 50 * gram, gram}}};
}

/// The superfat by its definition, written out anew: what the program computes is not asked.
double superfat_by_definition(const std::vector<std::pair<double, double>>& fats_g_mg,
                              double naoh_g, double purity, double acid_g, double koh_per_acid) {
  double wanted = 0;
  for (const auto& [grams, mg] : fats_g_mg) wanted += grams * mg / 1000;
  return 1 - (naoh_g * purity * 56.1053 / 39.99677 - acid_g * koh_per_acid) / wanted;
}

/// Trials in ascending order, each value drawn evenly from its range, each weighing evenly from
/// half a step to either side (JCGM 101:2008, propagation of distributions by Monte Carlo).
std::vector<double> trials(const Weighing& w, int count) {
  std::mt19937_64 random(20081);
  const auto even = [&](double low, double high) {
    return std::uniform_real_distribution<>(low, high)(random);
  };
  const auto weighed = [&](const auto& item) {
    const double half = item.step / gram / 2;
    return item.mass / gram + even(-half, half);
  };
  std::vector<double> results;
  for (int i = 0; i < count; ++i) {
    std::vector<std::pair<double, double>> fats;
    for (const auto& fat : w.fats)
      fats.push_back({weighed(fat), even(fat.saponification.low.mg_koh_per_g(),
                                         fat.saponification.high.mg_koh_per_g())});
    const auto& naoh = w.alkalis[0];
    results.push_back(superfat_by_definition(
        fats, weighed(naoh), even(naoh.purity_low.of_one(), naoh.purity_high.of_one()),
        weighed(w.acids[0]), w.acids[0].koh_g_per_g));
  }
  std::sort(results.begin(), results.end());
  return results;
}

TEST_CASE("nineteen batches in twenty come out in the likely band", "[chemistry]") {
  // The other way to the same: 200 000 batches made at random (JCGM 101:2008), fixed seed, their
  // 2.5 and 97.5 % quantiles. Tolerance 0.15 points of about 4: a sum of few rectangles is not
  // quite normal.
  const Weighing w = studio_batch();
  const auto made = trials(w, 200000);
  const auto superfat = w.superfat();
  CHECK_THAT(superfat.likely_low.in_percent(), WithinAbs(100 * made[5000], 0.15));
  CHECK_THAT(superfat.likely_high.in_percent(), WithinAbs(100 * made[195000], 0.15));
  const auto inside = std::count_if(made.begin(), made.end(), [&](double s) {
    return s >= superfat.likely_low.of_one() && s <= superfat.likely_high.of_one();
  });
  CHECK_THAT(static_cast<double>(inside) / 200000, WithinAbs(0.95, 0.01));
  // No batch leaves the worst case, and few come near it.
  CHECK(made.front() >= superfat.low.of_one());
  CHECK(made.back() <= superfat.high.of_one());
  CHECK(superfat.likely_low > superfat.low + 1 * percent);
  CHECK(superfat.likely_high < superfat.high - 1 * percent);
}

TEST_CASE("a lopsided purity moves the band, not its width", "[chemistry]") {
  // Stated as 99.9 % within 97 to 100 %: batches come out about 1.4 % of alkali weaker.
  Weighing w = studio_batch();
  w.alkalis[0].purity = 99.9 * percent;
  w.alkalis[0].purity_low = 97 * percent;
  const auto made = trials(w, 200000);
  const auto superfat = w.superfat();
  CHECK_THAT(superfat.likely_low.in_percent(), WithinAbs(100 * made[5000], 0.15));
  CHECK_THAT(superfat.likely_high.in_percent(), WithinAbs(100 * made[195000], 0.15));
}

TEST_CASE("two doubts combine by the root of their squares", "[chemistry]") {
  // On paper, 1000 g of fat at 190 mg/g and 180.5 g of KOH: superfat 5 %, dS/ds = 0.95 / 190 for
  // each mg/g, dS/dp = -0.95. 188 to 192 mg/g: u = 0.95 x 2 / 190 / sqrt(3) = 0.57735 %. Purity 99
  // to 100 %, stated in the middle, with 181.407 g: u = 0.95 x 0.5 / 99.5 / sqrt(3) = 0.27562 %.
  // Together 0.63976 %, x 1.96 = 1.2539 %. Tolerance: the curvature, 1e-4 of it.
  const Weighing w{{{"olive", mg_per_g(188, 190, 192), 1000 * gram, Mass()}},
                   {{Alkali::potassium_hydroxide, 99.5 * percent, 99 * percent, whole,
                     180.5 / 0.995 * gram, Mass()}},
                   {}};
  const auto superfat = w.superfat();
  CHECK_THAT(superfat.likely_low.in_percent(), WithinAbs(5 - 1.2539, 2e-4));
  CHECK_THAT(superfat.likely_high.in_percent(), WithinAbs(5 + 1.2539, 2e-4));
  CHECK_THAT(superfat.likely_by_ranges.in_percent(), WithinAbs(1.2539, 2e-4));
  CHECK(superfat.likely_by_scales == Share());
  // 0.57735^2 / 0.63976^2 = 81.44 %.
  REQUIRE(superfat.uncertainties.size() == 2);
  CHECK_THAT(superfat.uncertainties[0].cause, Contains("olive (188 to 192 mg KOH/g)"));
  CHECK_THAT(superfat.uncertainties[0].of_variance.in_percent(), WithinAbs(81.44, 0.02));
  CHECK(superfat.dominant_of_variance == superfat.uncertainties[0].of_variance);
}

TEST_CASE("one doubt alone is never wider than its own worst case", "[chemistry]") {
  // 1.96 / sqrt(3) of a rectangle's half-width would be 13 % more than there is.
  const Weighing w{{{"shea", mg_per_g(160, 177.5, 195), 1000 * gram, Mass()}},
                   {{Alkali::potassium_hydroxide, whole, whole, whole, 168 * gram, Mass()}},
                   {}};
  CHECK(w.superfat().likely_low == w.superfat().low);
  CHECK(w.superfat().likely_high == w.superfat().high);
  CHECK_THAT(w.superfat().dominant_of_variance.in_percent(), WithinAbs(100, 1e-9));
}

TEST_CASE("goes on a scale add up at worst and by their root when likely", "[chemistry]") {
  // 100 g of KOH at 1 g: at worst 0.5 g off; in four goes 2 g at worst, but twice as far likely.
  Weighing once{{{"olive", mg_per_g(190, 190, 190), 560 * gram, Mass()}},
                {{Alkali::potassium_hydroxide, whole, whole, whole, 100 * gram, gram}},
                {}};
  Weighing four = once;
  four.alkalis[0].weighings = 4;
  const auto a = once.superfat(), b = four.superfat();
  CHECK_THAT((b.nominal - b.low).of_one(), WithinRel(4 * (a.nominal - a.low).of_one(), 1e-9));
  CHECK_THAT(b.likely_by_scales.of_one(), WithinRel(2 * a.likely_by_scales.of_one(), 1e-9));
}

TEST_CASE("nothing in doubt leaves no band", "[chemistry]") {
  const Weighing w{{{"olive", mg_per_g(190, 190, 190), 1000 * gram, Mass()}},
                   {{Alkali::potassium_hydroxide, whole, whole, whole, 180.5 * gram, Mass()}},
                   {}};
  CHECK(w.superfat().likely_low == w.superfat().nominal);
  CHECK(w.superfat().likely_high == w.superfat().nominal);
  CHECK(w.superfat().uncertainties.empty());
}

TEST_CASE("the likely band lies between the worst case and what comes out", "[chemistry][law]") {
  rc::prop("low <= likely_low <= nominal <= likely_high <= high; shares of variance add up", [] {
    const Mass step = *rc::gen::element(0.01, 0.1, 1.0, 5.0) * gram;
    const auto s = weighing_of(any_formula(), *rc::gen::inRange(10, 5000) * gram, step).superfat();
    RC_ASSERT(s.low <= s.likely_low);
    RC_ASSERT(s.likely_low <= s.nominal);
    RC_ASSERT(s.nominal <= s.likely_high);
    RC_ASSERT(s.likely_high <= s.high);
    double sum = 0;
    for (const auto& uncertainty : s.uncertainties) sum += uncertainty.of_variance.of_one();
    RC_ASSERT(s.uncertainties.empty() || std::abs(sum - 1) < 1e-9);
  });
}

TEST_CASE("a finer scale never widens the likely band", "[chemistry][law]") {
  rc::prop("half the step, no lower low and no higher high", [] {
    const Formula formula = any_formula();
    const Mass fats = *rc::gen::inRange(10, 5000) * gram;
    const Mass step = *rc::gen::inRange(1, 100) * 0.1 * gram;
    const auto coarse = weighing_of(formula, fats, step).superfat();
    const auto fine = weighing_of(formula, fats, step / 2).superfat();
    RC_ASSERT(fine.likely_low.of_one() >= coarse.likely_low.of_one() - 1e-12);
    RC_ASSERT(fine.likely_high.of_one() <= coarse.likely_high.of_one() + 1e-12);
    RC_ASSERT(fine.likely_by_scales <= coarse.likely_by_scales);
  });
}

TEST_CASE("a larger batch is never less sure on the same scales", "[chemistry][law]") {
  rc::prop("twice the batch, no wider part of the scales", [] {
    const Formula formula = any_formula();
    const Mass fats = *rc::gen::inRange(10, 5000) * gram;
    const Mass step = *rc::gen::element(0.01, 0.1, 1.0, 5.0) * gram;
    const auto small = weighing_of(formula, fats, step).superfat();
    const auto large = weighing_of(formula, 2 * fats, step).superfat();
    RC_ASSERT(large.likely_by_scales.of_one() <= small.likely_by_scales.of_one() + 1e-12);
    RC_ASSERT(std::abs(large.likely_by_ranges.of_one() - small.likely_by_ranges.of_one()) < 1e-9);
  });
}

LeastBatch least(Share half_width, CertaintyOf of, const Weighing& w) {
  return least_batch_for(half_width, of, 1000 * gram, w.fats, w.alkalis, w.acids);
}

TEST_CASE("the least batch follows from the scale's step", "[chemistry]") {
  // On paper: pure KOH on a 1 g scale alone, superfat 5 %: u(S) = 0.95 x u(m) / m with m = 180.5 g
  // for 1000 g of fats and u(m) = 1 / sqrt(12) g (JCGM 100:2008, F.2.2.1). 1.96 u(S) = 0.5 points
  // at m = 1.96 x 0.95 x 0.288675 / 0.005 = 107.50 g, 595.6 g of fats.
  const Weighing w{{{"olive", mg_per_g(190, 190, 190), 1000 * gram, Mass()}},
                   {{Alkali::potassium_hydroxide, whole, whole, whole, 180.5 * gram, gram}},
                   {}};
  const auto batch = least(0.5 * percent, CertaintyOf::scales_alone, w);
  REQUIRE(batch.fats);
  CHECK_THAT(*batch.fats / gram, WithinAbs(596, 1e-9));  // whole grams, up
  CHECK_THAT(batch.words, Contains("From 596 g of fats on the scales keep within ±0.5 points"));
}

TEST_CASE("no batch is large enough where the ranges alone are wider", "[chemistry]") {
  const Weighing w = studio_batch();
  const auto none = least(1 * percent, CertaintyOf::everything, w);
  CHECK_FALSE(none.fats);
  CHECK_THAT(none.words, Contains("No batch size") && Contains("the ranges alone leave") &&
                             Contains("ask the supplier"));
  CHECK(least(1 * percent, CertaintyOf::scales_alone, w).fats);
  CHECK(least(10 * percent, CertaintyOf::everything, w).fats);
}

TEST_CASE("what needs no weighing is certain in any batch", "[chemistry]") {
  const Weighing w{{{"olive", mg_per_g(190, 190, 190), 1000 * gram, Mass()}},
                   {{Alkali::potassium_hydroxide, whole, whole, whole, 180.5 * gram, Mass()}},
                   {}};
  CHECK(least(0.1 * percent, CertaintyOf::everything, w).fats == Mass());
}

TEST_CASE("the least batch is enough, and a smaller one is not", "[chemistry][law]") {
  rc::prop("within at the least batch, beyond a gram and 0.01 % below it", [] {
    const Formula formula = any_formula();
    const Mass fats = *rc::gen::inRange(100, 5000) * gram;
    const Mass step = *rc::gen::element(0.1, 1.0, 5.0) * gram;
    const Share wanted = Share::of_one(*rc::gen::inRange(1, 30) / 1000.0);
    const Weighing now = weighing_of(formula, fats, step);
    const auto batch =
        least_batch_for(wanted, CertaintyOf::scales_alone, fats, now.fats, now.alkalis, now.acids);
    RC_PRE(batch.fats && *batch.fats > Mass());
    const auto enough = weighing_of(formula, *batch.fats, step).superfat();
    RC_ASSERT(enough.likely_by_scales.of_one() <= wanted.of_one() * (1 + 1e-9));
    const Mass less = 0.9999 * (*batch.fats - 1 * gram);
    if (less > 1 * gram)
      RC_ASSERT(weighing_of(formula, less, step).superfat().likely_by_scales > wanted);
  });
}

}  // namespace
}  // namespace brimwright::chemistry
