#include "geometry/pockets/pocket_rim.h"

#include "geometry/surface/vectors.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

/// A stretch of the outline: its middle, and the facet whose wall goes on above it.
struct Stretch {
  Vector middle{};
  double length = 0;
  std::uint32_t facet = 0;
};

class Climb {
 public:
  explicit Climb(const AirSurface& surface) : surface_(surface), mesh_(surface.mesh()) {}

  /// Where a facet that reaches below `level` meets it, nothing if in no more than a point.
  std::optional<Stretch> outline_in(std::uint32_t facet, double level) const {
    std::array<Vector, 3> ends;
    std::size_t count = 0;
    bool reaches_below = false;
    for (std::size_t i = 0; i < 3; ++i) {
      const Vector &a = corner(facet, i), &b = corner(facet, (i + 1) % 3);
      reaches_below |= a[2] < level;
      if (a[2] == level) ends[count++] = a;
      if ((a[2] < level && b[2] > level) || (a[2] > level && b[2] < level))
        ends[count++] = a + (b - a) * ((level - a[2]) / (b[2] - a[2]));
    }
    if (count != 2 || !reaches_below) return std::nullopt;
    return Stretch{(ends[0] + ends[1]) * 0.5, length(ends[1] - ends[0]), facet};
  }

  /// The height at which the wall above that point ends.
  double top_above(Vector at, std::uint32_t facet) const {
    constexpr int longest = 100'000;  // steps; a wall has fewer facets from floor to rim
    for (int step = 0; step < longest; ++step) {
      const auto way_out = climbed(at, facet);
      if (!way_out) return at[2];
      at = way_out->first;
      const auto next = across(facet, way_out->second);
      if (!next || !rises_from(*next, facet, way_out->second)) return at[2];
      facet = *next;
    }
    return at[2];
  }

 private:
  const Vector& corner(std::uint32_t facet, std::size_t i) const {
    return mesh_.vertices_mm[mesh_.triangles[facet][i]];
  }

  Vector normal(std::uint32_t facet) const {
    const Vector n = doubled_area(corner(facet, 0), corner(facet, 1), corner(facet, 2));
    const double size = length(n);
    return size > 0 ? n * (1 / size) : Vector{0, 0, 1};  // a needle is passed over as if level
  }

  /// Straight up along the facet; about nothing where it is level.
  Vector uphill(std::uint32_t facet) const {
    const Vector n = normal(facet);
    return Vector{0, 0, 1} - n * n[2];
  }

  /// Inward from edge `i`, in the facet's plane.
  Vector inward(std::uint32_t facet, std::size_t i) const {
    return cross(normal(facet), corner(facet, (i + 1) % 3) - corner(facet, i));
  }

  static constexpr double level_slope = 1e-3;  // a wall rises more than a thousandth

  /// Where the way uphill leaves the facet, and by which edge.
  std::optional<std::pair<Vector, std::size_t>> climbed(const Vector& at,
                                                        std::uint32_t facet) const {
    const Vector up = uphill(facet);
    if (up[2] < level_slope * level_slope) return std::nullopt;
    double least = HUGE_VAL;
    std::size_t edge = 0;
    for (std::size_t i = 0; i < 3; ++i) {
      const Vector in = inward(facet, i);
      const double towards = -dot(in, up);
      if (!(towards > 1e-9 * length(in))) continue;
      const double way = std::max(0.0, dot(in, at - corner(facet, i)) / towards);
      if (way < least) {
        least = way;
        edge = i;
      }
    }
    if (!std::isfinite(least)) return std::nullopt;
    return std::pair(at + up * least, edge);
  }

  std::optional<std::uint32_t> across(std::uint32_t facet, std::size_t edge) const {
    const std::uint32_t a = mesh_.triangles[facet][edge],
                        b = mesh_.triangles[facet][(edge + 1) % 3];
    for (const std::uint32_t other : surface_.facets_at(a)) {
      const auto& c = mesh_.triangles[other];
      if (other != facet && std::find(c.begin(), c.end(), b) != c.end()) return other;
    }
    return std::nullopt;
  }

  /// Whether the way uphill goes on into `next` from the edge that it shares with `facet`.
  bool rises_from(std::uint32_t next, std::uint32_t facet, std::size_t edge) const {
    const std::uint32_t b = mesh_.triangles[facet][(edge + 1) % 3];
    for (std::size_t i = 0; i < 3; ++i) {
      if (mesh_.triangles[next][i] != b) continue;
      const Vector in = inward(next, i);
      return dot(in, uphill(next)) > level_slope * level_slope * length(in);
    }
    return false;
  }

  const AirSurface& surface_;
  const TriangleMesh& mesh_;
};

/// The value that half of all length is at or above.
double usual(std::vector<std::pair<double, double>>& height_and_length) {
  std::sort(height_and_length.begin(), height_and_length.end(), std::greater<>());
  double whole = 0, passed = 0;
  for (const auto& [height, length] : height_and_length) whole += length;
  for (const auto& [height, length] : height_and_length) {
    passed += length;
    if (passed >= whole / 2) return height;
  }
  return height_and_length.back().first;
}

}  // namespace

PocketRim rim_of(const AirSurface& surface, std::span<const std::uint32_t> facets, double brim_mm) {
  const Climb climb(surface);
  PocketRim rim{brim_mm, brim_mm};
  std::vector<std::pair<double, double>> heights;
  for (const std::uint32_t facet : facets) {
    const auto stretch = climb.outline_in(facet, brim_mm);
    if (!stretch || !(stretch->length > 0)) continue;
    const double top = std::max(brim_mm, climb.top_above(stretch->middle, facet));
    heights.emplace_back(top, stretch->length);
    rim.highest_mm = std::max(rim.highest_mm, top);
  }
  if (!heights.empty()) rim.usual_mm = usual(heights);
  return rim;
}

}  // namespace brimwright::geometry
