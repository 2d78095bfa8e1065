#pragma once

#include "trade/covers.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace brimwright::trade {

/// Which of its covers each material gets.
struct Choice {
  std::vector<std::size_t> taken;
  std::int64_t coins = 0;     ///< with postage
  std::int64_t at_least = 0;  ///< no choice costs less; equal to `coins` where that is proved
};

/// The choice of least cost, then of fewest packs, then of least left over. Every material must
/// have a cover. std::runtime_error where the solver fails.
Choice best_choice(const std::vector<std::vector<Cover>>& materials,
                   const std::vector<Postage>& sellers);

/// The same without heed to packs and what is left over.
Choice least_choice(const std::vector<std::vector<Cover>>& materials,
                    const std::vector<Postage>& sellers);

/// What a choice pays each seller for sending, in coins.
std::vector<std::int64_t> postage_of(const std::vector<std::vector<Cover>>& materials,
                                     const std::vector<std::size_t>& taken,
                                     const std::vector<Postage>& sellers);

}  // namespace brimwright::trade
