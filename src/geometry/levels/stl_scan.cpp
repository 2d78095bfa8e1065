#include "geometry/levels/stl_scan.h"

#include "geometry/files/stl_blocks.h"
#include "geometry/files/stl_file.h"
#include "geometry/levels/stl_scan_kernel.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <span>

namespace brimwright::geometry {
namespace {

/// Double sums over a stretch, whose rounding is far below 1e-14, are added up in long double.
constexpr std::size_t stretch_facets = 512;

class Scan {
 public:
  explicit Scan(std::span<const char> first_block) {
    std::array<float, 3> corner;
    std::memcpy(corner.data(), first_block.data() + stl_corners_start, sizeof corner);
    origin_ = {corner[0], corner[1], corner[2]};
  }

  void measure(std::span<const char> facets) {
    for (std::size_t at = 0; at < facets.size(); at += stretch_facets * stl_facet_size) {
      const std::size_t count = std::min(stretch_facets, (facets.size() - at) / stl_facet_size);
      StretchSums sums;
      kernel_.sum(facets.data() + at, count, origin_, sums, range_);
      for (const double six_volumes : sums.six_volumes) six_volumes_ += six_volumes;
      for (const double doubled_areas : sums.doubled_areas) doubled_areas_ += doubled_areas;
    }
  }

  void check_edges(std::span<const char> facets) {
    kernel_.sum_edges(facets.data(), facets.size() / stl_facet_size, edges_);
  }

  bool is_finite() const { return std::isfinite(doubled_areas_); }
  bool is_closed() const { return edges_ == EdgeSums{}; }
  Volume volume() const { return static_cast<double>(six_volumes_ / 6) * cubic_millimetre; }
  Area area() const { return static_cast<double>(doubled_areas_ / 2) * square_millimetre; }
  Box box() const {
    Box box;
    for (std::size_t axis = 0; axis < 3; ++axis) {
      box.low_mm[axis] = range_.low[axis] + 0.0;  // makes 0 of -0
      box.high_mm[axis] = range_.high[axis] + 0.0;
    }
    return box;
  }

 private:
  const StlKernel& kernel_ = best_stl_kernel();
  std::array<double, 3> origin_;
  long double six_volumes_ = 0, doubled_areas_ = 0;
  CornerRange range_;
  EdgeSums edges_{};
};

}  // namespace

StlScan scanned_stl(const std::string& path, const StlScanning& scanning) {
  StlBlocks file(path);
  Scan scan(file.block(0));
  for (std::size_t number = 0; number < file.blocks(); ++number) {
    const std::span<const char> facets = file.block(number);
    scan.measure(facets);
    if (scanning.closedness) scan.check_edges(facets);
  }
  if (!scan.is_finite()) file.refuse_not_finite();
  StlScan result{.facets = file.facets(),
                 .volume = scan.volume(),
                 .area = scan.area(),
                 .box = scan.box(),
                 .closed = {}};
  if (scanning.closedness) result.closed = scan.is_closed();
  return result;
}

}  // namespace brimwright::geometry
