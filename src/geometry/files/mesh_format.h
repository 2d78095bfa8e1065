#pragma once

#include <string>

namespace brimwright::geometry {

enum class MeshFormat { stl, obj, ply, off, three_mf, gltf, glb };

/// Told by the path's ending, in either case of letters; UserError for any other ending.
MeshFormat mesh_format(const std::string& path);
std::string name_of(MeshFormat format);

}  // namespace brimwright::geometry
