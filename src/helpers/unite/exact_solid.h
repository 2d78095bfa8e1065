#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <stdexcept>

namespace brimwright::helpers {

/// A closed surface in exact numbers, for booleans by CGAL's corefinement.
/// CGAL 5.5 goes round for ever where solids touch each other along an edge.
class ExactSolid {
 public:
  struct Impl;

  explicit ExactSolid(std::unique_ptr<Impl> impl);
  ExactSolid(ExactSolid&& other) noexcept;
  ExactSolid& operator=(ExactSolid&& other) noexcept;
  ~ExactSolid();

  std::size_t facets() const;
  double roughly_mm3() const;              ///< quicker than the volume of what is rounded
  geometry::TriangleMesh rounded() const;  ///< each coordinate to the nearest double

  Impl& impl() { return *impl_; }

 private:
  std::unique_ptr<Impl> impl_;
};

/// Thrown by what follows if one of the solids crosses itself.
class CrossesItself : public std::runtime_error {
 public:
  CrossesItself();
};

/// Nothing if the mesh is no surface: an edge of more than two facets or a corner of two fans of
/// them (see touching_apart), or a vertex that no facet uses.
std::optional<ExactSolid> exact_solid(const geometry::TriangleMesh& mesh);

/// Nothing if it would touch itself along an edge and so be no surface.
std::optional<ExactSolid> union_of(ExactSolid a, ExactSolid b);

}  // namespace brimwright::helpers
