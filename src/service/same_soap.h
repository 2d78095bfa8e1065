#pragma once

#include "moulds/library.h"
#include "records/batches.h"

#include <string>
#include <vector>

namespace brimwright::service {

/// The files by which a piece of the run in `file` would be another today than by `frozen`, what a
/// batch of it was made from, where the run was called `run_then`: the run itself, its formulas,
/// moulds and meshes, by their names today. Only what makes the piece is compared, under whatever
/// name a file has: not what was measured or learned since, not how the work is done, not what it
/// costs, not the analysis of a lot. None where it would be the same.
std::vector<std::string> changed_since(const std::vector<records::Source>& frozen,
                                       const std::string& run_then, const std::string& file,
                                       const moulds::Library& library);

}  // namespace brimwright::service
