#include "reports/drawing.h"

#include <utility>

namespace brimwright::reports {

void Drawing::open_line(PaperLine points, Look look) {
  marks.emplace_back(OpenLine{look, std::move(points)});
}

void Drawing::closed_lines(std::vector<PaperLine> lines, Look look) {
  marks.emplace_back(ClosedLines{look, std::move(lines)});
}

void Drawing::rectangle(PaperPoint corner, double width, double height, Look look) {
  rectangle_inside({}, corner, width, height, look);
}

void Drawing::rectangle_inside(std::vector<PaperLine> lines, PaperPoint corner, double width,
                               double height, Look look) {
  marks.emplace_back(Rectangle{look, corner, width, height, std::move(lines)});
}

void Drawing::circle(PaperPoint middle, double radius, Look look) {
  marks.emplace_back(Circle{look, middle, radius});
}

void Drawing::words(PaperPoint at, std::string text, const Lettering& lettering) {
  marks.emplace_back(DrawnWords{at, std::move(text), lettering});
}

}  // namespace brimwright::reports
