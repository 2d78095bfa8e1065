#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "geometry/surface/vectors.h"
#include "planning/run.h"
#include "units/quantity.h"

#include <optional>

namespace brimwright::planning {

/// One cavity of the run's mould as it is filled: made once for a plan, and handed on.
struct Cavity {
  geometry::TriangleMesh solid;  // closed and facing outward, its lowest point at z = 0
  Length line;                   // depth of the pour line
  geometry::Vector middle;       // of its box, at z = 0
  /// Where a layer is poured while the mould is tilted: the same in the frame of moulds::solid_of
  /// with round walls of so many facets that they are short by 5e-5 only, evenly up their height.
  std::optional<geometry::TriangleMesh> fine = {};
};

/// UserError where the pour line lies outside the cavity.
Cavity cavity_of(const Run& run);

}  // namespace brimwright::planning
