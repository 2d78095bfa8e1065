#pragma once

#include "reports/looks.h"

#include <string>
#include <variant>
#include <vector>

namespace brimwright::reports {

/// How words stand to their point.
struct Lettering {
  enum class Anchor { start, middle, end };
  double size_mm = 3;  // of the font; 3 mm are 8.5 points
  Anchor anchor = Anchor::start;
  bool bold = false;
  bool upward = false;  // turned a quarter, to be read from the right-hand side
};

// What a drawing is made of, in millimetres on paper.

struct OpenLine {
  Look look;
  PaperLine points;
};
/// Filled by the even-odd rule, so that lines within lines are holes.
struct ClosedLines {
  Look look;
  std::vector<PaperLine> lines;
};
struct Rectangle {
  Look look;
  PaperPoint corner;
  double width_mm = 0, height_mm = 0;
  std::vector<PaperLine> inside =
      {};  // closed: only what lies inside them is drawn, if there are any
};
struct Circle {
  Look look;
  PaperPoint middle;
  double radius_mm = 0;
};
struct DrawnWords {
  PaperPoint at;
  std::string text;
  Lettering lettering;
};

using Mark = std::variant<OpenLine, ClosedLines, Rectangle, Circle, DrawnWords>;

/// A drawing before it is on any kind of paper. Its printers are svg_of and the PDF's. What is
/// given later lies on top.
struct Drawing {
  std::string prefix = {};  // of the names in its SVG, so that several can stand on one HTML page
  std::string title = {};   // for screen readers
  double width_mm = 0, height_mm = 0;
  std::vector<Mark> marks = {};

  void line(PaperPoint from, PaperPoint to, Look look) { open_line({from, to}, look); }
  void open_line(PaperLine points, Look look);
  void closed_lines(std::vector<PaperLine> lines, Look look);
  void rectangle(PaperPoint corner, double width, double height, Look look);
  /// The rectangle as far as it lies inside the closed lines.
  void rectangle_inside(std::vector<PaperLine> lines, PaperPoint corner, double width,
                        double height, Look look);
  void circle(PaperPoint middle, double radius, Look look);
  void words(PaperPoint at, std::string text, const Lettering& lettering);
};

}  // namespace brimwright::reports
