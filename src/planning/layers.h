#pragma once

#include "planning/cavity.h"
#include "planning/free_curve.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::planning {

/// The layers of a pour into `cavity` up to `line`, lowest first: volumes by what it has `room`
/// for, so that equal parts are equal amounts of batter, not equal depths.
///
/// The first layers, or any but the last, may be poured while the mould is tilted. Depths then
/// count up the low wall: that of a tilted first layer is its mark (see geometry::TiltedPour), and
/// the level ones above it begin there.
///
/// UserError at /pour/layers when depths or masses do not end at the pour line (with the figure),
/// when layers are said in different ways, when one is tilted where embeds lie in the cavity as it
/// is poured, or when a tilted one cannot be poured (see layer_solids).
std::vector<LayerTally> layers_of(const Run& run, const Cavity& cavity, const FreeCurve& room,
                                  Length line, Density batter);

/// Fills the layers' jugs for so many casts: what goes into the pieces, what is poured over them,
/// and what stays in the jug, all jugs' residue in equal parts. Jugs stand on the large scale one
/// after the other, each reading rounded down, so that none is short by a step and all together
/// never ask for more than is there. Doses each jug's colours.
void fill_jugs(std::vector<LayerTally>& layers, const Run& run, std::int64_t casts,
               Share fats_of_batter);

}  // namespace brimwright::planning
