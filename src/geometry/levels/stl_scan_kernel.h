#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>

namespace brimwright::geometry {

// The arithmetic over facets as they stand in a binary STL, behind stl_scan.h and level_table.h:
// once in plain code and once for processors with AVX2, with the same operations in the same order,
// so that both give the same bits.

inline constexpr std::size_t lanes = 8;  // facet i of a stretch adds to sum i % lanes

/// What a stretch of facets adds up to. A coordinate that is not finite makes an area infinite or
/// not a number, and no other does: sizes of floats, squared twice, stay within a double.
struct StretchSums {
  std::array<double, lanes> six_volumes{};  // of the tetrahedra from the origin
  std::array<double, lanes> doubled_areas{};
};

struct CornerRange {
  static constexpr float far = std::numeric_limits<float>::infinity();
  std::array<float, 3> low = {far, far, far};
  std::array<float, 3> high = {-far, -far, -far};
};

/// Sums, modulo 2^64, of (h1-h0)(g2-g0) - (h2-h0)(g1-g0) over facets, where h and g are whole
/// numbers drawn from a corner's bits. Over a facet that is the sum of h g' - h' g over its edges,
/// and an edge run through both ways adds nothing. For an edge left over it vanishes by a chance of
/// 2^-31, and there are two such sums with draws of their own.
using EdgeSums = std::array<std::uint64_t, 2>;

/// The columns of liquid under facets: heights z1 <= z2 <= z3 of the corners, and the area of the
/// horizontal projection, positive where the facet faces up.
struct FacetColumns {
  // So few that the file's next part comes from memory while these are summed up.
  static constexpr std::size_t most = 32;
  struct alignas(32) Numbers : std::array<double, most> {};
  Numbers z1, z2, z3, area;
  Numbers mean;   // height of the corners; not finite if one of them is not
  Numbers lower;  // area / [(z2 - z1) (z3 - z1)], anything if z1 = z2
  Numbers upper;  // area / [(z3 - z2) (z3 - z1)], anything if z2 = z3
};

/// Fills in the rest from the corners' heights, in any order, and the area.
void set_column(FacetColumns& columns, std::size_t i, const std::array<double, 3>& z, double area);

struct StlKernel {
  /// Adds `count` facets. The range takes no notice of corners that are not a number.
  void (*sum)(const char* facets, std::size_t count, const std::array<double, 3>& origin,
              StretchSums& sums, CornerRange& range);
  void (*sum_edges)(const char* facets, std::size_t count, EdgeSums& sums);
  void (*widen)(const char* facets, std::size_t count, float& lowest, float& highest);
  /// Heights are above `lowest`. At most FacetColumns::most facets. Widens the range as well.
  void (*columns)(const char* facets, std::size_t count, double lowest, FacetColumns& columns,
                  float& low, float& high);
};

const StlKernel& plain_stl_kernel();
const StlKernel* avx2_stl_kernel();  ///< null where the processor has no AVX2
const StlKernel& best_stl_kernel();

// FIPS 180-4, section 5.3.3 (SHA-256): fractional parts of the square roots of the first primes.
inline constexpr std::array<std::uint32_t, 8> draw_keys = {
    0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};

}  // namespace brimwright::geometry
