#include "chemistry/alkali_form.h"

#include <catch2/catch.hpp>

#include <string>

using namespace brimwright;
using namespace brimwright::chemistry;

// Names as they stand on sacks and in price lists (common practice, no source); what each states is
// the figure with its sign, and no other figure of the name.
TEST_CASE("the name of a dry alkali states its purity by the figure with the per cent sign",
          "[chemistry]") {
  const auto [name, low, high] = GENERATE(table<std::string, double, double>({
      {"KOH 90 %", 90, 90},
      {"KOH 90%", 90, 90},
      {"NaOH 98,5 % micropearls, 25 kg", 98.5, 98.5},
      {"KOH flakes 85-90 %", 85, 90},
      {"KOH flakes 85 – 90 %", 85, 90},
      {"KOH 85 % to 90 %", 85, 90},
      {"KOH 85 to 90 %", 85, 90},
      {"Natriumhydroxid 99 Prozent", 99, 99},
      {"KOH 90", 90, 90},
  }));
  CAPTURE(name);
  const auto stated = stated_purity(name);
  REQUIRE(stated);
  CHECK(stated->low.in_percent() == Approx(low));
  CHECK(stated->high.in_percent() == Approx(high));
}

TEST_CASE("a name without such a figure states no purity", "[chemistry]") {
  const std::string name =
      GENERATE(as<std::string>(), "NaOH", "caustic soda", "NaOH, 25 kg", "NaOH (1310-73-2)",
               "E 524", "KOH for liquid soap", "NaOH 100", "NaOH 50 %");
  CAPTURE(name);
  CHECK_FALSE(stated_purity(name));
}
