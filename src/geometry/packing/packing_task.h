#pragma once

#include "geometry/distance/placement.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <cstddef>
#include <functional>
#include <vector>

namespace brimwright::geometry {

/// How bodies may lie in a hollow.
enum class Lying {
  level,    // all upright at one height, turned about the vertical at will
  layered,  // upright, in as many levels as there is room for
  free      // turned any way, anywhere
};

struct PackingTask {
  TriangleMesh hollow;  // closed and outward-facing: what is filled, up to its surface
  TriangleMesh body;    // closed and outward-facing, as it lies upright
  Length cover = {};    // at least, between a body and the hollow's surface
  Length apart = {};    // at least, between bodies
  Lying lying = Lying::free;
  std::size_t most = 100;  // look for no more than this many
};

struct Packing {
  std::vector<Placement> places;  // of `body`
  // As found, surface to surface: at least what was asked, but for a hair (1e-8 of the hollow's
  // diagonal), and never less than a hair, for touching could not be told from crossing.
  Length least_cover;  // 0 if there is no body
  Length least_apart;  // 0 if there are not two
};

/// Told how far the search is, 0 to 1; may be empty.
using Progress = std::function<void(double)>;

}  // namespace brimwright::geometry
