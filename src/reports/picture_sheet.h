#pragma once

#include "reports/drawing.h"
#include "reports/drawn_text.h"
#include "units/quantity.h"

#include <string>
#include <vector>

namespace brimwright::reports {

// The draughtsman's hand: what the views of a mould have in common on paper.

/// Sizes on paper in millimetres.
inline constexpr double sheet_width = 190, sheet_height = 259;  // A4 and Letter less 10 mm margins
inline constexpr double label_size = 2.8, caption_size = 3.2, title_size = 5;

/// "38 mm (1 1/2 in)".
std::string in_both(Length length);

/// A dimension line between two places at height `y`, its text above it; `from_y` is where its
/// extension lines begin.
void dimension_across(Drawing& sheet, double from, double to, double y, double from_y,
                      const std::string& text);
/// The same upright at `x`, its text reading upward on its left.
void dimension_upright(Drawing& sheet, double top, double bottom, double x, double from_x,
                       const std::string& text);

/// Words beside a drawing, led to a place in it.
struct Label {
  PaperPoint place;
  std::string text;
  bool bold = false;
  bool dotted = false;  // its leader begins with a dot, in the middle of what it names
};
inline constexpr double label_pitch = 4.4;

/// Sets labels in a column at `x`, between `top` and `bottom`, each as near the height of its place
/// as the others let it.
void set_labels(Drawing& sheet, std::vector<Label> labels, double x, double top, double bottom);

/// Bars that are 50 mm and 2 in long on paper, marked with what they are long in the drawing.
void scale_bars(Drawing& sheet, PaperPoint corner, int ratio);

}  // namespace brimwright::reports
