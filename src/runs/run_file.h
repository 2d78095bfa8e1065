#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "units/fields.h"

#include <cstdint>
#include <optional>
#include <string>

namespace brimwright::runs {

/// Reads a run (schema brimwright.run/2, or 1) with the moulds and formulas it names. `sell`, where
/// given, takes the place of the file's own. UserError with file and field for anything wrong.
planning::Run read_run(const Fields& fields, const moulds::Library& library,
                       std::optional<std::int64_t> sell);
/// The same of a file as it stands.
planning::Run read_run(const std::string& path, const moulds::Library& library,
                       std::optional<std::int64_t> sell);

}  // namespace brimwright::runs
