#pragma once

#include "chemistry/alkali.h"
#include "units/share.h"

#include <array>
#include <optional>
#include <string>

namespace brimwright::chemistry {

/// The range taken for a purity that is stated without one.
struct AssumedPurity {
  Share either_way;        // percentage points below and above what is stated
  Share reaches_at_least;  // a lower statement is the least that is warranted
  std::string why;         // in words, with its source

  Share low(Share stated) const;
  Share high(Share stated) const;
};

/// What data/lye.json says of one alkali; its sources stand there.
struct AlkaliData {
  double molar_mass_g_per_mol = 0;
  std::array<double, 5> laliberte_cooper{};  // c0 to c4 of the set that the file marks as used
  Share solubility_at_20_celsius;            // as a share of the solution
  std::optional<AssumedPurity> assumed_purity;
  bool inert_part_is_water = false;  // what is weighed with it; else it is as dense as the alkali
};

/// Parsed once, at the first call.
const AlkaliData& data_of(Alkali alkali);

double molar_mass_g_per_mol(Alkali alkali);  // from the shipped IUPAC atomic weights
/// Grams of `alkali` that do what one gram of KOH does: M(alkali) / M(KOH).
double per_koh(Alkali alkali);

}  // namespace brimwright::chemistry
