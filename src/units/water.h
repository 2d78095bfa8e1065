#pragma once

#include "units/quantity.h"
#include "units/temperature.h"

namespace brimwright {

/// Density of air-free water at one atmosphere, 0 to 100 degC (outside it, the nearest end's
/// value).
///
/// G. S. Kell, J. Chem. Eng. Data 1975, 20, 97. Good to 0.001 % over that range, far below what a
/// weighing at the bench can tell. Lives here because moulds (water weighings) and chemistry (lye)
/// both stand on it.
Density water_density(Temperature at);

}  // namespace brimwright
