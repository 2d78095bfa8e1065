#pragma once

#include "geometry/sandbox/child_process.h"
#include "geometry/surface/triangle_mesh.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <stdexcept>

namespace brimwright::geometry {

/// A closed surface in exact numbers, for booleans by CGAL's corefinement.
///
/// For a child process only (run_in_child with corefinement_limits): CGAL 5.5 goes round for ever
/// where solids touch each other along an edge.
class ExactSolid {
 public:
  struct Impl;

  explicit ExactSolid(std::unique_ptr<Impl> impl);
  ExactSolid(ExactSolid&& other) noexcept;
  ExactSolid& operator=(ExactSolid&& other) noexcept;
  ~ExactSolid();

  std::size_t facets() const;
  double roughly_mm3() const;    ///< quicker than the volume of what is rounded
  TriangleMesh rounded() const;  ///< each coordinate to the nearest double

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
std::optional<ExactSolid> exact_solid(const TriangleMesh& mesh);

/// Nothing if it would touch itself along an edge and so be no surface.
std::optional<ExactSolid> union_of(ExactSolid a, ExactSolid b);

/// Whether CGAL may refuse surfaces that cross themselves; it takes those for such that only touch
/// themselves at a corner.
enum class SelfCrossings { refused, known_absent };

/// Volume that both hold: that of their common part or, where that touches itself along an edge, of
/// one less what is left of it without the other. Nothing if neither is a surface.
std::optional<double> common_mm3(ExactSolid a, ExactSolid b, SelfCrossings crossings);

/// 2 GiB, and four seconds and a tenth of a millisecond for each facet that is gone through, some
/// eight times what it takes here.
ChildLimits corefinement_limits(std::size_t facets);

}  // namespace brimwright::geometry
