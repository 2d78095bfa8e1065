#include "geometry/sections/plane_cut.h"

#include "geometry/surface/parallel.h"
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
  const auto parts =
      in_parts<double>(vertices.size(), [at = vertices.data()](std::size_t v, double& largest) {
        for (const double coordinate : at[v]) largest = std::max(largest, std::abs(coordinate));
      });
  double largest = std::abs(plane.offset_mm);
  for (const double part : parts) largest = std::max(largest, part);
  std::vector<double> heights(vertices.size());
  in_stretches(vertices.size(), [=, at = vertices.data(), over = heights.data()](std::size_t v) {
    const auto& [a, b, c] = plane.normal;
    const auto& [x, y, z] = at[v];
    const double height = a * x + b * y + c * z - plane.offset_mm;
    over[v] = std::abs(height) <= 1e-13 * largest ? 0 : height;
  });
  return heights;
}

class Cutter {
 public:
  Cutter(const TriangleMesh& solid, const Plane& plane)
      : solid_(solid), heights_(heights_over(plane, solid.vertices_mm)) {}

  PlaneCut cut() && {
    for (const auto& corners : solid_.triangles) {
      const auto below = corners_below(corners);
      if (below == 3) below_.push_back(corners);
      if (below == 1 || below == 2) add_part(corners);
    }
    PlaneCut cut{.vertices_mm = solid_.vertices_mm, .below = {}, .outlines = outlines()};
    cut.vertices_mm.insert(cut.vertices_mm.end(), added_.begin(), added_.end());
    cut.below = std::move(below_);
    return cut;
  }

  std::vector<ClosedLine> section() && {
    using Facets = std::vector<std::size_t>;
    const auto parts =
        in_parts<Facets>(solid_.triangles.size(), [&](std::size_t facet, Facets& crossing) {
          const auto below = corners_below(solid_.triangles.data()[facet]);
          if (below == 1 || below == 2) crossing.push_back(facet);
        });
    for (const Facets& part : parts)
      for (const std::size_t facet : part) add_part(solid_.triangles[facet]);
    std::vector<ClosedLine> lines;
    for (const Outline& outline : outlines()) {
      ClosedLine line;
      for (const std::uint32_t vertex : outline) line.push_back(place(vertex));
      lines.push_back(std::move(line));
    }
    return lines;
  }

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

  bool is_below(std::uint32_t vertex) const { return heights_.data()[vertex] < 0; }
  int corners_below(const std::array<std::uint32_t, 3>& corners) const {
    return int{is_below(corners[0])} + int{is_below(corners[1])} + int{is_below(corners[2])};
  }
  const Point& place(std::uint32_t vertex) const {
    const std::size_t given = solid_.vertices_mm.size();
    return vertex < given ? solid_.vertices_mm[vertex] : added_[vertex - given];
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
      if (a != b && b != c && c != a) below_.push_back({a, b, c});
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
    const Point& low = place(below);
    const Point& high = place(above);
    const double share = heights_[below] / (heights_[below] - heights_[above]);
    Point p;
    for (std::size_t i = 0; i < 3; ++i) p[i] = low[i] + share * (high[i] - low[i]);
    if (p == low) return below;
    if (p == high) return above;
    added_.push_back(p);
    return static_cast<std::uint32_t>(solid_.vertices_mm.size() + added_.size() - 1);
  }

  std::vector<Outline> outlines() const {
    std::vector<Outline> lines;
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
      if (outline.size() > 2) lines.push_back(std::move(outline));
    }
    return lines;
  }

  [[noreturn]] static void refuse_open() {
    throw std::logic_error("a surface that is cut by a plane must be closed there");
  }

  const TriangleMesh& solid_;
  const std::vector<double> heights_;
  std::vector<Point> added_;  // numbered after the solid's
  std::vector<std::array<std::uint32_t, 3>> below_;
  std::vector<Crossing> crossings_;
  std::unordered_map<EdgeEnds, std::uint32_t, HashOfEnds> numbers_;  // of crossings, by the edge
};

}  // namespace

PlaneCut plane_cut(const TriangleMesh& solid, const Plane& plane) {
  return Cutter(solid, plane).cut();
}

std::vector<ClosedLine> plane_section(const TriangleMesh& solid, const Plane& plane) {
  return Cutter(solid, plane).section();
}

}  // namespace brimwright::geometry
