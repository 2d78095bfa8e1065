#pragma once

#include "geometry/files/mesh_file.h"
#include "geometry/repair/mesh_inspection.h"

#include <string>

namespace brimwright::reports {

/// What a mesh file is like as it stands.
struct InspectionFinding {
  std::string file;
  geometry::FileFrame frame;
  geometry::Inspection inspection;
};

/// For people: what the mesh is, then each kind of defect with how many and where the first is, in
/// the file's own numbers.
std::string inspection_text(const InspectionFinding& finding);

/// One JSON document, schema brimwright.inspection/1. Places are the file's own numbers, in its
/// unit and axes.
std::string inspection_json(const InspectionFinding& finding);

}  // namespace brimwright::reports
