#include "geometry/surface/shell_nesting.h"

#include "geometry/surface/vectors.h"
#include "units/user_error.h"

#include <cmath>
#include <numbers>
#include <vector>

namespace brimwright::geometry {
namespace {

/// The facets of each shell, with corners of their own.
std::vector<TriangleMesh> shells_of(const TriangleMesh& mesh, const SurfaceEdges& edges) {
  std::vector<TriangleMesh> shells(edges.shells);
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
    TriangleMesh& shell = shells[edges.shell[i]];
    const auto first = static_cast<std::uint32_t>(shell.vertices_mm.size());
    for (const std::uint32_t v : mesh.triangles[i])
      shell.vertices_mm.push_back(mesh.vertices_mm[v]);
    shell.triangles.push_back({first, first + 1, first + 2});
  }
  return shells;
}

bool contains(const Box& box, const Point& p) {
  for (std::size_t i = 0; i < 3; ++i)
    if (p[i] < box.low_mm[i] || p[i] > box.high_mm[i]) return false;
  return true;
}

/// How often `shell` goes round `p`: the solid angle of its facets over 4 pi, a whole number away
/// from the surface (A. van Oosterom, J. Strackee, IEEE Trans. Biomed. Eng. 1983, 30, 125).
int winding_number(const TriangleMesh& shell, const Point& p) {
  double angle = 0;
  for (const auto& corners : shell.triangles) {
    std::array<Vector, 3> to;
    for (std::size_t k = 0; k < 3; ++k) to[k] = shell.vertices_mm[corners[k]] - p;
    const auto& [a, b, c] = to;
    const double la = length(a), lb = length(b), lc = length(c);
    const double volume = dot(a, cross(b, c));
    angle +=
        2 * std::atan2(volume, la * lb * lc + dot(a, b) * lc + dot(b, c) * la + dot(c, a) * lb);
  }
  return static_cast<int>(std::lround(angle / (4 * std::numbers::pi)));
}

[[noreturn]] void refuse_too_many(std::uint32_t shells, const std::string& within,
                                  const std::string& file) {
  throw UserError(
      {.file = file,
       .field = "",
       .problem = "has too many separate parts" + within + " (" + std::to_string(shells) + ")",
       .remedy = "unite them into one solid in the modelling program"});
}

}  // namespace

std::vector<ShellPlace> shell_places(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                     const std::string& file) {
  constexpr std::uint32_t most = 20'000;  // our own bound: each is held against each
  if (edges.shells > most) refuse_too_many(edges.shells, "", file);
  const std::vector<TriangleMesh> shells = shells_of(mesh, edges);
  std::vector<ShellPlace> places;
  for (const TriangleMesh& shell : shells)
    places.push_back({.box = bounding_box(shell),
                      .volume_mm3 = enclosed_volume(shell) / cubic_millimetre,
                      .corner_mm = shell.vertices_mm.front()});
  std::size_t left = 100'000'000;  // solid angles, some seconds' worth
  for (ShellPlace& place : places) {
    for (std::uint32_t other = 0; other < shells.size(); ++other) {
      if (&places[other] == &place || !contains(places[other].box, place.corner_mm)) continue;
      const std::size_t facets = shells[other].triangles.size();
      if (facets > left) refuse_too_many(edges.shells, " within each other", file);
      left -= facets;
      const int times = winding_number(shells[other], place.corner_mm);
      if (times != 0) place.around.push_back({other, times});
    }
  }
  return places;
}

std::optional<MisplacedShell> misplaced_shell(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                              const std::string& file) {
  if (edges.shells < 2) return std::nullopt;
  for (const ShellPlace& place : shell_places(mesh, edges, file)) {
    int around = 0;
    for (const ShellAround& other : place.around) around += other.times;
    const bool hollow = place.volume_mm3 < 0;
    if (around == (hollow ? 1 : 0)) continue;
    return MisplacedShell{
        hollow ? MisplacedShell::Kind::inside_out : MisplacedShell::Kind::filled_twice,
        place.corner_mm};
  }
  return std::nullopt;
}

}  // namespace brimwright::geometry
