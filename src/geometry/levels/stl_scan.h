#pragma once

#include "geometry/surface/enclosed_volume.h"
#include "units/quantity.h"

#include <cstdint>
#include <optional>
#include <string>

namespace brimwright::geometry {

struct StlScan {
  std::uint64_t facets = 0;
  Volume volume;  // by the divergence theorem; means nothing if the surface is open
  Area area;      // of the surface
  Box box{};
  std::optional<bool> closed;  // if it was asked for
};

struct StlScanning {
  bool closedness = true;
};

/// Measures a binary STL in one pass, its numbers taken as millimetres. Sums are good to 1e-13 of
/// the terms' size, as from a corner of the solid, and alike on every processor.
///
/// Closed means that every edge is run through as often one way as the other, found by two
/// checksums: a surface that is not may be called so by a chance of 2^-60. Where it is closed, the
/// volume is what the facets enclose, counted twice where shells overlap and below nought where
/// they face inward.
///
/// UserError for a file that cannot be read, is no binary STL, is cut short, has no facets, or has
/// a corner that is not a number.
StlScan scanned_stl(const std::string& path, const StlScanning& scanning = {});

}  // namespace brimwright::geometry
