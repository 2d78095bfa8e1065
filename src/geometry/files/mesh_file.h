#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "units/remark.h"
#include "units/user_error.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::geometry {

enum class LengthUnit { millimetre, centimetre, metre, inch };
enum class Axis { plus_x, minus_x, plus_y, minus_y, plus_z, minus_z };

/// "mm", "cm", "m" or "in"; "+x" to "-z". UserError at `where` otherwise.
LengthUnit length_unit(const std::string& text, const Place& where);
Axis axis(const std::string& text, const Place& where);
/// "0.05,0,0.99": a direction within 60 degrees of +z. UserError at `where` otherwise.
Point direction(const std::string& text, const Place& where);
std::string name_of(LengthUnit unit);
std::string name_of(Axis up);
/// `p` turned, without mirroring, so that what pointed along `up` points along +z.
Point upright(const Point& p, Axis up);
/// `p` turned the shortest way that brings `up`, a direction of length one, to +z.
Point straightened(const Point& p, const Point& up);

/// How a file's own numbers and axes became a mesh's.
struct FileFrame {
  double in_mm = 1;         // one of the file's numbers
  std::string unit = "mm";  // their unit, in its standard's word
  Axis up = Axis::plus_z;
  std::optional<Point> straight_up = {};  // MeshReading's
};
/// A place of the mesh in the file's own numbers and axes.
Point place_in_file(const Point& at_mm, const FileFrame& frame);
/// "at (1.5, -2, 0.25) in": a place of the mesh as the file has it.
std::string place_text(const Point& at_mm, const FileFrame& frame = {});

/// A mesh as read, in millimetres, turned so that `up` became +z.
struct MeshFile {
  TriangleMesh mesh;
  LengthUnit unit = LengthUnit::millimetre;  // what the file's numbers were
  Axis up = Axis::plus_z;                    // which way was up in the file
  FileFrame frame = {};
  std::vector<Remark> remarks;
  bool is_welded = false;  // equal corners are one already, numbered as facets come to them
};

/// What the person said of the file; nothing is guessed in its place.
struct MeshReading {
  /// Needed for STL, OBJ, PLY, OFF; 3MF states its own, glTF is metres.
  std::optional<LengthUnit> unit = {};
  std::optional<Axis> up = {};  // +z if not said, but +y for glTF, whose standard says so
  /// After that, a direction to be turned to +z, for a mesh that leans; of length one.
  std::optional<Point> straight_up = {};
};

/// Reads an STL (binary or ASCII), OBJ, PLY, OFF, 3MF, glTF or GLB file; the kind is told by the
/// file's ending and checked against its content.
///
/// Throws UserError for a missing, unreadable, empty or broken file, for coordinates that are not
/// finite, and as a Question for a missing "unit" (with the size in each). A unit that contradicts
/// the one the file states is refused.
MeshFile read_mesh(const std::string& path, const MeshReading& reading);

}  // namespace brimwright::geometry
