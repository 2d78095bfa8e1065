#pragma once

#include "geometry/pocket_surface.h"

#include <cstdint>
#include <memory>
#include <optional>

namespace brimwright::geometry {

/// Drops a plumb line from a vertex that has air straight below it.
class PlumbLine {
 public:
  explicit PlumbLine(const AirSurface& surface);
  PlumbLine(PlumbLine&&) noexcept;
  ~PlumbLine();

  /// The highest facet that faces up, at or below the vertex, none of its own; nothing if the line
  /// falls free. Whether the line meets a facet (its edges belong to it) is decided exactly.
  std::optional<std::uint32_t> facet_below(std::uint32_t vertex) const;

 private:
  struct Impl;
  std::unique_ptr<const Impl> impl_;
};

}  // namespace brimwright::geometry
