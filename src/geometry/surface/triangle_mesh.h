#pragma once

#include <array>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// A place, by its coordinates.
using Point = std::array<double, 3>;

/// A surface of triangles. Heights grow along +z.
struct TriangleMesh {
  std::vector<Point> vertices_mm;
  std::vector<std::array<std::uint32_t, 3>> triangles;  // anticlockwise seen from outside
};

}  // namespace brimwright::geometry
