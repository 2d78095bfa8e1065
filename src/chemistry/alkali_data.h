#pragma once

#include "chemistry/alkali.h"
#include "units/share.h"

#include <array>

namespace brimwright::chemistry {

/// What data/lye.json says of one alkali; its sources stand there.
struct AlkaliData {
  double molar_mass_g_per_mol = 0;
  std::array<double, 5> laliberte_cooper{};  // c0 to c4 of the set that the file marks as used
  Share solubility_at_20_celsius;            // as a share of the solution
};

/// Parsed once, at the first call.
const AlkaliData& data_of(Alkali alkali);

}  // namespace brimwright::chemistry
