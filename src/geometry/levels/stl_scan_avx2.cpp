#include "geometry/files/stl_file.h"
#include "geometry/levels/stl_scan_kernel.h"

#if defined(__x86_64__)

#include <immintrin.h>

// The target is named function by function, so that nothing from a header is compiled for AVX2 and
// then shared with code that runs anywhere.
#define AVX2 [[gnu::target("avx2"), gnu::always_inline]] inline
#define AVX2_ENTRY [[gnu::target("avx2")]]

namespace brimwright::geometry {
namespace {

/// Four neighbouring numbers of eight facets: facets 0 to 3 in the lower halves, 4 to 7 in the
/// upper.
struct Four {
  __m256 of[4];
};

AVX2 __m256 halves(const char* low, const char* high) {
  return _mm256_insertf128_ps(
      _mm256_castps128_ps256(_mm_loadu_ps(reinterpret_cast<const float*>(low))),
      _mm_loadu_ps(reinterpret_cast<const float*>(high)), 1);
}

/// The four numbers that stand `at` bytes into each of eight facets.
AVX2 Four four(const char* facets, std::size_t at) {
  const char* p = facets + at;
  const __m256 a = halves(p, p + 4 * stl_facet_size);
  const __m256 b = halves(p + stl_facet_size, p + 5 * stl_facet_size);
  const __m256 c = halves(p + 2 * stl_facet_size, p + 6 * stl_facet_size);
  const __m256 d = halves(p + 3 * stl_facet_size, p + 7 * stl_facet_size);
  const __m256d ab_low = _mm256_castps_pd(_mm256_unpacklo_ps(a, b));
  const __m256d ab_high = _mm256_castps_pd(_mm256_unpackhi_ps(a, b));
  const __m256d cd_low = _mm256_castps_pd(_mm256_unpacklo_ps(c, d));
  const __m256d cd_high = _mm256_castps_pd(_mm256_unpackhi_ps(c, d));
  return {{_mm256_castpd_ps(_mm256_unpacklo_pd(ab_low, cd_low)),
           _mm256_castpd_ps(_mm256_unpackhi_pd(ab_low, cd_low)),
           _mm256_castpd_ps(_mm256_unpacklo_pd(ab_high, cd_high)),
           _mm256_castpd_ps(_mm256_unpackhi_pd(ab_high, cd_high))}};
}

/// The one number that stands `at` bytes into each of eight facets.
AVX2 __m256 one(const char* facets, std::size_t at) {
  float numbers[8];
#pragma GCC unroll 8
  for (std::size_t i = 0; i < 8; ++i) {
    __builtin_memcpy(numbers + i, facets + i * stl_facet_size + at, sizeof(float));
  }
  return _mm256_setr_ps(numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], numbers[5],
                        numbers[6], numbers[7]);
}

/// The nine coordinates of eight facets: x, y, z of the first corner, the second, the third.
struct Corners {
  __m256 of[9];
};

AVX2 Corners corners_of(const char* facets) {
  const Four first = four(facets, stl_corners_start);
  const Four second = four(facets, stl_corners_start + 16);
  const __m256 last = one(facets, stl_corners_start + 32);
  return {{first.of[0], first.of[1], first.of[2], first.of[3], second.of[0], second.of[1],
           second.of[2], second.of[3], last}};
}

template <int half>
AVX2 __m256d doubled(__m256 numbers) {
  return _mm256_cvtps_pd(half == 0 ? _mm256_castps256_ps128(numbers)
                                   : _mm256_extractf128_ps(numbers, 1));
}

/// u v' - u' v
AVX2 __m256d wedge(__m256d u, __m256d v2, __m256d u2, __m256d v) {
  return _mm256_sub_pd(_mm256_mul_pd(u, v2), _mm256_mul_pd(u2, v));
}

AVX2 __m256d dot(__m256d x, __m256d y, __m256d z, __m256d nx, __m256d ny, __m256d nz) {
  return _mm256_add_pd(_mm256_add_pd(_mm256_mul_pd(x, nx), _mm256_mul_pd(y, ny)),
                       _mm256_mul_pd(z, nz));
}

template <int half>
AVX2 void add(const Corners& corners, const __m256d* origin, __m256d& six_volumes,
              __m256d& doubled_areas) {
  const __m256d ax = doubled<half>(corners.of[0]);
  const __m256d ay = doubled<half>(corners.of[1]);
  const __m256d az = doubled<half>(corners.of[2]);
  const __m256d ux = _mm256_sub_pd(doubled<half>(corners.of[3]), ax);
  const __m256d uy = _mm256_sub_pd(doubled<half>(corners.of[4]), ay);
  const __m256d uz = _mm256_sub_pd(doubled<half>(corners.of[5]), az);
  const __m256d vx = _mm256_sub_pd(doubled<half>(corners.of[6]), ax);
  const __m256d vy = _mm256_sub_pd(doubled<half>(corners.of[7]), ay);
  const __m256d vz = _mm256_sub_pd(doubled<half>(corners.of[8]), az);
  const __m256d nx = wedge(uy, vz, uz, vy);
  const __m256d ny = wedge(uz, vx, ux, vz);
  const __m256d nz = wedge(ux, vy, uy, vx);
  six_volumes =
      _mm256_add_pd(six_volumes, dot(_mm256_sub_pd(ax, origin[0]), _mm256_sub_pd(ay, origin[1]),
                                     _mm256_sub_pd(az, origin[2]), nx, ny, nz));
  doubled_areas = _mm256_add_pd(doubled_areas, _mm256_sqrt_pd(dot(nx, ny, nz, nx, ny, nz)));
}

AVX2 float least(__m256 numbers) {
  float all[8];
  _mm256_storeu_ps(all, numbers);
  float least = all[0];
  for (const float number : all) least = number < least ? number : least;
  return least;
}

AVX2 float greatest(__m256 numbers) {
  return -least(_mm256_sub_ps(_mm256_set1_ps(-0.0F), numbers));
}

AVX2_ENTRY void sum(const char* facets, std::size_t count, const std::array<double, 3>& origin,
                    StretchSums& sums, CornerRange& range) {
  const __m256d from[3] = {_mm256_set1_pd(origin[0]), _mm256_set1_pd(origin[1]),
                           _mm256_set1_pd(origin[2])};
  __m256d volumes[2] = {_mm256_loadu_pd(sums.six_volumes.data()),
                        _mm256_loadu_pd(sums.six_volumes.data() + 4)};
  __m256d areas[2] = {_mm256_loadu_pd(sums.doubled_areas.data()),
                      _mm256_loadu_pd(sums.doubled_areas.data() + 4)};
  __m256 low[3], high[3];
  for (std::size_t axis = 0; axis < 3; ++axis) {
    low[axis] = _mm256_set1_ps(range.low[axis]);
    high[axis] = _mm256_set1_ps(range.high[axis]);
  }
  std::size_t i = 0;
  for (; i + 8 <= count; i += 8) {
    const Corners corners = corners_of(facets + i * stl_facet_size);
    add<0>(corners, from, volumes[0], areas[0]);
    add<1>(corners, from, volumes[1], areas[1]);
#pragma GCC unroll 9
    for (std::size_t number = 0; number < 9; ++number) {
      // Where a number is not one, minimum and maximum give their second operand.
      low[number % 3] = _mm256_min_ps(corners.of[number], low[number % 3]);
      high[number % 3] = _mm256_max_ps(corners.of[number], high[number % 3]);
    }
  }
  _mm256_storeu_pd(sums.six_volumes.data(), volumes[0]);
  _mm256_storeu_pd(sums.six_volumes.data() + 4, volumes[1]);
  _mm256_storeu_pd(sums.doubled_areas.data(), areas[0]);
  _mm256_storeu_pd(sums.doubled_areas.data() + 4, areas[1]);
  for (std::size_t axis = 0; axis < 3; ++axis) {
    range.low[axis] = least(low[axis]);
    range.high[axis] = greatest(high[axis]);
  }
  plain_stl_kernel().sum(facets + i * stl_facet_size, count - i, origin, sums, range);
}

/// One corner of eight facets: its coordinates' bits, and its draws for the facets with even and
/// with odd numbers.
struct Draw {
  __m256i h[2], g[2];
};

AVX2 __m256i key(std::size_t i) { return _mm256_set1_epi32(static_cast<int>(draw_keys[i])); }

AVX2 __m256i mixed(__m256i s, __m256i low_key, __m256i high_key) {
  return _mm256_mul_epu32(_mm256_xor_si256(s, low_key),
                          _mm256_xor_si256(_mm256_srli_epi64(s, 32), high_key));
}

AVX2 Draw draw(__m256i x, __m256i y, __m256i z) {
  const __m256i low_31 = _mm256_set1_epi64x(0x7fffffff);
  Draw drawn;
  __m256i s = mixed(_mm256_mul_epu32(x, y), z, key(3));
  s = mixed(s, key(4), key(5));
  drawn.h[0] = _mm256_and_si256(s, low_31);
  drawn.g[0] = _mm256_srli_epi64(s, 33);
  s = mixed(s, key(6), key(7));
  drawn.h[1] = _mm256_and_si256(s, low_31);
  drawn.g[1] = _mm256_srli_epi64(s, 33);
  return drawn;
}

/// The draws of a corner from its keyed bits; `shift` 0 takes the even facets, 32 the odd ones.
template <int shift>
AVX2 Draw draw_of(const __m256i* keyed) {
  return draw(_mm256_srli_epi64(keyed[0], shift), _mm256_srli_epi64(keyed[1], shift),
              _mm256_srli_epi64(keyed[2], shift));
}

AVX2 __m256i edge_sum(const Draw& p, const Draw& q, const Draw& r, std::size_t k) {
  const __m256i qh = _mm256_sub_epi64(q.h[k], p.h[k]), qg = _mm256_sub_epi64(q.g[k], p.g[k]);
  const __m256i rh = _mm256_sub_epi64(r.h[k], p.h[k]), rg = _mm256_sub_epi64(r.g[k], p.g[k]);
  return _mm256_sub_epi64(_mm256_mul_epi32(qh, rg), _mm256_mul_epi32(rh, qg));
}

template <int shift>
AVX2 void add_edges(const __m256i* keyed, __m256i* sums) {
  const Draw p = draw_of<shift>(keyed), q = draw_of<shift>(keyed + 3),
             r = draw_of<shift>(keyed + 6);
  sums[0] = _mm256_add_epi64(sums[0], edge_sum(p, q, r, 0));
  sums[1] = _mm256_add_epi64(sums[1], edge_sum(p, q, r, 1));
}

AVX2 std::uint64_t total(__m256i numbers) {
  std::uint64_t all[4];
  _mm256_storeu_si256(reinterpret_cast<__m256i*>(all), numbers);
  return all[0] + all[1] + all[2] + all[3];
}

AVX2_ENTRY void sum_edges(const char* facets, std::size_t count, EdgeSums& sums) {
  const __m256i keys[3] = {key(0), key(1), key(2)};
  __m256i added[2] = {_mm256_setzero_si256(), _mm256_setzero_si256()};
  std::size_t i = 0;
  for (; i + 8 <= count; i += 8) {
    const Corners corners = corners_of(facets + i * stl_facet_size);
    __m256i keyed[9];
#pragma GCC unroll 9
    for (std::size_t number = 0; number < 9; ++number) {
      const __m256 without_minus_zero = _mm256_add_ps(corners.of[number], _mm256_setzero_ps());
      keyed[number] = _mm256_xor_si256(_mm256_castps_si256(without_minus_zero), keys[number % 3]);
    }
    add_edges<0>(keyed, added);
    add_edges<32>(keyed, added);
  }
  sums[0] += total(added[0]);
  sums[1] += total(added[1]);
  plain_stl_kernel().sum_edges(facets + i * stl_facet_size, count - i, sums);
}

AVX2_ENTRY void widen_heights(const char* facets, std::size_t count, float& lowest,
                              float& highest) {
  // Heights stand at both ends of the four numbers from the first corner's height on, and of the
  // four from the second's on.
  __m128 low = _mm_set1_ps(lowest), high = _mm_set1_ps(highest);
  const char* p = facets + stl_corners_start + 8;
  for (std::size_t i = 0; i < count; ++i, p += stl_facet_size) {
    const __m128 first = _mm_loadu_ps(reinterpret_cast<const float*>(p));
    const __m128 second = _mm_loadu_ps(reinterpret_cast<const float*>(p + 12));
    low = _mm_min_ps(second, _mm_min_ps(first, low));
    high = _mm_max_ps(second, _mm_max_ps(first, high));
  }
  float lows[4], highs[4];
  _mm_storeu_ps(lows, low);
  _mm_storeu_ps(highs, high);
  lowest = lows[0] < lows[3] ? lows[0] : lows[3];
  highest = highs[0] > highs[3] ? highs[0] : highs[3];
}

AVX2 void put(FacetColumns::Numbers& numbers, std::size_t at, __m256d four) {
  _mm256_store_pd(numbers.data() + at, four);
}

/// The columns of four of the facets, as set_column makes them.
template <int half>
AVX2 void put_columns(FacetColumns& columns, std::size_t at, const Corners& corners,
                      __m256d lowest) {
  const __m256d ax = doubled<half>(corners.of[0]), ay = doubled<half>(corners.of[1]);
  const __m256d ux = _mm256_sub_pd(doubled<half>(corners.of[3]), ax);
  const __m256d uy = _mm256_sub_pd(doubled<half>(corners.of[4]), ay);
  const __m256d vx = _mm256_sub_pd(doubled<half>(corners.of[6]), ax);
  const __m256d vy = _mm256_sub_pd(doubled<half>(corners.of[7]), ay);
  const __m256d area = _mm256_mul_pd(wedge(ux, vy, uy, vx), _mm256_set1_pd(0.5));
  const __m256d a = _mm256_sub_pd(doubled<half>(corners.of[2]), lowest);
  const __m256d b = _mm256_sub_pd(doubled<half>(corners.of[5]), lowest);
  const __m256d c = _mm256_sub_pd(doubled<half>(corners.of[8]), lowest);
  const __m256d low = _mm256_min_pd(a, b), high = _mm256_max_pd(a, b);
  const __m256d z1 = _mm256_min_pd(low, c), z3 = _mm256_max_pd(high, c);
  const __m256d z2 = _mm256_max_pd(low, _mm256_min_pd(high, c));
  const __m256d height = _mm256_sub_pd(z3, z1);
  put(columns.z1, at, z1);
  put(columns.z2, at, z2);
  put(columns.z3, at, z3);
  put(columns.area, at, area);
  put(columns.mean, at,
      _mm256_mul_pd(_mm256_add_pd(_mm256_add_pd(a, b), c), _mm256_set1_pd(1.0 / 3)));
  put(columns.lower, at, _mm256_div_pd(area, _mm256_mul_pd(_mm256_sub_pd(z2, z1), height)));
  put(columns.upper, at, _mm256_div_pd(area, _mm256_mul_pd(_mm256_sub_pd(z3, z2), height)));
}

AVX2 void widen(const Corners& corners, __m256& low, __m256& high) {
  for (const __m256& z : {corners.of[2], corners.of[5], corners.of[8]}) {
    low = _mm256_min_ps(z, low);
    high = _mm256_max_ps(z, high);
  }
}

/// Asks for what comes some way after: the several streams of results keep the processor from
/// foreseeing it by itself.
AVX2 void prefetch_after(const char* eight) {
  constexpr std::size_t ahead = 64 * stl_facet_size;
#pragma GCC unroll 7
  for (std::size_t at = 0; at < 8 * stl_facet_size; at += 64)
    __builtin_prefetch(eight + ahead + at);
}

AVX2_ENTRY void columns_of(const char* facets, std::size_t count, double lowest,
                           FacetColumns& columns, float& low, float& high) {
  const __m256d from = _mm256_set1_pd(lowest);
  __m256 lows = _mm256_set1_ps(low), highs = _mm256_set1_ps(high);
  for (std::size_t i = 0; i < count; i += 8) {
    const char* eight = facets + i * stl_facet_size;
    char repeated[8 * stl_facet_size];
    if (count - i < 8) {
      for (std::size_t k = 0; k < 8; ++k) {
        const std::size_t facet = i + k < count ? i + k : i;
        __builtin_memcpy(repeated + k * stl_facet_size, facets + facet * stl_facet_size,
                         stl_facet_size);
      }
      eight = repeated;
    }
    prefetch_after(eight);
    const Corners corners = corners_of(eight);
    put_columns<0>(columns, i, corners, from);
    put_columns<1>(columns, i + 4, corners, from);
    widen(corners, lows, highs);
  }
  low = least(lows);
  high = greatest(highs);
}

}  // namespace

const StlKernel* avx2_stl_kernel() {
  static const StlKernel kernel{sum, sum_edges, widen_heights, columns_of};
  return __builtin_cpu_supports("avx2") ? &kernel : nullptr;
}

}  // namespace brimwright::geometry

#else

namespace brimwright::geometry {
const StlKernel* avx2_stl_kernel() { return nullptr; }
}  // namespace brimwright::geometry

#endif
