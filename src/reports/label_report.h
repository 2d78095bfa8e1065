#pragma once

#include "planning/tally.h"

#include <nlohmann/json_fwd.hpp>

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace brimwright::reports {

/// How the piece dries, part by part: a table of its mass over the weeks; empty without a "drying".
std::string cure_text(const planning::Plan& plan);
/// A part's course of drying; null where its formula gives no "drying".
nlohmann::ordered_json cure_json(const planning::BatterTally& part);

/// The codes of a run's batches that have one, by their number.
using BatchCodes = std::map<std::int64_t, std::string>;

/// The label's draft; empty when the run asks for none.
std::string label_text(const planning::Plan& plan, const BatchCodes& codes = {});
/// The same; null when the run asks for none.
nlohmann::ordered_json label_json(const planning::Plan& plan, const BatchCodes& codes = {});

/// What each batter gets of a bottle of fragrance, in the run or in a batch; empty without bottles.
std::string bottles_text(const std::vector<planning::BottleTally>& bottles);
nlohmann::ordered_json bottles_json(const std::vector<planning::BottleTally>& bottles);

}  // namespace brimwright::reports
