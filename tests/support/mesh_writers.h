#pragma once

// Mesh files as bytes, written from each format's standard apart from the code that reads them.

#include "geometry/surface/triangle_mesh.h"

#include <string>
#include <vector>

namespace brimwright::geometry::test {

std::string binary_stl(const TriangleMesh& mesh, const std::string& header = "a mesh");
std::string text_stl(const TriangleMesh& mesh);
std::string obj(const TriangleMesh& mesh);
std::string text_ply(const TriangleMesh& mesh);
std::string binary_ply(const TriangleMesh& mesh);
std::string off(const TriangleMesh& mesh);
/// glTF counts in metres with +y up: the mesh, in millimetres with +z up, is turned and divided.
std::string gltf(const TriangleMesh& mesh);
std::string glb(const TriangleMesh& mesh);

/// One file in a package.
struct Part {
  std::string name, content;
};
enum class Packing { stored, deflated };
std::string zip(const std::vector<Part>& parts, Packing packing);
/// A 3MF model of the mesh as object 1; `unit` is left out if empty, `build` is the build's items.
std::string model_xml(const TriangleMesh& mesh, const std::string& unit,
                      const std::string& build = "<item objectid=\"1\"/>",
                      const std::string& more_objects = "");
std::string three_mf(const std::string& model, Packing packing = Packing::deflated);

/// A number as text that reads back as the same double.
std::string digits(double value);

}  // namespace brimwright::geometry::test
