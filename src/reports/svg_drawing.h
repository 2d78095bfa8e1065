#pragma once

#include <array>
#include <string>
#include <vector>

namespace brimwright::reports {

/// `text` for XML content and attributes: markup escaped; characters that XML 1.0 does not allow,
/// and bytes that are not UTF-8, shown as U+FFFD.
std::string xml_escaped(const std::string& text);

/// A point on paper, in millimetres; y grows downward.
using PaperPoint = std::array<double, 2>;
using PaperLine = std::vector<PaperPoint>;

/// How words stand to their point.
struct Lettering {
  enum class Anchor { start, middle, end };
  double size_mm = 3;  // of the font; 3 mm are 8.5 points
  Anchor anchor = Anchor::start;
  bool bold = false;
  bool upward = false;  // turned a quarter, to be read from the right-hand side
};

/// About how wide `text` is in a sans serif font of that size; on the safe side.
double width_of(const std::string& text, double size_mm);

/// `text` broken at blanks, or within words where it must be, into lines no wider than that.
std::vector<std::string> broken(const std::string& text, double size_mm, double width_mm);

/// An SVG 1.1 picture under construction, a millimetre to a unit. What is given later lies on top.
///
/// Its names (classes, patterns, clips) begin with a prefix, so that several pictures can stand on
/// one HTML page. A `look` is a class of the style sheet, without the prefix.
class SvgDrawing {
 public:
  explicit SvgDrawing(std::string prefix) : prefix_(std::move(prefix)) {}

  void line(PaperPoint from, PaperPoint to, const std::string& look);
  void open_line(const PaperLine& points, const std::string& look);
  /// Filled by the even-odd rule, so that lines within lines are holes.
  void closed_lines(const std::vector<PaperLine>& lines, const std::string& look);
  void rectangle(PaperPoint corner, double width_mm, double height_mm, const std::string& look);
  /// The rectangle as far as it lies inside the closed lines.
  void rectangle_inside(const std::vector<PaperLine>& lines, PaperPoint corner, double width_mm,
                        double height_mm, const std::string& look);
  void circle(PaperPoint middle, double radius_mm, const std::string& look);
  void words(PaperPoint at, const std::string& text, const Lettering& lettering);

  /// A class of the style sheet: "fill:none;stroke:#000".
  void style(const std::string& look, const std::string& declarations);
  /// A class that fills with a pattern of square tiles, `drawn` in SVG, and has a fine border.
  void pattern(const std::string& look, double tile_mm, const std::string& drawn);

  /// The whole file; `title` is for screen readers.
  std::string file(double width_mm, double height_mm, const std::string& title) const;

 private:
  std::string shape(const std::string& element, const std::string& look) const;

  std::string prefix_;
  std::string styles_, definitions_, body_;
  int clips_ = 0;
};

}  // namespace brimwright::reports
