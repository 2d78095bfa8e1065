#include "planning/decoration.h"

#include "planning/embed.h"
#include "units/advice_text.h"
#include "units/printing.h"
#include "units/rounding.h"

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

PerchTally perch_tally(const Run& run, std::size_t index, const Pieces& pieces, PerchFit fit) {
  const Decoration& decoration = run.perch[index];
  const auto* cast_in = std::get_if<InMould>(&decoration.made);
  const int cavities_each = cast_in != nullptr && cast_in->form == CastForm::two_halves ? 2 : 1;

  PerchTally tally;
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
  tally.cavity_fills = tally.casts * cavities_each;
  tally.tray_fills = tray_fills_for(decoration, tally.cavity_fills);
  if (decoration.each_fill) tally.time = tally.tray_fills * *decoration.each_fill;
  tally.volume_each = embed_volume(run, index);
  tally.mass_each = tally.volume_each * decoration.density;
  const Mass cast = static_cast<double>(tally.casts) * tally.mass_each;
  const Mass film = static_cast<double>(tally.tray_fills) * decoration.jug_film;
  const Mass melt = (cast + film) / (1 - decoration.melt_loss.of_one());
  tally.make = rounded_up(melt, run.scales.large.reads);
  tally.fit = std::move(fit);
  return tally;
}

}  // namespace brimwright::planning
