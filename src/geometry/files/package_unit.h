#pragma once

#include <string>
#include <string_view>

namespace brimwright::geometry {

class ZipArchive;

/// The unit in which a 3MF package counts, by its standard's name for it.
struct PackageUnit {
  std::string name;  // "millimeter"
  double in_mm;
  bool is_split = false;  // it keeps objects in several parts: see split_package.h
};

/// The part that the package names as its model (Open Packaging Conventions; 3MF Core, section
/// 2.1), without its leading slash. UserError naming `file` for what is no 3MF package.
std::string model_part(const ZipArchive& package, const std::string& file);

/// Reads the unit of the package's model, which Assimp leaves out (3MF Core Specification 1.3,
/// section 3.4: millimeter where none is written). UserError naming `file` for what is no 3MF
/// package or has nothing to build. A package of one part is looked through too
/// (package_model.h).
PackageUnit unit_of_package(std::string_view bytes, const std::string& file);

}  // namespace brimwright::geometry
