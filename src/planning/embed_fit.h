#pragma once

#include "geometry/packing/packing.h"
#include "planning/cavity.h"
#include "planning/embed_solid.h"
#include "planning/free_curve.h"
#include "planning/measure_memory.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <cstddef>
#include <vector>

namespace brimwright::planning {

// `bodies` are those of all decorations of the run (see bodies_of).

/// A decoration pressed into a flat top: where it meets it and how far it stands out. UserError
/// where it is pressed in deeper than it is tall.
DecorationFit fit_on_top(const Run& run, std::size_t index,
                         const std::vector<DecorationBody>& bodies);

/// Embeds of one decoration below the pour line: as placed, or at places that the packing search
/// finds. Displaced volumes are of the part below the line, by level curve.
///
/// UserError where an embed does not lie within the cavity or meets another one of it, or where
/// fewer fit than a piece has, with how many would, or how large one may be.
///
/// `progress` is told how far a search is, and `memory` is asked for one that was made before;
/// either may be empty.
DecorationFit fit_buried(const Run& run, std::size_t index, const Cavity& cavity,
                         const std::vector<DecorationBody>& bodies,
                         const geometry::Progress& progress, MeasureMemory* memory);

/// UserError where embeds of two decorations meet.
void require_apart(const Run& run, const std::vector<DecorationBody>& bodies,
                   const std::vector<DecorationFit>& fits);

/// What takes up room in the cavity: the buried embeds of all decorations.
std::vector<Submerged> submerged(const std::vector<DecorationBody>& bodies,
                                 const std::vector<DecorationFit>& fits);

}  // namespace brimwright::planning
