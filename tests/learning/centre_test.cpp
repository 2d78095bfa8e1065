#include "learning/centre.h"

#include "learning/signed_rank.h"
#include "learning/walsh_averages.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

using namespace brimwright::learning;
using Catch::Matchers::WithinAbs;

namespace {

/// All of them, written down: the plain way.
std::vector<double> all_walsh_averages(const std::vector<double>& values) {
  std::vector<double> averages;
  for (std::size_t i = 0; i < values.size(); ++i)
    for (std::size_t j = i; j < values.size(); ++j) averages.push_back((values[i] + values[j]) / 2);
  std::sort(averages.begin(), averages.end());
  return averages;
}

}  // namespace

TEST_CASE("the worked example of Hollander and Wolfe comes out as printed", "[learning]") {
  // Nonparametric Statistical Methods, 2nd edition 1999, chapter 3: change of the Hamilton
  // depression scale factor IV in nine patients. Unread: the data as R's package asbio repeats them
  // (documentation of HL.mean), the results from memory: estimate -0.46, and with 96.1 %
  // (t = 39: ranks 6 and 40 of 45) from -0.786 to -0.010.
  const Centre centre =
      centre_of({-0.952, 0.147, -1.022, -0.430, -0.620, -0.590, -0.490, 0.080, -0.010});
  CHECK_THAT(centre.value, WithinAbs(-0.46, 1e-12));
  CHECK_THAT(centre.low, WithinAbs(-0.786, 1e-12));
  CHECK_THAT(centre.high, WithinAbs(-0.010, 1e-12));
  // 10 of the 512 sign patterns of nine ranks have a positive sum of 5 or less: the empty one, 1,
  // 2, 3 and 1+2, 4 and 1+3, 5 and 1+4 and 2+3. Counted by hand.
  REQUIRE(centre.level);
  CHECK_THAT(*centre.level, WithinAbs(1 - 2 * 10.0 / 512, 1e-15));
}

TEST_CASE("below six values the spread is the whole range, from six on an interval", "[learning]") {
  const Centre five = centre_of({3, 1, 2, 5, 4});
  CHECK_FALSE(five.level);
  CHECK(five.low == 1);
  CHECK(five.high == 5);
  const Centre six = centre_of({3, 1, 2, 5, 4, 6});
  REQUIRE(six.level);
  CHECK_THAT(*six.level, WithinAbs(1 - 2.0 / 64, 1e-15));  // all signs alike, of 2^6 patterns
  CHECK_FALSE(signed_rank_bounds(5, level_wanted));
}

TEST_CASE("one batch gone wrong of four does not carry the centre away", "[learning]") {
  // Walsh averages of 1, 2, 3, 1000: 1 1.5 2 2 2.5 3 500.5 501 501.5 1000; the middle two
  // are 2.5, 3.
  CHECK(centre_of({1000, 2, 1, 3}).value == 2.75);
}

TEST_CASE("signed ranks are counted as trying all sign patterns counts them", "[learning]") {
  for (std::size_t n = 1; n <= 12; ++n) {
    std::vector<double> tried(n * (n + 1) / 2 + 1, 0);
    for (unsigned pattern = 0; pattern < 1U << n; ++pattern) {
      std::size_t sum = 0;
      for (std::size_t rank = 1; rank <= n; ++rank)
        if ((pattern >> (rank - 1) & 1U) != 0) sum += rank;
      ++tried[sum];
    }
    CHECK(sign_patterns(n) == tried);
  }
}

TEST_CASE("the normal approximation follows on the exact count", "[learning]") {
  // At 50 values both can be had: the next rank up is no longer 95 % by either.
  const auto exact = signed_rank_bounds(50, level_wanted);
  const auto approximate = signed_rank_bounds(51, level_wanted);
  // Wilcoxon's table for n = 50, two-sided 5 %: 434 (so that the rank is 435); from memory.
  CHECK(exact->rank == 435);
  CHECK(exact->level >= level_wanted);
  CHECK(exact->level < level_wanted + 0.001);
  CHECK(approximate->level >= level_wanted);
  CHECK(approximate->level < level_wanted + 0.001);
  // mean 663, deviation sqrt(51 * 52 * 103 / 24) = 106.685: 663 + 0.5 - 1.95996 * 106.685 = 454.4
  CHECK(approximate->rank == 454);
}

TEST_CASE("an interval holds just the centres that the signed-rank test does not reject",
          "[learning][law]") {
  rc::prop("inverting the test gives the same interval", [] {
    const auto n = *rc::gen::inRange<std::size_t>(6, 13);
    const auto whole = *rc::gen::unique<std::vector<int>>(n, rc::gen::inRange(-100000, 100000));
    const std::vector<double> values(whole.begin(), whole.end());
    const Centre centre = centre_of(values);
    const auto bounds = signed_rank_bounds(n, level_wanted);
    const auto is_held = [&](double theta) {
      // T and its mirror, each at least the rank: counted by sorting |x - theta|.
      std::vector<double> off;
      for (const double value : values) off.push_back(value - theta);
      std::sort(off.begin(), off.end(),
                [](double a, double b) { return std::abs(a) < std::abs(b); });
      std::size_t above = 0, below = 0;
      for (std::size_t i = 0; i < n; ++i) (off[i] > 0 ? above : below) += i + 1;
      return std::min(above, below) >= bounds->rank;
    };
    // A little inside and outside, where no two are equally far: averages are halves.
    RC_ASSERT(is_held(centre.low + 0.1) || centre.low == centre.high);
    RC_ASSERT(is_held(centre.high - 0.1) || centre.low == centre.high);
    RC_ASSERT(!is_held(centre.low - 0.1));
    RC_ASSERT(!is_held(centre.high + 0.1));
  });
}

TEST_CASE("Walsh averages are selected as sorting all of them does", "[learning][law]") {
  rc::prop("any rank, with values alike and far out", [] {
    auto values = *rc::gen::nonEmpty(rc::gen::container<std::vector<double>>(rc::gen::oneOf(
        rc::gen::map(rc::gen::inRange(-20, 20), [](int i) { return i / 4.0; }),
        rc::gen::map(rc::gen::inRange(-1000000, 1000000), [](int i) { return i / 997.0; }),
        rc::gen::map(rc::gen::inRange(-300, 300), [](int i) { return std::pow(10.0, i); }))));
    const std::vector<double> plain = all_walsh_averages(values);
    std::sort(values.begin(), values.end());
    const auto rank = *rc::gen::inRange<std::size_t>(1, plain.size() + 1);
    RC_ASSERT(walsh_average(values, rank) == plain[rank - 1]);
  });
}

TEST_CASE("of many values the Walsh averages are selected as plainly", "[learning]") {
  std::mt19937_64 random(7);
  std::cauchy_distribution<double> wild;  // some lie very far out
  std::vector<double> values(800);
  for (double& value : values) value = wild(random);
  const std::vector<double> plain = all_walsh_averages(values);
  std::sort(values.begin(), values.end());
  for (std::size_t rank = 1; rank <= plain.size(); rank += 997)
    CHECK(walsh_average(values, rank) == plain[rank - 1]);
}
