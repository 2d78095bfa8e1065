#include "units/reading.h"

#include "units/printing.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace brimwright;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;

namespace {

const Place here{"run.json", "/pour/line"};

template <class Read>
std::string complaint_of(Read read) {
  try {
    read();
  } catch (const UserError& error) {
    return error.what();
  }
  return "";
}

}  // namespace

TEST_CASE("units have the sizes that NIST SP 811 gives them", "[units]") {
  // NIST SP 811 (2008), appendix B.8; those marked exact there are exact here.
  CHECK(inch / millimetre == 25.4);
  CHECK(pound / gram == 453.59237);
  CHECK_THAT(ounce / gram, WithinRel(28.349523125, 1e-15));
  CHECK_THAT(cubic_inch / millilitre, WithinRel(16.387064, 1e-15));
  CHECK_THAT(us_gallon / litre, WithinRel(3.785411784, 1e-15));
  CHECK_THAT(us_fluid_ounce / millilitre, WithinRel(29.5735295625, 1e-15));
  CHECK_THAT(us_cup / millilitre, WithinRel(236.5882365, 1e-15));
  CHECK_THAT(us_tablespoon / millilitre, WithinRel(14.78676478125, 1e-15));
  CHECK_THAT(us_teaspoon / millilitre, WithinRel(4.92892159375, 1e-15));
  CHECK_THAT(imperial_fluid_ounce / millilitre, WithinRel(28.4130625, 1e-15));
  // B.8: (t in degF - 32) / 1.8; water boils at 212 degF by definition of the scale.
  CHECK_THAT(Temperature::in_fahrenheit(212).celsius(), WithinRel(100.0, 1e-15));
}

TEST_CASE("a length is read as a maker writes it", "[units]") {
  const auto [text, mm] = GENERATE(table<std::string, double>({
      {"5 mm", 5},
      {"5mm", 5},
      {"1,5 cm", 15},         // decimal comma
      {"0,250 m", 250},       // no thousands mark after a nought
      {"2 1/4 in", 57.15},    // 2.25 * 25.4
      {"2\u00bc in", 57.15},  // the sign for a quarter
      {"1/2\"", 12.7},
      {".5 in", 12.7},
      {"1 ft", 304.8},
      {"  12.5  mm ", 12.5},
      {"12.5\u00a0mm", 12.5},  // a blank that does not break, as copied from a page
  }));
  CAPTURE(text);
  CHECK_THAT(read_length(text, here) / millimetre, WithinRel(mm, 1e-14));
}

TEST_CASE("ounces of mass and fluid ounces are never taken for each other", "[units]") {
  CHECK_THAT(read_mass("2 oz", here) / gram, WithinRel(56.69904625, 1e-14));
  CHECK_THAT(read_volume("2 fl oz", here) / millilitre, WithinRel(59.147059125, 1e-14));
  CHECK_THAT(read_mass("1 lb 4 oz", here) / gram, WithinRel(566.9904625, 1e-14));
  CHECK_THAT(complaint_of([] { read_volume("2 oz", here); }), Contains("\"oz\" is a mass"));
  CHECK_THAT(complaint_of([] { read_mass("2 fl oz", here); }), Contains("that is a volume"));
}

TEST_CASE("temperatures, shares, angles, durations and rates are read", "[units]") {
  CHECK_THAT(read_temperature("120 °F", here).celsius(), WithinRel(48.8888888888889, 1e-13));
  CHECK(read_temperature("-18 °C", here).celsius() == -18);
  CHECK_THAT(read_share("5 %", here).of_one(), WithinRel(0.05, 1e-15));
  CHECK_THAT(read_angle("90°", here).radians(), WithinRel(pi / 2, 1e-15));
  CHECK(read_duration("1,5 days", here) == std::chrono::hours(36));
  const Rate spoon = read_rate("1 tsp/lb of fats", here);
  // 4.92892159375 ml / 453.59237 g, both exact by NIST SP 811.
  CHECK_THAT(std::get<SpecificVolume>(spoon.amount) / (millilitre / gram),
             WithinRel(4.92892159375 / 453.59237, 1e-14));
  const Rate per_kilogram = read_rate("8 g/kg of batter", here);
  CHECK(per_kilogram.of == RateBasis::batter);
  CHECK_THAT(std::get<Share>(per_kilogram.amount).of_one(), WithinRel(0.008, 1e-15));
}

TEST_CASE("what cannot be read with one meaning is refused in one line", "[units]") {
  struct Row {
    std::string text, said;
  };
  const auto row = GENERATE(values<Row>({
      {"5", "has no unit"},
      {"1,500 mm", "may mean thousands or decimals"},
      {"1.234,5 mm", "may mean thousands or decimals"},
      {"-3 mm", "is negative"},
      {"mm", "does not begin with a number"},
      {"", "does not begin with a number"},
      {"nan mm", "does not begin with a number"},
      {"inf mm", "does not begin with a number"},
      {"3/0 in", "does not begin with a number"},
      {"2 5/4 in", "does not begin with a number"},
      {"5 furlongs", "\"furlongs\" is not known here"},
      {"5 g", "\"g\" is not known here"},
      {"20 m", "more than any studio handles"},
      {"1e400 mm", "is not a length"},
      {"5 mm 3 cm", "more than one quantity"},
  }));
  CAPTURE(row.text);
  const std::string said = complaint_of([&] { read_length(row.text, here); });
  CHECK_THAT(said, Contains(row.said));
  CHECK_THAT(said, Catch::Matchers::StartsWith("run.json: /pour/line: "));
  CHECK(said.find('\n') == std::string::npos);
}

TEST_CASE("a rate must say what it is a share of", "[units]") {
  CHECK_THAT(complaint_of([] { read_rate("2 %", here); }), Contains("does not say of what"));
  CHECK_THAT(complaint_of([] { read_rate("1 tsp/lb", here); }), Contains("does not say of what"));
  CHECK_THAT(complaint_of([] { read_rate("2 % of water", here); }), Contains("\"of fats\""));
  CHECK_THAT(complaint_of([] { read_rate("200 % of fats", here); }),
             Contains("more than the whole"));
}

TEST_CASE("a line of complaint stays one line whatever was typed", "[units]") {
  CHECK(complaint_of([] { read_length("5 m\nm\x1b[2J", here); }).find_first_of("\n\x1b") ==
        std::string::npos);
}

TEST_CASE("grams to ounces and back is the same mass", "[units][law]") {
  rc::prop("g -> oz -> g is the identity to the last printed digit", [] {
    const auto milligrams = *rc::gen::inRange(1, 2'000'000'000);
    const Mass mass = milligrams * milligram;
    const Mass back = (mass / ounce) * ounce;
    RC_ASSERT(fixed(back / gram, 3) == fixed(mass / gram, 3));
  });
}

TEST_CASE("what is printed with a unit is read back as the same quantity", "[units][law]") {
  rc::prop("length -> text -> length", [] {
    const Length length = *rc::gen::inRange(0, 10'000'000) / 1000.0 * millimetre;
    const Length back = read_length(exact(length / millimetre) + " mm", here);
    RC_ASSERT(back == length);
  });
}

TEST_CASE("inches are printed as a ruler shows them", "[units]") {
  CHECK(in_inches(57.15 * millimetre) == "2 1/4 in");
  CHECK(in_inches(25.4 * millimetre) == "1 in");
  CHECK(in_inches(5 * millimetre) == "3/16 in");  // 5 / 25.4 * 16 = 3.15
  CHECK(in_inches(0.2 * millimetre) == "less than 1/16 in");
}

TEST_CASE("numbers are printed alike whatever their sign and size", "[units]") {
  CHECK(fixed(-0.0001, 1) == "0.0");
  CHECK(fixed(2.25, 2) == "2.25");
  CHECK(trimmed(2.50, 2) == "2.5");
  CHECK(trimmed(100, 2) == "100");
  CHECK(decimals_for(1 * gram) == 0);
  CHECK(decimals_for(0.1 * gram) == 1);
  CHECK(decimals_for(0.05 * gram) == 2);
  CHECK(decimals_for(5 * gram) == 0);
}
