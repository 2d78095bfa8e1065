#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::planning {

/// How full a bowl may be when the topping is whipped up: room for it to climb. Common practice, no
/// source.
inline constexpr Share fullest_bowl = Share::of_one(0.6);

/// Casts that a bowl holding `usable` topping pipes when the weigh-cup reads as `cup`.
std::int64_t casts_from(Mass usable, Volume each, const WeighCup& cup);

/// "This bowl pipes N": the planned weigh-cup's reading and readings to either side of it, 1, 2, 3,
/// 5, 7.5, 10 and 15 % off, to the gram, lightest first.
std::vector<WhipReading> whip_table(Mass usable, Volume each, const WeighCup& planned,
                                    Density plain);

/// Spoonfuls of lye for the topping and how long they take.
std::optional<SpoonedLye> spooned_lye(const Pipe& pipe, const Weighing& weighing);

}  // namespace brimwright::planning
