#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

namespace brimwright::geometry {

/// What can be wrong with a surface of triangles; beside each, what the literature on mesh repair
/// calls it (M. Attene, M. Campen, L. Kobbelt, ACM Computing Surveys 2013, 45, 15).
enum class Flaw {
  unshared_corners,   // gap: corners that belong together lie a little apart
  collapsed_facets,   // degenerate facet: one without area
  duplicate_facets,   // the same three corners twice
  slits,              // T-junction: a corner of one facet lies in the middle of another's edge
  turned_facets,      // inconsistent orientation: fronts and backs side by side
  scraps,             // small component: a loose bit of surface that encloses nothing
  holes,              // hole: missing facets
  inside_out,         // inverted orientation: a whole part that faces inward
  nested_parts,       // a part inside another that is no hollow of it
  overlapping_parts,  // intersecting components
  crossing,           // self-intersection: the surface runs through itself
  open_edges,         // boundary edge: one facet alone
  crowded_edges,      // non-manifold (complex) edge: more than two facets
};
/// "open edges": the flaw's name in a few words, fit to be a key.
std::string_view name_of(Flaw flaw);

/// One kind of flaw that was put right.
struct Mend {
  Flaw flaw;
  std::string what;  // for people: "12 corners joined that lay up to 0.0003 mm apart"
  std::size_t count = 0;
  Point first_mm{};
  Volume bound;  // on what it can have done to the volume
};

}  // namespace brimwright::geometry
