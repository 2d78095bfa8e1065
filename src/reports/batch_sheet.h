#pragma once

#include "planning/blanks.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "reports/sheet_blocks.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::reports {

// What the bench sheet says of one batch, work by work; bench_sheet.h puts it in order.

/// What a sheet is of: a batch with all its work, a base alone that several lines are poured from,
/// or one of these lines.
enum class SheetOf { whole_batch, base_alone, line_of_base };

/// What is piped on: "12 pieces", or "2 loaves" that are cut afterwards.
std::string casts_on_sheet(std::int64_t casts, const planning::Run& run);

/// The cavity's own volume, and what embeds that are there at the pour take of it.
std::string held_to_line(const planning::Run& run, const planning::PourTally& pour);

/// What each reading of the weigh-cup means for the bowl.
void add_weigh_cup(const planning::PipeTally& pipe, const planning::Run& run, Sheet& sheet);
void add_piping(const planning::PipeTally& pipe, const planning::Run& run, Sheet& sheet);

/// Where each embed lies.
void add_places(const planning::DecorationFit& fit, Sheet& sheet);

/// Those of `blanks` that are filled in then, for that part of the batch.
void add_blanks(const std::vector<planning::Blank>& blanks, planning::Blank::When when,
                std::size_t part, Sheet& sheet);

}  // namespace brimwright::reports
