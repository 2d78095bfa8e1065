#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <nlohmann/json_fwd.hpp>

#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::reports {

/// The masses of one batter.
nlohmann::ordered_json batter_json(const planning::BatterTally& batter,
                                   const chemistry::Formula& formula);

/// What is poured, of a run or of one batch: the base batter with its weights, and where it stands.
nlohmann::ordered_json pour_json(const planning::PourTally& pour, const planning::Run& run);

/// What is piped, of a run, a batch or one whipping. Where a loaf is cut, one cast is `per_cast`
/// pieces.
nlohmann::ordered_json pipe_json(const planning::PipeTally& pipe, const planning::Run& run,
                                 std::int64_t per_cast);

/// What holds a batch down, or asks for one of so many pieces.
nlohmann::ordered_json limits_json(const std::vector<planning::Limit>& limits,
                                   std::int64_t per_cast);

/// Null where there is none.
nlohmann::ordered_json count_or_null(const std::optional<std::int64_t>& count);

}  // namespace brimwright::reports
