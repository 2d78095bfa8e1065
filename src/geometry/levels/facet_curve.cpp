#include "geometry/levels/facet_curve.h"

#include "geometry/levels/level_sums.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/large_pages.h"
#include "geometry/surface/parallel.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace brimwright::geometry {

FacetCurve::Facet FacetCurve::facet_of(const TriangleMesh& mesh, std::size_t facet, double lowest) {
  const auto& [ia, ib, ic] = mesh.triangles[facet];
  const auto& a = mesh.vertices_mm[ia];
  const auto& b = mesh.vertices_mm[ib];
  const auto& c = mesh.vertices_mm[ic];
  const double area = ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
  Point z = {a[2] - lowest, b[2] - lowest, c[2] - lowest};
  std::sort(z.begin(), z.end());
  return {z[0], z[1], z[2], area};
}

FacetCurve::FacetCurve(const TriangleMesh& solid) {
  const Box box = bounding_box(solid);
  height_ = box.high_mm[2] - box.low_mm[2];
  take(solid.triangles.size(), [&](std::size_t i) { return facet_of(solid, i, box.low_mm[2]); });
}

FacetCurve::FacetCurve(const TriangleMesh& surface, std::span<const std::uint32_t> own,
                       double floor_mm, double brim_mm)
    : height_(brim_mm - floor_mm) {
  take(own.size(), [&](std::size_t i) {
    Facet facet = facet_of(surface, own[i], floor_mm);
    facet.area = -facet.area;  // a facet shows a hollow the side that it turns away from a solid
    return facet;
  });
}

/// All but upright facets, which bound no column of liquid.
template <class FacetAt>
void FacetCurve::take(std::size_t count, FacetAt facet_at) {
  all_ = std::make_unique_for_overwrite<Facet[]>(count);
  ask_for_large_pages(all_.get(), count * sizeof(Facet));
  std::vector<std::size_t> kept((count + facets_in_part - 1) / facets_in_part);
  in_parallel(kept.size(), [&](std::size_t part) {
    Facet* const first = all_.get() + part * facets_in_part;
    const std::size_t end = std::min(count, (part + 1) * facets_in_part);
    for (std::size_t i = part * facets_in_part; i < end; ++i) {
      first[kept[part]] = facet_at(i);
      if (first[kept[part]].area != 0) ++kept[part];
    }
  });
  for (std::size_t part = 0; part < kept.size(); ++part) {
    const Facet* const first = all_.get() + part * facets_in_part;
    if (first != all_.get() + size_) std::copy_n(first, kept[part], all_.get() + size_);
    size_ += kept[part];
  }
  choose_bins();
  brim_ = level_at_brim();
}

std::size_t FacetCurve::bin_of(double depth) const {
  // Any monotone rule does: a facet that ends in a lower bin than the plane's ends below the plane.
  const double bin = depth / height_ * static_cast<double>(number_of_bins_);
  return bin > 0 ? std::min(static_cast<std::size_t>(bin), number_of_bins_ - 1) : 0;
}

/// As many bins as keep the list within a few times the number of facets: tall facets stand in
/// many. Half as many bins are twice as high, so a facet's bins follow from those of the most.
void FacetCurve::choose_bins() {
  constexpr std::size_t halvings = 12;
  constexpr std::size_t copies_of_each = 4;
  number_of_bins_ = std::size_t{1} << halvings;
  using Listed = std::array<std::size_t, halvings + 1>;
  std::vector<Listed> more((size_ + facets_in_part - 1) / facets_in_part);  // than one each
  in_parallel(more.size(), [&](std::size_t part) {
    Listed listed{};
    for (const Facet& f : facets()
                              .subspan(part * facets_in_part)
                              .first(std::min(facets_in_part, size_ - part * facets_in_part))) {
      std::size_t low = bin_of(f.z1), high = bin_of(f.z3);
      for (std::size_t i = 0; low != high; ++i, low /= 2, high /= 2) listed[i] += high - low;
    }
    more[part] = listed;
  });
  for (std::size_t i = 0; number_of_bins_ > 1; ++i, number_of_bins_ /= 2) {
    std::size_t listed = size_;
    for (const Listed& part : more) listed += part[i];
    if (listed + number_of_bins_ <= copies_of_each * size_) break;
  }
}

/// What the last bin gives, without filling the others; added up as `at` does it, for which of two
/// like hollows holds more may hang on the last digit.
Level FacetCurve::level_at_brim() const {
  struct Part {
    long double area = 0, moment = 0;  // of the facets that end in a lower bin
    std::vector<std::uint32_t> others = {};
  };
  const auto parts = in_parts<Part>(size_, [&](std::size_t i, Part& part) {
    const Facet& f = all_[i];
    if (bin_of(f.z3) + 1 >= number_of_bins_)
      return part.others.push_back(static_cast<std::uint32_t>(i));
    part.area += f.area;
    part.moment += static_cast<long double>(f.area) * (f.z1 + f.z2 + f.z3) / 3;
  });
  long double area = 0, moment = 0;
  for (const Part& part : parts) {
    area += part.area;
    moment += part.moment;
  }
  double volume = static_cast<double>(area) * height_ - static_cast<double>(moment);
  auto surface = static_cast<double>(area);
  for (const Part& part : parts) {
    for (const std::uint32_t i : part.others) {
      if (all_[i].z1 >= height_) continue;
      const Level level = below(all_[i], height_);
      volume += level.volume_mm3;
      surface += level.surface_mm2;
    }
  }
  return {std::max(0.0, -volume), std::max(0.0, -surface)};
}

const FacetCurve::Bins& FacetCurve::bins() const {
  std::call_once(bins_->filled, [this] { fill(*bins_); });
  return *bins_;
}

void FacetCurve::fill(Bins& bins) const {
  list_facets(bins);
  sum_settled(bins);
  double highest = 0;
  for (std::size_t bin = 0; bin < number_of_bins_; ++bin) {
    const double start = height_ * static_cast<double>(bin) / static_cast<double>(number_of_bins_);
    highest = std::max(highest, at(start, bins).volume_mm3);
    bins.volume_at_start.push_back(highest);
  }
}

void FacetCurve::list_facets(Bins& bins) const {
  bins.first.assign(number_of_bins_ + 1, 0);
  for (const Facet& f : facets())
    for (std::size_t bin = bin_of(f.z1), last = bin_of(f.z3); bin <= last; ++bin)
      ++bins.first[bin + 1];
  for (std::size_t bin = 0; bin < number_of_bins_; ++bin) bins.first[bin + 1] += bins.first[bin];
  bins.listed.resize(bins.first.back());
  std::vector<std::size_t> next(bins.first.begin(), bins.first.end() - 1);
  for (std::uint32_t i = 0; i < size_; ++i)
    for (std::size_t bin = bin_of(all_[i].z1), last = bin_of(all_[i].z3); bin <= last; ++bin)
      bins.listed[next[bin]++] = i;
}

void FacetCurve::sum_settled(Bins& bins) const {
  // long double, so that the sum over a million facets is as good as a single term
  std::vector<long double> area(number_of_bins_ + 1, 0), moment(number_of_bins_ + 1, 0);
  for (const Facet& f : facets()) {
    const std::size_t next_bin = bin_of(f.z3) + 1;
    area[next_bin] += f.area;
    moment[next_bin] += static_cast<long double>(f.area) * (f.z1 + f.z2 + f.z3) / 3;
  }
  bins.settled.resize(number_of_bins_);
  for (std::size_t bin = 0; bin < number_of_bins_; ++bin) {
    if (bin > 0) {
      area[bin] += area[bin - 1];
      moment[bin] += moment[bin - 1];
    }
    bins.settled[bin] = {static_cast<double>(area[bin]), static_cast<double>(moment[bin])};
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

Level FacetCurve::at(double depth) const { return depth >= height_ ? brim_ : at(depth, bins()); }

Level FacetCurve::at(double depth, const Bins& bins) const {
  const std::size_t bin = bin_of(depth);
  double volume = bins.settled[bin].area * depth - bins.settled[bin].moment;
  double surface = bins.settled[bin].area;
  for (std::size_t i = bins.first[bin]; i < bins.first[bin + 1]; ++i) {
    const Facet& f = all_[bins.listed[i]];
    // A lid at the brim bounds no liquid below it, and must not close the surface it lies on.
    if (depth < f.z1 || f.z1 >= height_) continue;
    const Level level = below(f, depth);
    volume += level.volume_mm3;
    surface += level.surface_mm2;
  }
  return {std::max(0.0, -volume), std::max(0.0, -surface)};
}

std::vector<Level> FacetCurve::at(const std::vector<double>& depths) const {
  LevelSums sums(depths);
  FacetColumns columns;
  std::size_t count = 0;
  for (const Facet& f : facets()) {
    if (f.z1 >= height_) continue;  // as above
    columns.set(count, f.z1, f.z2, f.z3, f.area);
    if (++count == FacetColumns::most) sums.add(columns, std::exchange(count, 0));
  }
  sums.add(columns, count);
  return sums.levels();
}

DepthRange FacetCurve::around(double volume) const {
  const std::vector<double>& starts = bins().volume_at_start;
  const auto after = std::upper_bound(starts.begin() + 1, starts.end(), volume);
  const auto bin = static_cast<double>(after - starts.begin() - 1);
  const double step = height_ / static_cast<double>(number_of_bins_);
  // A hair wider than the bin: its ends' volumes are only as exact as any other.
  return {std::max(0.0, (bin - 1e-6) * step), std::min(height_, (bin + 1 + 1e-6) * step)};
}

}  // namespace brimwright::geometry
