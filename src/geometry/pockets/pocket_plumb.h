#pragma once

#include "geometry/pockets/pocket_surface.h"

#include <cstddef>
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
  /// TooManyLayers if the lines so far have looked at a hundred million facets.
  std::optional<std::uint32_t> facet_below(std::uint32_t vertex);
  /// How many facets have been looked at, for tests.
  std::size_t looked_at() const { return looked_at_; }

 private:
  struct Impl;
  std::unique_ptr<const Impl> impl_;
  std::size_t looked_at_ = 0;
};

}  // namespace brimwright::geometry
