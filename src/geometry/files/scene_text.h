#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace brimwright::geometry {

/// How many triangles the meshes of a glTF scene have (glTF 2.0 specification, sections 3.6 and
/// 3.7), by its JSON, of at most 64 MiB. Refused with UserError naming `file`: JSON that is broken
/// or nested deeper than 64, required extensions that change shapes, nodes that form no trees or
/// have unsound placings, and meshes written as strips or fans. Points and lines are passed over.
std::size_t triangles_of_scene(std::string_view json, const std::string& file);

}  // namespace brimwright::geometry
