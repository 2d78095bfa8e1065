#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <limits>
#include <span>
#include <vector>

namespace brimwright::geometry {

/// The surface that bounds the air, facets facing the air, heights along +z.
///
/// Each fan of facets round a corner has a vertex of its own, so that air which only meets at a
/// point does not hang together there. An open skin, which has air on both sides, is two such
/// sheets back to back: the facets as given, then each of them again turned round.
class AirSurface {
 public:
  static constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

  static AirSurface of_body(TriangleMesh body);
  static AirSurface of_skin(TriangleMesh skin);

  /// The same surface with its corners moved. Same numbers.
  AirSurface turned(const std::function<Point(const Point&)>& turn) const;
  /// Turns it over about the x axis: what was lowest is highest. Twice is as before.
  void turn_over();

  const TriangleMesh& mesh() const { return mesh_; }
  bool is_skin() const { return sheet_facets_ > 0; }
  double height_of(std::uint32_t vertex) const { return mesh_.vertices_mm[vertex][2]; }
  /// The lowest corner of a facet; of several, any.
  std::uint32_t lowest_corner(std::size_t facet) const;
  std::span<const std::uint32_t> facets_at(std::uint32_t vertex) const {
    return std::span(facets_at_)
        .subspan(first_at_[vertex], first_at_[vertex + 1] - first_at_[vertex]);
  }
  /// Where a skin's two sheets meet, the vertex of the other sheet at the same place; else none.
  std::uint32_t other_side(std::uint32_t vertex) const {
    return other_side_.empty() ? none : other_side_[vertex];
  }
  /// The same facet seen from the other side of a skin; none for a body.
  std::uint32_t back_of(std::uint32_t facet) const;

 private:
  void list_facets_at_vertices();
  std::vector<char> part_fans();

  TriangleMesh mesh_;
  std::vector<std::uint32_t> other_side_;
  std::uint32_t sheet_facets_ = 0;  // of a skin's one sheet
  std::vector<std::uint32_t> first_at_, facets_at_;
};

}  // namespace brimwright::geometry
