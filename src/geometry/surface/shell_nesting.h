#pragma once

#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::geometry {

/// Another shell that goes round one, and how often: minus once if it faces inward.
struct ShellAround {
  std::uint32_t shell;
  int times;
};

/// One shell of a closed surface and where it lies among the others.
struct ShellPlace {
  Box box{};
  double volume_mm3 = 0;  // negative where it faces inward
  Point corner_mm{};
  std::vector<ShellAround> around = {};  // the shells that hold that corner
};

/// The places of all shells, by their numbers. Where shells cross, what is around the corner need
/// not be around the whole. UserError naming `file` if there are too many shells to tell.
std::vector<ShellPlace> shell_places(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                     const std::string& file);

/// A shell that does not fit the others: it fills what they fill already, or hollows what they
/// leave empty.
struct MisplacedShell {
  enum class Kind { filled_twice, inside_out } kind;
  Point corner_mm{};  // one of its corners
};

/// The first such shell of a closed surface whose shells do not touch, if there is one. Without
/// one, every place is inside once or not at all, and the enclosed volume is what the solid fills.
/// UserError naming `file` if there are too many shells to tell.
std::optional<MisplacedShell> misplaced_shell(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                              const std::string& file);

}  // namespace brimwright::geometry
