#include "helpers/unite/exact_solid.h"

#include "geometry/surface/enclosed_volume.h"

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/corefinement.h>
#include <CGAL/Polygon_mesh_processing/polygon_soup_to_polygon_mesh.h>
#include <CGAL/Surface_mesh.h>

#include <array>
#include <cstdint>
#include <utility>
#include <vector>

namespace brimwright::helpers {
namespace {

using geometry::TriangleMesh;

namespace PMP = CGAL::Polygon_mesh_processing;
using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using Surface = CGAL::Surface_mesh<Kernel::Point_3>;

}  // namespace

struct ExactSolid::Impl {
  Surface surface;
};

namespace {

void stay_silent(const char*, const char*, const char*, int, const char*) {}

ExactSolid wrapped(Surface surface) {
  surface.collect_garbage();
  return ExactSolid(std::make_unique<ExactSolid::Impl>(ExactSolid::Impl{std::move(surface)}));
}

}  // namespace

ExactSolid::ExactSolid(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
ExactSolid::ExactSolid(ExactSolid&& other) noexcept = default;
ExactSolid& ExactSolid::operator=(ExactSolid&& other) noexcept = default;
ExactSolid::~ExactSolid() = default;

CrossesItself::CrossesItself() : std::runtime_error("a solid that crosses itself") {}

std::size_t ExactSolid::facets() const { return impl_->surface.number_of_faces(); }

double ExactSolid::roughly_mm3() const {
  const Surface& surface = impl_->surface;
  TriangleMesh mesh;
  for (const auto f : surface.faces()) {
    for (const auto v : CGAL::vertices_around_face(surface.halfedge(f), surface)) {
      const auto& p = surface.point(v);
      mesh.vertices_mm.push_back(
          {CGAL::to_double(p.x()), CGAL::to_double(p.y()), CGAL::to_double(p.z())});
    }
    const auto last = static_cast<std::uint32_t>(mesh.vertices_mm.size());
    mesh.triangles.push_back({last - 3, last - 2, last - 1});
  }
  return geometry::enclosed_volume(mesh) / cubic_millimetre;
}

TriangleMesh ExactSolid::rounded() const {
  const Surface& surface = impl_->surface;
  TriangleMesh mesh;
  std::vector<std::uint32_t> number(surface.number_of_vertices() +
                                    surface.number_of_removed_vertices());
  for (const auto v : surface.vertices()) {
    number[v] = static_cast<std::uint32_t>(mesh.vertices_mm.size());
    const auto& p = CGAL::exact(surface.point(v));  // whose doubles are the nearest
    mesh.vertices_mm.push_back(
        {CGAL::to_double(p.x()), CGAL::to_double(p.y()), CGAL::to_double(p.z())});
  }
  for (const auto f : surface.faces()) {
    std::array<std::uint32_t, 3> corners{};
    std::size_t i = 0;
    for (const auto v : CGAL::vertices_around_face(surface.halfedge(f), surface)) {
      corners[i++] = number[v];
    }
    mesh.triangles.push_back(corners);
  }
  return mesh;
}

std::optional<ExactSolid> exact_solid(const TriangleMesh& mesh) {
  CGAL::set_error_handler(stay_silent);
  std::vector<Kernel::Point_3> points;
  for (const auto& [x, y, z] : mesh.vertices_mm) points.emplace_back(x, y, z);
  if (!PMP::is_polygon_soup_a_polygon_mesh(mesh.triangles)) return std::nullopt;
  Surface surface;
  PMP::polygon_soup_to_polygon_mesh(points, mesh.triangles, surface);
  return wrapped(std::move(surface));
}

std::optional<ExactSolid> union_of(ExactSolid a, ExactSolid b) try {
  Surface both;
  const auto strictly = CGAL::parameters::throw_on_self_intersection(true);
  if (!PMP::corefine_and_compute_union(a.impl().surface, b.impl().surface, both, strictly))
    return std::nullopt;
  return wrapped(std::move(both));
} catch (const PMP::Corefinement::Self_intersection_exception&) {
  throw CrossesItself();
}

}  // namespace brimwright::helpers
