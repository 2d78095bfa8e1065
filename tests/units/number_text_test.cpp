#include "units/number_text.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <bit>
#include <cmath>
#include <cstdint>

using namespace brimwright;

TEST_CASE("a number is read as far as it goes", "[units]") {
  const auto [text, value, length] = GENERATE(table<const char*, double, std::size_t>({
      {"5", 5, 1},
      {"12.5e1 mm", 125, 6},
      {"-0.25,1", -0.25, 5},
      {"3.", 3, 2},
      {".5", 0.5, 2},
      {"1,5", 1, 1},
      {"2e", 2, 1},  // an exponent needs a figure
  }));
  const auto number = leading_number(text);
  REQUIRE(number);
  CHECK(number->value == value);
  CHECK(number->length == length);
}

TEST_CASE("what is no number, or more than a double holds, is not read", "[units]") {
  const auto* text = GENERATE("", " 5", "+5", "mm", "e5", "1e999", "-");
  CHECK_FALSE(leading_number(text));
}

TEST_CASE("a whole text is a number or it is none", "[units]") {
  CHECK(number_of("0.1") == 0.1);
  CHECK_FALSE(number_of("0.1 "));
  CHECK_FALSE(number_of("1,5"));
}

TEST_CASE("numbers are written with a point, whatever their size", "[units]") {
  CHECK(fixed_text(2.0 / 3, 3) == "0.667");
  CHECK(fixed_text(1e21, 1) == "1000000000000000000000.0");
  CHECK(shortest_text(0.1) == "0.1");
  CHECK(fixed_text(-1.7976931348623157e308, 6).size() == 317);  // 309 figures, a sign, ".000000"
}

TEST_CASE("the shortest text reads back as the same double", "[units][law]") {
  rc::prop("every finite double", [] {
    const auto value = std::bit_cast<double>(*rc::gen::arbitrary<std::uint64_t>());
    RC_PRE(std::isfinite(value));
    RC_ASSERT(number_of(shortest_text(value)) == value);
  });
}
