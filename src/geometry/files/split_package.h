#pragma once

#include "geometry/files/imported_mesh.h"

#include <string>
#include <string_view>

namespace brimwright::geometry {

/// Reads a 3MF package that keeps objects in several of its model parts, as slicers write it (3MF
/// Production Extension 1.1: `path` on items and components; Assimp leaves such objects out). Reads
/// one with a single part too, and then to the same mesh as Assimp's.
///
/// The same bounds hold as for a single part: a package's unpacked size (ZipArchive), numbers that
/// are numbers, corners, objects and parts that are there, no object within itself or more than 64
/// deep, at most 10000 placings; and at most 10 million corners and 20 million facets once placed.
/// UserError naming `file`, also for a part that names another part, as the standard forbids, and
/// one that counts in another unit than the first.
ImportedMesh mesh_of_split_package(std::string_view bytes, const std::string& file);

}  // namespace brimwright::geometry
