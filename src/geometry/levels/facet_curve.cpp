#include "geometry/levels/facet_curve.h"

#include "geometry/surface/enclosed_volume.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace brimwright::geometry {

FacetCurve::Facet FacetCurve::facet_of(const TriangleMesh& mesh, std::size_t facet, double lowest) {
  const auto& [ia, ib, ic] = mesh.triangles[facet];
  const auto& a = mesh.vertices_mm[ia];
  const auto& b = mesh.vertices_mm[ib];
  const auto& c = mesh.vertices_mm[ic];
  const double area = ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
  std::array<double, 3> z = {a[2] - lowest, b[2] - lowest, c[2] - lowest};
  std::sort(z.begin(), z.end());
  return {z[0], z[1], z[2], area};
}

FacetCurve::FacetCurve(const TriangleMesh& solid) {
  const Box box = bounding_box(solid);
  height_ = box.high_mm[2] - box.low_mm[2];
  std::vector<Facet> facets;
  facets.reserve(solid.triangles.size());
  for (std::size_t i = 0; i < solid.triangles.size(); ++i) {
    const Facet facet = facet_of(solid, i, box.low_mm[2]);
    if (facet.area != 0) facets.push_back(facet);  // an upright facet bounds no column of liquid
  }
  prepare(facets);
}

FacetCurve::FacetCurve(const TriangleMesh& surface, std::span<const std::uint32_t> own,
                       double floor_mm, double brim_mm)
    : height_(brim_mm - floor_mm) {
  std::vector<Facet> facets;
  facets.reserve(own.size());
  for (const std::uint32_t i : own) {
    Facet facet = facet_of(surface, i, floor_mm);
    facet.area = -facet.area;  // a facet shows a hollow the side that it turns away from a solid
    if (facet.area != 0) facets.push_back(facet);
  }
  prepare(facets);
}

void FacetCurve::prepare(const std::vector<Facet>& facets) {
  choose_bins(facets);
  sort_into_bins(facets);
  sum_settled(facets);
  double highest = 0;
  for (std::size_t bin = 0; bin < bins_; ++bin) {
    const double start = height_ * static_cast<double>(bin) / static_cast<double>(bins_);
    highest = std::max(highest, at(start).volume_mm3);
    volume_at_start_.push_back(highest);
  }
  brimful_ = at(height_).volume_mm3;
}

std::size_t FacetCurve::bin_of(double depth) const {
  // Any monotone rule does: a facet that ends in a lower bin than the plane's ends below the plane.
  const double bin = depth / height_ * static_cast<double>(bins_);
  return bin > 0 ? std::min(static_cast<std::size_t>(bin), bins_ - 1) : 0;
}

/// As many bins as keep the list within a few times the number of facets: tall facets stand in
/// many.
void FacetCurve::choose_bins(const std::vector<Facet>& facets) {
  constexpr std::size_t most_bins = 4096;
  constexpr std::size_t copies_of_each = 4;
  for (bins_ = most_bins; bins_ > 1; bins_ /= 2) {
    std::size_t listed = 0;
    for (const Facet& f : facets) listed += bin_of(f.z3) - bin_of(f.z1) + 1;
    if (listed + bins_ <= copies_of_each * facets.size()) break;
  }
}

void FacetCurve::sort_into_bins(const std::vector<Facet>& facets) {
  first_.assign(bins_ + 1, 0);
  for (const Facet& f : facets) {
    for (std::size_t bin = bin_of(f.z1); bin <= bin_of(f.z3); ++bin) ++first_[bin + 1];
  }
  for (std::size_t bin = 0; bin < bins_; ++bin) first_[bin + 1] += first_[bin];
  facets_.resize(first_.back());
  std::vector<std::size_t> next(first_.begin(), first_.end() - 1);
  for (const Facet& f : facets) {
    for (std::size_t bin = bin_of(f.z1); bin <= bin_of(f.z3); ++bin) facets_[next[bin]++] = f;
  }
}

void FacetCurve::sum_settled(const std::vector<Facet>& facets) {
  // long double, so that the sum over a million facets is as good as a single term
  std::vector<long double> area(bins_ + 1, 0), moment(bins_ + 1, 0);
  for (const Facet& f : facets) {
    const std::size_t next_bin = bin_of(f.z3) + 1;
    area[next_bin] += f.area;
    moment[next_bin] += static_cast<long double>(f.area) * (f.z1 + f.z2 + f.z3) / 3;
  }
  settled_.resize(bins_);
  for (std::size_t bin = 0; bin < bins_; ++bin) {
    if (bin > 0) {
      area[bin] += area[bin - 1];
      moment[bin] += moment[bin - 1];
    }
    settled_[bin] = {static_cast<double>(area[bin]), static_cast<double>(moment[bin])};
  }
}

Level FacetCurve::below(const Facet& f, double depth) {
  const auto [z1, z2, z3, area] = f;
  const double mean = (z1 + z2 + z3) / 3;
  if (depth >= z3) return {area * (depth - mean), area};
  const double t = depth - z1;
  const double p = z2 - z1;
  const double q = z3 - z1;
  if (depth < z2) return {area * (t / p) * (t / q) * t / 3, area * (t / p) * (t / q)};
  const double s = z3 - depth;
  const double rest = (s / q) * (s / (q - p));  // the part of the facet that is above the plane
  // t - (p + q) / 3 + s^3 / [3 q (q - p)] loses its digits near the bottom of a facet that stands
  // on an edge; multiplied out, with s = q - t, it does not. Near p = q it is the other way round.
  const double column = p < q / 2 ? (t * (t - p) + (p * p - t * t * (t / q)) / 3) / (q - p)
                                  : depth - mean + rest * s / 3;
  return {area * column, area * (1 - rest)};
}

Level FacetCurve::at(double depth) const {
  const std::size_t bin = bin_of(depth);
  double volume = settled_[bin].area * depth - settled_[bin].moment;
  double surface = settled_[bin].area;
  for (std::size_t i = first_[bin]; i < first_[bin + 1]; ++i) {
    const Facet& f = facets_[i];
    // A lid at the brim bounds no liquid below it, and must not close the surface it lies on.
    if (depth < f.z1 || f.z1 >= height_) continue;
    const Level level = below(f, depth);
    volume += level.volume_mm3;
    surface += level.surface_mm2;
  }
  return {std::max(0.0, -volume), std::max(0.0, -surface)};
}

DepthRange FacetCurve::around(double volume) const {
  const auto after = std::upper_bound(volume_at_start_.begin() + 1, volume_at_start_.end(), volume);
  const auto bin = static_cast<double>(after - volume_at_start_.begin() - 1);
  const double step = height_ / static_cast<double>(bins_);
  // A hair wider than the bin: its ends' volumes are only as exact as any other.
  return {std::max(0.0, (bin - 1e-6) * step), std::min(height_, (bin + 1 + 1e-6) * step)};
}

}  // namespace brimwright::geometry
