#include "geometry/shell_nesting.h"

#include "geometry/enclosed_volume.h"
#include "units/user_error.h"

#include <cmath>
#include <numbers>
#include <vector>

namespace brimwright::geometry {
namespace {

using Point = std::array<double, 3>;

struct Shell {
  TriangleMesh mesh;
  Box box;
  double volume_mm3 = 0;
};

std::vector<Shell> shells_of(const TriangleMesh& mesh, const SurfaceEdges& edges) {
  std::vector<std::vector<std::array<std::uint32_t, 3>>> facets(edges.shells);
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
    facets[edges.shell[i]].push_back(mesh.triangles[i]);
  }
  std::vector<Shell> shells;
  for (const auto& own : facets) {
    Shell shell{.mesh = {}, .box = {}};
    for (const auto& corners : own) {
      const auto first = static_cast<std::uint32_t>(shell.mesh.vertices_mm.size());
      for (const std::uint32_t v : corners) shell.mesh.vertices_mm.push_back(mesh.vertices_mm[v]);
      shell.mesh.triangles.push_back({first, first + 1, first + 2});
    }
    shell.box = bounding_box(shell.mesh);
    shell.volume_mm3 = enclosed_volume(shell.mesh) / cubic_millimetre;
    shells.push_back(std::move(shell));
  }
  return shells;
}

bool contains(const Box& box, const Point& p) {
  for (std::size_t i = 0; i < 3; ++i) {
    if (p[i] < box.low_mm[i] || p[i] > box.high_mm[i]) return false;
  }
  return true;
}

double dot(const Point& a, const Point& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }

/// How often `shell` goes round `p`: the solid angle of its facets over 4 pi, a whole number away
/// from the surface (A. van Oosterom, J. Strackee, IEEE Trans. Biomed. Eng. 1983, 30, 125).
int winding_number(const TriangleMesh& shell, const Point& p) {
  double angle = 0;
  for (const auto& corners : shell.triangles) {
    std::array<Point, 3> to;
    for (std::size_t k = 0; k < 3; ++k) {
      const Point& v = shell.vertices_mm[corners[k]];
      to[k] = {v[0] - p[0], v[1] - p[1], v[2] - p[2]};
    }
    const auto& [a, b, c] = to;
    const double la = std::sqrt(dot(a, a)), lb = std::sqrt(dot(b, b)), lc = std::sqrt(dot(c, c));
    const double volume = a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) +
                          a[2] * (b[0] * c[1] - b[1] * c[0]);
    angle +=
        2 * std::atan2(volume, la * lb * lc + dot(a, b) * lc + dot(b, c) * la + dot(c, a) * lb);
  }
  return static_cast<int>(std::lround(angle / (4 * std::numbers::pi)));
}

}  // namespace

std::optional<MisplacedShell> misplaced_shell(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                              const std::string& file) {
  if (edges.shells < 2) return std::nullopt;
  const std::vector<Shell> shells = shells_of(mesh, edges);
  std::size_t left = 100'000'000;  // solid angles, some seconds' worth
  for (const Shell& shell : shells) {
    const Point& corner = shell.mesh.vertices_mm.front();
    int around = 0;
    for (const Shell& other : shells) {
      if (&other == &shell || !contains(other.box, corner)) continue;
      if (other.mesh.triangles.size() > left) {
        throw UserError({.file = file,
                         .field = "",
                         .problem = "has too many separate parts within each other (" +
                                    std::to_string(edges.shells) + ")",
                         .remedy = "unite them into one solid in the modelling program"});
      }
      left -= other.mesh.triangles.size();
      around += winding_number(other.mesh, corner);
    }
    const bool hollow = shell.volume_mm3 < 0;
    if (around == (hollow ? 1 : 0)) continue;
    return MisplacedShell{
        hollow ? MisplacedShell::Kind::inside_out : MisplacedShell::Kind::filled_twice, corner};
  }
  return std::nullopt;
}

}  // namespace brimwright::geometry
