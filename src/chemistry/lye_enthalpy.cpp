#include "chemistry/lye_enthalpy.h"

#include "chemistry/alkali_data.h"
#include "units/fields.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <numeric>
#include <vector>

namespace brimwright::embedded {
std::string_view lye_json();
}

namespace brimwright::chemistry {
namespace {

using Polynomial = std::vector<double>;  // from the constant up

double at(const Polynomial& coefficients, double x) {
  return std::accumulate(coefficients.rbegin(), coefficients.rend(), 0.0,
                         [x](double value, double c) { return value * x + c; });
}

struct OlssonEnthalpy {
  Polynomial k, c2, c3, c4;
};

struct HeatData {
  OlssonEnthalpy olsson;        // in the mass fraction of water
  Polynomial a1, a2, a3;        // Olsson's vapour pressure, in its logarithm
  double naoh_dry_kj_per_kg{};  // the dry alkali on Olsson's scale
  Polynomial koh_capacity;      // Laliberte's a1 to a6
  double koh_heat_kj_per_mol{};
  std::array<double, 2> dry_kj_per_kg_k{};  // NaOH, KOH
  double fusion_kj_per_kg{};
};

/// The first entry that was read in its source, of several for one value.
double read_value(const std::vector<Fields>& entries) {
  for (const Fields& entry : entries)
    if (entry.truth("verified")) return entry.number("value");
  return entries.at(0).number("value");
}

HeatData read_heat_data() {
  const Fields lye = Fields::parse(embedded::lye_json(), "data/lye.json");
  const Fields enthalpy = lye.object("olsson_1997_naoh").object("enthalpy");
  const Fields boiling = lye.object("boiling");
  const Fields dry = lye.object("dry_alkali");
  HeatData data;
  data.olsson.k = enthalpy.numbers("k");
  data.olsson.c2 = enthalpy.numbers("c2");
  data.olsson.c3 = enthalpy.numbers("c3");
  data.olsson.c4 = enthalpy.numbers("c4");
  data.a1 = boiling.numbers("a1");
  data.a2 = boiling.numbers("a2");
  data.a3 = boiling.numbers("a3");
  data.naoh_dry_kj_per_kg = dry.object("NaOH").number("olsson_enthalpy_25c_kj_per_kg");
  data.koh_capacity = lye.object("heat_capacity").object("KOH").numbers("a");
  data.koh_heat_kj_per_mol = read_value(
      lye.object("heat_of_solution").object("infinite_dilution_25c_kj_per_mol").objects("KOH"));
  for (std::size_t i = 0; i < 2; ++i)
    data.dry_kj_per_kg_k.at(i) =
        dry.object(i == 0 ? "NaOH" : "KOH").number("heat_capacity_kj_per_kg_k");
  data.fusion_kj_per_kg = lye.object("ice").number("heat_of_fusion_kj_per_kg");
  return data;
}

const HeatData& data() {
  static const HeatData read = read_heat_data();
  return read;
}

/// On Olsson's own scale; `w` of alkali, `t` in degC.
double olsson_kj_per_kg(double w, double t) {
  const auto& [k, c2, c3, c4] = data().olsson;
  const double x = 1 - w;
  const double c1 = (k[0] + k[2] * x + k[4] * x * x + k[6] * x * x * x) /
                    (1 + k[1] * x + k[3] * x * x + k[5] * x * x * x + k[7] * x * x * x * x);
  return c1 + at(c2, x) * t + at(c3, x) * t * t + at(c4, x) * t * t * t;
}

/// Laliberte's heat capacity of KOH(aq), whose fit ends at 46.5 % and 120 degC.
double koh_capacity(double w, double t) {
  const auto& a = data().koh_capacity;
  const double strength = std::clamp(w, 1e-6, 0.4653), celsius = std::clamp(t, 4.0, 120.0);
  const double alpha = a[1] * celsius + a[2] * std::exp(0.01 * celsius) + a[3] * strength;
  const double of_alkali = a[0] * std::exp(alpha) + a[4] * std::pow(strength, a[5]);
  return (1 - strength) * water_heat_capacity_kj_per_kg_k + strength * of_alkali;
}

/// What warming from 25 degC takes, by Simpson's rule; the capacity bends little over its range.
double koh_warming_kj_per_kg(double w, double t) {
  return (t - 25) / 6 *
         (koh_capacity(w, 25) + 4 * koh_capacity(w, (25 + t) / 2) + koh_capacity(w, t));
}

double molality(double w, Alkali alkali) {
  return w / (1 - w) / molar_mass_g_per_mol(alkali) * 1000;
}

}  // namespace

double lye_enthalpy_kj_per_kg(Alkali alkali, Share strength, Temperature temperature) {
  const double w = strength.of_one(), t = temperature.celsius();
  if (alkali == Alkali::sodium_hydroxide)
    return olsson_kj_per_kg(w, t) - w * data().naoh_dry_kj_per_kg -
           (1 - w) * olsson_kj_per_kg(0, 25);
  const double moles_per_kg = w * 1000 / molar_mass_g_per_mol(alkali);
  return moles_per_kg * data().koh_heat_kj_per_mol + koh_warming_kj_per_kg(w, t);
}

double lye_heat_capacity_kj_per_kg_k(Alkali alkali, Share strength, Temperature temperature) {
  const auto enthalpy = [&](double t) {
    return lye_enthalpy_kj_per_kg(alkali, strength, Temperature::in_celsius(t));
  };
  return (enthalpy(temperature.celsius() + 1) - enthalpy(temperature.celsius() - 1)) / 2;
}

double heat_of_solution_kj_per_mol(Alkali alkali, Share strength) {
  assert(strength > Share());
  return lye_enthalpy_kj_per_kg(alkali, strength, Temperature::in_celsius(25)) *
         molar_mass_g_per_mol(alkali) / 1000 / strength.of_one();
}

double dry_heat_capacity_kj_per_kg_k(Alkali alkali) {
  return data().dry_kj_per_kg_k.at(alkali == Alkali::sodium_hydroxide ? 0 : 1);
}

double heat_of_fusion_of_ice_kj_per_kg() { return data().fusion_kj_per_kg; }

Temperature boiling_point(Alkali alkali, Share strength) {
  const double m = molality(std::clamp(strength.of_one(), 0.0, 0.6), alkali);
  const double naoh = m * molar_mass_g_per_mol(Alkali::sodium_hydroxide) / 1000;
  const double x = std::log(1 / (1 + naoh));  // ln of water's mass fraction
  const double p = std::log(101.325);         // one atmosphere in kPa
  return Temperature::in_celsius((at(data().a1, x) + at(data().a3, x) * p) /
                                 (p - at(data().a2, x)));
}

}  // namespace brimwright::chemistry
