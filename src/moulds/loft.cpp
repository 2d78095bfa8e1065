#include "moulds/loft.h"

#include <algorithm>
#include <cmath>

namespace brimwright::moulds {
namespace {

using Indices = std::vector<std::uint32_t>;

bool is_same(const std::array<double, 2>& a, const std::array<double, 2>& b) {
  return std::hypot(a[0] - b[0], a[1] - b[1]) < 1e-10;
}

/// Adds the ring's points as vertices and tells which vertex each point became.
Indices add_ring(geometry::TriangleMesh& mesh, const Ring& ring) {
  const std::size_t n = ring.points.size();
  Indices vertex_of(n);
  for (std::size_t i = 0; i < n; ++i) {
    const auto& point = ring.points[i];
    if (i > 0 && is_same(point, ring.points[i - 1])) {
      vertex_of[i] = vertex_of[i - 1];
    } else if (i + 1 == n && is_same(point, ring.points[0])) {
      vertex_of[i] = vertex_of[0];
    } else {
      vertex_of[i] = static_cast<std::uint32_t>(mesh.vertices_mm.size());
      mesh.vertices_mm.push_back({point[0], point[1], ring.z_mm});
    }
  }
  return vertex_of;
}

void add_triangle(geometry::TriangleMesh& mesh, std::uint32_t a, std::uint32_t b, std::uint32_t c) {
  if (a != b && b != c && c != a) mesh.triangles.push_back({a, b, c});
}

void add_wall(geometry::TriangleMesh& mesh, const Indices& below, const Indices& above) {
  const std::size_t n = below.size();
  for (std::size_t i = 0; i < n; ++i) {
    const std::size_t next = i + 1 == n ? 0 : i + 1;
    add_triangle(mesh, below[i], below[next], above[next]);
    add_triangle(mesh, below[i], above[next], above[i]);
  }
}

}  // namespace

Ring point_ring(std::array<double, 2> point, std::size_t n, double z_mm) {
  return {Outline(n, point), z_mm};
}

bool is_point(const Ring& ring) {
  return std::all_of(ring.points.begin(), ring.points.end(),
                     [&](const auto& point) { return is_same(point, ring.points.front()); });
}

geometry::TriangleMesh loft(const std::vector<Ring>& rings, LoftEnds ends) {
  geometry::TriangleMesh mesh;
  std::vector<Indices> vertices;
  for (const Ring& ring : rings) vertices.push_back(add_ring(mesh, ring));
  for (std::size_t i = 1; i < rings.size(); ++i) add_wall(mesh, vertices[i - 1], vertices[i]);
  if (ends == LoftEnds::joined) add_wall(mesh, vertices.back(), vertices.front());
  return mesh;
}

void add_cap(geometry::TriangleMesh& mesh, const Outline& outline, std::uint32_t first,
             CapFaces faces) {
  for (const auto& [a, b, c] : filled(outline)) {
    if (faces == CapFaces::up)
      mesh.triangles.push_back({first + a, first + b, first + c});
    else
      mesh.triangles.push_back({first + c, first + b, first + a});
  }
}

}  // namespace brimwright::moulds
