#pragma once

#include "geometry/triangle_mesh.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace brimwright::geometry {

enum class StlKind { binary, text };

/// Told by the length: a binary STL of n facets has 84 + 50 n bytes, whatever its header says (many
/// begin with "solid", as a text does). UserError for a file that is neither, or cut short.
StlKind stl_kind(std::string_view bytes, const std::string& file);

/// The facets of a binary STL, three vertices each, in the file's own numbers. UserError with the
/// facet's number where a coordinate is not finite. The stored normals are not read.
TriangleMesh binary_stl(std::string_view bytes, const std::string& file);

/// How many facets a text STL closes; UserError if it lacks its last line.
std::size_t facets_of_text_stl(std::string_view text, const std::string& file);

}  // namespace brimwright::geometry
