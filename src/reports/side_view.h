#pragma once

#include "planning/piece.h"

#include <array>
#include <cstddef>
#include <vector>

namespace brimwright::reports {

/// Closed or open lines in a view, in millimetres: across (x) and up (z).
using SideLine = std::vector<std::array<double, 2>>;

/// What of a piece is seen from the front, along +y.
struct SideView {
  std::vector<std::vector<SideLine>> seen;    // of each part: borders of what shows, even-odd
  std::vector<std::vector<SideLine>> hidden;  // of each buried part: its outline behind the rest
  std::vector<SideLine> creases;              // open: where one coil passes before another
  std::array<double, 2> across, up;           // lowest and highest of each
};

/// Nearest surfaces are found on a grid of about 0.15 mm (500 cells across at most for large
/// pieces, which are drawn smaller), and its borders smoothed: good to about a cell, less than a
/// drawn line is thick.
SideView side_view_of(const planning::PieceModel& model);

}  // namespace brimwright::reports
