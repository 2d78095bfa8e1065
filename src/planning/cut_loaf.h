#pragma once

#include "planning/cavity.h"
#include "planning/embed_solid.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "planning/topping.h"

#include <vector>

namespace brimwright::planning {

/// The loaf of `run` as poured into `cavity`, with the embeds that lie in it as `fits` says (one
/// for each decoration), cut as the run says. CutTally::inclusions has one entry for each
/// decoration, with nothing in it for one that is not buried.
///
/// An embed takes its room from the layers it lies in, also one that is pressed in: what it pushes
/// away there is counted with the rest of that layer. Shares of the top are told too; the topping
/// is not, as it is worked out later.
CutTally cut_tally(const Run& run, const Cavity& cavity, const std::vector<DecorationBody>& bodies,
                   const PourTally& pour, const std::vector<DecorationFit>& fits);

/// What each bar has of the topping piped on the whole loaf, and what of it is cut off: of the part
/// in the headspace by its room, of the visible one by its shape or, where trials alone tell it,
/// evenly over the top.
Parted topping_parted(const Run& run, const Cavity& cavity, const PourTally& pour,
                      const CutTally& cut, const Topping& topping);

}  // namespace brimwright::planning
