#pragma once

#include "geometry/packing/packing.h"
#include "units/quantity.h"

#include <optional>
#include <string>

namespace brimwright::reports {

/// How many embeds a search found room for in what is poured.
struct PackingFinding {
  std::string embed;  // the embed's mould
  geometry::Lying lying;
  Length cover;
  Length line;  // depth that is filled
  geometry::Packing packing;
  std::vector<geometry::TriangleMesh> solids;  // the embeds where they lie
  Volume displaced;                            // by all of them
  std::optional<double> would_fit;  // by how much one would have to shrink, where none fits
};

std::string packing_text(const PackingFinding& finding);
std::string name_of(geometry::Lying lying);  // "level", "layered", "free"

}  // namespace brimwright::reports
