#include "reports/side_view.h"

#include "geometry/surface/enclosed_volume.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <map>
#include <utility>

namespace brimwright::reports {
namespace {

using geometry::TriangleMesh;
using Cell = std::pair<int, int>;  // column, row

constexpr double finest_cell_mm = 0.15;
constexpr int most_cells = 700;           // across or up
constexpr double step_in_depth_mm = 0.8;  // one surface passing before another
constexpr double flatness_mm = 0.06;      // lines may be that far off what they stand for
constexpr std::int32_t nothing = -1;

/// Which part is nearest the viewer in each cell, and how far away.
class FrontMap {
 public:
  FrontMap(std::array<double, 2> across, std::array<double, 2> up)
      : across_(across),
        up_(up),
        cell_(std::max(
            {finest_cell_mm, (across[1] - across[0]) / most_cells, (up[1] - up[0]) / most_cells})),
        columns_(static_cast<int>((across[1] - across[0]) / cell_) + 3),
        rows_(static_cast<int>((up[1] - up[0]) / cell_) + 3),
        part_(static_cast<std::size_t>(columns_ * rows_), nothing),
        depth_(part_.size(), std::numeric_limits<double>::infinity()) {}

  void show(const TriangleMesh& solid, std::int32_t part) {
    for (const auto& facet : solid.triangles)
      show(solid.vertices_mm[facet[0]], solid.vertices_mm[facet[1]], solid.vertices_mm[facet[2]],
           part);
  }

  std::int32_t part_at(const Cell& cell) const {
    return is_inside(cell) ? part_[at(cell)] : nothing;
  }
  double depth_at(const Cell& cell) const { return depth_[at(cell)]; }
  bool is_inside(const Cell& c) const {
    return c.first >= 0 && c.first < columns_ && c.second >= 0 && c.second < rows_;
  }
  int columns() const { return columns_; }
  int rows() const { return rows_; }
  /// The corner between cells, in the view's millimetres; corner (i, j) is the lower left of cell
  /// (i, j).
  std::array<double, 2> corner(const Cell& c) const {
    return {across_[0] + (c.first - 1) * cell_, up_[0] + (c.second - 1) * cell_};
  }

 private:
  std::size_t at(const Cell& c) const {
    return static_cast<std::size_t>(c.second * columns_ + c.first);
  }

  /// Cells whose middle the facet covers, seen along y.
  void show(const geometry::Vector& a, const geometry::Vector& b, const geometry::Vector& c,
            std::int32_t part) {
    const double whole = (b[0] - a[0]) * (c[2] - a[2]) - (b[2] - a[2]) * (c[0] - a[0]);
    if (whole == 0) return;
    const auto cells = [&](double low, double high, double from) {
      return std::pair{static_cast<int>(std::ceil((low - from) / cell_ + 0.5)),
                       static_cast<int>(std::floor((high - from) / cell_ + 0.5))};
    };
    const auto [first, last] =
        cells(std::min({a[0], b[0], c[0]}), std::max({a[0], b[0], c[0]}), across_[0]);
    const auto [lowest, highest] =
        cells(std::min({a[2], b[2], c[2]}), std::max({a[2], b[2], c[2]}), up_[0]);
    for (int j = lowest; j <= highest; ++j)
      for (int i = first; i <= last; ++i) {
        const double x = across_[0] + (i - 0.5) * cell_, z = up_[0] + (j - 0.5) * cell_;
        const double v = ((x - a[0]) * (c[2] - a[2]) - (z - a[2]) * (c[0] - a[0])) / whole;
        const double w = ((b[0] - a[0]) * (z - a[2]) - (b[2] - a[2]) * (x - a[0])) / whole;
        if (v < 0 || w < 0 || v + w > 1) continue;
        const double y = a[1] + v * (b[1] - a[1]) + w * (c[1] - a[1]);
        double& nearest = depth_[at({i, j})];
        if (y >= nearest) continue;
        nearest = y;
        part_[at({i, j})] = part;
      }
  }

  std::array<double, 2> across_, up_;
  double cell_;
  int columns_, rows_;
  std::vector<std::int32_t> part_;
  std::vector<double> depth_;
};

/// Points of `line` that matter: Douglas and Peucker's, to `flatness_mm`.
void keep_what_matters(const SideLine& line, std::size_t first, std::size_t last,
                       std::vector<bool>& kept) {
  double furthest = flatness_mm;
  std::size_t where = 0;
  const auto &a = line[first], &b = line[last];
  const double length = std::hypot(b[0] - a[0], b[1] - a[1]);
  for (std::size_t i = first + 1; i < last; ++i) {
    const auto& p = line[i];
    const double away =
        length > 0
            ? std::abs((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / length
            : std::hypot(p[0] - a[0], p[1] - a[1]);
    if (away <= furthest) continue;
    furthest = away;
    where = i;
  }
  if (where == 0) return;
  kept[where] = true;
  keep_what_matters(line, first, where, kept);
  keep_what_matters(line, where, last, kept);
}

SideLine simplified(const SideLine& line) {
  if (line.size() < 3) return line;
  std::vector<bool> kept(line.size(), false);
  kept.front() = kept.back() = true;
  keep_what_matters(line, 0, line.size() - 1, kept);
  SideLine simple;
  for (std::size_t i = 0; i < line.size(); ++i)
    if (kept[i]) simple.push_back(line[i]);
  return simple;
}

/// The stairs of a grid made smooth: the middles of its steps, averaged with their neighbours.
SideLine smoothed(const SideLine& stairs, bool is_closed) {
  const std::size_t n = stairs.size();
  SideLine line;
  if (!is_closed) line.push_back(stairs.front());
  for (std::size_t i = 0; i + (is_closed ? 0 : 1) < n; ++i) {
    const auto &a = stairs[i], &b = stairs[(i + 1) % n];
    line.push_back({(a[0] + b[0]) / 2, (a[1] + b[1]) / 2});
  }
  if (!is_closed) line.push_back(stairs.back());
  SideLine even = line;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const bool is_end = !is_closed && (i == 0 || i + 1 == line.size());
    if (is_end) continue;
    const auto& before = line[(i + line.size() - 1) % line.size()];
    const auto& after = line[(i + 1) % line.size()];
    for (std::size_t k = 0; k < 2; ++k) even[i][k] = (before[k] + 2 * line[i][k] + after[k]) / 4;
  }
  return simplified(even);
}

/// Steps along cell borders, each from corner to corner, joined to lines. A step is used once.
class Steps {
 public:
  void add(const Cell& from, const Cell& to) { next_[from].push_back(to); }

  /// Lines of corners; closed ones end where they began, less the repetition.
  std::vector<std::pair<std::vector<Cell>, bool>> lines() {
    std::vector<std::pair<std::vector<Cell>, bool>> all;
    while (!next_.empty()) {
      std::vector<Cell> line = {start()};
      while (take_step(line)) {
      }
      const bool is_closed = line.size() > 2 && line.front() == line.back();
      if (is_closed) line.pop_back();
      all.emplace_back(std::move(line), is_closed);
    }
    return all;
  }

 private:
  /// Where no step leads to, if there is such a corner: an open line is taken from its end.
  Cell start() const {
    std::map<Cell, int> arrivals;
    for (const auto& [from, steps] : next_)
      for (const auto& to : steps) ++arrivals[to];
    for (const auto& [from, steps] : next_)
      if (!arrivals.contains(from)) return from;
    return next_.begin()->first;
  }

  bool take_step(std::vector<Cell>& line) {
    const auto found = next_.find(line.back());
    if (found == next_.end()) return false;
    line.push_back(found->second.back());
    found->second.pop_back();
    if (found->second.empty()) next_.erase(found);
    return line.back() != line.front();
  }

  std::map<Cell, std::vector<Cell>> next_;
};

SideLine on_view(const FrontMap& map, const std::vector<Cell>& corners, bool is_closed) {
  SideLine line;
  for (const auto& corner : corners) line.push_back(map.corner(corner));
  return smoothed(line, is_closed);
}

/// Borders of the cells that show `part`, with them on the left.
std::vector<SideLine> borders_of(const FrontMap& map, std::int32_t part) {
  Steps steps;
  for (int j = 0; j < map.rows(); ++j)
    for (int i = 0; i < map.columns(); ++i) {
      if (map.part_at({i, j}) != part) continue;
      if (map.part_at({i, j - 1}) != part) steps.add({i, j}, {i + 1, j});
      if (map.part_at({i + 1, j}) != part) steps.add({i + 1, j}, {i + 1, j + 1});
      if (map.part_at({i, j + 1}) != part) steps.add({i + 1, j + 1}, {i, j + 1});
      if (map.part_at({i - 1, j}) != part) steps.add({i, j + 1}, {i, j});
    }
  std::vector<SideLine> borders;
  for (const auto& [corners, is_closed] : steps.lines())
    if (corners.size() > 8) borders.push_back(on_view(map, corners, is_closed));  // not a speck
  return borders;
}

/// Where neighbouring cells of one part lie at depths that jump.
std::vector<SideLine> creases_of(const FrontMap& map) {
  Steps steps;
  const auto climb = [&](const Cell& a, const Cell& b) {
    const bool is_one = map.part_at(a) != nothing && map.part_at(a) == map.part_at(b);
    return is_one ? map.depth_at(b) - map.depth_at(a) : 0.0;
  };
  // A jump, not a steep slope: the depth changes far less just before and just after it.
  const auto jumps = [&](const Cell& a, const Cell& b) {
    const double jump = climb(a, b);
    const Cell before{2 * a.first - b.first, 2 * a.second - b.second};
    const Cell after{2 * b.first - a.first, 2 * b.second - a.second};
    const double slope = std::max(std::abs(climb(before, a)), std::abs(climb(b, after)));
    return std::abs(jump) > std::max(step_in_depth_mm, 2.5 * slope) ? jump : 0.0;
  };
  for (int j = 0; j < map.rows(); ++j)
    for (int i = 0; i < map.columns(); ++i) {
      // The nearer surface lies on the left of the step, so that steps follow each other.
      if (const double right = jumps({i, j}, {i + 1, j}); right > 0)
        steps.add({i + 1, j}, {i + 1, j + 1});
      else if (right < 0)
        steps.add({i + 1, j + 1}, {i + 1, j});
      if (const double above = jumps({i, j}, {i, j + 1}); above > 0)
        steps.add({i + 1, j + 1}, {i, j + 1});
      else if (above < 0)
        steps.add({i, j + 1}, {i + 1, j + 1});
    }
  std::vector<SideLine> creases;
  for (const auto& [corners, is_closed] : steps.lines()) {
    if (corners.size() < 6) continue;
    SideLine line = on_view(map, corners, is_closed);
    if (is_closed) line.push_back(line.front());
    creases.push_back(std::move(line));
  }
  return creases;
}

}  // namespace

SideView side_view_of(const planning::PieceModel& model) {
  constexpr double far = std::numeric_limits<double>::infinity();
  SideView view{.seen = {}, .hidden = {}, .creases = {}, .across = {far, -far}, .up = {far, -far}};
  for (const auto& part : model.parts)
    for (const auto& solid : part.solids) {
      const auto box = geometry::bounding_box(solid);
      view.across = {std::min(view.across[0], box.low_mm[0]),
                     std::max(view.across[1], box.high_mm[0])};
      view.up = {std::min(view.up[0], box.low_mm[2]), std::max(view.up[1], box.high_mm[2])};
    }
  FrontMap map(view.across, view.up);
  for (std::size_t i = 0; i < model.parts.size(); ++i)
    if (!model.parts[i].is_buried)
      for (const auto& solid : model.parts[i].solids) map.show(solid, static_cast<std::int32_t>(i));
  for (std::size_t i = 0; i < model.parts.size(); ++i) {
    view.seen.push_back(model.parts[i].is_buried ? std::vector<SideLine>{}
                                                 : borders_of(map, static_cast<std::int32_t>(i)));
    view.hidden.emplace_back();
    if (!model.parts[i].is_buried) continue;
    for (const auto& solid : model.parts[i].solids) {
      FrontMap alone(view.across, view.up);
      alone.show(solid, 0);
      for (auto& line : borders_of(alone, 0)) view.hidden.back().push_back(std::move(line));
    }
  }
  view.creases = creases_of(map);
  return view;
}

}  // namespace brimwright::reports
