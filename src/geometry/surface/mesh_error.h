#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "units/user_error.h"

#include <stdexcept>
#include <utility>

namespace brimwright::geometry {

/// A mistake at one place of a mesh. Its field tells the place as the mesh lies in memory; who
/// knows how it lies in its file can tell it in the file's own numbers (FileFrame).
class PlacedError : public UserError {
 public:
  PlacedError(Parts parts, const Point& at_mm) : UserError(std::move(parts)), at_mm_(at_mm) {}

  const Point& at_mm() const { return at_mm_; }

 private:
  Point at_mm_;
};

/// More facets lie over each other than can be looked through: each plumb line meets thousands.
class TooManyLayers : public std::runtime_error {
 public:
  TooManyLayers() : std::runtime_error("too many facets lie over each other") {}
};

}  // namespace brimwright::geometry
