#include "reports/picture_sheet.h"

#include "units/printing.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::reports {
namespace {

using Anchor = Lettering::Anchor;

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

void scale_bar(Drawing& sheet, PaperPoint corner, double part, int parts, const std::string& text) {
  constexpr double thick = 1.6;
  for (int i = 0; i < parts; ++i)
    sheet.rectangle({corner[0] + part * i, corner[1]}, part, thick,
                    i % 2 == 0 ? Look::black : Look::white);
  sheet.words({corner[0] + part * parts + 2, corner[1] + thick}, text, {.size_mm = label_size});
}

}  // namespace

std::string in_both(Length length) {
  if (length == Length()) return "0 mm";
  return trimmed(length / millimetre, 1) + " mm (" + in_inches(length) + ")";
}

void dimension_across(Drawing& sheet, double from, double to, double y, double from_y,
                      const std::string& text) {
  const double beyond = y > from_y ? 1 : -1;
  for (const double x : {from, to}) {
    sheet.line({x, from_y + beyond}, {x, y + beyond}, Look::fine);
    sheet.line({x - 0.8, y + 0.8}, {x + 0.8, y - 0.8}, Look::fine);
  }
  sheet.line({from, y}, {to, y}, Look::fine);
  const double width = width_of(text, label_size);
  if (width > std::abs(to - from))
    sheet.rectangle({(from + to - width) / 2, y - 1 - label_size}, width, label_size + 0.6,
                    Look::paper);
  sheet.words({(from + to) / 2, y - 1}, text, {.size_mm = label_size, .anchor = Anchor::middle});
}

void dimension_upright(Drawing& sheet, double top, double bottom, double x, double from_x,
                       const std::string& text) {
  for (const double y : {top, bottom}) {
    sheet.line({from_x - 1, y}, {x - 1, y}, Look::fine);
    sheet.line({x - 0.8, y + 0.8}, {x + 0.8, y - 0.8}, Look::fine);
  }
  sheet.line({x, top}, {x, bottom}, Look::fine);
  const double width = width_of(text, label_size);
  if (width > bottom - top)
    sheet.rectangle({x - 1 - label_size, (top + bottom - width) / 2}, label_size + 0.6, width,
                    Look::paper);
  sheet.words({x - 1, (top + bottom) / 2}, text,
              {.size_mm = label_size, .anchor = Anchor::middle, .upward = true});
}

void set_labels(Drawing& sheet, std::vector<Label> labels, double x, double top, double bottom) {
  std::stable_sort(labels.begin(), labels.end(),
                   [](const Label& a, const Label& b) { return a.place[1] < b.place[1]; });
  const std::vector<double> heights = spread(labels, top, bottom);
  for (std::size_t i = 0; i < labels.size(); ++i) {
    const Label& label = labels[i];
    sheet.open_line(
        {label.place, {x - 5, label.place[1]}, {x - 2, heights[i]}, {x - 0.8, heights[i]}},
        Look::fine);
    if (label.dotted) sheet.circle(label.place, 0.5, Look::black);
    sheet.words({x, heights[i] + label_size / 3}, label.text,
                {.size_mm = label_size, .bold = label.bold});
  }
}

void scale_bars(Drawing& sheet, PaperPoint corner, int ratio) {
  constexpr double tenth = 10, half_inch = 12.7;  // mm
  scale_bar(sheet, corner, tenth, 5, std::to_string(50 * ratio) + " mm");
  scale_bar(sheet, {corner[0] + 95, corner[1]}, half_inch, 4, std::to_string(2 * ratio) + " in");
}

}  // namespace brimwright::reports
