#pragma once

#include "chemistry/alkali.h"
#include "units/remark.h"
#include "units/share.h"
#include "units/temperature.h"

#include <optional>

namespace brimwright::chemistry {

/// The temperature at which crystals may begin to form in a lye at rest, from the published points
/// of the phase diagram (data/lye.json), straight between them: good to about 5 K. Nothing where
/// none is tabled: KOH below 45 %, which stays clear far below 0 degC, and above 52 %.
std::optional<Temperature> crystallises_at(Alkali alkali, Share strength);

/// A caution where a lye kept at `at` may crystallise, or is within the 5 K that the curve is good
/// to, with what mends it: a temperature and, from 25 % on, a strength, both rounded so that typed
/// back they silence it.
std::optional<Remark> crystallisation(Alkali alkali, Share strength, Temperature at);

}  // namespace brimwright::chemistry
