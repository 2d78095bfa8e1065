#include "chemistry/drying.h"
#include "formulas.h"

#include <catch2/catch.hpp>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using test::read;
using test::sound_formula;
using test::with;

/// The sound formula with `keys` added to its fragrance, whose limit is of the batter.
std::string with_fragrance(const std::string& keys) {
  return with(sound_formula(), R"("limit": "3 % of batter")", keys);
}

/// The sound formula with `drying` in place of "water_lost_in_cure".
std::string with_drying(const std::string& drying) {
  return with(sound_formula(), R"("water_lost_in_cure": "85 %")", "\"drying\": " + drying);
}

void check_refused(const std::string& formula, const std::string& field, const std::string& says) {
  try {
    read(formula);
    FAIL_CHECK("was not refused; should say " << says);
  } catch (const UserError& error) {
    CHECK(error.parts().field == field);
    CHECK_THAT(std::string(error.what()), Contains(says));
    CHECK_FALSE(error.parts().remedy.empty());
  }
}

TEST_CASE("a fragrance carries its allergens and the document they are from", "[chemistry]") {
  const auto formula = read(with_fragrance(
      R"("allergens": [ { "name": "Linalool", "share": "25 %" } ], "document": "declaration 7")"));
  const auto& label = formula.additives[3].label;
  REQUIRE(label.allergens.size() == 1);
  CHECK(label.allergens[0].name == "Linalool");
  CHECK(label.allergens[0].share == 25 * percent);
  CHECK(label.document == "declaration 7");
}

TEST_CASE("a composition is one name or shares that make a whole", "[chemistry]") {
  const auto one = read(with_fragrance(R"("inci": "Parfum")"));
  REQUIRE(one.additives[3].label.inci.size() == 1);
  CHECK(one.additives[3].label.inci[0].share == whole);
  // Suppliers round: thirds of 33.3 % are a whole to 0.1 %.
  CHECK_NOTHROW(read(with_fragrance(
      R"("inci": [ { "name": "A", "share": "33.3 %" }, { "name": "B", "share": "33.3 %" },
                   { "name": "C", "share": "33.3 %" } ])")));
}

TEST_CASE("label data that cannot be right is refused where it stands", "[chemistry]") {
  check_refused(with_fragrance(R"("inci": [ { "name": "Mica", "share": "60 %" } ])"),
                "/fragrances/0/inci", "add to 60 %");
  check_refused(
      with_fragrance(
          R"("inci": [ { "name": "A", "share": "50 %" }, { "name": "A", "share": "50 %" } ])"),
      "/fragrances/0/inci/1/name", "appears twice");
  check_refused(with_fragrance(R"("allergens": [ { "name": "Linalool", "share": "25 %" } ])"),
                "/fragrances/0/document", "is missing");
  check_refused(with_fragrance(R"("allergens": [ { "name": "A", "share": "60 %" },
                                { "name": "B", "share": "60 %" } ], "document": "x")"),
                "/fragrances/0/allergens", "add to 120 %");
  check_refused(with_fragrance(R"("allergens": [ { "name": "A", "share": "0 %" } ])"),
                "/fragrances/0/allergens/0/share", "is 0 %");
}

TEST_CASE("a limit may be of the finished soap", "[chemistry]") {
  const auto soap = read(with_fragrance(R"("limit": "1.5 % of finished soap")")).additives[3];
  REQUIRE(soap.limit_of_finished_soap);
  CHECK(*soap.limit_of_finished_soap == 1.5 * percent);
  CHECK_FALSE(soap.limit);
  const auto batter = read(sound_formula()).additives[3];
  CHECK(batter.limit);
  CHECK_FALSE(batter.limit_of_finished_soap);
  check_refused(with_fragrance(R"("limit": "1 tsp/lb of finished soap")"), "/fragrances/0/limit",
                "not a share of a mass");
  check_refused(with_fragrance(R"("limit": "0 % of finished soap")"), "/fragrances/0/limit",
                "not a share of a mass");
}

TEST_CASE("drying is read as a law or as weighings", "[chemistry]") {
  const auto law =
      read(with_drying(R"({ "water_lost_in_the_end": "90 %", "time_to_63_percent": "12 days" })"));
  REQUIRE(law.drying);
  CHECK(std::get<DryingLaw>(*law.drying).water_lost_in_the_end == 90 * percent);
  CHECK(std::get<DryingLaw>(*law.drying).time_constant_days == 12);
  const auto weighed = read(with_drying(
      R"({ "weighings": [ { "after": "12 h", "mass": "100 g" }, { "after": "7 days", "mass": "95 g" },
                          { "after": "3 weeks", "mass": "92 g" } ] })"));
  const auto& weighings = std::get<std::vector<CureWeighing>>(*weighed.drying);
  REQUIRE(weighings.size() == 3);
  CHECK(weighings[0].day == 0.5);
  CHECK(weighings[2].day == 21);
}

TEST_CASE("drying that cannot be reckoned with is refused where it stands", "[chemistry]") {
  check_refused(with_drying(R"({ "weighings": [ { "after": "1 days", "mass": "100 g" },
                                               { "after": "7 days", "mass": "95 g" } ] })"),
                "/drying/weighings", "2 of the 3 weighings");
  check_refused(with_drying(R"({ "weighings": [ { "after": "7 days", "mass": "100 g" },
                                               { "after": "7 days", "mass": "95 g" } ] })"),
                "/drying/weighings/1/after", "not after day 7");
  check_refused(
      with_drying(R"({ "water_lost_in_the_end": "90 %", "time_to_63_percent": "0 days" })"),
      "/drying/time_to_63_percent", "is zero");
  check_refused(with_drying(R"({ "water_lost_in_the_end": "90 %", "weighings": [] })"), "/drying",
                "twice");
  check_refused(with(sound_formula(), R"("water_lost_in_cure": "85 %")",
                     R"("water_lost_in_cure": "85 %",
                        "drying": { "water_lost_in_the_end": "90 %", "time_to_63_percent": "12 days" })"),
                "/drying", "water_lost_in_cure");
  check_refused(
      with(with_drying(R"({ "water_lost_in_the_end": "90 %", "time_to_63_percent": "12 days" })"),
           R"("cure": "35 days",)", ""),
      "/cure", "is missing");
}

}  // namespace
}  // namespace brimwright::chemistry
