#pragma once

#include "units/quantity.h"
#include "units/share.h"
#include "units/user_error.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// How much pieces differ, by the maker: finished pieces weighed, or what she knows of her pours.
struct PieceSpread {
  std::vector<Mass> weighed_pieces;        // finished, cured pieces; three or more, or none
  std::optional<Mass> either_way;          // a piece is up to so much heavier or lighter
  std::optional<Share> share;              // the same as a share of its weight
  std::optional<Length> pour_line_off_by;  // the line is up to so much higher or lower
};

/// The lightest piece to believe in, and how it was come by.
struct LightestPiece {
  struct Less {
    std::string for_what;
    Mass mass;
  };

  Mass mass;  // what it is reckoned from, less all that is taken off
  Mass mean;
  std::string because;  // in words
  std::string from_what = {};
  Mass from = {};
  std::vector<Less> less = {};
};

/// From pieces weighed: mean - 3 standard deviations (of the sample, n - 1), or the lightest of
/// them if that is less; three of these leave out one piece in 700 if weights are normal.
/// Less half the step of the scale that weighed them.
///
/// UserError at `where` for fewer than three pieces, or when nothing believable is left.
LightestPiece lightest_of(const std::vector<Mass>& weighed, Mass scale_step, const Place& where);

/// From a cured weight reckoned ahead: less all that the maker's spread says, summed: the worst
/// case. `per_depth` is the cured mass of the base that one unit of depth holds at the pour line.
///
/// UserError at `where` when the spread says nothing, or when it leaves no piece.
LightestPiece lightest_of(Mass cured, Quantity<-1, 1> per_depth, const PieceSpread& spread,
                          Mass scale_step, const Place& where);

/// The same for the bars of a loaf, which differ as they are cut: from the lightest of them, whose
/// `mean` is known.
LightestPiece lightest_of(Mass lightest_bar, Mass mean, Quantity<-1, 1> per_depth,
                          const PieceSpread& spread, Mass scale_step, const Place& where);

}  // namespace brimwright::planning
