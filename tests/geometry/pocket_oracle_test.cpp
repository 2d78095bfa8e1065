// CGAL as a second opinion on pockets: a box inside the slab, less the body, is the air below its
// lid; the parts of that air are what the pockets hold to that level.

#include "geometry/enclosed_volume.h"
#include "geometry/mesh_file.h"
#include "geometry/pockets.h"
#include "geometry/weld.h"
#include "solids.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/connected_components.h>
#include <CGAL/Polygon_mesh_processing/corefinement.h>
#include <CGAL/Polygon_mesh_processing/measure.h>
#include <CGAL/Surface_mesh.h>
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

namespace brimwright::geometry {
namespace {

namespace PMP = CGAL::Polygon_mesh_processing;
using Catch::Matchers::WithinRel;
using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;

Mesh as_cgal(TriangleMesh mesh) {
  drop_unused_vertices(mesh);
  Mesh other;
  std::vector<Mesh::Vertex_index> vertices;
  for (const auto& [x, y, z] : mesh.vertices_mm)
    vertices.push_back(other.add_vertex(Kernel::Point_3(x, y, z)));
  for (const auto& [a, b, c] : mesh.triangles)
    other.add_face(vertices[a], vertices[b], vertices[c]);
  return other;
}

/// Volumes, ascending, of the separate parts of the air in the body below `level`.
std::vector<double> air_by_difference(const TriangleMesh& body, double level) {
  const Box size = bounding_box(body);
  const double in = 2.013;  // mm within the slab's sides, through solid only
  Mesh air = as_cgal(test::box({size.low_mm[0] + in, size.low_mm[1] + in, size.low_mm[2] + 0.517},
                               {size.high_mm[0] - in, size.high_mm[1] - in, level}));
  Mesh solid = as_cgal(body);
  Mesh left;
  REQUIRE(PMP::corefine_and_compute_difference(air, solid, left));
  std::vector<Mesh> parts;
  PMP::split_connected_components(left, parts);
  std::vector<double> volumes;
  for (const Mesh& part : parts) volumes.push_back(CGAL::to_double(PMP::volume(part)));
  std::sort(volumes.begin(), volumes.end());
  return volumes;
}

TEST_CASE("CGAL, taking the body out of a box, finds the same liquid in the pockets",
          "[geometry][pockets][oracle]") {
  const std::string path =
      GENERATE(as<std::string>{}, "tests/data/meshes/slab4_body.stl", "meshes/six_pocket_tray.stl");
  MeshReading reading;
  reading.unit = LengthUnit::millimetre;
  TriangleMesh body = welded(read_mesh(BRIMWRIGHT_SOURCE_DIR "/" + path, reading).mesh);
  const double turn = GENERATE(0.0, 0.05);  // about x, so that floors and rims are no longer level
  for (auto& [x, y, z] : body.vertices_mm) {
    const double across = std::cos(turn) * y - std::sin(turn) * z;
    z = std::sin(turn) * y + std::cos(turn) * z;
    y = across;
  }
  CAPTURE(path, turn);
  const PocketSurvey survey = pockets_of_body(body);
  REQUIRE(survey.pockets.size() == (path.find("six") == std::string::npos ? 4U : 6U));
  for (const double share : {0.35, 0.8}) {
    for (const Pocket& pocket : survey.pockets) {
      const double level = pocket.floor_mm + share * (pocket.brim_mm - pocket.floor_mm);
      const double held =
          pocket.curve.volume_below((level - pocket.floor_mm) * millimetre) / cubic_millimetre;
      const auto air = air_by_difference(body, level);
      // One of the parts below that level is this pocket's.
      const auto nearest = std::min_element(air.begin(), air.end(), [&](double a, double b) {
        return std::abs(a - held) < std::abs(b - held);
      });
      REQUIRE(nearest != air.end());
      CHECK_THAT(*nearest, WithinRel(held, 1e-7));  // corners of the cut rounded to doubles
    }
  }
}

}  // namespace
}  // namespace brimwright::geometry
