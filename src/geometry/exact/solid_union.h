#pragma once

#include "geometry/surface/mesh_bytes.h"

#include <cstdint>

namespace brimwright::geometry {

/// What comes of uniting solids.
struct SolidUnion {
  enum class Outcome : std::uint32_t { united, crosses_itself, touches_along_an_edge, no_surface };

  Outcome outcome = Outcome::united;
  TriangleMesh solid = {};      // where they were united
  std::uint64_t swallowed = 0;  // solids that lay wholly inside the others
  double swallowed_mm3 = 0;
};

/// As the uniting helper sends it; it is sent the solids, each as a TriangleMesh.
template <class Bytes>
void pass(Bytes& bytes, sandbox::Like<SolidUnion> auto& found) {
  bytes(found.outcome, found.swallowed, found.swallowed_mm3, found.solid);
}

}  // namespace brimwright::geometry
