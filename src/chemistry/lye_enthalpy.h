#pragma once

#include "chemistry/alkali.h"
#include "units/share.h"
#include "units/temperature.h"

namespace brimwright::chemistry {

// Heat has no unit type of its own here, so names carry theirs. Strength is pure alkali / lye.

/// Enthalpy of a lye less that of its own dry alkali and its own water, both at 25 degC.
///
/// NaOH: Olsson, Jernqvist, Aly, Int. J. Thermophysics 1997, 18(3), to 78 % and 204 degC; the
/// integral heats it gives are good to about 0.5 kJ/mol. KOH: its heat of solution at infinite
/// dilution (CRC Handbook) and Laliberte's heat capacities (J. Chem. Eng. Data 2009, 54, 1725);
/// strong lye gives off less, so what follows is too warm, never too cool.
double lye_enthalpy_kj_per_kg(Alkali alkali, Share strength, Temperature at);

/// How the enthalpy grows with temperature.
double lye_heat_capacity_kj_per_kg_k(Alkali alkali, Share strength, Temperature at);

/// Integral heat of solution at 25 degC: negative, as heat is given off.
double heat_of_solution_kj_per_mol(Alkali alkali, Share strength);

/// Of the dry alkali (CRC Handbook, from memory).
double dry_heat_capacity_kj_per_kg_k(Alkali alkali);

/// Melting ice at 0 degC (CRC Handbook).
double heat_of_fusion_of_ice_kj_per_kg();

/// Boiling point at one atmosphere, from Olsson's vapour pressures. No curve for KOH is known here:
/// it is taken as NaOH's at the same molality. At most 60 % is asked for.
Temperature boiling_point(Alkali alkali, Share strength);

/// Of liquid water about 25 degC (data/lye.json).
inline constexpr double water_heat_capacity_kj_per_kg_k = 4.1813;

}  // namespace brimwright::chemistry
