#include "units/water.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using Catch::Matchers::WithinAbs;

TEST_CASE("water is as dense as the published expression says", "[units]") {
  // Kell 1975 as carried by an independent chemical-data library: 997.0448954 kg/m3 at 25 degC and
  // 988.0362916 at 50 degC; the maximum near 4 degC, 999.972, stands in every handbook table.
  const auto [celsius, kg_per_m3, tolerance] = GENERATE(table<double, double, double>({
      {25, 997.0448954, 1e-6},
      {50, 988.0362916, 1e-6},
      {4, 999.972, 2e-3},
      {20, 998.2041, 1e-3},
      {100, 958.3637, 1e-3},
  }));
  CAPTURE(celsius);
  CHECK_THAT(water_density(Temperature::in_celsius(celsius)) / kilogram_per_cubic_metre,
             WithinAbs(kg_per_m3, tolerance));
}
