#include "chemistry/salts.h"

#include "chemistry/batter_density.h"
#include "chemistry/proportions.h"
#include "formulas.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::WithinRel;

TEST_CASE("an additive is known by the longest name that stands in its own", "[chemistry]") {
  const auto [given, known] = GENERATE(table<std::string, std::string>({
      {"Sodium lactate 60 %", "sodium lactate"},
      {"pink Himalayan sea salt", "salt"},
      {"Epsom salt", "epsom salt"},
      {"French clay, green", "kaolin"},
      {"Tetrasodium EDTA", "tetrasodium edta"},
      {"Trisodium citrate dihydrate", "sodium citrate"},
      {"titanium dioxide, oil soluble", "titanium dioxide"},
  }));
  CAPTURE(given);
  const Substance* found = find_substance(given);
  REQUIRE(found != nullptr);
  CHECK(found->names.front() == known);
}

TEST_CASE("a name that only looks alike is not known", "[chemistry]") {
  const auto name = GENERATE(values<std::string>({"salted caramel", "oatmeal", "sugarcane wax"}));
  CHECK(find_substance(name) == nullptr);
}

TEST_CASE("known additives have a crystal's density", "[chemistry]") {
  // CRC Handbook solid densities (data file in CalebBell/chemicals, read): NaCl 2.17, rutile 4.17
  // and anatase 3.9, ZnO 5.598 g/cm3; a producer's sodium lactate solution 1.32 to 1.34 g/ml, read.
  const auto density = [](const std::string& name) {
    return find_substance(name)->density / gram_per_millilitre;
  };
  CHECK_THAT(density("salt"), WithinRel(2.17, 1e-9));
  CHECK_THAT(density("titanium dioxide"), WithinRel(4.0, 0.045));
  CHECK_THAT(density("zinc oxide"), WithinRel(5.598, 1e-3));
  CHECK_THAT(density("sodium lactate"), WithinRel(1.33, 0.0076));
}

TEST_CASE("a third of salt makes the batter heavier by its crystal's volume", "[chemistry]") {
  Formula formula = test::plain_olive();
  const Density plain = batter_density(formula, proportions(formula)).computed;
  Additive salt;
  salt.name = "sea salt";
  salt.rate = {30 * percent, RateBasis::fats};
  formula.additives = {salt};
  const Proportions p = proportions(formula);
  // Volumes add: (F + 0.30) / (F / plain + 0.30 / 2.17), F of batter without salt.
  const double without = (p.batter - 0.30);
  const double expected = p.batter / (without / (plain / gram_per_millilitre) + 0.30 / 2.17);
  CHECK_THAT(batter_density(formula, p).computed / gram_per_millilitre, WithinRel(expected, 1e-9));

  formula.additives[0].density = 1.3 * gram_per_millilitre;  // the maker's own figure wins
  CHECK(batter_density(formula, p).computed / gram_per_millilitre < expected);
}

bool is_said(const std::vector<Remark>& remarks, const std::string& part) {
  return std::any_of(remarks.begin(), remarks.end(),
                     [&](const Remark& r) { return r.text.find(part) != std::string::npos; });
}

TEST_CASE("what an additive does is said, and a table's density too", "[chemistry]") {
  Formula formula = test::plain_olive();
  Additive clay;
  clay.name = "kaolin";
  clay.rate = {6 * percent, RateBasis::fats};
  formula.additives = {clay};
  const Proportions p = proportions(formula);
  CHECK(is_said(substance_remarks(formula, p), "kaolin takes up about its own weight of water"));
  CHECK(is_said(substance_remarks(formula, p), "up to 3 % is usual"));
  CHECK(is_said(batter_density(formula, p).remarks, "kaolin 2.6 g/ml (unchecked)"));
  formula.additives[0].kind = AdditiveKind::fragrance;
  CHECK_FALSE(known_density(formula.additives[0]).has_value());
}

}  // namespace
}  // namespace brimwright::chemistry
