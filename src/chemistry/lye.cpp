#include "chemistry/lye.h"

#include "chemistry/alkali_data.h"
#include "units/water.h"

#include <cmath>

namespace brimwright::chemistry {
namespace {

/// The density that the dissolved alkali seems to have, at its mass fraction `w` and `t` degC.
Density apparent_density(Alkali alkali, double w, double t) {
  const auto& c = data_of(alkali).laliberte_cooper;
  const double warmth = std::exp(1e-6 * (t + c[4]) * (t + c[4]));
  return (c[0] * w + c[1]) * warmth / (w + c[2] + c[3] * t) * kilogram_per_cubic_metre;
}

}  // namespace

Density lye_density(Alkali alkali, Share strength, Temperature at) {
  const double w = strength.of_one();
  // At w = 0 the model's apparent density may be negative or infinite, and has no part in it.
  if (!(w > 0)) return water_density(at);
  const auto volume_per_mass =
      (1 - w) / water_density(at).base() + w / apparent_density(alkali, w, at.celsius()).base();
  return Density::from_base(1 / volume_per_mass);
}

Share solubility_at_20_celsius(Alkali alkali) { return data_of(alkali).solubility_at_20_celsius; }

}  // namespace brimwright::chemistry
