#pragma once

#include "geometry/repair/flaw.h"
#include "geometry/repair/mend_holes.h"
#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::geometry {

/// One kind of flaw in a mesh.
struct Defect {
  using Kind = Flaw;
  Kind kind;
  std::size_t count = 0;
  Point first_mm{};
  std::string what;  // for people: "3 edges have a facet on one side only"
};

/// What a mesh is like as it stands.
struct Inspection {
  bool closed = false;               // each edge has two facets, equal corners being one
  bool facing_consistently = false;  // facets show the same side as their neighbours
  std::size_t facets = 0, shells = 0;
  std::size_t open_edges = 0;  // one facet alone
  std::size_t rims = 0;        // closed lines of open edges, once corners and slits are joined
  std::optional<Rim> widest_rim = {};  // its corners' numbers are of no use outside
  std::vector<Defect> defects = {};    // none for a sound closed surface
};

enum class InspectFor {
  defects,                // what can be told from facets, edges and shells
  defects_and_crossings,  // and whether the surface runs through itself, which takes far longer
};

/// Looks for every Flaw; changes nothing. Flaws that mending would put right are counted as it
/// counts them; edges still open or crowded then are listed too, as are nesting and overlap of the
/// shells of a closed surface.
///
/// For meshes as read_mesh gives them. `file` names the mesh in the UserError for one whose shells
/// or facets lie too thick to tell.
Inspection inspected(const TriangleMesh& mesh, InspectFor what = InspectFor::defects,
                     const std::string& file = "the mesh");

/// The same for a mesh whose equal corners are one already, as welded_stl gives it.
Inspection inspected_welded(TriangleMesh surface, InspectFor what, const std::string& file);

}  // namespace brimwright::geometry
