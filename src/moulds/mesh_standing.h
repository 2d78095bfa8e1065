#pragma once

#include "geometry/files/mesh_file.h"
#include "geometry/pockets/pockets.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/angle.h"
#include "units/quantity.h"

#include <array>
#include <optional>
#include <vector>

namespace brimwright::moulds {

/// What a closed mesh would hold another way up.
struct OtherWayUp {
  geometry::Axis up;  // in the file's own frame
  std::size_t pockets = 0;
  Volume largest = {};
  double share = 0;  // in pockets / (in pockets + solid)
};

/// In pockets / (in pockets + solid): how much of a body a mesh is.
double share_in_pockets(const geometry::PocketSurvey& survey);

/// The other five ways up that hold something, most of all first. `body` stands with the file's
/// `up` as +z.
std::vector<OtherWayUp> other_ways_up(const geometry::TriangleMesh& body, geometry::Axis up);

/// A flat face that is nearly, but not quite, level: the mesh leans.
struct Lean {
  Angle angle;
  geometry::Point up;  // the face's normal: what should have been +z, in the mesh's frame
};

/// How far the mesh leans, judged by its largest flat face that looks up or down within 10 degrees;
/// nothing if that face is level or small (under a fifth of the mesh's outline from above).
std::optional<Lean> lean_of(const geometry::TriangleMesh& mesh);

}  // namespace brimwright::moulds
