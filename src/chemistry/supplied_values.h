#pragma once

#include "chemistry/formula.h"
#include "units/remark.h"

#include <vector>

namespace brimwright::chemistry {

/// What to check in suppliers' saponification values before weighing lye: one far from the
/// published range (a slip more often than a rare lot), and one that the fat's own fatty acids
/// contradict. A fat gets one caution at most.
std::vector<Remark> supplied_value_cautions(const Formula& formula);

}  // namespace brimwright::chemistry
