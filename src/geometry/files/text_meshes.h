#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace brimwright::geometry {

// Looks through mesh texts for what Assimp would misread without a word: numbers that are none,
// corners that are not there, polygons of too few corners, more or fewer lines than promised. Each
// gives the number of polygons; UserError names `file` and the line.

/// Triangles of an STL text in small letters; the name of a solid may be any text.
std::size_t polygons_of_stl_text(std::string_view text, const std::string& file);
std::size_t polygons_of_obj(std::string_view text, const std::string& file);
std::size_t polygons_of_off(std::string_view text, const std::string& file);
/// Text or binary.
std::size_t polygons_of_ply(std::string_view bytes, const std::string& file);

}  // namespace brimwright::geometry
