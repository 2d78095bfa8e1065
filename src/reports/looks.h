#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// A point on paper, in millimetres; y grows downward.
using PaperPoint = std::array<double, 2>;
using PaperLine = std::vector<PaperPoint>;

/// What lines and areas of a drawing look like, in black and white.
enum class Look : std::uint8_t {
  paper,
  wall,
  pour,
  crease,
  hidden,
  fine,
  mark,
  chain,
  black,
  white,
  first_hatching
};

/// The hatching of layer `index`: eight that are told apart, then again from the first.
Look hatching(std::size_t index);

/// Tiles, side by side from the drawing's corner, of thin lines or dots.
struct Hatching {
  double tile_mm = 0;
  std::vector<PaperLine> lines = {};
  std::vector<PaperPoint> dots = {};
};
inline constexpr double hatching_line_mm = 0.22, hatching_dot_mm = 0.22;  // thick; in radius

struct LookDrawn {
  enum class Fill { none, black, white, hatching };

  std::string name;  // "wall", "hatch3"
  Fill fill = Fill::none;
  double line_mm = 0;  // 0: no line
  std::vector<double> dashes_mm = {};
  bool joins_are_round = false;
  Hatching hatching = {};
};

/// All of them, each at its place in `Look`, the hatchings last.
const std::vector<LookDrawn>& looks();
const LookDrawn& drawn(Look look);

}  // namespace brimwright::reports
