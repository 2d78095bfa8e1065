#include "units/working.h"

#include <catch2/catch.hpp>

using namespace brimwright;

TEST_CASE("a figure is shown as finely as arithmetic with it needs", "[units][working]") {
  CHECK(in_figures(83.13349 * gram) == "83.133 g");
  CHECK(in_figures(1.0123456 * gram_per_millilitre) == "1.01235 g/ml");
  CHECK(in_figures(Share::of_one(1.0 / 3)) == "33.3333 %");
  CHECK(in_figures(28 * square_centimetre) == "28 cm²");
}

TEST_CASE("alkali in a working is cut, never rounded up", "[units][working]") {
  CHECK(in_figures(95.2999 * gram) == "95.3 g");
  CHECK(in_figures(95.2999 * gram, Rounded::down) == "95.299 g");
  CHECK(in_figures(95.3 * gram, Rounded::down) == "95.3 g");  // 95.3 is no binary fraction
}

TEST_CASE("what goes into a sum stands in it, and nothing is 0", "[units][working]") {
  CHECK(added({"1 g", "2 g"}) == "1 g + 2 g");
  CHECK(in_brackets({"1 g"}) == "(1 g)");
  CHECK(added({}) == "0");
  CHECK(to_step(Rounded::down, 0.1 * gram) == "down to 0.1 g");
}

TEST_CASE("a working is told of its place below another", "[units][working]") {
  std::vector<Working> all;
  append_at(all, "pour", {{.of = "make_g", .formula = ""}, {.of = "", .formula = ""}});
  append_at(all, "", {{.of = "piece.size", .formula = ""}});
  CHECK(all[0].of == "pour.make_g");
  CHECK(all[1].of == "pour");
  CHECK(all[2].of == "piece.size");
}
