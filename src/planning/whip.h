#pragma once

#include "planning/plan.h"
#include "planning/run.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::planning {

/// How full a bowl may be when the topping is whipped up: room for it to climb. Common practice, no
/// source.
inline constexpr Share fullest_bowl = Share::of_one(0.6);

/// Pieces that a bowl holding `usable` topping pipes when the weigh-cup reads as `cup`.
std::int64_t pieces_from(Mass usable, Volume each, const WeighCup& cup);

/// "This bowl pipes N": the planned weigh-cup's reading and readings 5, 10 and 15 % to either side,
/// to the gram, lightest first.
std::vector<WhipReading> whip_table(Mass usable, Volume each, const WeighCup& planned,
                                    Density plain);

/// What limits one whipping, each in words with its number: the least that the whisk catches, the
/// bowl at most 60 % full, how long the whipped batter stays open against the time to pipe the
/// pieces and change bags.
std::vector<WhipLimit> whip_limits(const Run& run, const PipeTally& pipe, const Pieces& pieces,
                                   Density plain);

/// Time to pipe all pieces, with a change of bag after each load but the last; nothing where the
/// run gives no pace.
std::optional<std::chrono::seconds> piping_time(const Pipe& pipe, const PipeTally& tally,
                                                const Pieces& pieces);

/// Spoonfuls of lye for the topping and how long they take.
std::optional<SpoonedLye> spooned_lye(const Pipe& pipe, const Weighing& weighing);

}  // namespace brimwright::planning
