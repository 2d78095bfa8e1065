#pragma once

#include "trade/covers.h"

#include <cstdint>
#include <vector>

namespace brimwright::trade {

/// A material to cover, and who offers what of it: one pack at least.
struct Wanted {
  std::int64_t need;  // above 0
  std::vector<Offer> offers;
};

/// How many of each offer of each material; empty for a material where more than `most_of_a_pack`
/// or `most_coins` would be needed.
struct Selection {
  std::vector<std::vector<std::int64_t>> counts;
  std::int64_t coins = 0;     ///< with postage
  std::int64_t at_least = 0;  ///< no selection costs less; equal to `coins` where that is proved
};

/// The selection of least cost, then of fewest packs, then of least left over.
///
/// First with each material's best covers only, once as they are and once as if all who send free
/// from a sum on did so always. No cover that is dearer than the best of its sellers by more than
/// these two differ is in a cheapest selection, so few more have to be listed.
Selection selection(const std::vector<Wanted>& materials, const std::vector<Postage>& sellers);

}  // namespace brimwright::trade
