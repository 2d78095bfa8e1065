#include "geometry/exact/exact_solid.h"

#include "geometry/surface/enclosed_volume.h"

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/corefinement.h>
#include <CGAL/Polygon_mesh_processing/polygon_soup_to_polygon_mesh.h>
#include <CGAL/Surface_mesh.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

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

constexpr std::size_t in_union = PMP::Corefinement::UNION;
constexpr std::size_t in_both = PMP::Corefinement::INTERSECTION;
constexpr std::size_t first_alone = PMP::Corefinement::TM1_MINUS_TM2;
constexpr std::size_t second_alone = PMP::Corefinement::TM2_MINUS_TM1;

/// Those of the four parts that are asked for and are surfaces.
using Parts = std::array<std::optional<Surface>, 4>;

Parts parts_of(Surface& a, Surface& b, SelfCrossings crossings,
               std::initializer_list<std::size_t> wanted) try {
  Parts parts;
  std::array<boost::optional<Surface*>, 4> outputs;
  for (const std::size_t part : wanted) outputs[part] = &parts[part].emplace();
  const auto strictly =
      CGAL::parameters::throw_on_self_intersection(crossings == SelfCrossings::refused);
  const std::array<bool, 4> is_surface =
      PMP::corefine_and_compute_boolean_operations(a, b, outputs, strictly);
  for (const std::size_t part : wanted) {
    if (!is_surface[part]) parts[part].reset();
  }
  return parts;
} catch (const PMP::Corefinement::Self_intersection_exception&) {
  throw CrossesItself();
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
  return enclosed_volume(mesh) / cubic_millimetre;
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

std::optional<ExactSolid> union_of(ExactSolid a, ExactSolid b) {
  Parts parts = parts_of(a.impl().surface, b.impl().surface, SelfCrossings::refused, {in_union});
  if (!parts[in_union]) return std::nullopt;
  return wrapped(std::move(*parts[in_union]));
}

std::optional<double> common_mm3(ExactSolid a, ExactSolid b, SelfCrossings crossings) {
  const auto mm3 = [](const TriangleMesh& mesh) {
    return mesh.triangles.empty() ? 0 : enclosed_volume(mesh) / cubic_millimetre;
  };
  const double a_mm3 = mm3(a.rounded()), b_mm3 = mm3(b.rounded());
  Parts parts =
      parts_of(a.impl().surface, b.impl().surface, crossings, {in_both, first_alone, second_alone});
  const auto part_mm3 = [&](std::size_t part) {
    return mm3(wrapped(std::move(*parts[part])).rounded());
  };
  if (parts[in_both]) return part_mm3(in_both);
  if (parts[first_alone]) return a_mm3 - part_mm3(first_alone);
  if (parts[second_alone]) return b_mm3 - part_mm3(second_alone);
  return std::nullopt;
}

ChildLimits corefinement_limits(std::size_t facets) {
  return {.memory_bytes = std::size_t{2} << 30,
          .time = std::chrono::milliseconds(4000 + std::min<std::size_t>(facets / 10, 120'000))};
}

}  // namespace brimwright::geometry
