#include "solids.h"

#include <cmath>
#include <numbers>
#include <utility>

namespace brimwright::geometry::test {

using std::numbers::pi;

TriangleMesh turned(const std::vector<Turned>& profile, std::uint32_t sides) {
  TriangleMesh mesh;
  for (const auto& [radius, height] : profile) {
    for (std::uint32_t i = 0; i < sides; ++i) {
      const double angle = 2 * pi * i / sides;
      mesh.vertices_mm.push_back({radius * std::cos(angle), radius * std::sin(angle), height});
    }
  }
  const auto rings = static_cast<std::uint32_t>(profile.size());
  const std::uint32_t bottom = rings * sides;
  mesh.vertices_mm.push_back({0, 0, profile.front().height});
  mesh.vertices_mm.push_back({0, 0, profile.back().height});
  const auto vertex = [&](std::uint32_t ring, std::uint32_t i) {
    if (profile[ring].radius == 0) return ring == 0 ? bottom : bottom + 1;
    return ring * sides + i % sides;
  };
  const auto add = [&](std::uint32_t a, std::uint32_t b, std::uint32_t c) {
    if (a != b && b != c && c != a) mesh.triangles.push_back({a, b, c});
  };
  for (std::uint32_t i = 0; i < sides; ++i) {
    add(bottom, vertex(0, i + 1), vertex(0, i));
    add(bottom + 1, vertex(rings - 1, i), vertex(rings - 1, i + 1));
    for (std::uint32_t ring = 0; ring + 1 < rings; ++ring) {
      add(vertex(ring, i), vertex(ring, i + 1), vertex(ring + 1, i + 1));
      add(vertex(ring, i), vertex(ring + 1, i + 1), vertex(ring + 1, i));
    }
  }
  return mesh;
}

TriangleMesh ball(double radius, std::uint32_t rings, std::uint32_t sides) {
  std::vector<Turned> profile;
  for (std::uint32_t ring = 0; ring <= rings; ++ring) {
    const double angle = pi * ring / rings;
    const bool pole = ring == 0 || ring == rings;
    profile.push_back({pole ? 0 : radius * std::sin(angle), radius - radius * std::cos(angle)});
  }
  return turned(profile, sides);
}

TriangleMesh torus(double ring, double tube, std::uint32_t tube_sides, std::uint32_t ring_sides) {
  TriangleMesh mesh;
  for (std::uint32_t i = 0; i < ring_sides; ++i) {
    const double round = 2 * pi * i / ring_sides;
    for (std::uint32_t j = 0; j < tube_sides; ++j) {
      const double across = 2 * pi * j / tube_sides;
      const double radius = ring + tube * std::cos(across);
      mesh.vertices_mm.push_back(
          {radius * std::cos(round), radius * std::sin(round), tube * std::sin(across)});
    }
  }
  const auto vertex = [&](std::uint32_t i, std::uint32_t j) {
    return (i % ring_sides) * tube_sides + j % tube_sides;
  };
  for (std::uint32_t i = 0; i < ring_sides; ++i) {
    for (std::uint32_t j = 0; j < tube_sides; ++j) {
      mesh.triangles.push_back({vertex(i, j), vertex(i + 1, j), vertex(i + 1, j + 1)});
      mesh.triangles.push_back({vertex(i, j), vertex(i + 1, j + 1), vertex(i, j + 1)});
    }
  }
  return mesh;
}

TriangleMesh obelisk(double a0, double b0, double a1, double b1, double height) {
  TriangleMesh mesh;
  for (const auto& [a, b, z] : {Point{a0, b0, 0}, Point{a1, b1, height}}) {
    mesh.vertices_mm.insert(
        mesh.vertices_mm.end(),
        {{-a / 2, -b / 2, z}, {a / 2, -b / 2, z}, {a / 2, b / 2, z}, {-a / 2, b / 2, z}});
  }
  mesh.triangles = {{0, 2, 1}, {0, 3, 2}, {4, 5, 6}, {4, 6, 7}, {0, 1, 5}, {0, 5, 4},
                    {1, 2, 6}, {1, 6, 5}, {2, 3, 7}, {2, 7, 6}, {3, 0, 4}, {3, 4, 7}};
  return mesh;
}

TriangleMesh box(const Point& low, const Point& high) {
  const double a = high[0] - low[0], b = high[1] - low[1];
  return moved(obelisk(a, b, a, b, high[2] - low[2]), {low[0] + a / 2, low[1] + b / 2, low[2]});
}

double polygon_share(std::uint32_t sides) { return sides / (2 * pi) * std::sin(2 * pi / sides); }

TriangleMesh moved(TriangleMesh mesh, const Point& by) {
  for (Point& p : mesh.vertices_mm) p = {p[0] + by[0], p[1] + by[1], p[2] + by[2]};
  return mesh;
}

TriangleMesh scaled(TriangleMesh mesh, double factor) {
  return stretched(std::move(mesh), {factor, factor, factor});
}

TriangleMesh stretched(TriangleMesh mesh, const Point& by) {
  for (Point& p : mesh.vertices_mm) p = {p[0] * by[0], p[1] * by[1], p[2] * by[2]};
  return mesh;
}

TriangleMesh turned_about_z(TriangleMesh mesh, double radians) {
  const double c = std::cos(radians), s = std::sin(radians);
  for (Point& p : mesh.vertices_mm) p = {c * p[0] - s * p[1], s * p[0] + c * p[1], p[2]};
  return mesh;
}

TriangleMesh on_its_side(TriangleMesh mesh) {
  for (Point& p : mesh.vertices_mm) p = {-p[2], p[1], p[0]};
  return mesh;
}

TriangleMesh refined(const TriangleMesh& mesh) {
  TriangleMesh fine;
  for (const auto& corners : mesh.triangles) {
    std::array<Point, 6> p;
    for (std::size_t i = 0; i < 3; ++i) {
      const Point& a = mesh.vertices_mm[corners[i]];
      const Point& b = mesh.vertices_mm[corners[(i + 1) % 3]];
      p[i] = a;
      p[i + 3] = {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2};
    }
    const auto n = static_cast<std::uint32_t>(fine.vertices_mm.size());
    fine.vertices_mm.insert(fine.vertices_mm.end(), p.begin(), p.end());
    fine.triangles.insert(
        fine.triangles.end(),
        {{n, n + 3, n + 5}, {n + 3, n + 1, n + 4}, {n + 5, n + 4, n + 2}, {n + 3, n + 4, n + 5}});
  }
  return fine;
}

TriangleMesh without_sharing(const TriangleMesh& mesh) {
  TriangleMesh apart;
  for (const auto& corners : mesh.triangles) {
    const auto n = static_cast<std::uint32_t>(apart.vertices_mm.size());
    for (const std::uint32_t v : corners) apart.vertices_mm.push_back(mesh.vertices_mm[v]);
    apart.triangles.push_back({n, n + 1, n + 2});
  }
  return apart;
}

TriangleMesh inside_out(TriangleMesh mesh) {
  for (auto& corners : mesh.triangles) std::swap(corners[1], corners[2]);
  return mesh;
}

TriangleMesh together(TriangleMesh a, const TriangleMesh& b) {
  const auto first = static_cast<std::uint32_t>(a.vertices_mm.size());
  a.vertices_mm.insert(a.vertices_mm.end(), b.vertices_mm.begin(), b.vertices_mm.end());
  for (const auto& [i, j, k] : b.triangles) {
    a.triangles.push_back({first + i, first + j, first + k});
  }
  return a;
}

}  // namespace brimwright::geometry::test
