#pragma once

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <limits>

namespace brimwright::geometry {

// Boxes of facets by fours, coordinate by coordinate, so that one instruction of the processor asks
// four of them: the vectors of GCC and Clang, which are SSE or NEON.

using FourFloats = float __attribute__((vector_size(16)));
using FourNumbers = std::int32_t __attribute__((vector_size(16)));

using Floats = std::array<float, 4>;
using Numbers = std::array<std::uint32_t, 4>;

/// Pairs of two fours, a bit for each: 4 * j + i for the i-th of the first and the j-th of the
/// second.
using FourPairs = std::uint32_t;

namespace fours {

inline FourFloats all(const Floats& x) { return std::bit_cast<FourFloats>(x); }
inline FourNumbers all(const Numbers& x) { return std::bit_cast<FourNumbers>(x); }
inline FourFloats alike(float x) { return FourFloats{x, x, x, x}; }
inline FourNumbers alike(std::uint32_t x) {
  const auto n = static_cast<std::int32_t>(x);
  return FourNumbers{n, n, n, n};
}
inline FourFloats lesser(FourFloats a, FourFloats b) { return a < b ? a : b; }

/// The bits of the first's i-th with each of the second.
inline FourNumbers row(std::size_t i) { return FourNumbers{1 << i, 16 << i, 256 << i, 4096 << i}; }
inline FourPairs gathered(FourNumbers rows) {
  const auto halves = std::bit_cast<std::array<std::uint64_t, 2>>(rows);
  const std::uint64_t either = halves[0] | halves[1];
  return static_cast<FourPairs>(either | either >> 32);
}

/// How many they are, without asking a library as std::popcount does on old processors.
constexpr int count_of(FourPairs pairs) {
  pairs -= pairs >> 1 & 0x5555;
  pairs = (pairs & 0x3333) + (pairs >> 2 & 0x3333);
  pairs = (pairs + (pairs >> 4)) & 0x0F0F;
  return static_cast<int>((pairs + (pairs >> 8)) & 0x1F);
}

constexpr FourPairs rows_of_one = 0x1111;     // all pairs of the first's 0-th
constexpr FourPairs within_one = 0x7310;      // i < j: of a four with itself, each pair once
constexpr FourPairs within_or_same = 0xF731;  // i <= j

}  // namespace fours

/// Four upright boxes. One that holds nothing meets no other.
struct FourBoxes {
  std::array<Floats, 3> low, high;

  FourBoxes() {
    for (Floats& x : low) x.fill(std::numeric_limits<float>::infinity());
    for (Floats& x : high) x.fill(-std::numeric_limits<float>::infinity());
  }
};

/// The pairs of boxes that meet or touch.
inline FourPairs meetings(const FourBoxes& a, const FourBoxes& b) {
  FourNumbers found{};
  for (std::size_t i = 0; i < 4; ++i) {
    FourNumbers meets = fours::row(i);
    for (std::size_t k = 0; k < 3; ++k) {
      meets &= fours::all(b.low[k]) <= fours::alike(a.high[k][i]);
      meets &= fours::alike(a.low[k][i]) <= fours::all(b.high[k]);
    }
    found |= meets;
  }
  return fours::gathered(found);
}

/// The corners of four facets.
using FourCorners = std::array<Numbers, 3>;

/// The pairs that have a corner in common.
inline FourPairs sharing(const FourCorners& a, const FourCorners& b) {
  FourNumbers found{};
  for (std::size_t i = 0; i < 4; ++i) {
    FourNumbers shares{};
    for (const Numbers& of_a : a)
      for (const Numbers& of_b : b) shares |= fours::all(of_b) == fours::alike(of_a[i]);
    found |= shares & fours::row(i);
  }
  return fours::gathered(found);
}

/// For each of four facets, a half-space that it lies in: as far along `outward` as `reach`.
struct FourHalfSpaces {
  std::array<Floats, 3> outward{};
  Floats reach{};
};

namespace fours {

/// How far along four directions, at least, the boxes lie; each may be one for all.
inline FourFloats least_along(const std::array<FourFloats, 3>& outward,
                              const std::array<FourFloats, 3>& low,
                              const std::array<FourFloats, 3>& high) {
  FourFloats least{};
  for (std::size_t k = 0; k < 3; ++k) least += lesser(outward[k] * low[k], outward[k] * high[k]);
  return least;
}

inline std::array<FourFloats, 3> all(const std::array<Floats, 3>& x) {
  return {all(x[0]), all(x[1]), all(x[2])};
}
inline std::array<FourFloats, 3> alike(const std::array<Floats, 3>& x, std::size_t i) {
  return {alike(x[0][i]), alike(x[1][i]), alike(x[2][i])};
}

}  // namespace fours

/// Of the first's i-th, the pairs of which one lies beyond the other's half-space.
inline FourPairs beyond(std::size_t i, const FourBoxes& boxes_a, const FourHalfSpaces& spaces_a,
                        const FourBoxes& boxes_b, const FourHalfSpaces& spaces_b) {
  const FourFloats of_b = fours::least_along(fours::alike(spaces_a.outward, i),
                                             fours::all(boxes_b.low), fours::all(boxes_b.high));
  const FourFloats of_a = fours::least_along(
      fours::all(spaces_b.outward), fours::alike(boxes_a.low, i), fours::alike(boxes_a.high, i));
  return fours::gathered(
      ((of_b > fours::alike(spaces_a.reach[i])) | (of_a > fours::all(spaces_b.reach))) &
      fours::row(i));
}

}  // namespace brimwright::geometry
