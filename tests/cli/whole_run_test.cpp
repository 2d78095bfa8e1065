#include "cli/run.h"

#include <catch2/catch.hpp>

#include <sstream>

using Catch::Matchers::Contains;

namespace {

const std::string root = BRIMWRIGHT_SOURCE_DIR;

struct Outcome {
  int status;
  std::string out, err;
};

Outcome run(const std::vector<std::string>& words) {
  std::ostringstream out, err;
  const int status = brimwright::cli::run(words, {.shipped = root}, out, err);
  return {status, out.str(), err.str()};
}

}  // namespace

TEST_CASE("the shipped order plans both lyes, the decoration and the cost of a piece", "[cli]") {
  const auto [status, out, err] = run({"plan", root + "/examples/spring_cups.run.json"});
  CHECK(err.empty());
  REQUIRE(status == 0);
  CHECK_THAT(out, Contains("POUR  Meadow base"));
  CHECK_THAT(out, Contains("PIPE  Cloud topping"));
  CHECK_THAT(out, Contains("DECORATE  Pearl bead"));
  CHECK_THAT(out, Contains("NaOH, 99 % pure"));
  CHECK_THAT(out, Contains("Superfat: planned 6.0 %, as weighed 6."));
  CHECK_THAT(out, Contains("Material of one saleable piece"));
  CHECK_THAT(out, Contains("Alkali into\n   water, never water onto alkali."));
  CHECK(out.find("CAUTIONS") > out.find("A PIECE"));  // the numbers first, the cautions last
}

TEST_CASE("every word of the program teaches by examples", "[cli]") {
  for (const auto& words : std::vector<std::vector<std::string>>{{"--help"},
                                                                 {"gauge", "--help"},
                                                                 {"plan", "--help"},
                                                                 {"sheet", "--help"},
                                                                 {"list", "--help"},
                                                                 {"serve", "--help"}}) {
    const auto [status, out, err] = run(words);
    CHECK(status == 0);
    CHECK_THAT(out, Contains("Examples\n  brimwright "));
    CHECK(err.empty());
  }
}

TEST_CASE("list shows every shipped mould and fat", "[cli]") {
  const auto moulds = run({"list", "moulds"});
  CHECK(moulds.status == 0);
  CHECK_THAT(moulds.out, Contains("moulds/plain_bar.json"));
  const auto fats = run({"list", "fats"});
  CHECK_THAT(fats.out, Contains("coconut") && Contains("jojoba"));
  const auto coconut = run({"list", "fats", "coconut"});
  // CXS 210-1999, Table 2: coconut oil 248 to 265 mg KOH/g.
  CHECK_THAT(coconut.out, Contains("248 to 265"));
  CHECK(run({"list"}).status == 0);
}
