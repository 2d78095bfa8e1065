#include "geometry/repair/corner_stars.h"

#include "geometry/repair/fours.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/vectors.h"

#include <array>
#include <atomic>
#include <bit>
#include <cmath>
#include <cstddef>
#include <cstdint>

namespace brimwright::geometry {
namespace {

// Each sum below has relative errors under ten half-units (1.1e-16) of its largest terms.
constexpr double rounding = 1e-14;

/// The axes, and the diagonals of a cube's faces and of the cube itself.
constexpr std::array<std::array<int, 3>, 13> directions = {{{1, 0, 0},
                                                            {0, 1, 0},
                                                            {0, 0, 1},
                                                            {1, 1, 0},
                                                            {1, -1, 0},
                                                            {1, 0, 1},
                                                            {1, 0, -1},
                                                            {0, 1, 1},
                                                            {0, 1, -1},
                                                            {1, 1, 1},
                                                            {1, 1, -1},
                                                            {1, -1, 1},
                                                            {1, -1, -1}}};
constexpr std::size_t first_cube_diagonal = 9;

/// The same by fours, coordinate by coordinate, filled up with nothing.
constexpr std::size_t fours_of_directions = (directions.size() + 3) / 4;
constexpr auto sums = [] {
  std::array<std::array<Floats, 3>, fours_of_directions> all{};
  for (std::size_t k = 0; k < directions.size(); ++k)
    for (std::size_t i = 0; i < 3; ++i) all[k / 4][i][k % 4] = static_cast<float>(directions[k][i]);
  return all;
}();

/// Bits 2 k and 2 k + 1: whether a facet surely shows its front, or its back, to direction k.
using Sides = std::uint32_t;

/// By fours in single precision, whose own roundings are added to the doubt: three of 6e-8.
Sides sides_of(const Vector& a, const Vector& b, const Vector& c) {
  constexpr float single = 4e-7F, least = 1e-37F;
  const Vector u = b - a, v = c - a;
  std::array<float, 3> normal{};
  double doubt = 0;
  float size = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    const std::size_t j = (i + 1) % 3, k = (i + 2) % 3;
    const double p = u[j] * v[k], q = u[k] * v[j];
    normal[i] = static_cast<float>(p - q);
    size += std::abs(normal[i]);
    doubt += std::abs(p) + std::abs(q);
  }
  const FourFloats sure =
      fours::alike(static_cast<float>(rounding * doubt) * (1 + single) + size * single + least);
  Sides sides = 0;
  for (std::size_t four = 0; four < sums.size(); ++four) {
    FourFloats sum{};
    for (std::size_t i = 0; i < 3; ++i) sum += fours::alike(normal[i]) * fours::all(sums[four][i]);
    const FourNumbers front = (sum > sure) & FourNumbers{1, 4, 16, 64};
    const FourNumbers back = (-sum > sure) & FourNumbers{2, 8, 32, 128};
    sides |= fours::gathered(front | back) << 8 * four;
  }
  return sides;
}

/// On which side of a plane that holds a vertex and a direction another vertex lies.
enum class Half { below, from_it_upwards, unsure };

/// The plane is across a line that stands square to the direction.
Half half_of(std::size_t direction, const Vector& vertex, const Vector& other) {
  const std::array<int, 3>& d = directions[direction];
  if (direction < first_cube_diagonal) {  // an axis: to compare is exact
    const std::size_t axis = d[0] == 0 ? 0 : d[1] == 0 ? 1 : 2;
    return other[axis] < vertex[axis] ? Half::below : Half::from_it_upwards;
  }
  const double p = d[1] * (other[0] - vertex[0]), q = d[0] * (other[1] - vertex[1]);
  if (p == 0 && q == 0) return Half::from_it_upwards;
  if (std::abs(p - q) <= rounding * (std::abs(p) + std::abs(q))) return Half::unsure;
  return p < q ? Half::below : Half::from_it_upwards;
}

}  // namespace

std::vector<char> spread_stars(const TriangleMesh& mesh) {
  // Plain pointers, here and below: nothing is checked a million times.
  const std::size_t facets = mesh.triangles.size(), vertices = mesh.vertices_mm.size();
  const auto* const triangles = mesh.triangles.data();
  const Point* const at = mesh.vertices_mm.data();
  std::vector<Sides> common_sides(vertices, ~Sides{0});
  Sides* const common = common_sides.data();
  in_stretches(facets, [=](std::size_t facet) {
    const auto& [a, b, c] = triangles[facet];
    const Sides sides = sides_of(at[a], at[b], at[c]);
    for (const std::uint32_t v : {a, b, c}) {
      const std::atomic_ref<Sides> shared(common[v]);
      if ((shared.load(std::memory_order_relaxed) & ~sides) != 0)
        shared.fetch_and(sides, std::memory_order_relaxed);
    }
  });
  // All facets go round the same way, each by less than half a turn, so that one whole turn passes
  // upwards through a plane exactly once.
  constexpr char many = 2;
  std::vector<char> turns_at(vertices, 0);
  char* const turns = turns_at.data();
  in_stretches(facets, [=](std::size_t facet) {
    const auto& corners = triangles[facet];
    for (std::size_t i = 0; i < 3; ++i) {
      const std::uint32_t v = corners[i];
      if (common[v] == 0) continue;
      const auto direction = static_cast<std::size_t>(std::countr_zero(common[v])) / 2;
      const Half from = half_of(direction, at[v], at[corners[(i + 1) % 3]]);
      const Half to = half_of(direction, at[v], at[corners[(i + 2) % 3]]);
      const bool is_unsure = from == Half::unsure || to == Half::unsure;
      if (!is_unsure && (from != Half::below || to != Half::from_it_upwards)) continue;
      const std::atomic_ref<char> shared(turns[v]);
      if (shared.load(std::memory_order_relaxed) >= many) continue;
      shared.fetch_add(is_unsure ? many : char{1}, std::memory_order_relaxed);
    }
  });
  for (std::size_t v = 0; v < vertices; ++v) turns[v] = common[v] != 0 && turns[v] == 1;
  return turns_at;
}

}  // namespace brimwright::geometry
