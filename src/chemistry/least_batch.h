#pragma once

#include "chemistry/superfat.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::chemistry {

/// Of what a batch's superfat is to be certain.
enum class CertaintyOf { scales_alone, everything };

struct LeastBatch {
  std::optional<Mass> fats;  // none: no batch size is enough
  std::string words;         // for the maker, a whole sentence
};

/// The least batch, as the mass of its fats, that keeps the superfat within `half_width` of what is
/// planned, 19 times in 20: by the scales alone (`likely_by_scales`), or by everything
/// (`likely_low` to `likely_high` about `nominal`).
///
/// The weighed masses grow and shrink together, on scales whose steps and goes stay as they are:
/// where a larger batch would move to a coarser scale, ask again with that. Found by halving
/// intervals to 0.01 %. `fats_now` is what the maker calls the batch's fats.
/// Said in whole grams: the least number of them that is enough.
LeastBatch least_batch_for(Share half_width, CertaintyOf of, Mass fats_now,
                           const std::vector<WeighedFat>& fats,
                           const std::vector<WeighedAlkali>& alkalis,
                           const std::vector<WeighedAcid>& acids,
                           const std::vector<WeighedBlend>& blends = {});

/// That a batch of `fats` is the least.
std::string least_batch_in_words(Mass fats, Share half_width, CertaintyOf of);

}  // namespace brimwright::chemistry
