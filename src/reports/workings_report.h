#pragma once

#include "units/working.h"

#include <string>
#include <vector>

namespace brimwright::reports {

/// Names of figures that can be asked for, each with what it comes to; at most 80 columns where
/// names allow it.
std::string workings_list(const std::vector<Working>& workings);

/// For people: each figure with its formula, the sum, what went into it and where that is from.
std::string workings_text(const std::vector<Working>& workings);

/// One JSON document, schema brimwright.explain/1, of figures in the plan of the run so named.
std::string workings_json(const std::string& run, const std::vector<Working>& workings);

}  // namespace brimwright::reports
