#pragma once

// Closed solids of every role that a mesh may have, made from formulas, each with its truth.

#include "geometry/surface/triangle_mesh.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::geometry::test {

enum class Truth {
  cavity,  // the hollow itself, open at its flat top
  piece,   // a finished piece, which may well have hollows on top
  body,    // a mould that holds something, standing upright
  turned,  // a mould that would hold something another way up
  leaking  // a mould, or a part of one, that holds nothing or less than it should
};

struct RoleSolid {
  std::string name;
  Truth truth;
  TriangleMesh mesh;
};

/// At least a dozen of each.
std::vector<RoleSolid> role_solids();

/// The same, each stretched by 0.6 to 1.6 along each axis and turned about z, by whatever `seed`
/// says: what they are stays what it was.
std::vector<RoleSolid> varied_role_solids(std::uint32_t seed);

}  // namespace brimwright::geometry::test
