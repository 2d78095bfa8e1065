#include "peers.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/IO/polygon_mesh_io.h>
#include <CGAL/Polygon_mesh_processing/clip.h>
#include <CGAL/Polygon_mesh_processing/measure.h>
#include <CGAL/Surface_mesh.h>

#include <algorithm>
#include <stdexcept>

namespace {

namespace PMP = CGAL::Polygon_mesh_processing;
using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;

Mesh mesh_of(const std::string& path) {
  Mesh mesh;
  if (!PMP::IO::read_polygon_mesh(path, mesh)) throw std::runtime_error("CGAL cannot read " + path);
  return mesh;
}

}  // namespace

double cgal_read_and_volume(const std::string& path) {
  return CGAL::to_double(PMP::volume(mesh_of(path)));
}

double cgal_clip_at_half(const std::string& path) {
  Mesh mesh = mesh_of(path);
  double low = 1e300, high = -1e300;
  for (const auto vertex : mesh.vertices()) {
    low = std::min(low, mesh.point(vertex).z());
    high = std::max(high, mesh.point(vertex).z());
  }
  const double level = low + 0.503 * (high - low);
  PMP::clip(mesh, Kernel::Plane_3(0, 0, 1, -level), CGAL::parameters::clip_volume(true));
  return CGAL::to_double(PMP::volume(mesh));
}
