#pragma once

#include "planning/tally.h"

#include <cstddef>
#include <optional>

namespace brimwright::planning {

/// What of one cast's base, and of its topping, a piece has: one, or the mean share of a loaf's
/// bars, what lies in it and what is cut off left out.
double base_in_a_piece(const std::optional<CutTally>& cut);
double topping_in_a_piece(const std::optional<CutTally>& cut);
/// The same of one layer of the base.
double layer_in_a_piece(const std::optional<CutTally>& cut, std::size_t layer);

/// The mass of a layer's colour in one cast: what went into the batter that was left in pot and
/// jugs is none of it.
Mass colour_in_a_cast(const LayerTally& layer, const Ingredient& colour);

/// What one piece is made of, part by part, as poured and as sold: batters by their volume and
/// density, layers' colours, decorations and powders by what is on the piece.
///
/// Of a loaf that is cut each bar has what lies between its own cuts: batter by layers without the
/// room of embeds, embeds by their own density, topping by its shape, a drizzle and what is dusted
/// over the loaf by the bar's share of the top's area. What is set on each bar is whole. Of what is
/// set on the loaf without a place a bar is sure of nothing; the mean counts it by area.
/// `size` is the finished piece's, where it is known.
PieceTally piece_of(const Plan& plan, const Run& run, const std::optional<PieceSize>& size);

/// The mean mass of one decoration in a piece, when the plan's piece is told.
Mass decoration_in_a_piece(const Plan& plan, std::size_t decoration);

}  // namespace brimwright::planning
