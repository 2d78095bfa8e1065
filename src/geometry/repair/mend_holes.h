#pragma once

#include "geometry/repair/flaw.h"
#include "geometry/surface/mesh_error.h"
#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::geometry {

/// A closed line of open edges.
struct Rim {
  std::vector<std::uint32_t> corners;  // in the order in which a lid would have them
  std::vector<std::uint32_t> beside;   // the facet at the edge from each corner to the next
  Point middle_mm{};                   // mean of the corners
  Point low_mm{}, high_mm{};
  /// Of any surface that spans the rim, along the normal of a lid that faces as the mesh does.
  Point vector_area_mm2{};
  std::uint32_t shell = 0;

  double area_mm2() const;  ///< length of the vector area
  double width_mm() const;  ///< diagonal of its box
};

/// The rims of a welded mesh whose facets show the same side within each shell, each passing a
/// vertex once, the widest first. Lines that run into an edge of more than two facets are no rims.
std::vector<Rim> rims_of(const TriangleMesh& mesh);

/// A hole that is too large to be filled by guess: what a skin has, and a closed solid may not.
class LargeHole : public PlacedError {
 public:
  using PlacedError::PlacedError;
};

enum class Rims {
  all,             // of what should be closed
  but_the_widest,  // of each shell, which is where a skin is open
};

/// Fills small holes: those whose least lid has under 1 % of their shell's surface, all together
/// under 3 %, and those of a single facet in a flat wall. For meshes as rims_of wants them; nothing
/// if there is none.
///
/// The least lid, not the vector area alone, decides, for half a ball cut along the seam of a
/// tennis ball has a rim of no vector area at all.
///
/// Bound: what was lost is taken to have bulged from the lid by no more than the hole's own width,
/// so the hole's area times its width; nothing for the facet in a flat wall, whose three corners
/// are all there.
std::optional<Mend> fill_small_holes(TriangleMesh& mesh, Rims which);

}  // namespace brimwright::geometry
