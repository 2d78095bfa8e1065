#pragma once

#include "geometry/surface_edges.h"
#include "geometry/triangle_mesh.h"

#include <array>
#include <optional>
#include <string>

namespace brimwright::geometry {

/// A shell that does not fit the others: it fills what they fill already, or hollows what they
/// leave empty.
struct MisplacedShell {
  enum class Kind { filled_twice, inside_out } kind;
  std::array<double, 3> corner_mm{};  // one of its corners
};

/// The first such shell of a closed surface whose shells do not touch, if there is one. Without
/// one, every place is inside once or not at all, and the enclosed volume is what the solid fills.
/// UserError naming `file` if there are too many shells to tell.
std::optional<MisplacedShell> misplaced_shell(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                              const std::string& file);

}  // namespace brimwright::geometry
