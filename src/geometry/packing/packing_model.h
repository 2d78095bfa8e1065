#pragma once

#include "geometry/distance/surface_tree.h"
#include "geometry/packing/packing_field.h"
#include "geometry/packing/packing_pose.h"
#include "geometry/packing/packing_task.h"
#include "geometry/surface/vectors.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace brimwright::geometry {

/// Bodies in a hollow, and which of them keep one height.
struct Arrangement {
  std::vector<Pose> poses = {};
  std::vector<std::size_t> level = {};  // of each body; empty if each has a height of its own
  bool keeps_turns = false;             // while it is relaxed
};

/// A packing task made ready for many trials. The body is moved so that its centre is the origin.
///
/// Distances are read from two grids at points of the body's surface, and at balls inside it,
/// without which bodies on top of each other would not be seen to be. That finds where bodies could
/// be; whether they can is for PackingProof to say.
struct PackingModel {
  explicit PackingModel(const PackingTask& task);

  /// Least distance of the body's surface to the hollow's; negative where it is outside.
  double wall_gap_mm(const Pose& pose, std::size_t probes_used) const;
  /// Least distance between two bodies, negative where they cross.
  double body_gap_mm(const Pose& a, const Pose& b, std::size_t probes_used) const;
  bool may_meet(const Pose& a, const Pose& b) const;

  Vector centre_mm;  // of the body as given
  SurfaceTree hollow, body;
  double hair_mm;             // the least gap that is told from touching for sure
  double cover_mm, apart_mm;  // as asked, less a hair, or a hair
  Lying lying;
  double reach_mm;            // from the centre to the body's farthest point
  DistanceField wall, skin;   // of the hollow, of the body
  std::vector<Probe> probes;  // balls in the body, then points spread over it

  static constexpr std::size_t few = 80, all = 280;  // probes
};

/// The same hollow and a body so many times as large. Only for a single body: `skin` stays as is.
PackingModel with_body_scaled(const PackingModel& model, const TriangleMesh& body, double factor);

/// An upper bound on how many could fit, whatever the search: the bodies swollen by half of what
/// they must be apart (or by their cover) lie in the hollow without overlap, and a swollen body
/// holds at least (V^(1/3) + swelling (4 pi / 3)^(1/3))^3 (Brunn and Minkowski's inequality).
double most_by_volume(const PackingModel& model);

}  // namespace brimwright::geometry
