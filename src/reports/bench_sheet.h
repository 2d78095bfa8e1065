#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "reports/coded_batch.h"
#include "reports/sheet_blocks.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// The run for the bench, a sheet for each different batch, or with `batch` the one for that
/// number: in the order of the hands, dangers first, the day before, pour, pipe, decorate or cut,
/// dust, before it is sold, and what really happened; each caution and blank where its work is.
/// Last the pour line, drawn at true size where a page holds it. A lye that is not made on the spot
/// (shared by the batters, or used colder than the room) stands with the day before, and nowhere
/// twice. What is cast ahead is cast for the whole run, and stands on the first sheet.
///
/// `batch` is one of the numbers in `plan.batches`; std::logic_error otherwise. `printed_at` is the
/// date and time as they are to stand in the foot of each page ("2026-05-30 19:46"), which may be
/// left out. Batches of `codes` have theirs where it is otherwise filled in by hand.
Sheet bench_sheet(const planning::Run& run, const planning::Plan& plan,
                  std::optional<std::int64_t> batch = {}, const std::string& printed_at = {},
                  const std::vector<CodedBatch>& codes = {});

/// Whether something besides what is cast ahead is done the day before: a lye solution that stands
/// overnight, or fats that set cold.
bool is_begun_the_day_before(const planning::Run& run, const planning::Plan& plan);

/// Several sheets as one, each from a new page on, with what they are for in the foot of each page.
/// At least one.
Sheet sheet_of_all(const std::string& what_for, std::vector<Sheet> sheets);

}  // namespace brimwright::reports
