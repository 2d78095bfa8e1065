#include "units/water.h"

#include <algorithm>

namespace brimwright {

Density water_density(Temperature at) {
  const double t = std::clamp(at.celsius(), 0.0, 100.0);
  // Kell 1975, coefficients for kg/m3 and degC.
  const double numerator =
      999.83952 +
      t * (16.945176 +
           t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
  return numerator / (1 + 16.87985e-3 * t) * kilogram_per_cubic_metre;
}

}  // namespace brimwright
