#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::geometry {

/// One line of a dip-stick table.
struct LevelRow {
  Length depth;   // above the lowest point, as asked for
  Volume volume;  // below it
  Area surface;   // the free surface just above it, but at the brim just below it
};

/// The depths wanted of a solid of some height, in any order. Those outside it give the nearest
/// end's values.
using Depths = std::function<std::vector<Length>(Length height)>;
Depths at_depths(std::vector<Length> depths);
Depths even_depths(std::size_t count);  ///< height / count, twice that, and so on to the brim

/// The level curve of a closed, outward-facing solid, at many depths in one pass over its facets:
/// only the depths a facet crosses are worked out for it; above it, it adds to a straight line that
/// is summed up from depth to depth. Exact as LevelCurve is, to about 1e-14 of the brimful volume.
std::vector<LevelRow> level_table(const TriangleMesh& solid, const Depths& depths);

struct StlLevelTable {
  Length height;
  std::vector<LevelRow> rows;
  bool inside_out = false;     // its facets face inward; the rows are those of the solid turned
  std::optional<bool> closed;  // as stl_scan.h has it; if not closed, the rows mean nothing
};

struct StlLevels {
  bool closedness = true;
};

/// The same from a binary STL, its numbers taken as millimetres, in little more than one reading.
/// Refuses what scanned_stl refuses.
StlLevelTable level_table_of_stl(const std::string& path, const Depths& depths,
                                 const StlLevels& levels = {});

}  // namespace brimwright::geometry
