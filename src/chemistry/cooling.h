#pragma once

#include "chemistry/heat.h"
#include "units/temperature.h"

#include <chrono>
#include <optional>
#include <string>

namespace brimwright::chemistry {

/// Where a pot of lye is put to cool.
enum class Surroundings { ice_bath, cold_water, fridge, room };
std::string name_of(Surroundings where);  // "an ice bath", "a fridge without food"
/// What it cools towards: 0, 12, 4 and 20 degC (common practice).
Temperature temperature_of(Surroundings where);

/// Cooled to the room, as far as a hand can tell: then its vessel may be closed. 5 K above the room
/// (common practice, no source).
Temperature cool_enough_to_close();

/// From a lye's jug in a stirred bath of metal to one of thick plastic left alone.
struct CoolingTime {
  Surroundings where;
  std::chrono::minutes shortest, longest;
};

/// Newton's law of cooling, from `from` to `to`: t = m c / (U A) ln((from - around) / (to -
/// around)).
///
/// The lye stands in a jug as deep as wide, which gives its heat off at its side and bottom. U is
/// what the published coefficients of free convection leave of both sides and the wall:
/// 50 to 300 W/(m2 K) in water, 5 to 20 in air. An estimate for planning an evening, not more.
/// Nothing where `to` is not at least 1 K warmer than the surroundings; zero where the lye is
/// already that cool. Hot lye does not belong in a fridge: the time in one begins with that in the
/// room, down to `cool_enough_to_close()`.
std::optional<CoolingTime> cooling_time(const LyeCharge& lye, Temperature from, Temperature to,
                                        Surroundings where);

}  // namespace brimwright::chemistry
