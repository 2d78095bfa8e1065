#include "reports/picture_sheet.h"

#include "units/printing.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::reports {
namespace {

using Anchor = Lettering::Anchor;

constexpr std::size_t hatchings = 8;

std::string drawn(const std::string& path) {
  return "<path d=\"" + path + "\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.22\"/>";
}

void add_hatchings(SvgDrawing& sheet) {
  const auto add = [&](int index, double tile, const std::string& path) {
    sheet.pattern(hatching(static_cast<std::size_t>(index)), tile, drawn(path));
  };
  add(0, 2.4, "M-0.6 0.6L0.6 -0.6M0 2.4L2.4 0M1.8 3L3 1.8");
  sheet.pattern(hatching(1), 1.8,
                "<circle cx=\"0.5\" cy=\"0.5\" r=\"0.22\"/><circle cx=\"1.4\" cy=\"1.4\" "
                "r=\"0.22\"/>");
  add(2, 1.5, "M0 0.75H1.5");
  add(3, 3.2, "M0 3.2L3.2 0M0 0L3.2 3.2");
  add(4, 2.4, "M-0.6 1.8L0.6 3M0 0L2.4 2.4M1.8 -0.6L3 0.6");
  add(5, 1.5, "M0.75 0V1.5");
  add(6, 3, "M0.4 0.75H1.8M1.9 2.25H3M0 2.25H0.3");
  add(7, 2.2, "M0 1.1H2.2M1.1 0V2.2");
}

/// Heights for the labels that are in order, a pitch apart and as near their places as can be: for
/// places less their pitches that is the nearest rising sequence, found by pooling neighbours that
/// are out of order (isotonic regression).
std::vector<double> spread(const std::vector<Label>& labels, double top, double bottom) {
  struct Pool {
    double sum;
    int count;
    double mean() const { return sum / count; }
  };
  std::vector<Pool> pools;
  for (std::size_t i = 0; i < labels.size(); ++i) {
    pools.push_back({labels[i].place[1] - label_pitch * static_cast<double>(i), 1});
    while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
      const Pool last = pools.back();
      pools.pop_back();
      pools.back().sum += last.sum;
      pools.back().count += last.count;
    }
  }
  const double room = label_pitch * static_cast<double>(labels.size()) - label_pitch;
  std::vector<double> heights;
  for (const Pool& pool : pools)
    for (int i = 0; i < pool.count; ++i)
      heights.push_back(std::max(top, std::min(pool.mean(), bottom - room)) +
                        label_pitch * static_cast<double>(heights.size()));
  return heights;
}

void scale_bar(SvgDrawing& sheet, PaperPoint corner, double part, int parts,
               const std::string& text) {
  constexpr double thick = 1.6;
  for (int i = 0; i < parts; ++i)
    sheet.rectangle({corner[0] + part * i, corner[1]}, part, thick, i % 2 == 0 ? "black" : "white");
  sheet.words({corner[0] + part * parts + 2, corner[1] + thick}, text, {.size_mm = label_size});
}

}  // namespace

std::string in_both(Length length) {
  if (length == Length()) return "0 mm";
  return trimmed(length / millimetre, 1) + " mm (" + in_inches(length) + ")";
}

SvgDrawing new_sheet(const std::string& prefix) {
  SvgDrawing sheet(prefix);
  sheet.style("words", "font-family:Helvetica,Arial,'Liberation Sans',sans-serif;fill:#000");
  sheet.style("paper", "fill:#fff;stroke:none");
  sheet.style("wall", "fill:none;stroke:#000;stroke-width:0.6;stroke-linejoin:round");
  sheet.style("pour", "fill:none;stroke:#000;stroke-width:0.45;stroke-dasharray:3 1.2");
  sheet.style("crease", "fill:none;stroke:#000;stroke-width:0.35;stroke-linejoin:round");
  sheet.style("hidden", "fill:none;stroke:#000;stroke-width:0.3;stroke-dasharray:1.6 1");
  sheet.style("fine", "fill:none;stroke:#000;stroke-width:0.18");
  sheet.style("mark", "fill:none;stroke:#000;stroke-width:0.25;stroke-dasharray:0.5 0.9");
  sheet.style("chain", "fill:none;stroke:#000;stroke-width:0.25;stroke-dasharray:6 1.2 1 1.2");
  sheet.style("black", "fill:#000;stroke:#000;stroke-width:0.18");
  sheet.style("white", "fill:#fff;stroke:#000;stroke-width:0.18");
  add_hatchings(sheet);
  return sheet;
}

std::string hatching(std::size_t index) { return "hatch" + std::to_string(index % hatchings); }

void dimension_across(SvgDrawing& sheet, double from, double to, double y, double from_y,
                      const std::string& text) {
  const double beyond = y > from_y ? 1 : -1;
  for (const double x : {from, to}) {
    sheet.line({x, from_y + beyond}, {x, y + beyond}, "fine");
    sheet.line({x - 0.8, y + 0.8}, {x + 0.8, y - 0.8}, "fine");
  }
  sheet.line({from, y}, {to, y}, "fine");
  const double width = width_of(text, label_size);
  if (width > std::abs(to - from))
    sheet.rectangle({(from + to - width) / 2, y - 1 - label_size}, width, label_size + 0.6,
                    "paper");
  sheet.words({(from + to) / 2, y - 1}, text, {.size_mm = label_size, .anchor = Anchor::middle});
}

void dimension_upright(SvgDrawing& sheet, double top, double bottom, double x, double from_x,
                       const std::string& text) {
  for (const double y : {top, bottom}) {
    sheet.line({from_x - 1, y}, {x - 1, y}, "fine");
    sheet.line({x - 0.8, y + 0.8}, {x + 0.8, y - 0.8}, "fine");
  }
  sheet.line({x, top}, {x, bottom}, "fine");
  const double width = width_of(text, label_size);
  if (width > bottom - top)
    sheet.rectangle({x - 1 - label_size, (top + bottom - width) / 2}, label_size + 0.6, width,
                    "paper");
  sheet.words({x - 1, (top + bottom) / 2}, text,
              {.size_mm = label_size, .anchor = Anchor::middle, .upward = true});
}

void set_labels(SvgDrawing& sheet, std::vector<Label> labels, double x, double top, double bottom) {
  std::stable_sort(labels.begin(), labels.end(),
                   [](const Label& a, const Label& b) { return a.place[1] < b.place[1]; });
  const std::vector<double> heights = spread(labels, top, bottom);
  for (std::size_t i = 0; i < labels.size(); ++i) {
    const Label& label = labels[i];
    sheet.open_line(
        {label.place, {x - 5, label.place[1]}, {x - 2, heights[i]}, {x - 0.8, heights[i]}}, "fine");
    if (label.dotted) sheet.circle(label.place, 0.5, "black");
    sheet.words({x, heights[i] + label_size / 3}, label.text,
                {.size_mm = label_size, .bold = label.bold});
  }
}

void scale_bars(SvgDrawing& sheet, PaperPoint corner, int ratio) {
  constexpr double tenth = 10, half_inch = 12.7;  // mm
  scale_bar(sheet, corner, tenth, 5, std::to_string(50 * ratio) + " mm");
  scale_bar(sheet, {corner[0] + 95, corner[1]}, half_inch, 4, std::to_string(2 * ratio) + " in");
}

}  // namespace brimwright::reports
