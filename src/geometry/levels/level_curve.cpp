#include "geometry/levels/level_curve.h"

#include "geometry/levels/band_curve.h"
#include "geometry/levels/facet_curve.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <utility>
#include <variant>

namespace brimwright::geometry {

using Curve = std::variant<BandCurve, FacetCurve>;

/// A curve and how many times as much the cavity holds at every depth.
struct LevelCurve::Solid {
  std::shared_ptr<const Curve> curve;
  double factor = 1;

  double height_mm() const {
    return std::visit([](const auto& c) { return c.height_mm(); }, *curve);
  }
  double brimful_mm3() const {
    return std::visit([](const auto& c) { return c.brimful_mm3(); }, *curve);
  }
  Level at(double depth) const {
    return std::visit([depth](const auto& c) { return c.at(depth); }, *curve);
  }
  std::vector<Level> at(const std::vector<double>& depths) const {
    return std::visit([&](const auto& c) { return c.at(depths); }, *curve);
  }
  DepthRange around(double volume) const {
    return std::visit([volume](const auto& c) { return c.around(volume); }, *curve);
  }
};

namespace {

double kept_within(double value, double low, double high) {
  return std::min(std::max(value, low), high);
}

/// The depth in `range` where the curve reaches `volume`: Newton's step where it stays inside what
/// is still possible and at least halves the misfit, the middle otherwise (near a tip the free
/// surface is nothing and Newton's step is wild).
double depth_in(const LevelCurve::Solid& solid, DepthRange range, double volume) {
  const double depth_enough = 1e-15 * solid.height_mm();
  const double volume_enough = 1e-16 * volume;
  constexpr int most_steps = 200;  // halving alone takes 60 from the height to its last bit
  double depth = (range.low_mm + range.high_mm) / 2;
  double last_misfit = solid.brimful_mm3();
  for (int step = 0; step < most_steps; ++step) {
    const Level level = solid.at(depth);
    const double misfit = level.volume_mm3 - volume;
    (misfit > 0 ? range.high_mm : range.low_mm) = depth;
    if (std::abs(misfit) <= volume_enough) break;
    if (range.high_mm - range.low_mm <= depth_enough) break;
    const double newton = depth - misfit / level.surface_mm2;
    const bool trusted =
        newton > range.low_mm && newton < range.high_mm && 2 * std::abs(misfit) <= last_misfit;
    const double next = trusted ? newton : (range.low_mm + range.high_mm) / 2;
    last_misfit = std::abs(misfit);
    if (std::abs(next - depth) <= depth_enough) return next;
    depth = next;
  }
  return depth;
}

}  // namespace

LevelCurve::LevelCurve(std::shared_ptr<const Solid> solid) : solid_(std::move(solid)) {}

LevelCurve LevelCurve::of_bands(std::vector<Band> bands) {
  return LevelCurve(std::make_shared<const Solid>(
      Solid{std::make_shared<const Curve>(BandCurve(std::move(bands)))}));
}

LevelCurve::Band LevelCurve::quadratic_band(Length bottom, Length top, Area a, Length b, double c) {
  return {.bottom = bottom,
          .top = top,
          .section =
              [=](Length depth) {
                const Length t = depth - bottom;
                return a + b * t + c * t * t;
              },
          .contents =
              [=](Length depth) {
                const Length t = depth - bottom;
                return a * t + b * t * t / 2 + c * t * t * t / 3;
              }};
}

LevelCurve LevelCurve::of_solid(const TriangleMesh& solid) {
  return LevelCurve(
      std::make_shared<const Solid>(Solid{std::make_shared<const Curve>(FacetCurve(solid))}));
}

LevelCurve LevelCurve::of_facets(const TriangleMesh& surface, std::span<const std::uint32_t> facets,
                                 double floor_mm, double brim_mm) {
  return LevelCurve(std::make_shared<const Solid>(
      Solid{std::make_shared<const Curve>(FacetCurve(surface, facets, floor_mm, brim_mm))}));
}

Length LevelCurve::height() const { return solid_->height_mm() * millimetre; }

Volume LevelCurve::brimful() const {
  return solid_->factor * solid_->brimful_mm3() * cubic_millimetre;
}

Volume LevelCurve::volume_below(Length depth) const {
  const double inside = kept_within(depth / millimetre, 0, solid_->height_mm());
  const double volume = kept_within(solid_->at(inside).volume_mm3, 0, solid_->brimful_mm3());
  return solid_->factor * volume * cubic_millimetre;
}

Area LevelCurve::free_surface(Length depth) const {
  const double inside = kept_within(depth / millimetre, 0, solid_->height_mm());
  return solid_->factor * solid_->at(inside).surface_mm2 * square_millimetre;
}

std::vector<LevelRow> LevelCurve::levels(const std::vector<Length>& depths) const {
  std::vector<double> inside;
  for (const Length depth : depths)
    inside.push_back(kept_within(depth / millimetre, 0, solid_->height_mm()));
  const std::vector<Level> levels = solid_->at(inside);
  std::vector<LevelRow> rows;
  for (std::size_t i = 0; i < depths.size(); ++i) {
    const double volume = kept_within(levels[i].volume_mm3, 0, solid_->brimful_mm3());
    rows.push_back({.depth = depths[i],
                    .volume = solid_->factor * volume * cubic_millimetre,
                    .surface = solid_->factor * levels[i].surface_mm2 * square_millimetre});
  }
  return rows;
}

Length LevelCurve::depth_at(Volume volume) const {
  const double wanted = volume / cubic_millimetre / solid_->factor;
  if (!(wanted > 0)) return Length();
  if (wanted >= solid_->brimful_mm3()) return height();
  return depth_in(*solid_, solid_->around(wanted), wanted) * millimetre;
}

LevelCurve LevelCurve::holding(double factor) const {
  if (!(factor > 0) || !std::isfinite(factor))
    throw std::logic_error("a cavity cannot hold this many times as much");
  return LevelCurve(std::make_shared<const Solid>(Solid{solid_->curve, solid_->factor * factor}));
}

}  // namespace brimwright::geometry
