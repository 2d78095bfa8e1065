#pragma once

#include "chemistry/alkali.h"
#include "units/quantity.h"
#include "units/share.h"
#include "units/temperature.h"

namespace brimwright::chemistry {

/// Density of an aqueous solution of `alkali` of `strength` (mass of pure alkali / mass of
/// solution) by the Laliberte-Cooper model (J. Chem. Eng. Data 2004, 49, 1141), coefficients from
/// data/lye.json. NaOH: within 0.3 % of a published table to 19 % and 10 to 55 degC and of Olsson
/// 1997 from 24 to 50 % and 20 to 60 degC. KOH: within 0.2 % of a table to 40 % at 18 degC.
Density lye_density(Alkali alkali, Share strength, Temperature at);

/// The most alkali that stays dissolved at 20 degC, as a share of the solution (data/lye.json).
Share solubility_at_20_celsius(Alkali alkali);

}  // namespace brimwright::chemistry
