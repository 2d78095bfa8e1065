#pragma once

#include "planning/run.h"
#include "units/fields.h"

#include <optional>

namespace brimwright::runs {

/// A run's "label": { "market": "EU" | "US", and how much pieces differ: "weighed" (finished
/// pieces, three or more), or "spread" (a mass or a share) and "pour_line" (a length); "e_mark",
/// "states" }. Nothing when it is absent. UserError for an unknown market, both ways of saying the
/// spread or none, zeros, an e mark outside the EU.
std::optional<planning::LabelOrder> read_label_order(const Fields& run);

}  // namespace brimwright::runs
