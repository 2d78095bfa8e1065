#include "planning/fill_level.h"

#include "units/advice_text.h"
#include "units/printing.h"

#include <string>

namespace brimwright::planning {

Length depth_of(const FillLevel& level, const moulds::Mould& mould, const Place& where) {
  constexpr Length thinnest = 0.1 * millimetre;  // our own bound: nothing levels thinner
  const Length height = mould.curve.height();
  const std::string size = mould.name + " is " + trimmed(height / millimetre, 1) + " mm deep";
  if (const auto* below = std::get_if<BelowBrim>(&level)) {
    // A fill that is just so thin on paper is, but for rounding.
    if (!(height - below->headspace >= thinnest * (1 - 1e-9)))
      throw UserError(where,
                      trimmed(below->headspace / millimetre, 1) +
                          " mm below the brim leaves nothing to fill; " + size,
                      height > thinnest ? "give at most " + most_text(height - thinnest)
                                        : "fill it to the brim");
    return height - below->headspace;
  }
  const Length depth = std::get<FromFloor>(level).depth;
  if (depth > height)
    throw UserError(
        where,
        "a fill of " + trimmed(depth / millimetre, 1) + " mm is deeper than the cavity; " + size,
        "give at most " + most_text(height));
  if (!(depth >= thinnest))
    throw UserError(where, "fills nothing", "give a depth of at least " + least_text(thinnest));
  return depth;
}

}  // namespace brimwright::planning
