#pragma once

#include "units/quantity.h"
#include "units/rounded_text.h"

#include <string>

namespace brimwright {

// A weight as it is shown beside a scale: as fine as the scale's step, never coarser, in grams and
// in avoirdupois ounces.

/// True if a scale with this step shows ounces: the step is no whole number of milligrams, but one
/// of 1/100000 oz ("0.1 oz", "1/32 oz", "0.1 lb").
bool reads_ounces(Mass step);

/// Decimals that show a multiple of `step`, which is in the unit itself, whole; at most 6.
int decimals_of_step(double step);

/// Numbers without their unit. In the unit that the scale shows, a multiple of its step stands
/// whole; in the other, with as many decimals as make the last digit no more than the step, rounded
/// `towards` the safe side: alkali and lye down.
struct WeightText {
  std::string grams, ounces;
};
WeightText weight_text(Mass mass, Mass step, Rounded towards);

/// "322.4 g", or "11.4 oz" on a scale that shows ounces.
std::string on_scale(Mass mass, Mass step, Rounded towards = Rounded::nearest);
/// The same weight in the unit that the scale does not show.
std::string beside_scale(Mass mass, Mass step, Rounded towards = Rounded::nearest);

}  // namespace brimwright
