#include "geometry/levels/level_table.h"

#include "geometry/files/stl_blocks.h"
#include "geometry/files/stl_file.h"
#include "geometry/levels/level_sums.h"
#include "geometry/levels/stl_scan_kernel.h"
#include "geometry/surface/enclosed_volume.h"
#include "units/user_error.h"

#include <algorithm>
#include <cmath>
#include <span>
#include <utility>

namespace brimwright::geometry {
namespace {

struct HeightRange {
  float low = CornerRange::far, high = -CornerRange::far;
  bool holds(const HeightRange& other) const { return low <= other.low && other.high <= high; }
  double height() const { return double{high} - low; }
};

std::size_t facets_in(std::span<const char> bytes) { return bytes.size() / stl_facet_size; }

void widen(HeightRange& range, std::span<const char> facets) {
  best_stl_kernel().widen(facets.data(), facets_in(facets), range.low, range.high);
}

/// The heights in some of the blocks. Floors, rims and poles mostly stand in many facets, or in the
/// first or the last; so this is often the solid's whole height.
HeightRange likely_range(StlBlocks& file) {
  constexpr std::size_t one_in = 16;
  HeightRange range;
  for (std::size_t number = 0; number < file.blocks(); number += one_in) {
    widen(range, file.block(number));
  }
  widen(range, file.block(file.blocks() - 1));
  return range;
}

/// One reading of the file on the assumption that its heights are within a range. Once they are
/// not, it only goes on to find their true range.
struct Reading {
  Reading(const HeightRange& assumed, const Depths& depths)
      : range(assumed), sums(depths(assumed.height() * millimetre), assumed.height()) {}

  bool holds() const { return range.holds(seen); }

  void add(std::span<const char> facets, const StlLevels& levels) {
    const StlKernel& kernel = best_stl_kernel();
    if (!holds()) return widen(seen, facets);
    if (levels.closedness) kernel.sum_edges(facets.data(), facets_in(facets), edges);
    for (std::size_t i = 0; i < facets_in(facets); i += FacetColumns::most) {
      const std::size_t count = std::min(FacetColumns::most, facets_in(facets) - i);
      kernel.columns(facets.data() + i * stl_facet_size, count, range.low, columns, seen.low,
                     seen.high);
      sums.add(columns, count);
    }
  }

  HeightRange range, seen;
  LevelSums sums;
  EdgeSums edges{};
  FacetColumns columns;
};

StlLevelTable table_of(Reading& reading, StlBlocks& file, const StlLevels& levels) {
  LevelSums::Outcome outcome = reading.sums.outcome();
  if (!outcome.finite) file.refuse_not_finite();
  StlLevelTable table{.height = reading.range.height() * millimetre,
                      .rows = std::move(outcome.rows),
                      .inside_out = outcome.inside_out,
                      .closed = {}};
  if (levels.closedness) table.closed = reading.edges == EdgeSums{};
  return table;
}

}  // namespace

Depths at_depths(std::vector<Length> depths) {
  return [depths = std::move(depths)](Length) { return depths; };
}

Depths even_depths(std::size_t count) {
  return [count](Length height) {
    std::vector<Length> depths;
    depths.reserve(count);
    for (std::size_t i = 1; i <= count; ++i) {
      depths.push_back(height * (static_cast<double>(i) / static_cast<double>(count)));
    }
    return depths;
  };
}

std::vector<LevelRow> level_table(const TriangleMesh& solid, const Depths& depths) {
  const Box box = bounding_box(solid);
  const double lowest = box.low_mm[2], height = box.high_mm[2] - lowest;
  LevelSums sums(depths(height * millimetre), height);
  FacetColumns columns;
  std::size_t count = 0;
  for (const auto& [ia, ib, ic] : solid.triangles) {
    const auto& a = solid.vertices_mm[ia];
    const auto& b = solid.vertices_mm[ib];
    const auto& c = solid.vertices_mm[ic];
    const double area = ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
    set_column(columns, count, {a[2] - lowest, b[2] - lowest, c[2] - lowest}, area);
    if (++count == FacetColumns::most) sums.add(columns, std::exchange(count, 0));
  }
  sums.add(columns, count);
  return sums.outcome().rows;
}

StlLevelTable level_table_of_stl(const std::string& path, const Depths& depths,
                                 const StlLevels& levels) {
  StlBlocks file(path);
  HeightRange range = likely_range(file);
  for (int readings = 0; readings < 2; ++readings) {
    if (!std::isfinite(range.height())) file.refuse_not_finite();
    Reading reading(range, depths);
    for (std::size_t number = 0; number < file.blocks(); ++number) {
      reading.add(file.block(number), levels);
    }
    if (reading.holds()) return table_of(reading, file, levels);
    range = reading.seen;
  }
  throw UserError({.file = path,
                   .field = "",
                   .problem = "changed while it was read",
                   .remedy = "try again when it is finished"});
}

}  // namespace brimwright::geometry
