#include "chemistry/lye.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

double model(Alkali alkali, double mass_fraction, double t_c) {
  return lye_density(alkali, Share::of_one(mass_fraction), Temperature::in_celsius(t_c)) /
         gram_per_millilitre;
}

TEST_CASE("NaOH solutions weigh what the published table says", "[chemistry]") {
  // "Density of sodium hydroxide, NaOH(aq)", Table 1, 1 bar, consistent with IAPWS-95
  // (advancedthermo.com), read. Columns 10, 25, 40, 55 degC; g/cm3.
  struct Row {
    double mass_fraction;
    std::array<double, 4> density;
  };
  const std::vector<Row> rows = {
      {0.003984, {1.00437, 1.00149, 0.99654, 0.98996}},
      {0.019606, {1.02222, 1.01860, 1.01322, 1.00639}},
      {0.038459, {1.04340, 1.03911, 1.03323, 1.02610}},
      {0.074069, {1.08315, 1.07787, 1.07114, 1.06343}},
      {0.107136, {1.12001, 1.11402, 1.10659, 1.09840}},
      {0.137922, {1.15437, 1.14776, 1.13980, 1.13124}},
      {0.166656, {1.18652, 1.17925, 1.17093, 1.16212}},
      {0.193537, {1.21677, 1.20866, 1.20013, 1.19121}},
  };
  const std::array<double, 4> t_c = {10, 25, 40, 55};
  double worst = 0;
  for (const Row& row : rows)
    for (std::size_t i = 0; i < t_c.size(); ++i) {
      const double computed = model(Alkali::sodium_hydroxide, row.mass_fraction, t_c[i]);
      worst = std::max(worst, std::abs(computed / row.density[i] - 1));
    }
  CHECK(worst < 0.0023);  // worst 0.22 %, at 19.35 % and 40 degC
}

/// Olsson, Jernqvist, Aly, Int. J. Thermophysics 1997, 18(3): density of NaOH(aq) in g/cm3 from the
/// mass fraction of water. Coefficients read in a public translation of the paper.
double olsson(double mass_fraction, double t) {
  constexpr std::array b1 = {5007.2279636,  -25131.164248, 74107.692582,
                             -104657.48684, 69821.773186,  -18145.91181};
  constexpr std::array b2 = {-64.786269079, 525.34360564,  -1608.4471903,
                             2350.9753235,  -1660.9035108, 457.6437435};
  constexpr std::array b3 = {0.24436776978, -1.9737722344, 6.04601497138,
                             -8.9090614947, 6.37146769397, -1.7816083111};
  double density = 0;
  for (std::size_t i = 0; i < b1.size(); ++i)
    density += (b1[i] + b2[i] * t + b3[i] * t * t) *
               std::pow(1 - mass_fraction, static_cast<double>(i) / 2);
  return density / 1000;
}

TEST_CASE("soap maker's lye weighs what Olsson's formula says", "[chemistry]") {
  double worst = 0;
  for (double w = 0.24; w < 0.505; w += 0.02)
    for (double t = 20; t < 61; t += 10)
      worst = std::max(worst, std::abs(model(Alkali::sodium_hydroxide, w, t) / olsson(w, t) - 1));
  CHECK(worst < 0.0028);  // worst 0.27 %, at 34 % and 30 degC
}

TEST_CASE("a lye of half NaOH weighs 1.52 g/ml at 20 degC", "[chemistry]") {
  // A producer's page for 50 % caustic soda, after International Critical Tables III p. 79, read.
  CHECK_THAT(model(Alkali::sodium_hydroxide, 0.50, 20), WithinAbs(1.52, 0.0055));
}

TEST_CASE("KOH solutions weigh what the Cracow table says", "[chemistry]") {
  // Cracow University of Technology, physics tables, 18 degC, read; g/cm3. Worst 0.13 %, at 40 %.
  const auto [mass_fraction, density] = GENERATE(table<double, double>({
      {0.10, 1.091},
      {0.20, 1.188},
      {0.30, 1.290},
      {0.40, 1.400},
  }));
  CAPTURE(mass_fraction);
  CHECK_THAT(model(Alkali::potassium_hydroxide, mass_fraction, 18), WithinRel(density, 0.0014));
}

TEST_CASE("lye without alkali is water", "[chemistry]") {
  // Kell 1975: 998.2041 kg/m3 at 20 degC, 992.2158 at 40 degC.
  for (const Alkali alkali : {Alkali::sodium_hydroxide, Alkali::potassium_hydroxide}) {
    CHECK_THAT(model(alkali, 0, 20), WithinAbs(0.9982041, 1e-7));
    CHECK_THAT(model(alkali, 0, 40), WithinAbs(0.9922158, 1e-7));
  }
}

TEST_CASE("stronger lye is heavier and warmer lye is lighter", "[chemistry][law]") {
  for (const Alkali alkali : {Alkali::sodium_hydroxide, Alkali::potassium_hydroxide})
    for (double t = 15; t < 61; t += 5)
      for (double w = 0.01; w < 0.50; w += 0.01) {
        CAPTURE(formula_of(alkali), t, w);
        CHECK(model(alkali, w + 0.01, t) > model(alkali, w, t));
        CHECK(model(alkali, w, t + 1) < model(alkali, w, t));
      }
}

TEST_CASE("about half of a lye can be alkali before it settles out", "[chemistry]") {
  // Great Soviet Encyclopedia, 3rd ed., read: 52.2 % NaOH; 112 g KOH in 100 g of water, 52.8 %.
  CHECK_THAT(solubility_at_20_celsius(Alkali::sodium_hydroxide).in_percent(),
             WithinAbs(52.2, 1e-9));
  CHECK_THAT(solubility_at_20_celsius(Alkali::potassium_hydroxide).in_percent(),
             WithinAbs(112 / 2.12, 0.05));
}

}  // namespace
}  // namespace brimwright::chemistry
