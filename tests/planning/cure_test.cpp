#include "planning/cure.h"

#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using chemistry::CureWeighing;

namespace {

const Place here{"base.formula.json", "/drying/weighings"};

std::vector<CureWeighing> weighed(const std::vector<std::pair<double, double>>& day_and_grams) {
  std::vector<CureWeighing> weighings;
  for (const auto& [day, grams] : day_and_grams) weighings.push_back({day, grams * gram});
  return weighings;
}

/// Sum of squares about a curve, in g2.
double squares(const CureCurve& curve, const std::vector<CureWeighing>& weighings) {
  double sum = 0;
  for (const auto& w : weighings) sum += std::pow((w.mass - curve.on_day(w.day)) / gram, 2);
  return sum;
}

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

/// Eight weighings of a home kitchen's kind: 0.1 g scale, a few tenths off the curve.
std::vector<CureWeighing> kitchen() {
  return weighed({{1, 98.7},
                  {4, 94.9},
                  {8, 91.2},
                  {14, 87.3},
                  {21, 84.6},
                  {28, 83.1},
                  {35, 82.1},
                  {42, 81.6}});
}

}  // namespace

TEST_CASE("three weighings at equal times give the end in closed form", "[planning]") {
  // For an exponential approach, Aitken's delta-squared gives the limit: (m0 m2 - m1^2) /
  // (m0 + m2 - 2 m1) = (100 x 85 - 90^2) / (100 + 85 - 180) = 80 g; each week halves what is left,
  // so tau = 7 / ln 2 = 10.099 days.
  const auto fit = fitted(weighed({{0, 100}, {7, 90}, {14, 85}}), here);
  CHECK_THAT(fit.curve.end / gram, WithinAbs(80, 1e-5));
  CHECK_THAT(fit.curve.to_lose / gram, WithinAbs(20, 1e-5));
  CHECK_THAT(fit.curve.tau_days, WithinRel(7 / std::log(2.0), 1e-6));
  CHECK_FALSE(fit.spread);  // any curve meets three weighings
}

TEST_CASE("one time constant leaves 1/e of what is to be lost", "[planning]") {
  // 70 g dry, 30 g water of which 90 % leaves: after one time constant 70 + 3 + 27 / e = 82.933 g.
  const CureCurve curve{73 * gram, 27 * gram, 12};
  CHECK_THAT(curve.on_day(12) / gram, WithinAbs(82.933, 5e-4));
  CHECK_THAT(curve.on_day(0) / gram, WithinAbs(100, 1e-12));
}

TEST_CASE("no other curve near by lies closer to the weighings than the fitted one", "[planning]") {
  const auto weighings = kitchen();
  const auto fit = fitted(weighings, here);
  const double least = squares(fit.curve, weighings);
  for (const double off : {-1e-3, 1e-3}) {
    CHECK(squares({fit.curve.end * (1 + off), fit.curve.to_lose, fit.curve.tau_days}, weighings) >
          least);
    CHECK(squares({fit.curve.end, fit.curve.to_lose * (1 + off), fit.curve.tau_days}, weighings) >
          least);
    CHECK(squares({fit.curve.end, fit.curve.to_lose, fit.curve.tau_days * (1 + off)}, weighings) >
          least);
  }
  // Standard deviation with n - 3 degrees of freedom, any textbook of regression.
  REQUIRE(fit.spread);
  CHECK_THAT(*fit.spread / gram, WithinRel(std::sqrt(least / 5), 1e-9));
  CHECK(*fit.spread < 0.2 * gram);
}

TEST_CASE("a fit finds the numbers that made the weighings", "[planning][law]") {
  rc::prop("end, loss and time constant are recovered", [] {
    const CureCurve made{between(40, 150) * gram, between(2, 30) * gram, between(4, 25)};
    std::vector<CureWeighing> weighings;
    double day = between(0, 2);
    const int count = *rc::gen::inRange(4, 10);
    for (int i = 0; i < count; ++i) {
      weighings.push_back({day, made.on_day(day)});
      day += between(3, 8);
    }
    const auto fit = fitted(weighings, here).curve;
    RC_ASSERT(std::abs(fit.tau_days / made.tau_days - 1) < 1e-4);
    RC_ASSERT(abs(fit.end - made.end) < 1e-3 * gram);
    RC_ASSERT(abs(fit.to_lose - made.to_lose) < 1e-3 * gram);
  });
}

TEST_CASE("weighings on a coarse scale are fitted to within its step or so", "[planning][law]") {
  rc::prop("rounding to 0.1 g moves the end by less than a gram", [] {
    const CureCurve made{between(60, 120) * gram, between(10, 25) * gram, between(5, 15)};
    std::vector<CureWeighing> weighings;
    for (const double day : {0.0, 3.0, 7.0, 14.0, 21.0, 28.0, 42.0})
      weighings.push_back({day, std::round(made.on_day(day) / gram * 10) / 10 * gram});
    const auto fit = fitted(weighings, here);
    RC_ASSERT(abs(fit.curve.end - made.end) < 1 * gram);
    RC_ASSERT(fit.spread && *fit.spread < 0.1 * gram);
  });
}

TEST_CASE("a piece never grows in its cure and ends at dry matter and what stays",
          "[planning][law]") {
  rc::prop("mass falls, from the fresh mass to end", [] {
    auto formula = paper_formula();
    formula.water_lost_in_cure.reset();
    const Share lost = Share::of_one(between(0, 1));
    formula.drying = chemistry::DryingLaw{lost, between(1, 40)};
    formula.cure = std::chrono::hours(24 * *rc::gen::inRange(0, 100));
    const Mass fresh = between(20, 500) * gram;
    const Mass water = between(0, 0.4) * fresh;
    const auto cure = cure_of(formula, fresh, water);
    Mass before = fresh * (1 + 1e-12);
    for (double day = 0; day < 200; day += 5) {
      RC_ASSERT(cure->curve->on_day(day) <= before);
      before = cure->curve->on_day(day);
    }
    RC_ASSERT(abs(cure->curve->fresh() - fresh) < 1e-9 * fresh);
    RC_ASSERT(abs(cure->curve->end - (fresh - lost.of_one() * water)) < 1e-9 * fresh);
    RC_ASSERT(cure->cured <= fresh && cure->cured >= cure->curve->end);
  });
}

TEST_CASE("weighings that do not tell are refused, each with its reason", "[planning]") {
  const auto refused = [](const std::vector<std::pair<double, double>>& masses,
                          const std::string& says) {
    CHECK_THROWS_WITH(fitted(weighed(masses), here), Contains(says));
  };
  refused({{0, 100}, {7, 95}}, "2 of the 3 weighings");
  refused({{0, 100}, {7, 95}, {14, 96}},
          "/drying/weighings/2/mass: a weighing is 96 g, more than the 95 g");
  refused({{0, 100}, {7, 100}, {14, 100}}, "never get lighter");
  refused({{0, 100}, {7, 95}, {14, 90}, {21, 85}}, "straight line");
  refused({{0, 100}, {7, 97}, {14, 90}, {21, 80}}, "straight line");  // faster and faster
  refused({{0, 100}, {7, 90}, {14, 90}}, "before the second");
}

TEST_CASE("her own weighings carry over to the pieces of a run", "[planning]") {
  // The weighed piece loses 20 of 100 g; a batter of 30 % water can, one of 15 % cannot.
  auto formula = paper_formula();
  formula.water_lost_in_cure.reset();
  formula.drying = weighed({{0, 100}, {7, 90}, {14, 85}});
  formula.cure = std::chrono::hours(24 * 28);
  const auto cure = cure_of(formula, 200 * gram, 60 * gram);
  REQUIRE(cure);
  // 200 g lose 40 in the end; after four halvings 160 + 40 / 16 = 162.5 g.
  CHECK_THAT(cure->cured / gram, WithinAbs(162.5, 1e-4));
  CHECK_THROWS_WITH(cure_of(formula, 200 * gram, 30 * gram),
                    Contains("loss of 20 % of the weight, more than the batter's water of 15 %"));
}

TEST_CASE("without a word on drying no cured weight is made up", "[planning]") {
  auto formula = paper_formula();
  formula.water_lost_in_cure.reset();
  CHECK_FALSE(cure_of(formula, 100 * gram, 30 * gram));
  Run run = paper_run();
  run.pour.formula = formula;
  CHECK_FALSE(planning::plan(run).piece.cured);
}

TEST_CASE("a piece cures part by part", "[planning]") {
  // Base as in "a run worked on paper": 81.65 g. The topping by its own law.
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.pipe->formula.water_lost_in_cure.reset();
  run.pipe->formula.drying = chemistry::DryingLaw{80 * percent, 10};
  run.pipe->formula.cure = std::chrono::hours(24 * 30);
  const Plan plan = planning::plan(run);
  REQUIRE(plan.piece.cured);
  const auto& topping = plan.pipe->batter;
  const Mass water = topping.mass_each * (topping.weighing.water / topping.weighing.batter);
  const Mass dried = 0.8 * (1 - std::exp(-3.0)) * water;
  CHECK_THAT((*plan.piece.cured - plan.pour.batter.cure->cured) / gram,
             WithinAbs((topping.mass_each - dried) / gram, 1e-9));
}
