#include "geometry/sections/plane_cut.h"

#include "geometry/surface/seeded_hash.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <stdexcept>
#include <unordered_map>
#include <utility>

namespace brimwright::geometry {
namespace {

using Outline = std::vector<std::uint32_t>;

/// Heights of the vertices over the plane, those within rounding being zero.
std::vector<double> heights_over(const Plane& plane, const std::vector<Point>& vertices) {
  double largest = std::abs(plane.offset_mm);
  for (const Point& p : vertices)
    for (const double coordinate : p) largest = std::max(largest, std::abs(coordinate));
  const auto& [a, b, c] = plane.normal;
  std::vector<double> heights;
  heights.reserve(vertices.size());
  for (const auto& [x, y, z] : vertices) {
    const double height = a * x + b * y + c * z - plane.offset_mm;
    heights.push_back(std::abs(height) <= 1e-13 * largest ? 0 : height);
  }
  return heights;
}

class Cutter {
 public:
  Cutter(const TriangleMesh& solid, const Plane& plane)
      : heights_(heights_over(plane, solid.vertices_mm)) {
    cut_.vertices_mm = solid.vertices_mm;
    for (const auto& corners : solid.triangles) add(corners);
    follow_outlines();
  }

  PlaneCut result() { return std::move(cut_); }

 private:
  static constexpr std::uint32_t unknown = std::numeric_limits<std::uint32_t>::max();

  /// An edge of the solid that meets the plane.
  struct Crossing {
    std::uint32_t vertex;          // where
    std::uint32_t next = unknown;  // the crossing that follows along the outline
  };

  using EdgeEnds = std::pair<std::uint32_t, std::uint32_t>;
  struct HashOfEnds {
    std::size_t operator()(const EdgeEnds& ends) const {
      return HashKeys::of_process().hash_of(ends.first, ends.second);
    }
  };

  bool is_below(std::uint32_t vertex) const { return heights_[vertex] < 0; }

  void add(const std::array<std::uint32_t, 3>& corners) {
    const auto below =
        std::count_if(corners.begin(), corners.end(), [&](std::uint32_t v) { return is_below(v); });
    if (below == 3) cut_.below.push_back(corners);
    if (below == 1 || below == 2) add_part(corners);
  }

  /// The part of a facet below the plane; the outline runs back along the cut.
  void add_part(const std::array<std::uint32_t, 3>& corners) {
    std::vector<std::uint32_t> part;
    std::uint32_t up = unknown, down = unknown;
    for (std::size_t i = 0; i < 3; ++i) {
      const std::uint32_t from = corners[i], to = corners[(i + 1) % 3];
      if (is_below(from)) part.push_back(from);
      if (is_below(from) == is_below(to)) continue;
      std::uint32_t& crossing = is_below(from) ? up : down;
      crossing = is_below(from) ? crossing_of(from, to) : crossing_of(to, from);
      part.push_back(crossings_[crossing].vertex);
    }
    if (crossings_[down].next != unknown) refuse_open();
    crossings_[down].next = up;
    for (std::size_t i = 2; i < part.size(); ++i) {
      const auto a = part[0], b = part[i - 1], c = part[i];
      if (a != b && b != c && c != a) cut_.below.push_back({a, b, c});
    }
  }

  std::uint32_t crossing_of(std::uint32_t below, std::uint32_t above) {
    const auto [known, is_new] =
        numbers_.try_emplace(EdgeEnds{below, above}, static_cast<std::uint32_t>(crossings_.size()));
    if (is_new) crossings_.push_back({.vertex = meeting_point(below, above)});
    return known->second;
  }

  std::uint32_t meeting_point(std::uint32_t below, std::uint32_t above) {
    if (heights_[above] == 0) return above;
    const Point low = cut_.vertices_mm[below], high = cut_.vertices_mm[above];
    const double share = heights_[below] / (heights_[below] - heights_[above]);
    Point p;
    for (std::size_t i = 0; i < 3; ++i) p[i] = low[i] + share * (high[i] - low[i]);
    if (p == low) return below;
    if (p == high) return above;
    cut_.vertices_mm.push_back(p);
    return static_cast<std::uint32_t>(cut_.vertices_mm.size() - 1);
  }

  void follow_outlines() {
    std::vector<bool> seen(crossings_.size(), false);
    for (std::uint32_t first = 0; first < crossings_.size(); ++first) {
      Outline outline;
      for (std::uint32_t at = first; !seen[at]; at = crossings_[at].next) {
        seen[at] = true;
        const std::uint32_t vertex = crossings_[at].vertex;
        if (outline.empty() || outline.back() != vertex) outline.push_back(vertex);
        if (crossings_[at].next == unknown) refuse_open();
      }
      while (outline.size() > 1 && outline.back() == outline.front()) outline.pop_back();
      if (outline.size() > 2) cut_.outlines.push_back(std::move(outline));
    }
  }

  [[noreturn]] static void refuse_open() {
    throw std::logic_error("a surface that is cut by a plane must be closed there");
  }

  std::vector<double> heights_;
  PlaneCut cut_;
  std::vector<Crossing> crossings_;
  std::unordered_map<EdgeEnds, std::uint32_t, HashOfEnds> numbers_;  // of crossings, by the edge
};

}  // namespace

PlaneCut plane_cut(const TriangleMesh& solid, const Plane& plane) {
  return Cutter(solid, plane).result();
}

std::vector<ClosedLine> plane_section(const TriangleMesh& solid, const Plane& plane) {
  const PlaneCut cut = plane_cut(solid, plane);
  std::vector<ClosedLine> lines;
  for (const auto& outline : cut.outlines) {
    ClosedLine line;
    for (const std::uint32_t vertex : outline) line.push_back(cut.vertices_mm[vertex]);
    lines.push_back(std::move(line));
  }
  return lines;
}

}  // namespace brimwright::geometry
