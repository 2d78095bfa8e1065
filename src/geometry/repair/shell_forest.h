#pragma once

#include "geometry/surface/shell_nesting.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <cstdint>
#include <limits>
#include <string>
#include <vector>

namespace brimwright::geometry {

/// The shells of a closed surface, each inside the next larger one that it does not cross.
struct ShellForest {
  static constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

  std::vector<ShellPlace> places;
  std::vector<std::uint32_t> parent;                  // of each shell; none for the outermost
  std::vector<std::array<std::uint32_t, 2>> meeting;  // shells that cross or touch each other
  Point first_meeting_mm{};

  bool faces_inward(std::uint32_t shell) const { return places[shell].volume_mm3 < 0; }
  std::uint32_t outermost(std::uint32_t shell) const;
  std::size_t depth(std::uint32_t shell) const;
  /// The shell that bounds from outside the solid which this one bounds: itself or its parent.
  std::uint32_t outer(std::uint32_t shell) const;
};

/// For a welded, closed surface. UserError naming `file` if there are too many shells to tell.
ShellForest shell_forest(const TriangleMesh& mesh, const SurfaceEdges& edges,
                         const std::string& file);

/// For each outer shell the solid that it bounds, with its hollows; nothing for the hollows
/// themselves. In the order of the shells' numbers.
std::vector<TriangleMesh> solids_by_shell(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                          const ShellForest& forest);

/// Adds the facets of `more`, with vertices of their own.
void append(TriangleMesh& mesh, const TriangleMesh& more);

}  // namespace brimwright::geometry
