#include "geometry/shell_union.h"

#include "geometry/child_process.h"
#include "geometry/enclosed_volume.h"
#include "units/printing.h"
#include "units/user_error.h"

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/corefinement.h>
#include <CGAL/Polygon_mesh_processing/polygon_soup_to_polygon_mesh.h>
#include <CGAL/Surface_mesh.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <utility>

namespace brimwright::geometry {
namespace {

namespace PMP = CGAL::Polygon_mesh_processing;
using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using Surface = CGAL::Surface_mesh<Kernel::Point_3>;

enum class Outcome : std::uint32_t { united, crosses_itself, touches_along_an_edge, no_surface };

struct Head {
  Outcome outcome = Outcome::united;
  std::uint32_t swallowed = 0;
  double swallowed_mm3 = 0;
  std::uint64_t vertices = 0, triangles = 0;
};

void stay_silent(const char*, const char*, const char*, int, const char*) {}

bool to_surface(const TriangleMesh& mesh, Surface& surface) {
  std::vector<Kernel::Point_3> points;
  for (const auto& [x, y, z] : mesh.vertices_mm) points.emplace_back(x, y, z);
  if (!PMP::is_polygon_soup_a_polygon_mesh(mesh.triangles)) return false;
  PMP::polygon_soup_to_polygon_mesh(points, mesh.triangles, surface);
  return true;
}

TriangleMesh from_surface(const Surface& surface) {
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

/// Rounded as it comes, which is quicker than from_surface.
double roughly_mm3(const Surface& surface) {
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

/// Some solids already united.
struct Group {
  Surface surface;
  double volume_mm3 = 0;
  std::uint32_t solids = 1;
};

struct Larger {
  bool operator()(const Group& a, const Group& b) const {
    return a.surface.number_of_faces() > b.surface.number_of_faces();
  }
};

Outcome merge(Group& a, Group& b, Head& head, Group& both) {
  const bool whole = PMP::corefine_and_compute_union(
      a.surface, b.surface, both.surface, CGAL::parameters::throw_on_self_intersection(true));
  if (!whole) return Outcome::touches_along_an_edge;
  both.surface.collect_garbage();
  both.volume_mm3 = roughly_mm3(both.surface);
  both.solids = a.solids + b.solids;
  const Group& smaller = a.volume_mm3 < b.volume_mm3 ? a : b;
  const double larger_mm3 = std::max(a.volume_mm3, b.volume_mm3);
  if (both.volume_mm3 - larger_mm3 <= 1e-9 * larger_mm3) {
    head.swallowed += smaller.solids;
    head.swallowed_mm3 += smaller.volume_mm3;
  }
  return Outcome::united;
}

/// In the child. Always the two smallest next, so that each facet is gone through few times.
Outcome unite(const std::vector<TriangleMesh>& solids, Head& head, TriangleMesh& mesh) try {
  CGAL::set_error_handler(stay_silent);
  std::vector<Group> groups(solids.size());
  for (std::size_t i = 0; i < solids.size(); ++i) {
    if (!to_surface(solids[i], groups[i].surface)) return Outcome::no_surface;
    groups[i].volume_mm3 = enclosed_volume(solids[i]) / cubic_millimetre;
  }
  std::make_heap(groups.begin(), groups.end(), Larger());
  const auto take_smallest = [&] {
    std::pop_heap(groups.begin(), groups.end(), Larger());
    Group smallest = std::move(groups.back());
    groups.pop_back();
    return smallest;
  };
  while (groups.size() > 1) {
    Group a = take_smallest(), b = take_smallest(), both;
    const Outcome outcome = merge(a, b, head, both);
    if (outcome != Outcome::united) return outcome;
    groups.push_back(std::move(both));
    std::push_heap(groups.begin(), groups.end(), Larger());
  }
  mesh = from_surface(groups.front().surface);
  return Outcome::united;
} catch (const PMP::Corefinement::Self_intersection_exception&) {
  return Outcome::crosses_itself;
}

bool unite_and_send(const std::vector<TriangleMesh>& solids, const Send& send) {
  Head head;
  TriangleMesh mesh;
  head.outcome = unite(solids, head, mesh);
  head.vertices = mesh.vertices_mm.size();
  head.triangles = mesh.triangles.size();
  return send(&head, sizeof head) &&
         send(mesh.vertices_mm.data(), head.vertices * sizeof mesh.vertices_mm[0]) &&
         send(mesh.triangles.data(), head.triangles * sizeof mesh.triangles[0]);
}

TriangleMesh unpacked(const std::string& bytes, const Head& head) {
  TriangleMesh mesh;
  mesh.vertices_mm.resize(head.vertices);
  mesh.triangles.resize(head.triangles);
  const char* from = bytes.data() + sizeof head;
  if (head.vertices > 0)
    std::memcpy(mesh.vertices_mm.data(), from, head.vertices * sizeof mesh.vertices_mm[0]);
  from += head.vertices * sizeof mesh.vertices_mm[0];
  if (head.triangles > 0)
    std::memcpy(mesh.triangles.data(), from, head.triangles * sizeof mesh.triangles[0]);
  return mesh;
}

std::string reason_for(ChildEnd end, Outcome outcome) {
  if (end == ChildEnd::out_of_time) return "they could not be united in reasonable time";
  if (end == ChildEnd::out_of_memory) return "uniting them took more than 2 GiB of memory";
  if (end != ChildEnd::finished) return "they could not be united";
  if (outcome == Outcome::crosses_itself) return "one of them crosses itself";
  if (outcome == Outcome::touches_along_an_edge) return "they touch along an edge only";
  return "one of them touches itself";
}

/// Four seconds, and a tenth of a millisecond for each facet and doubling of the solids' number,
/// some eight times what it takes here.
ChildLimits limits_for(const std::vector<TriangleMesh>& solids) {
  std::size_t facets = 0;
  for (const TriangleMesh& solid : solids) facets += solid.triangles.size();
  facets *= std::bit_width(solids.size() - 1);
  return {.memory_bytes = std::size_t{2} << 30,
          .time = std::chrono::milliseconds(4000 + std::min<std::size_t>(facets / 10, 120'000))};
}

}  // namespace

UnitedSolid united(const std::vector<TriangleMesh>& solids, const std::array<double, 3>& place_mm,
                   const std::string& file) {
  const ChildLimits limits = limits_for(solids);
  const ChildReport report =
      run_in_child(limits, [&](const Send& send) { return unite_and_send(solids, send); });
  Head head;
  if (report.end == ChildEnd::finished) std::memcpy(&head, report.bytes.data(), sizeof head);
  if (report.end == ChildEnd::finished && head.outcome == Outcome::united) {
    return {unpacked(report.bytes, head), head.swallowed, head.swallowed_mm3};
  }
  throw UserError(
      {.file = file,
       .field = "at (" + trimmed(place_mm[0], 2) + ", " + trimmed(place_mm[1], 2) + ", " +
                trimmed(place_mm[2], 2) + ") mm",
       .problem = "has parts that overlap or touch, the first here, and " +
                  reason_for(report.end, head.outcome),
       .remedy = "unite the parts into one solid in the modelling program and export it again"});
}

}  // namespace brimwright::geometry
