#include "reports/cut_words.h"

#include "units/printing.h"
#include "units/rounding.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::reports {
namespace {}  // namespace

std::string bar_weights(const planning::PieceTally& piece) {
  const auto [least, greatest] =
      std::minmax_element(piece.bars.begin(), piece.bars.end(),
                          [](const auto& a, const auto& b) { return a.fresh < b.fresh; });
  return "A bar weighs " + fixed_grams(piece.fresh) + " fresh on average, from " +
         fixed_grams(rounded_down(least->fresh, 0.1 * gram)) + " to " +
         fixed_grams(rounded_up(greatest->fresh, 0.1 * gram)) + ".";
}

}  // namespace brimwright::reports
