#include "units/reading.h"

#include "complaint.h"
#include "units/printing.h"
#include "units/wording.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace brimwright;
using brimwright::test::complaint_of;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;

namespace {

const Place here{"run.json", "/pour/line"};

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

TEST_CASE("a unit is understood by all that makers call it", "[units]") {
  // Sizes of units by NIST SP 811 (2008), appendix B.8, as in the first test.
  const auto [text, mm] = GENERATE(table<std::string, double>({
      {"30 millimeters", 30},
      {"30 millimetres", 30},
      {"1 millimetre", 1},
      {"3 centimeters", 30},
      {"0.1 meters", 100},
      {"2 inches", 50.8},
      {"2 Inches", 50.8},
      {"2 in.", 50.8},
      {"2 INCH", 50.8},
      {"1-1/4 in", 31.75},
      {"1-1/4\"", 31.75},
      {"1-\u00bc in", 31.75},
      {"1\u20111/4 in", 31.75},
      {"1 foot", 304.8},
      {"\"5 mm\"", 5},
      {"\u201c5 mm\u201d", 5},
      {"\"1/2\"\"", 12.7},
      {"1/2\u201d", 12.7},
  }));
  CAPTURE(text);
  CHECK_THAT(read_length(text, here) / millimetre, WithinRel(mm, 1e-14));
}

TEST_CASE("a mass is understood by all that makers call it", "[units]") {
  const auto [text, g] = GENERATE(table<std::string, double>({
      {"450 grams", 450},
      {"1 gram", 1},
      {"2 kilograms", 2000},
      {"1 kilo", 1000},
      {"250 milligrams", 0.25},
      {"2 ounces", 2 * 28.349523125},
      {"2 oz.", 2 * 28.349523125},
      {"2 Oz", 2 * 28.349523125},
      {"1 pound 4 ounces", 453.59237 + 4 * 28.349523125},
      {"2 pounds", 2 * 453.59237},
      {"1-1/2 lbs", 1.5 * 453.59237},
      {"5 KG", 5000},
  }));
  CAPTURE(text);
  CHECK_THAT(read_mass(text, here) / gram, WithinRel(g, 1e-14));
}

TEST_CASE("a volume is understood by all that makers call it", "[units]") {
  const auto [text, ml] = GENERATE(table<std::string, double>({
      {"450 milliliters", 450},
      {"450 millilitres", 450},
      {"450 ML", 450},
      {"60 cc", 60},
      {"2 liters", 2000},
      {"2 Litres", 2000},
      {"1 teaspoon", 4.92892159375},
      {"2 teaspoons", 2 * 4.92892159375},
      {"1 tbsp.", 14.78676478125},
      {"1 Tbsp", 14.78676478125},
      {"2 tablespoons", 2 * 14.78676478125},
      {"1-1/2 cups", 1.5 * 236.5882365},
      {"4 fl. oz.", 4 * 29.5735295625},
      {"4 fluid ounces", 4 * 29.5735295625},
      {"1 imp fl oz", 28.4130625},
  }));
  CAPTURE(text);
  CHECK_THAT(read_volume(text, here) / millilitre, WithinRel(ml, 1e-14));
}

TEST_CASE("a density may be weighed by the spoon", "[units]") {
  const auto [text, g_per_ml] = GENERATE(table<std::string, double>({
      {"2.5 g/tsp", 2.5 / 4.92892159375},
      {"2.5 g per tsp", 2.5 / 4.92892159375},
      {"2.5 grams per teaspoon", 2.5 / 4.92892159375},
      {"8 g / tbsp", 8 / 14.78676478125},
      {"120 g/cup", 120 / 236.5882365},
      {"1 oz/fl oz", 28.349523125 / 29.5735295625},
      {"0.98 g/cc", 0.98},
      {"1020 kg/m\u00b3", 1.02},
      {"1,02 KG/L", 1.02},
  }));
  CAPTURE(text);
  CHECK_THAT(read_density(text, here) / gram_per_millilitre, WithinRel(g_per_ml, 1e-14));
}

TEST_CASE("times and temperatures are understood by all that makers call them", "[units]") {
  const auto [text, s] = GENERATE(table<std::string, int>({
      {"90 sec", 90},
      {"90 seconds", 90},
      {"1 second", 1},
      {"25 minutes", 1500},
      {"25 mins", 1500},
      {"1 minute 30 secs", 90},
      {"2 hrs", 7200},
      {"1 hr. 30 min.", 5400},
      {"1-1/2 hours", 5400},
  }));
  CAPTURE(text);
  CHECK(read_short_time(text, here) == std::chrono::seconds(s));
  CHECK(read_duration("36 hrs", here) == std::chrono::hours(36));
  CHECK(read_duration("90 minutes", here) == std::chrono::minutes(90));
  for (const char* warm : {"104 °F", "104 F", "104 degrees F", "104 deg. F", "104 fahrenheit",
                           "104 \u00baF", "104f", "40 degrees C", "40 Celsius", "40c"})
    CHECK_THAT(read_temperature(warm, here).celsius(), WithinRel(40.0, 1e-13));
  CHECK_THAT(read_angle("3 degrees", here).degrees(), WithinRel(3.0, 1e-13));
  CHECK_THAT(read_share("5 percent", here).of_one(), WithinRel(0.05, 1e-15));
}

TEST_CASE("a temperature is said back in the scale it was typed in first", "[units]") {
  CHECK(in_both_scales(read_temperature("100 °F", here)) == "100 °F (38 °C)");
  CHECK(in_both_scales(read_temperature("95 degrees F", here)) == "95 °F (35 °C)");
  CHECK(in_both_scales(read_temperature("35 °C", here)) == "35 °C (95 °F)");
  // One temperature, in whichever scale: 104 degF are 40 degC by B.8.
  CHECK(read_temperature("104 °F", here) == read_temperature("40 °C", here));
}

TEST_CASE("a rate is understood by all that makers call its parts", "[units]") {
  // 16 ounces are a pound; 4.92892159375 ml of a teaspoon by NIST SP 811.
  const auto [text, share] = GENERATE(table<std::string, double>({
      {"2 % of oils", 0.02},
      {"2 percent of the oils", 0.02},
      {"2 % of Oil", 0.02},
      {"8 g/kg of oils", 0.008},
      {"8 grams per kilogram of fat", 0.008},
      {"1/2 oz/lb of oils", 1.0 / 32},
      {"0.5 oz per lb of fats", 1.0 / 32},
      {"0.5 ounces per pound of the oils", 1.0 / 32},
      {"0.5 oz ppo", 1.0 / 32},
      {"10 g ppo", 10 / 453.59237},
  }));
  CAPTURE(text);
  const Rate rate = read_rate(text, here);
  CHECK(rate.of == RateBasis::fats);
  CHECK_THAT(std::get<Share>(rate.amount).of_one(), WithinRel(share, 1e-14));
  for (const char* spoon :
       {"1 tsp/lb of oils", "1 tsp per lb of oils", "1 teaspoon per pound of oil", "1 tsp ppo",
        "1 TSP PPO", "1 tsp. per lb. of oils"}) {
    CAPTURE(spoon);
    const Rate spooned = read_rate(spoon, here);
    CHECK(spooned.of == RateBasis::fats);
    CHECK_THAT(std::get<SpecificVolume>(spooned.amount) / (millilitre / gram),
               WithinRel(4.92892159375 / 453.59237, 1e-14));
  }
  CHECK(read_rate("3 % of the batter", here).of == RateBasis::batter);
}

TEST_CASE("what may be meant in two ways stays refused", "[units]") {
  const auto refused = [](const auto& read) { return !complaint_of(read).empty(); };
  for (const char* length : {"1-2 mm", "1-2 in", "1-1/4-1/2 in", "1 - 1/4 in", "1-5/4 in", "5",
                             "\"5\"", "1,500 mm", "2'", "5 M M", "--5 mm"})
    CHECK(refused([&] { read_length(length, here); }));
  for (const char* mass :
       {"2 fl oz", "2 fluid ounces", "1 cup", "2 tsp", "1 l", "1 t", "1 stone", "450"}) {
    CAPTURE(mass);
    CHECK(refused([&] { read_mass(mass, here); }));
  }
  for (const char* volume :
       {"2 oz", "2 ounces", "2 Oz.", "1 pint", "1 quart", "1 gallon", "1 T", "1 t"}) {
    CAPTURE(volume);
    CHECK(refused([&] { read_volume(volume, here); }));
  }
  CHECK_THAT(complaint_of([] { read_volume("2 ounces", here); }), Contains("\"oz\" is a mass"));
  CHECK_THAT(complaint_of([] { read_mass("2 fluid ounces", here); }), Contains("that is a volume"));
  for (const char* time : {"5 m", "5 months", "90", "5 '"}) {
    CHECK(refused([&] { read_short_time(time, here); }));
    CHECK(refused([&] { read_duration(time, here); }));
  }
  for (const char* warm : {"40", "40 degrees", "40 °", "40 K"})
    CHECK(refused([&] { read_temperature(warm, here); }));
  CHECK_THAT(complaint_of([] { read_temperature("40 degrees", here); }), Contains("which scale"));
  for (const char* rate :
       {"2 %", "1 tsp per lb", "1 tsp", "ppo", "1 ppo", "1 tsp pp", "2 % of soap", "2 % of water",
        "1 oz of oils", "1 tsp/cup of oils", "2 % ppo"}) {
    CAPTURE(rate);
    CHECK(refused([&] { read_rate(rate, here); }));
  }
  for (const char* density : {"1.02", "2.5 g", "2.5 ml/g", "2.5 g/g", "1 g per", "oz/tsp"})
    CHECK(refused([&] { read_density(density, here); }));
}

TEST_CASE("so much of one thing in so much of another is read", "[units]") {
  const Stirred spoons = read_stirred("1 tsp in 1 tbsp of oil", here);
  CHECK_THAT(std::get<Volume>(spoons.what) / millilitre, WithinRel(4.92892159375, 1e-14));
  CHECK_THAT(std::get<Volume>(spoons.into) / millilitre, WithinRel(14.78676478125, 1e-14));
  const Stirred weighed = read_stirred("\"5 g in 1-1/2 oz\"", here);
  CHECK_THAT(std::get<Mass>(weighed.what) / gram, WithinRel(5.0, 1e-14));
  CHECK_THAT(std::get<Mass>(weighed.into) / gram, WithinRel(1.5 * 28.349523125, 1e-14));
  for (const char* slip : {"1 tsp", "1 tsp to 1 tbsp", "1 in 3", "1 tsp in 3", "0 g in 3 g",
                           "1 g in 0 g", "1 mm in 2 g", "1 tsp in 1 tsp in 1 tsp"}) {
    CAPTURE(slip);
    CHECK_FALSE(complaint_of([&] { read_stirred(slip, here); }).empty());
  }
}

TEST_CASE("a volume below 1 ml was shown as 0.0 ml", "[units]") {
  CHECK(fixed_ml(0.0424 * millilitre) == "0.0424 ml");
  CHECK(fixed_ml(0.2 * millilitre) == "0.200 ml");
  CHECK(in_ml(0.2 * millilitre) == "0.2 ml");
  CHECK(in_ml(0.01234 * millilitre) == "0.0123 ml");
  CHECK(fixed_ml(1.26 * millilitre) == "1.3 ml");
  CHECK(fixed_ml(Volume{}) == "0.0 ml");
  CHECK(fixed_ml(1e-12 * millilitre) == "0.000000 ml");
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
      {"20 m", "too large to be right"},
      {"1e400 mm", "is not a length"},
      {"5 mm 3 cm", "more than one quantity"},
  }));
  CAPTURE(row.text);
  const std::string said = complaint_of([&] { read_length(row.text, here); });
  CHECK_THAT(said, Contains(row.said));
  CHECK_THAT(said, Catch::Matchers::StartsWith("run.json: /pour/line: "));
  CHECK(said.find('\n') == std::string::npos);
}

TEST_CASE("a mass or a time names each unit once, the larger first", "[units]") {
  CHECK_THAT(read_mass("2 lb 3 oz", here) / gram,
             WithinRel(2 * 453.59237 + 3 * 28.349523125, 1e-14));
  CHECK_THAT(read_mass("1 kg 250 g", here) / gram, WithinRel(1250.0, 1e-14));
  CHECK(read_duration("1 h 30 min", here) == std::chrono::minutes(90));
  CHECK(read_duration("1 week 2 days", here) == std::chrono::hours(9 * 24));
  CHECK(read_short_time("1 min 30 s", here) == std::chrono::seconds(90));
  // "1 g 1 g" was read as 2 g.
  for (const char* slip : {"1 g 1 g", "1 oz 1 lb", "1 lb 1 lbs", "5 g 1 kg", "1 kg 1 g 1 g"}) {
    CAPTURE(slip);
    CHECK_THAT(complaint_of([&] { read_mass(slip, here); }),
               Contains("names a unit again, or a larger one after a smaller"));
  }
  for (const char* slip : {"30 min 1 h", "1 day 1 d", "1 h 1 hour"})
    CHECK_THAT(complaint_of([&] { read_duration(slip, here); }), Contains("names a unit again"));
  CHECK_THAT(complaint_of([] { read_short_time("1 s 1 s", here); }),
             Contains("names a unit again"));
}

TEST_CASE("a number that could be read in two ways is asked, in every reader", "[units]") {
  const std::string number =
      GENERATE(std::string("1,000"), "1.234,5", "1,234.5", "1 000", "1'000", "1 2", "1/0", "1/2/3",
               "1e2", "0x10", "\uff15", "\u0665", "5\u00b2", "1\u00b2", "1..5", "1,,5", "--5",
               "+-5", "1/", "/2", "1.5 1/2", "\u221e", "1_000", "1\u00bd\u00bd", "1 1 1/2");
  CAPTURE(number);
  const auto refused = [](const auto& read) { return !complaint_of(read).empty(); };
  CHECK(refused([&] { read_mass(number + " g", here); }));
  CHECK(refused([&] { read_length(number + " mm", here); }));
  CHECK(refused([&] { read_volume(number + " ml", here); }));
  CHECK(refused([&] { read_density(number + " g/ml", here); }));
  CHECK(refused([&] { read_temperature(number + " °C", here); }));
  CHECK(refused([&] { read_angle(number + " deg", here); }));
  CHECK(refused([&] { read_share(number + " %", here); }));
  CHECK(refused([&] { read_duration(number + " h", here); }));
  CHECK(refused([&] { read_short_time(number + " s", here); }));
  CHECK(refused([&] { read_rate(number + " % of fats", here); }));
  CHECK(refused([&] { read_number(number, here); }));
}

TEST_CASE("a number of four hundred digits is no share, angle or time", "[units]") {
  // Beyond a double it was no number at all, and so passed every comparison with a bound.
  for (const std::string& number : {std::string(400, '9'), "0." + std::string(400, '0') + "1",
                                    "1/" + std::string(400, '9'), std::string(400, '9') + "/1"}) {
    const auto said = [&](const auto& read) { return complaint_of(read); };
    for (const auto& complaint : {said([&] { read_share(number + " %", here); }),
                                  said([&] { read_angle(number + " deg", here); }),
                                  said([&] { read_duration(number + " h", here); }),
                                  said([&] { read_short_time(number + " s", here); }),
                                  said([&] { read_temperature(number + " °C", here); }),
                                  said([&] { read_rate(number + " g/kg of fats", here); }),
                                  said([&] { read_mass(number + " g", here); }),
                                  said([&] { read_number(number, here); })}) {
      CHECK_THAT(complaint, Contains("number"));
      CHECK(complaint.size() < 400);
    }
  }
}

TEST_CASE("a power is read in a unit, and never as a digit", "[units]") {
  CHECK_THAT(read_area("12 cm\u00b2", here) / square_centimetre, WithinRel(12.0, 1e-14));
  CHECK_THAT(read_volume("5 cm\u00b3", here) / millilitre, WithinRel(5.0, 1e-14));
  // "5²" was read as 52.
  CHECK_THAT(complaint_of([] { read_mass("5\u00b2 g", here); }), Contains("is not known here"));
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
