#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "planning/run.h"
#include "units/quantity.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace brimwright::planning {

/// One decoration as a closed solid, the middle of its bounding box at the origin, lying as it was
/// cast (a rod along x): the cavity up to its fill, or that and its mirror image on its flat; none
/// for a drizzle.
std::optional<geometry::TriangleMesh> embed_solid(const Decoration& decoration);

/// A decoration made once: as a solid, and what it really holds.
struct DecorationBody {
  std::optional<geometry::TriangleMesh> solid;  // as of embed_solid
  Volume volume;                                // as of embed_volume
};
/// Of all decorations of `run`, in its order. UserError as of embed_volume.
std::vector<DecorationBody> bodies_of(const Run& run);

/// Volume of one decoration, by its mould's level curve, as a rod or as a coat. UserError at the
/// decoration's place in the run for a fill outside its mould.
Volume embed_volume(const Run& run, std::size_t index);

}  // namespace brimwright::planning
