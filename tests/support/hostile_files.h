#pragma once

// Mesh files as nobody should write them, made from good ones.

#include "geometry/files/mesh_file.h"

#include <string>
#include <vector>

namespace brimwright::geometry::test {

/// What a reader may make of a file: nothing, the box of 60 x 40 x 25 mm (60 ml), or either.
enum class Fate { refused, right, either };

struct HostileFile {
  std::string name, bytes;
  MeshReading reading;
  Fate fate = Fate::either;
  double right_ml = 60;  // of 60 x 40 x 25 mm
};

std::vector<HostileFile> lying_counts();
std::vector<HostileFile> bad_indices();
std::vector<HostileFile> odd_numbers();
std::vector<HostileFile> odd_texts();  ///< byte-order marks, line ends, capitals, odd keywords
std::vector<HostileFile> hostile_packages();  ///< 3MF
std::vector<HostileFile> hostile_scenes();    ///< glTF and GLB
/// Files that name others, by paths into `folder`, which must not be opened.
std::vector<HostileFile> files_that_point_at(const std::string& folder);
/// The good files of all formats, from which the others are made.
std::vector<HostileFile> good_files();

}  // namespace brimwright::geometry::test
