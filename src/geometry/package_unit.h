#pragma once

#include <string>
#include <string_view>

namespace brimwright::geometry {

/// The unit in which a 3MF package counts, by its standard's name for it.
struct PackageUnit {
  std::string name;  // "millimeter"
  double in_mm;
};

/// Reads the unit of the package's model, which Assimp leaves out (3MF Core Specification 1.3,
/// section 3.4: millimeter where none is written). UserError naming `file` for what is no 3MF
/// package, has nothing to build, or keeps its shapes in several parts, which Assimp would leave
/// out.
PackageUnit unit_of_package(std::string_view bytes, const std::string& file);

}  // namespace brimwright::geometry
