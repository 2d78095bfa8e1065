#pragma once

#include "geometry/beads/bead.h"

#include <cstddef>

namespace brimwright::geometry {

/// How many corners a move's solids have, where the section has `section_corners`.
std::size_t corners_of(const Move& move, std::size_t section_corners, double facet_mm);

}  // namespace brimwright::geometry
