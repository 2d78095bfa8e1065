#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "units/working.h"

#include <vector>

namespace brimwright::planning {

/// How many are cast, in how many fillings and batches: places below "pieces".
std::vector<Working> pieces_workings(const Run& run, const Plan& plan);

/// What one finished piece weighs, measures and costs: places below "piece".
std::vector<Working> piece_workings(const Run& run, const Plan& plan);

/// What the lightest piece to believe in weighs: places below "label".
std::vector<Working> label_workings(const LabelDraft& label);

/// How a loaf comes apart: places below "cut".
std::vector<Working> cut_workings(const Run& run, const CutTally& cut, const PieceTally& piece);

/// What one batter gets out of a bottle: "g" and "percent_of_batter".
std::vector<Working> bottle_part_workings(const BottleTally::Part& part, Mass holds, Mass batter,
                                          Mass all_batter);

}  // namespace brimwright::planning
