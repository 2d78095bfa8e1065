#pragma once

#include "planning/batch_limits.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <cstdint>
#include <vector>

namespace brimwright::planning {

/// What `sell` pieces ask for: spoilage on top, whole casts, fillings; filled moulds where the run
/// wants them full. `batches` is not known yet.
Pieces pieces_of(const Run& run, std::int64_t sell, std::int64_t per_cast);

/// Casts of each batch, filling by filling: as few batches as `most` casts a batch allow in so many
/// fillings of `cavities`, spread over the fillings as evenly as can be, then dealt one by one to
/// the smallest batch that still has room in its filling. That makes them as even as can be, and
/// the smallest as large as can be. Within a filling the larger come first.
std::vector<std::vector<std::int64_t>> dealt(const Pieces& pieces, std::int64_t most);

/// The same within the run's limits. UserError where it would take more than a thousand batches, or
/// where one of them is below the least: with the numbers of pieces next to it that can be made,
/// found by dealing them.
std::vector<std::vector<std::int64_t>> dealt_within(const Run& run, const Pieces& pieces,
                                                    const BatchLimits& limits);

/// What one piece fewer and one more does; and where it is not far, how many fewer save a filling.
std::vector<Around> around(const Run& run, const Pieces& pieces, const BatchLimits& limits);

}  // namespace brimwright::planning
