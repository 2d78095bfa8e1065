#include "geometry/repair/corner_stars.h"

#include "geometry/surface/vectors.h"

#include <array>
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

/// Bits 2 k and 2 k + 1: whether a facet surely shows its front, or its back, to direction k.
using Sides = std::uint32_t;

Sides sides_of(const Vector& a, const Vector& b, const Vector& c) {
  const Vector u = b - a, v = c - a;
  std::array<double, 3> normal{}, error{};
  for (std::size_t i = 0; i < 3; ++i) {
    const std::size_t j = (i + 1) % 3, k = (i + 2) % 3;
    const double p = u[j] * v[k], q = u[k] * v[j];
    normal[i] = p - q;
    error[i] = rounding * (std::abs(p) + std::abs(q));
  }
  Sides sides = 0;
  for (std::size_t k = 0; k < directions.size(); ++k) {
    double sum = 0, doubt = 0;
    for (std::size_t i = 0; i < 3; ++i) {
      sum += directions[k][i] * normal[i];
      doubt += std::abs(directions[k][i]) * error[i];
    }
    sides |= Sides{sum > doubt} << 2 * k | Sides{-sum > doubt} << (2 * k + 1);
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
  const auto& at = mesh.vertices_mm;
  std::vector<Sides> common(at.size(), ~Sides{0});
  for (const auto& [a, b, c] : mesh.triangles) {
    const Sides sides = sides_of(at[a], at[b], at[c]);
    for (const std::uint32_t v : {a, b, c}) common[v] &= sides;
  }
  // All facets go round the same way, each by less than half a turn, so that one whole turn passes
  // upwards through a plane exactly once.
  constexpr char many = 2;
  std::vector<char> turns(at.size(), 0);
  for (const auto& corners : mesh.triangles) {
    for (std::size_t i = 0; i < 3; ++i) {
      const std::uint32_t v = corners[i];
      if (common[v] == 0 || turns[v] == many) continue;
      const auto direction = static_cast<std::size_t>(std::countr_zero(common[v])) / 2;
      const Half from = half_of(direction, at[v], at[corners[(i + 1) % 3]]);
      const Half to = half_of(direction, at[v], at[corners[(i + 2) % 3]]);
      if (from == Half::unsure || to == Half::unsure) turns[v] = many;
      if (from == Half::below && to == Half::from_it_upwards) ++turns[v];
    }
  }
  for (std::size_t v = 0; v < turns.size(); ++v) turns[v] = common[v] != 0 && turns[v] == 1;
  return turns;
}

}  // namespace brimwright::geometry
