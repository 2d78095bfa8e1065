#include "chemistry/heat.h"

#include "chemistry/alkali_data.h"
#include "chemistry/lye_enthalpy.h"

#include <algorithm>
#include <cassert>

namespace brimwright::chemistry {
namespace {

// Food's solids: fat 2.0, protein 2.0, carbohydrate 1.5 to 1.6 (Choi and Okos 1986); salts less.
constexpr double other_kj_per_kg_k = 1.8;

// H+ + OH- -> H2O at 25 degC and great dilution, from the enthalpies of formation of water,
// -285.83, and of the hydroxide ion, -229.99 kJ/mol (CRC Handbook, thermodynamic properties of
// aqueous ions).
constexpr double neutralisation_kj_per_mol = 285.83 - 229.99;

/// What the acids in the pot give; no more of them than the alkali can take up.
double heat_of_neutralisation_kj(const LyeCharge& charge) {
  double hydroxide_mol = 0;
  for (const ChargedAlkali& one : charge.alkalis)
    hydroxide_mol += one.pure / gram / molar_mass_g_per_mol(one.alkali);
  return neutralisation_kj_per_mol * std::min(charge.acid_mol, hydroxide_mol);
}

constexpr double above_25(Temperature at) { return at.celsius() - 25; }

/// Heat in the lye at `at` above its dry alkali and its water at 25 degC, in kJ.
double heat_in_lye_kj(const LyeCharge& charge, Temperature at) {
  const double lye_per_alkali = 1 / charge.strength().of_one();
  double heat = charge.other / kilogram * other_kj_per_kg_k * above_25(at);
  for (const ChargedAlkali& one : charge.alkalis)
    heat += one.pure * lye_per_alkali / kilogram *
            lye_enthalpy_kj_per_kg(one.alkali, charge.strength(), at);
  return heat;
}

/// Heat in an alkali as it goes in: dry, or in its solution, which is no colder than the room.
double heat_in_kj(const ChargedAlkali& one, Temperature room) {
  if (!one.is_dissolved())
    return one.pure / kilogram * dry_heat_capacity_kj_per_kg_k(one.alkali) * above_25(room);
  const Mass solution = one.pure + one.dissolved_in;
  return solution / kilogram *
         lye_enthalpy_kj_per_kg(one.alkali, Share::of_one(one.pure / solution),
                                std::max(room, one.stands_at.value_or(room)));
}

/// The same before it is stirred together.
double heat_brought_kj(const LyeCharge& charge, Temperature water_at, Temperature alkali_at) {
  double heat = charge.water / kilogram * water_heat_capacity_kj_per_kg_k * above_25(water_at);
  heat += charge.other / kilogram * other_kj_per_kg_k * above_25(water_at);
  heat += charge.ice / kilogram *
          (water_heat_capacity_kj_per_kg_k * above_25(Temperature::in_celsius(0)) -
           heat_of_fusion_of_ice_kj_per_kg());
  for (const ChargedAlkali& one : charge.alkalis) heat += heat_in_kj(one, alkali_at);
  return heat + heat_of_neutralisation_kj(charge);
}

/// Boiling point of a lye of two alkalis: of the one whose lye boils first.
Temperature boiling_point_of(const LyeCharge& charge) {
  Temperature lowest = Temperature::in_celsius(1000);
  for (const ChargedAlkali& one : charge.alkalis)
    if (one.pure > Mass()) lowest = std::min(lowest, boiling_point(one.alkali, charge.strength()));
  return lowest;
}

}  // namespace

Mass LyeCharge::alkali() const {
  Mass sum;
  for (const ChargedAlkali& one : alkalis) sum += one.pure;
  return sum;
}

Mass LyeCharge::all_water() const {
  Mass sum = water + ice;
  for (const ChargedAlkali& one : alkalis) sum += one.dissolved_in;
  return sum;
}

Mass LyeCharge::mass() const { return alkali() + all_water() + other; }

Share LyeCharge::strength() const {
  assert(alkali() > Mass());
  return Share::of_one(alkali() / (alkali() + all_water()));
}

double LyeCharge::heat_capacity_kj_per_k(Temperature at) const {
  const Temperature warmer = at + TemperatureDifference::in_kelvin(1);
  return heat_in_lye_kj(*this, warmer) - heat_in_lye_kj(*this, at);
}

PeakTemperature peak_of(const LyeCharge& charge, Temperature water_at, Temperature alkali_at) {
  const double heat = heat_brought_kj(charge, water_at, alkali_at);
  const Temperature boiling = boiling_point_of(charge);
  Temperature low = Temperature::in_celsius(0), high = boiling;
  if (heat <= heat_in_lye_kj(charge, low))
    return {.peak = low, .boiling = boiling, .ice_left = charge.ice > Mass()};
  if (heat >= heat_in_lye_kj(charge, high))
    return {.peak = boiling, .boiling = boiling, .boils = true};
  // 50 halvings of some 120 K reach 1e-13 K; the enthalpy grows with temperature throughout.
  for (int i = 0; i < 50; ++i) {
    const auto middle = Temperature::in_celsius((low.celsius() + high.celsius()) / 2);
    (heat_in_lye_kj(charge, middle) < heat ? low : high) = middle;
  }
  return {.peak = low, .boiling = boiling};
}

bool knows_peak_of(const LyeCharge& charge) {
  return std::none_of(charge.alkalis.begin(), charge.alkalis.end(), [](const ChargedAlkali& one) {
    return one.alkali == Alkali::potassium_hydroxide && one.is_dissolved();
  });
}

double fat_heat_capacity_kj_per_kg_k(Temperature at) {
  const double t = at.celsius();
  return 1.9842 + 1.4733e-3 * t - 4.8008e-6 * t * t;
}

Temperature mixed_temperature(const LyeCharge& lye, Temperature lye_at, const FatsCharge& fats,
                              Temperature fats_at) {
  const auto middle = Temperature::in_celsius((lye_at.celsius() + fats_at.celsius()) / 2);
  const double of_lye = lye.heat_capacity_kj_per_k(middle);
  const double of_fats = fats.fats / kilogram * fat_heat_capacity_kj_per_kg_k(middle) +
                         fats.water / kilogram * water_heat_capacity_kj_per_kg_k +
                         fats.other / kilogram * other_kj_per_kg_k;
  return Temperature::in_celsius((of_lye * lye_at.celsius() + of_fats * fats_at.celsius()) /
                                 (of_lye + of_fats));
}

}  // namespace brimwright::chemistry
