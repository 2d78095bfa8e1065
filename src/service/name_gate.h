#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <string_view>

namespace brimwright::service {

/// True if a name that stands anywhere but under the alkalis is one of the commonest names of lye.
/// Written apart from chemistry's own list and way of looking, on purpose.
bool is_lye_by_name(std::string_view name);

/// The last look at names before anything is shown, beside the lye gate's at figures: every fat,
/// oil, additive, liquid, fragrance and colour of a run's batters and layers.
///
/// UserError where one is lye by its name, where an additive takes up more than any acid does, and
/// where a vinegar or juice takes up more than such a thing can, unconfirmed: then nothing is
/// printed that could be weighed.
void pass_name_gate(const planning::Run& run, const planning::Plan& plan);

}  // namespace brimwright::service
