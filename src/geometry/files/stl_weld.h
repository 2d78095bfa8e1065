#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <string>

namespace brimwright::geometry {

/// Reads a binary STL with equal corners made one on the way (weld.h), without ever holding the
/// file or its corners one by one. Numbers as in the file; the stored normals are not read.
///
/// UserError for a file that cannot be read, is no binary STL, is cut short, has no facets, or has
/// a corner that is not a number.
TriangleMesh welded_stl(const std::string& path);

}  // namespace brimwright::geometry
