#include "geometry/files/stl_file.h"
#include "geometry/levels/stl_scan_kernel.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstring>

namespace brimwright::geometry {
namespace {

struct Corners {
  float a[3], b[3], c[3];
};

Corners corners_of(const char* facet) {
  Corners corners;
  std::memcpy(&corners, facet + stl_corners_start, sizeof corners);
  return corners;
}

void add(const Corners& corners, const std::array<double, 3>& origin, double& six_volumes,
         double& doubled_areas) {
  const auto& [a, b, c] = corners;
  const double ax = a[0], ay = a[1], az = a[2];
  const double ux = b[0] - ax, uy = b[1] - ay, uz = b[2] - az;
  const double vx = c[0] - ax, vy = c[1] - ay, vz = c[2] - az;
  const double nx = uy * vz - uz * vy;
  const double ny = uz * vx - ux * vz;
  const double nz = ux * vy - uy * vx;
  six_volumes += (ax - origin[0]) * nx + (ay - origin[1]) * ny + (az - origin[2]) * nz;
  doubled_areas += std::sqrt(nx * nx + ny * ny + nz * nz);
}

void widen(CornerRange& range, const Corners& corners) {
  for (const auto* corner : {&corners.a, &corners.b, &corners.c}) {
    for (std::size_t axis = 0; axis < 3; ++axis) {
      const float number = (*corner)[axis];
      range.low[axis] = number < range.low[axis] ? number : range.low[axis];
      range.high[axis] = number > range.high[axis] ? number : range.high[axis];
    }
  }
}

void sum(const char* facets, std::size_t count, const std::array<double, 3>& origin,
         StretchSums& sums, CornerRange& range) {
  for (std::size_t i = 0; i < count; ++i) {
    const Corners corners = corners_of(facets + i * stl_facet_size);
    add(corners, origin, sums.six_volumes[i % lanes], sums.doubled_areas[i % lanes]);
    widen(range, corners);
  }
}

/// Two pairs of whole numbers below 2^31, drawn from a corner's bits.
struct Draw {
  std::int64_t h[2], g[2];
};

std::uint64_t mixed(std::uint64_t s, std::uint32_t with, std::size_t key) {
  return ((s & 0xffffffff) ^ with ^ draw_keys[key]) * ((s >> 32) ^ draw_keys[key + 1]);
}

Draw draw(const float (&corner)[3]) {
  std::uint32_t bits[3];
  for (std::size_t axis = 0; axis < 3; ++axis) {
    bits[axis] = std::bit_cast<std::uint32_t>(corner[axis] + 0.0F);  // makes 0 of -0
  }
  Draw drawn;
  std::uint64_t s = std::uint64_t{bits[0] ^ draw_keys[0]} * (bits[1] ^ draw_keys[1]);
  s = mixed(s, bits[2], 2);
  for (std::size_t i = 0; i < 2; ++i) {
    s = mixed(s, 0, 4 + 2 * i);
    drawn.h[i] = static_cast<std::int64_t>(s & 0x7fffffff);
    drawn.g[i] = static_cast<std::int64_t>(s >> 33);
  }
  return drawn;
}

void sum_edges(const char* facets, std::size_t count, EdgeSums& sums) {
  for (std::size_t i = 0; i < count; ++i) {
    const Corners corners = corners_of(facets + i * stl_facet_size);
    const Draw p = draw(corners.a), q = draw(corners.b), r = draw(corners.c);
    for (std::size_t k = 0; k < 2; ++k) {
      sums[k] += static_cast<std::uint64_t>((q.h[k] - p.h[k]) * (r.g[k] - p.g[k])) -
                 static_cast<std::uint64_t>((r.h[k] - p.h[k]) * (q.g[k] - p.g[k]));
    }
  }
}

void widen_heights(const char* facets, std::size_t count, float& lowest, float& highest) {
  for (std::size_t i = 0; i < count; ++i) {
    const auto [a, b, c] = corners_of(facets + i * stl_facet_size);
    for (const float z : {a[2], b[2], c[2]}) {
      lowest = z < lowest ? z : lowest;
      highest = z > highest ? z : highest;
    }
  }
}

void columns_of(const char* facets, std::size_t count, double lowest, FacetColumns& columns,
                float& low, float& high) {
  widen_heights(facets, count, low, high);
  for (std::size_t i = 0; i < count; ++i) {
    const auto [a, b, c] = corners_of(facets + i * stl_facet_size);
    const double ux = double{b[0]} - a[0], uy = double{b[1]} - a[1];
    const double vx = double{c[0]} - a[0], vy = double{c[1]} - a[1];
    set_column(columns, i, {a[2] - lowest, b[2] - lowest, c[2] - lowest}, (ux * vy - uy * vx) / 2);
  }
}

}  // namespace

void set_column(FacetColumns& columns, std::size_t i, const std::array<double, 3>& z, double area) {
  constexpr double third = 1.0 / 3;
  const double low = std::min(z[0], z[1]), high = std::max(z[0], z[1]);
  const double z1 = std::min(low, z[2]);
  const double z2 = std::max(low, std::min(high, z[2]));
  const double z3 = std::max(high, z[2]);
  columns.z1[i] = z1;
  columns.z2[i] = z2;
  columns.z3[i] = z3;
  columns.area[i] = area;
  columns.mean[i] = (z[0] + z[1] + z[2]) * third;
  columns.lower[i] = area / ((z2 - z1) * (z3 - z1));
  columns.upper[i] = area / ((z3 - z2) * (z3 - z1));
}

const StlKernel& plain_stl_kernel() {
  static const StlKernel kernel{sum, sum_edges, widen_heights, columns_of};
  return kernel;
}

const StlKernel& best_stl_kernel() {
  static const StlKernel* const avx2 = avx2_stl_kernel();
  return avx2 != nullptr ? *avx2 : plain_stl_kernel();
}

}  // namespace brimwright::geometry
