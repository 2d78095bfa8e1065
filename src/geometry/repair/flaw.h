#pragma once

#include "units/quantity.h"

#include <array>
#include <cstddef>
#include <string>

namespace brimwright::geometry {

/// What can be wrong with a surface of triangles.
enum class Flaw {
  unshared_corners,  // corners that belong together lie a little apart
  collapsed_facets,  // facets without area
  duplicate_facets,  // the same three corners twice
  slits,             // a corner of one facet lies in the middle of another's edge
  turned_facets,     // fronts and backs side by side
  scraps,            // loose bits of surface that enclose nothing
  holes,             // missing facets
  inside_out,        // a whole part that faces inward
  nested_parts,      // a part inside another that is no hollow of it
  overlapping_parts,
  crossing,       // the surface runs through itself
  open_edges,     // one facet alone
  crowded_edges,  // more than two facets
};

/// One kind of flaw that was put right.
struct Mend {
  Flaw flaw;
  std::string what;  // for people: "12 corners joined that lay up to 0.0003 mm apart"
  std::size_t count = 0;
  std::array<double, 3> first_mm{};
  Volume bound;  // on what it can have done to the volume
};

}  // namespace brimwright::geometry
