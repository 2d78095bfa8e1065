#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <string>
#include <vector>

namespace brimwright::geometry {

// Mesh files as bytes, the same bytes for the same mesh. Both formats keep coordinates in single
// precision. std::length_error for a mesh that is too large for its format's counts.

/// Binary STL in millimetres with +z up, and normals by the facets' corners.
std::string binary_stl_of(const TriangleMesh& mesh);

/// A part of a picture in space.
struct ColouredPart {
  std::string name;
  TriangleMesh mesh;
  std::array<float, 4> rgba;  // 0 to 1, as screens take them (sRGB); an alpha below 1 shows through
};

/// A binary glTF 2.0 file, each part that has facets being a node with its own mesh and material.
/// As glTF requires it is in metres, with +y up: +z of the mesh becomes +y, its -y becomes +z.
std::string glb_of(const std::vector<ColouredPart>& parts);

}  // namespace brimwright::geometry
