#pragma once

#include "geometry/levels/level_curve.h"
#include "geometry/surface/triangle_mesh.h"
#include "moulds/shape.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/share.h"

#include <chrono>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::moulds {

struct MeshCavities;

/// How a cavity's volume was found. Water is the referee.
enum class Way { dimensions, mesh, water };
std::string name_of(Way way);  // "dimensions", "mesh", "water"

/// One way's answer for one cavity.
struct Measurement {
  Way way;
  Volume brimful;  // water weighed to a line: scaled up to the brim by the curve's shape
  std::optional<Share> spread = {};  // repeated water weighings: (largest - smallest) / mean
};

/// What she fills: cavities that are all alike, each known by one level curve.
struct Mould {
  std::string file;
  std::string name;
  std::string description;  // what the cavity is, in words: its shape or its mesh file
  std::string note;         // the maker's own words; may be empty
  int cavities = 1;         // in one mould
  int owned = 1;            // moulds of this kind in the studio
  std::optional<std::chrono::minutes> unmould_after;
  geometry::LevelCurve curve;             // one cavity, after water had its word
  double detail_factor = 1;               // water / (dimensions or mesh) where water was weighed
  std::vector<Measurement> measurements;  // most trusted first
  Length floor = {};  // height of the lowest point in the mesh's own frame; zero for shapes
  std::vector<Remark> remarks;
  /// Measured from a mesh on its own, with no mould file to say which of its hollows are filled.
  bool is_mesh_alone = false;
  std::shared_ptr<const MeshCavities> found = {};  // in the mesh, where there is one
  std::optional<Shape> shape = {};                 // where dimensions are given
  /// One cavity, checked and in its own frame, where a mesh is given.
  std::shared_ptr<const geometry::TriangleMesh> mesh = {};
};

}  // namespace brimwright::moulds
