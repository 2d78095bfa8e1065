#pragma once

#include <string>
#include <string_view>

namespace brimwright::geometry {

/// Looks through the model of a 3MF package (3MF Core Specification 1.3) for what Assimp would
/// misread without a word: numbers that are none, corners and objects that are not there, objects
/// within themselves or repeated without end, placings that are no matrix. UserError naming `file`.
void check_package_model(std::string_view xml, const std::string& file);

}  // namespace brimwright::geometry
