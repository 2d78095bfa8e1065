#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "units/remark.h"

#include <vector>

namespace brimwright::planning {

/// What to watch when whipping and piping: limits that bind, each with its number, and whether the
/// bowl reaches at today's whip.
std::vector<Remark> whip_remarks(const Plan& plan);
/// How well the topping's size is known: a hand factor not yet known, trials that differ much.
std::vector<Remark> hand_remarks(const Plan& plan);

/// What to watch when decorating: whether what stands on top sits, cover that is less than wanted,
/// embeds that sink or float, a pour that is raised to the line by what is pressed in.
std::vector<Remark> decoration_remarks(const Run& run, const Plan& plan);

}  // namespace brimwright::planning
