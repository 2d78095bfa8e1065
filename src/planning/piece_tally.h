#pragma once

#include "planning/plan.h"

namespace brimwright::planning {

/// What one piece is made of, part by part, as poured and as sold: batters by their volume and
/// density, decorations and powders by what is on the piece. Of a loaf, a bar's mean share.
PieceTally piece_of(const Plan& plan, const Run& run);

}  // namespace brimwright::planning
