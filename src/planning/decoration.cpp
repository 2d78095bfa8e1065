#include "planning/decoration.h"

#include "units/printing.h"
#include "units/rounding.h"

namespace brimwright::planning {

Length depth_of(const FillLevel& level, const moulds::Mould& mould, const Place& where) {
  const Length height = mould.curve.height();
  const std::string size = mould.name + " is " + trimmed(height / millimetre, 1) + " mm deep";
  if (const auto* below = std::get_if<BelowBrim>(&level)) {
    if (below->headspace >= height)
      throw UserError(where,
                      trimmed(below->headspace / millimetre, 1) +
                          " mm below the brim leaves nothing to fill; " + size,
                      "give less than that");
    return height - below->headspace;
  }
  const Length depth = std::get<FromFloor>(level).depth;
  if (depth > height)
    throw UserError(
        where,
        "a fill of " + trimmed(depth / millimetre, 1) + " mm is deeper than the cavity; " + size,
        "give at most that");
  if (!(depth > Length{})) throw UserError(where, "fills nothing", "give a depth above zero");
  return depth;
}

PerchTally perch_tally(const Run& run, std::size_t index, const Pieces& pieces) {
  const Decoration& decoration = run.perch[index];
  const auto& curve = decoration.mould.curve;
  const Place where{run.file, "/perch/" + std::to_string(index) + "/fill"};
  const int cavities_each = decoration.form == CastForm::two_halves ? 2 : 1;
  const Volume cavity = curve.volume_below(depth_of(decoration.fill, decoration.mould, where));

  PerchTally tally;
  tally.name = decoration.name;
  tally.material = decoration.material;
  tally.mould = decoration.mould.name;
  tally.per_piece = decoration.per_piece;
  const double needed = static_cast<double>(pieces.make * decoration.per_piece);
  tally.casts = whole_up(needed * (1 + decoration.spares.of_one()));
  tally.cavity_fills = tally.casts * cavities_each;
  const double in_trays = decoration.mould.cavities * decoration.mould.owned;
  tally.tray_fills = whole_up(static_cast<double>(tally.cavity_fills) / in_trays);
  tally.volume_each = cavities_each * cavity;
  tally.mass_each = tally.volume_each * decoration.density;
  const Mass cast = static_cast<double>(tally.casts) * tally.mass_each;
  const Mass film = static_cast<double>(tally.tray_fills) * decoration.jug_film;
  const Mass melt = (cast + film) / (1 - decoration.melt_loss.of_one());
  tally.make = rounded_up(melt, run.scales.large.reads);
  return tally;
}

}  // namespace brimwright::planning
