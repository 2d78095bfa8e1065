#include "learning/drying_fit.h"

#include "learning/quantiles.h"

#include <catch2/catch.hpp>

#include <random>
#include <vector>

using namespace brimwright;
using namespace brimwright::learning;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

const planning::CureCurve bar{.end = 102 * gram, .to_lose = 15 * gram, .tau_days = 11};

std::vector<CureWeighing> weighed(const planning::CureCurve& curve,
                                  const std::vector<double>& days) {
  std::vector<CureWeighing> weighings;
  for (const double day : days) weighings.push_back({day, curve.on_day(day)});
  return weighings;
}

std::vector<CureWeighing> with_noise(std::vector<CureWeighing> weighings, double noise_g,
                                     std::mt19937_64& random) {
  std::normal_distribution<double> noise(0, noise_g);
  for (auto& weighing : weighings) weighing.mass += noise(random) * gram;
  return weighings;
}

struct Coverage {
  int cases = 0, held = 0, without = 0;
  double percent() const { return 100.0 * held / cases; }
};

/// How often the interval for `asked` holds the curve's own mass, of 2,000 cases.
template <class Asked>
Coverage coverage(const std::vector<double>& days, double noise_g, Mass truth, const Asked& asked) {
  std::mt19937_64 random(20261201);
  Coverage coverage;
  const auto exact = weighed(bar, days);
  for (; coverage.cases < 2000; ++coverage.cases) {
    const auto interval = asked(with_noise(exact, noise_g, random));
    if (!interval) {
      ++coverage.without;
      continue;
    }
    if ((!interval->low || *interval->low <= truth) && truth <= interval->high) ++coverage.held;
  }
  return coverage;
}

}  // namespace

TEST_CASE("weighings that lie on a curve give that curve", "[learning]") {
  const auto fitted = drying_curve(weighed(bar, {0, 3, 7, 14, 28, 42}));
  const auto& curve = std::get<planning::CureCurve>(fitted);
  CHECK_THAT(curve.end / gram, WithinAbs(102, 1e-3));
  CHECK_THAT(curve.to_lose / gram, WithinAbs(15, 1e-3));
  CHECK_THAT(curve.tau_days, WithinRel(11, 1e-4));
}

TEST_CASE("the curve is the one that a formula's own weighings get", "[learning]") {
  // planning::fitted is written apart: another basis, a finer grid, another refusal.
  std::mt19937_64 random(3);
  for (int i = 0; i < 50; ++i) {
    const auto weighings = with_noise(weighed(bar, {1, 4, 9, 16, 25, 36}), 0.15, random);
    const auto ours = std::get<planning::CureCurve>(drying_curve(weighings));
    const auto theirs = planning::fitted(weighings, {"file", "/place"}).curve;
    CHECK_THAT(ours.on_day(35) / gram, WithinAbs(theirs.on_day(35) / gram, 1e-3));
    CHECK_THAT(ours.tau_days, WithinRel(theirs.tau_days, 1e-3));
  }
}

TEST_CASE("weighings that show no curve are told apart", "[learning]") {
  const auto why = [](const std::vector<CureWeighing>& weighings) {
    return std::get<NoCurve>(drying_curve(weighings));
  };
  const auto at = [](double day, double mass_g) { return CureWeighing{day, mass_g * gram}; };
  CHECK(why({}) == NoCurve::too_few);
  CHECK(why({at(0, 120), at(9, 110)}) == NoCurve::too_few);
  CHECK(why({at(0, 120), at(9, 110), at(9, 109)}) == NoCurve::too_few);
  CHECK(why({at(0, 110), at(9, 111), at(20, 112)}) == NoCurve::never_lighter);
  CHECK(why({at(0, 120), at(10, 115), at(20, 110), at(30, 105)}) == NoCurve::straight);
  CHECK(why({at(0, 120), at(10, 105), at(20, 105), at(30, 105)}) == NoCurve::all_at_once);
}

TEST_CASE("the quantile of F with one degree is that of Student's t, squared", "[learning]") {
  // Student's t, two-sided 5 %: 3.182 with 3 degrees, 2.262 with 9 (any table; from memory).
  CHECK_THAT(f_quantile_of_one_and(3, 0.95), WithinAbs(3.182 * 3.182, 0.005));
  CHECK_THAT(f_quantile_of_one_and(9, 0.95), WithinAbs(2.262 * 2.262, 0.005));
}

TEST_CASE("below six weighings there is no interval", "[learning]") {
  const auto five = weighed(bar, {0, 5, 12, 21, 35});
  CHECK_FALSE(mass_on_day(five, 35));
  CHECK_FALSE(mass_in_the_end(five));
  CHECK(mass_on_day(weighed(bar, {0, 5, 12, 21, 35, 42}), 35));
}

TEST_CASE("weighings that may be a straight line bound the end on one side only", "[learning]") {
  std::mt19937_64 random(1);
  const planning::CureCurve slow{.end = 90 * gram, .to_lose = 30 * gram, .tau_days = 90};
  const auto end = mass_in_the_end(with_noise(weighed(slow, {0, 2, 4, 6, 8, 10}), 0.3, random));
  REQUIRE(end);
  CHECK_FALSE(end->low);
  CHECK(end->high < 120 * gram);
}

TEST_CASE("the cured weight lies in its interval in 93 to 97 % of 2,000 cases", "[learning]") {
  // 95 % wanted; of 2,000 cases the share scatters by 0.5 points (binomial, one sigma).
  struct Case {
    std::vector<double> days;
    double noise_g;
  };
  const Case tried = GENERATE(values<Case>({
      {{0, 3, 7, 14, 21, 35}, 0.5},
      {{1, 4, 8, 12, 20, 28, 35, 42}, 0.1},
      {{2, 5, 9, 14, 20, 27, 35, 44, 54, 65, 77, 90}, 0.5},
  }));
  const Coverage on_day = coverage(tried.days, tried.noise_g, bar.on_day(42),
                                   [](const auto& w) { return mass_on_day(w, 42); });
  const Coverage end = coverage(tried.days, tried.noise_g, bar.end,
                                [](const auto& w) { return mass_in_the_end(w); });
  INFO(tried.days.size() << " weighings, " << tried.noise_g << " g of noise: on day 42 "
                         << on_day.percent() << " %, in the end " << end.percent() << " %");
  CHECK(on_day.without + end.without == 0);
  CHECK(on_day.percent() >= 93);
  CHECK(on_day.percent() <= 97);
  CHECK(end.percent() >= 93);
  CHECK(end.percent() <= 97);
}
