#include "planning/decoration.h"

#include "planning/embed_solid.h"
#include "units/rounding.h"

namespace brimwright::planning {

namespace {

/// How often the trays are filled. A rod's tube is a tray of one; a drizzle is melted once.
std::int64_t tray_fills_for(const Decoration& decoration, std::int64_t cavity_fills) {
  if (std::holds_alternative<Drizzle>(decoration.made)) return 1;
  const auto* cast = std::get_if<InMould>(&decoration.made);
  const double in_trays = cast != nullptr ? cast->mould.cavities * cast->mould.owned : 1;
  return whole_up(static_cast<double>(cavity_fills) / in_trays);
}

std::string made_in(const Decoration& decoration) {
  if (const auto* cast = std::get_if<InMould>(&decoration.made)) return cast->mould.name;
  return "";
}

}  // namespace

DecorationTally decoration_tally(const Run& run, std::size_t index, const Pieces& pieces,
                                 DecorationFit fit) {
  const Decoration& decoration = run.decorations[index];
  const auto* cast_in = std::get_if<InMould>(&decoration.made);
  const int cavities_each = cast_in != nullptr && cast_in->form == CastForm::two_halves ? 2 : 1;

  DecorationTally tally;
  tally.name = decoration.name;
  tally.material = decoration.material;
  tally.mould = made_in(decoration);
  const std::int64_t needed = decoration.per_piece > 0 ? pieces.make * decoration.per_piece
                                                       : pieces.casts * decoration.per_cast;
  tally.per_piece = decoration.per_piece > 0 ? static_cast<double>(decoration.per_piece)
                                             : static_cast<double>(decoration.per_cast) /
                                                   static_cast<double>(pieces.per_cast);
  tally.count_text =
      std::to_string(decoration.per_piece > 0 ? decoration.per_piece : decoration.per_cast) +
      (run.cut && decoration.per_piece == 0 ? " a loaf" : " a piece");
  tally.casts = whole_up(static_cast<double>(needed) * (1 + decoration.spares.of_one()));
  tally.is_bought = is_bought(decoration);
  if (tally.is_bought) {
    tally.mass_each = std::get<Bought>(decoration.made).weighs.value_or(Mass{});
    return tally;
  }
  tally.cavity_fills = tally.casts * cavities_each;
  tally.tray_fills = tray_fills_for(decoration, tally.cavity_fills);
  if (decoration.time_per_tray_fill) tally.time = tally.tray_fills * *decoration.time_per_tray_fill;
  tally.volume_each = embed_volume(run, index);
  tally.mass_each = tally.volume_each * decoration.density;
  const Mass cast = static_cast<double>(tally.casts) * tally.mass_each;
  const Mass film = static_cast<double>(tally.tray_fills) * decoration.left_in_jug;
  const Mass melt = (cast + film) / (1 - decoration.melt_loss.of_one());
  tally.make = rounded_up(melt, run.scales.large.step);
  tally.fit = std::move(fit);
  return tally;
}

}  // namespace brimwright::planning
