#pragma once

#include "chemistry/alkali.h"
#include "units/quantity.h"
#include "units/share.h"
#include "units/temperature.h"

#include <optional>
#include <vector>

namespace brimwright::chemistry {

/// Pure alkali that goes into a pot: dry, or as a solution that stands ready.
struct ChargedAlkali {
  Alkali alkali;
  Mass pure;
  Mass dissolved_in = {};                     // the water of that solution; none: it is dry
  std::optional<Temperature> stands_at = {};  // the solution, where that is above the room

  bool is_dissolved() const { return dissolved_in > Mass(); }
};

/// What goes into a pot of lye. The pot itself is left out: it only takes heat up.
struct LyeCharge {
  std::vector<ChargedAlkali> alkalis;
  Mass water;           // liquid, that of liquids in the pot too
  Mass ice;             // at 0 degC, that of frozen liquids too
  Mass other;           // what is neither: impurities, milk's solids, salts
  double acid_mol = 0;  // protons of acids in the pot, each of which a hydroxide takes up

  Mass alkali() const;
  Mass all_water() const;  // ice and that of solutions too
  Mass mass() const;
  Share strength() const;  // pure alkali / (pure alkali + all water); some alkali must be there
  /// The lye once it is made, in kJ/K.
  double heat_capacity_kj_per_k(Temperature at) const;
};

/// The hottest a fresh lye can become.
struct PeakTemperature {
  Temperature peak;     // no higher than boiling
  Temperature boiling;  // of this lye
  bool boils = false;   // the heat is enough for it
  bool ice_left = false;
  bool near_boiling() const { return boiling - peak < TemperatureDifference::in_kelvin(15); }
};

/// All the alkali at once, nothing lost to pot and air: an upper estimate, good to about 3 K for
/// NaOH (lye_enthalpy.h). Acids in the pot add the heat of a strong acid's neutralisation, 55.8 kJ
/// per mole (weaker ones give less), while the alkali lasts. Two alkalis count as two lyes of one
/// strength, side by side; what is neither alkali nor water warms like food solids. A solution
/// brings its own enthalpy along, so that what is left is the heat of dilution: of NaOH from the
/// same source, of KOH none is known here (knows_peak_of).
PeakTemperature peak_of(const LyeCharge& charge, Temperature water_at, Temperature alkali_at);

/// Not of a KOH solution: it warms as it is diluted, and how far is not known here.
bool knows_peak_of(const LyeCharge& charge);

/// Heat capacity of a molten fat: Choi and Okos 1986 (as a laboratory script quotes them),
/// 1.9842 + 1.4733e-3 t - 4.8008e-6 t^2, t in degC.
double fat_heat_capacity_kj_per_kg_k(Temperature at);

/// What the lye is stirred into, all of one temperature.
struct FatsCharge {
  Mass fats;
  Mass water;  // of liquids for the batter
  Mass other;  // colours, clays, milk's solids
};

/// What lye and fats have when they meet, before the soap's own heat comes. A fat that is set takes
/// heat to melt, so then the batter is cooler.
Temperature mixed_temperature(const LyeCharge& lye, Temperature lye_at, const FatsCharge& fats,
                              Temperature fats_at);

}  // namespace brimwright::chemistry
