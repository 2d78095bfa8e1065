#pragma once

#include "planning/run.h"
#include "runs/studio_file.h"
#include "units/fields.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::runs {

using PackagingList = std::vector<planning::Packaging>;

/// What goes round each piece that is sold, by the "packaging" of a run or a studio.
PackagingList read_packaging(const Fields& document);
/// A studio's; nothing without one.
PackagingList read_packaging(const Studio& studio);

/// The run's own, in place of `studios`, or else these.
const PackagingList& packaging_of(const planning::Run& run, const PackagingList& studios);

/// That the run's own packaging counts, and in place of what; nothing where it has none.
std::optional<std::string> own_packaging_words(const planning::Run& run,
                                               const PackagingList& studios);

}  // namespace brimwright::runs
