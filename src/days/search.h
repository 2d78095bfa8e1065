#pragma once

#include "days/board.h"
#include "days/verdict.h"

#include <cstdint>

namespace brimwright::days {

/// Goes through all ways to fill the days, first day first and as much as a day takes first, until
/// one is found, which then stands on `board`, or none is left. What was found to lead nowhere is
/// known by Board::state. Gives up after `most_looks` ways.
Verdict searched(const Problem& problem, Board& board, std::int64_t most_looks);

}  // namespace brimwright::days
