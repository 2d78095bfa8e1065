#include "planning/net_quantity.h"

#include "planning/lightest_piece.h"
#include "units/rounding.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <charconv>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

const Place here{"paper.run.json", "/label"};

std::vector<Mass> in_grams(const std::vector<double>& values) {
  std::vector<Mass> masses;
  for (const double value : values) masses.push_back(value * gram);
  return masses;
}

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 100001) / 100000.0;
}

}  // namespace

TEST_CASE("a pack in the EU may fall short by what the directive's table says", "[planning]") {
  // Council Directive 76/211/EEC, Annex I, table 2.4 (as amended by 78/891/EEC), each row at its
  // edges and between; percentages rounded up to the next tenth of a gram.
  const auto [nominal_g, error_g] = GENERATE(table<double, double>({
      {5, 0.5},   // 9 % is 0.45
      {33, 3.0},  // 2.97
      {50, 4.5},
      {75, 4.5},
      {100, 4.5},
      {105, 4.8},  // 4.5 % is 4.725
      {150, 6.8},  // 6.75
      {200, 9},
      {250, 9},
      {300, 9},
      {333, 10.0},  // 3 % is 9.99
      {400, 12},
      {500, 15},
      {750, 15},
      {1000, 15},
      {2000, 30},  // 1.5 %
      {10000, 150},
  }));
  CAPTURE(nominal_g);
  const auto error = tolerable_negative_error(nominal_g * gram);
  REQUIRE(error);
  CHECK_THAT(*error / gram, WithinAbs(error_g, 1e-9));
}

TEST_CASE("outside 5 g to 10 kg the directive says nothing", "[planning]") {
  CHECK_FALSE(tolerable_negative_error(4.9 * gram));
  CHECK_FALSE(tolerable_negative_error(10001 * gram));
}

TEST_CASE("a pack in the US may fall short by what the handbook's table says", "[planning]") {
  // NIST Handbook 133, Appendix A, Table 2-5, by weight: each row at its lower edge and just below
  // its upper one. The rows here are from memory of the handbook, not read in it.
  const auto [from_lb, below_lb, mav_lb] = GENERATE(table<double, double, double>({
      {0.08, 0.12, 0.008},
      {0.12, 0.18, 0.012},
      {0.18, 0.26, 0.016},
      {0.26, 0.34, 0.020},
      {0.34, 0.46, 0.024},
      {0.46, 0.58, 0.028},
      {0.58, 0.70, 0.032},
      {0.70, 0.84, 0.036},
      {0.84, 0.94, 0.040},
      {0.94, 1.08, 0.044},
      {1.08, 1.26, 0.048},
  }));
  CAPTURE(from_lb);
  CHECK_THAT(*maximum_allowable_variation(from_lb * pound) / pound, WithinAbs(mav_lb, 1e-9));
  CHECK_THAT(*maximum_allowable_variation((below_lb - 1e-4) * pound) / pound,
             WithinAbs(mav_lb, 1e-9));
}

TEST_CASE("the smallest packs in the US may be a tenth short; large ones are not in the table here",
          "[planning]") {
  CHECK_THAT(*maximum_allowable_variation(0.05 * pound) / pound, WithinAbs(0.005, 1e-9));
  CHECK_FALSE(maximum_allowable_variation(1.26 * pound));
}

TEST_CASE("a heavier pack is never allowed less short", "[planning][law]") {
  rc::prop("both tables never fall as the quantity grows", [] {
    const double less = between(5, 570), more = between(less, 571);
    RC_ASSERT(*tolerable_negative_error(less * gram) <= *tolerable_negative_error(more * gram));
    RC_ASSERT(*maximum_allowable_variation(less * gram) <=
              *maximum_allowable_variation(more * gram) + 1e-9 * gram);
  });
}

TEST_CASE("a label states what the lightest piece holds, rounded down", "[planning]") {
  // Grams for an ounce 28.3495 (16 CFR 500.19): 3.3 oz are 93.55 g, 3.4 oz 96.39 g; a pound
  // 453.59 g; 18.3 oz 518.8 g. Metric in three digits, two below 100 g.
  const auto [grams, eu, us] = GENERATE(table<double, std::string, std::string>({
      {94.9, "94 g", "NET WT 3.3 OZ (94 g)"},
      {93.7, "93 g", "NET WT 3.3 OZ (93 g)"},
      {96.2, "96 g", "NET WT 3.3 OZ (94 g)"},
      {96.4, "96 g", "NET WT 3.4 OZ (96 g)"},
      {113.4, "113 g", "NET WT 4 OZ (113 g)"},
      {453.7, "453 g", "NET WT 1 LB (453 g)"},
      {520.0, "520 g", "NET WT 1 LB 2.3 OZ (519 g)"},
      {8.6, "8 g", "NET WT 0.3 OZ (8.5 g)"},
  }));
  CAPTURE(grams);
  CHECK(net_quantity(Market::EU, grams * gram, false, here).statement == eu);
  CHECK(net_quantity(Market::US, grams * gram, false, here).statement == us);
}

TEST_CASE("figures on an EU label are as high as the directive asks", "[planning]") {
  // 76/211/EEC, Annex I, 3.1: 2 mm to 50 g, 3 mm to 200 g, 4 mm to 1000 g, 6 mm above (from
  // memory).
  const auto [grams, height_mm] =
      GENERATE(table<double, double>({{50, 2}, {51, 3}, {200, 3}, {201, 4}, {1000, 4}, {1001, 6}}));
  CHECK_THAT(*net_quantity(Market::EU, grams * gram, false, here).figures / millimetre,
             WithinAbs(height_mm, 1e-9));
}

TEST_CASE("the e mark comes only when asked for, and with its caution", "[planning]") {
  CHECK(net_quantity(Market::EU, 95 * gram, false, here).remarks.empty());
  const auto marked = net_quantity(Market::EU, 95 * gram, true, here);
  CHECK(marked.statement == "95 g e");
  REQUIRE(marked.remarks.size() == 1);
  CHECK_THAT(marked.remarks.front().text, Contains("at least 3 mm"));
}

TEST_CASE("what no rule covers gets no statement", "[planning]") {
  CHECK_THROWS_WITH(net_quantity(Market::EU, 4.9 * gram, false, here), Contains("5 g to 10 kg"));
  CHECK_THROWS_WITH(net_quantity(Market::EU, 10.5 * kilogram, false, here), Contains("10500 g"));
  CHECK_THROWS_WITH(net_quantity(Market::US, 2 * gram, false, here), Contains("less than 0.1 oz"));
}

TEST_CASE("no label ever promises more than the lightest piece", "[planning][law]") {
  rc::prop("what the words say, in either unit, is held", [] {
    const Mass lightest = between(5, 1500) * gram;
    const auto eu = net_quantity(Market::EU, lightest, false, here);
    const auto us = net_quantity(Market::US, lightest, false, here);
    RC_ASSERT(eu.stated <= lightest && lightest - eu.stated < 1.0001 * gram);
    RC_ASSERT(us.stated <= lightest * (1 + 1e-9));
    RC_ASSERT(lightest - us.stated < 0.11 * ounce + 10 * gram * (lightest >= 1000 * gram));
    // The grams in the words, read back.
    const auto open = us.statement.find('(');
    double printed = 0;
    std::from_chars(us.statement.data() + open + 1, us.statement.data() + us.statement.size(),
                    printed);
    RC_ASSERT(printed > 0 && printed * gram <= lightest * (1 + 1e-9));
  });
}

TEST_CASE("the three packers' rules decide over a batch in the EU", "[planning]") {
  // 76/211/EEC, Annex I: 100 g may be 4.5 g short. The 2.5 % is WELMEC's common reading.
  std::vector<double> forty(40, 100.5);
  forty[0] = 95.4;  // short by 4.6 g, one in 40 is 2.5 %
  auto held = held_against(Market::EU, 100 * gram, in_grams(forty));
  CHECK(held.passes);
  CHECK(held.short_once == 1);
  forty[0] = 90.9;  // short by 9.1 g, more than twice the error
  held = held_against(Market::EU, 100 * gram, in_grams(forty));
  CHECK_FALSE(held.passes);
  CHECK(held.short_twice == 1);
  std::vector<double> thirty_nine(39, 100.5);
  thirty_nine[0] = 95.4;  // one in 39 is more than 2.5 %
  CHECK_FALSE(held_against(Market::EU, 100 * gram, in_grams(thirty_nine)).passes);
  thirty_nine[0] = 95.5;  // short by just the error is not more than it
  CHECK(held_against(Market::EU, 100 * gram, in_grams(thirty_nine)).passes);
  // All within the error, but 100 g are not reached on average.
  held = held_against(Market::EU, 100 * gram, in_grams(std::vector<double>(40, 99.5)));
  CHECK_FALSE(held.mean_reaches);
  CHECK_FALSE(held.passes);
}

TEST_CASE("the two tests decide over a lot in the US", "[planning]") {
  // NIST Handbook 133: 100 g is 0.2205 lb, so 0.016 lb = 7.26 g short at most, and no pack more.
  std::vector<double> packs(48, 100.5);
  packs[0] = 92.8;
  CHECK(held_against(Market::US, 100 * gram, in_grams(packs)).passes);
  packs[0] = 92.7;
  CHECK_FALSE(held_against(Market::US, 100 * gram, in_grams(packs)).passes);
}

TEST_CASE("pieces rounded down from their lightest pass the rules they are under",
          "[planning][law]") {
  rc::prop("a label drafted from weighed pieces passes against them", [] {
    const double about = between(20, 500);
    std::vector<Mass> pieces;
    const int count = *rc::gen::inRange(3, 20);
    for (int i = 0; i < count; ++i) pieces.push_back(about * between(0.97, 1.03) * gram);
    const Mass lightest = lightest_of(pieces, 0.1 * gram, here).mass;
    for (const Market market : {Market::EU, Market::US}) {
      const auto net = net_quantity(market, lightest, false, here);
      RC_ASSERT(held_against(market, net.stated, pieces).passes);
    }
  });
}

TEST_CASE("the lightest believable piece lies three deviations below the mean", "[planning]") {
  // 94, 95, 96, 97, 98 g: mean 96, sample deviation sqrt(10 / 4) = 1.5811 (n - 1): 96 - 4.743 -
  // 0.05 = 91.207 g.
  const auto lightest = lightest_of(in_grams({94, 95, 96, 97, 98}), 0.1 * gram, here);
  CHECK_THAT(lightest.mass / gram, WithinAbs(91.207, 5e-4));
  CHECK_THAT(lightest.mean / gram, WithinAbs(96, 1e-9));
}

TEST_CASE("no piece is believed heavier than the lightest that was weighed", "[planning]") {
  // Nineteen of 100 g and one of 94: mean 99.7, deviation 1.3416, three of them reach 95.675, and
  // yet 94 g was weighed.
  std::vector<double> pieces(20, 100);
  pieces[7] = 94;
  CHECK_THAT(lightest_of(in_grams(pieces), 1 * gram, here).mass / gram, WithinAbs(93.5, 1e-9));
}

TEST_CASE("without weighings, the maker's own spread is taken off, all at its worst",
          "[planning]") {
  // 90 g; 2 % is 1.8 g; a line 1 mm low over 50 cm2 at 0.9 g/ml is 4.5 g; half of 0.1 g.
  PieceSpread spread;
  spread.share = 2 * percent;
  spread.pour_line_off_by = 1 * millimetre;
  const auto per_depth = 50 * square_centimetre * (0.9 * gram_per_millilitre);
  const auto lightest = lightest_of(90 * gram, per_depth, spread, 0.1 * gram, here);
  CHECK_THAT(lightest.mass / gram, WithinAbs(90 - 1.8 - 4.5 - 0.05, 1e-9));
}

TEST_CASE("a spread that says nothing, or more than a piece, is refused", "[planning]") {
  CHECK_THROWS_WITH(lightest_of(90 * gram, {}, PieceSpread{}, 0.1 * gram, here),
                    Contains("does not say how much the pieces differ"));
  PieceSpread wild;
  wild.either_way = 60 * gram;
  CHECK_THROWS_WITH(lightest_of(90 * gram, {}, wild, 0.1 * gram, here), Contains("down to 29.95"));
  CHECK_THROWS_WITH(lightest_of(in_grams({90, 91}), 0.1 * gram, here), Contains("2 of the 3"));
  CHECK_THROWS_WITH(lightest_of(in_grams({90, 30, 150}), 0.1 * gram, here), Contains("down to"));
}
