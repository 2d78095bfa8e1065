#pragma once

#include "planning/run.h"
#include "runs/named_material.h"
#include "runs/studio_file.h"
#include "units/fields.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::runs {

/// A run's "money": its currency, and the prices that are filled in, by ingredient. `run` tells
/// what each price is paid for. UserError for a price that is none, or far from usual.
std::optional<planning::Purse> read_purse(const Fields& run_fields, const planning::Run& run,
                                          const Studio& studio, const moulds::Library& library);

/// What weighings of `run` call what goes into it, as far as it can be priced.
std::vector<std::string> materials_of(const planning::Run& run);
/// The same, and how pure its alkalis are planned to be.
Needed needed_by(const planning::Run& run);

}  // namespace brimwright::runs
