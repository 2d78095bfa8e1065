#include "reports/mould_views.h"

#include "geometry/sections/plane_cut.h"
#include "geometry/surface/enclosed_volume.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace brimwright::reports {
namespace {

using geometry::Plane;
using geometry::TriangleMesh;

ViewLines seen(const TriangleMesh& solid, const Plane& plane, std::size_t across, std::size_t up) {
  ViewLines lines;
  for (const auto& points : geometry::plane_section(solid, plane)) {
    ViewLine line;
    for (const auto& p : points) line.push_back({p[across], p[up]});
    lines.push_back(std::move(line));
  }
  return lines;
}

ViewLines section_at(const TriangleMesh& solid, double away) {
  return seen(solid, {.normal = {0, -1, 0}, .offset_mm = -away}, 0, 2);
}

double width_across(const ViewLines& lines) {
  double from = 0, to = 0;
  bool is_first = true;
  for (const ViewLine& line : lines)
    for (const auto& p : line) {
      from = is_first ? p[0] : std::min(from, p[0]);
      to = is_first ? p[0] : std::max(to, p[0]);
      is_first = false;
    }
  return to - from;
}

/// How far away the solid reaches furthest to one side: the middle of the places where it does.
double away_where_across_is(const TriangleMesh& solid, double across, double fair) {
  double from = 0, to = 0;
  bool is_first = true;
  for (const auto& p : solid.vertices_mm) {
    if (std::abs(p[0] - across) > fair) continue;
    from = is_first ? p[1] : std::min(from, p[1]);
    to = is_first ? p[1] : std::max(to, p[1]);
    is_first = false;
  }
  return (from + to) / 2;
}

double widest_cut(const TriangleMesh& solid, const geometry::Box& box) {
  const double middle = (box.low_mm[1] + box.high_mm[1]) / 2;
  const double fair = 1e-6 * (box.high_mm[0] - box.low_mm[0]);
  double cut = middle, width = width_across(section_at(solid, middle));
  for (const double side : {box.low_mm[0], box.high_mm[0]}) {
    const double away = away_where_across_is(solid, side, fair);
    const double other = width_across(section_at(solid, away));
    if (other <= width + fair) continue;
    cut = away;
    width = other;
  }
  return cut;
}

/// The section's level edges at a height, those that touch being one.
std::vector<Reach> reaches_at(const ViewLines& section, double height, double fair) {
  std::vector<Reach> reaches;
  for (const ViewLine& line : section)
    for (std::size_t i = 0; i < line.size(); ++i) {
      const auto &a = line[i], &b = line[(i + 1) % line.size()];
      if (std::abs(a[1] - height) <= fair && std::abs(b[1] - height) <= fair)
        reaches.push_back({std::min(a[0], b[0]), std::max(a[0], b[0])});
    }
  std::sort(reaches.begin(), reaches.end(),
            [](const Reach& a, const Reach& b) { return a.from < b.from; });
  std::vector<Reach> joined;
  for (const Reach& reach : reaches) {
    if (!joined.empty() && reach.from <= joined.back().to + fair)
      joined.back().to = std::max(joined.back().to, reach.to);
    else
      joined.push_back(reach);
  }
  std::erase_if(joined, [&](const Reach& reach) { return reach.to - reach.from <= fair; });
  return joined;
}

double greatest_in(const ViewLines& lines) {
  double greatest = 0;
  for (const ViewLine& line : lines)
    for (const auto& p : line) greatest = std::max({greatest, std::abs(p[0]), std::abs(p[1])});
  return greatest;
}

/// Whether the box round `lines` reaches out beyond the one round `others` by more than a line's
/// width.
bool reaches_beyond(const ViewLines& lines, const ViewLines& others) {
  constexpr double line_width = 0.3;  // mm
  if (others.empty()) return true;
  for (const double sign : {-1.0, 1.0})
    for (const std::size_t axis : {std::size_t{0}, std::size_t{1}}) {
      const auto furthest = [&](const ViewLines& some) {
        double far = -greatest_in(some);
        for (const ViewLine& line : some)
          for (const auto& p : line) far = std::max(far, sign * p[axis]);
        return far;
      };
      if (furthest(lines) > furthest(others) + line_width) return true;
    }
  return false;
}

double area_in(const ViewLines& lines) {
  double doubled = 0;
  for (const ViewLine& line : lines)
    for (std::size_t i = 0; i < line.size(); ++i) {
      const auto &a = line[i], &b = line[(i + 1) % line.size()];
      doubled += a[0] * b[1] - b[0] * a[1];
    }
  return doubled / 2;
}

/// The largest of the plans at forty heights, which is as close as a drawing shows.
ViewLines widest_plan(const TriangleMesh& solid, double low, double high) {
  constexpr int heights = 40;
  ViewLines widest;
  for (int i = 1; i < heights; ++i) {
    ViewLines plan = seen(solid, Plane::level(low + (high - low) * i / heights), 0, 1);
    if (area_in(plan) > area_in(widest)) widest = std::move(plan);
  }
  return widest;
}

}  // namespace

ViewLines plan_at(const TriangleMesh& solid, Length depth) {
  const double low = geometry::bounding_box(solid).low_mm[2];
  return seen(solid, Plane::level(low + depth / millimetre), 0, 1);
}

MouldViews views_of(const TriangleMesh& solid) {
  const geometry::Box box = geometry::bounding_box(solid);
  const double low = box.low_mm[2], high = box.high_mm[2];
  const double fair = 1e-6 * (high - low);
  MouldViews views{.across = {box.low_mm[0], box.high_mm[0]},
                   .away = {box.low_mm[1], box.high_mm[1]},
                   .up = {low, high},
                   .cut = widest_cut(solid, box),
                   .section = {},
                   .brim_reaches = {},
                   .floor_reaches = {},
                   .brim = seen(solid, Plane::level(high), 0, 1),
                   .floor = seen(solid, Plane::level(low).flipped(), 0, 1),
                   .widest = {}};
  views.section = section_at(solid, views.cut);
  views.brim_reaches = reaches_at(views.section, high, fair);
  views.floor_reaches = reaches_at(views.section, low, fair);
  ViewLines widest = widest_plan(solid, low, high);
  if (reaches_beyond(widest, views.brim)) views.widest = std::move(widest);
  return views;
}

}  // namespace brimwright::reports
