#pragma once

#include "planning/plan.h"
#include "planning/run.h"

#include <string>
#include <vector>

namespace brimwright::planning {

/// The layers of a pour up to `line`, lowest first: volumes by the cavity's level curve, so that
/// equal parts are equal amounts of batter, not equal depths.
///
/// UserError at /pour/layers when depths or masses do not end at the pour line (with the figure),
/// or when layers are said in different ways.
std::vector<LayerTally> layers_of(const Run& run, Length line, Density batter);

/// Splits the whole batter, losses included, over the layers by volume, and doses their colours.
void share_batter(std::vector<LayerTally>& layers, const Run& run, Mass batter,
                  Share fats_of_batter);

}  // namespace brimwright::planning
