#include "geometry/levels/band_curve.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace brimwright::geometry {
namespace {

void require_gapless(const std::vector<LevelBand>& bands) {
  if (bands.empty()) throw std::logic_error("a level curve needs a band");
  Length reached;
  for (const LevelBand& band : bands) {
    if (band.bottom != reached || !(band.top > band.bottom))
      throw std::logic_error("the bands of a level curve must follow each other upwards");
    reached = band.top;
  }
}

}  // namespace

BandCurve::BandCurve(std::vector<LevelBand> bands) : bands_(std::move(bands)) {
  require_gapless(bands_);
  start_.emplace_back();
  for (const LevelBand& band : bands_) start_.push_back(start_.back() + band.contents(band.top));
}

Level BandCurve::at(double depth_mm) const {
  const Length depth = depth_mm * millimetre;
  const auto next = std::upper_bound(bands_.begin() + 1, bands_.end(), depth,
                                     [](Length d, const auto& band) { return d < band.bottom; });
  const LevelBand& band = *(next - 1);
  const Volume below = start_[static_cast<std::size_t>(next - 1 - bands_.begin())];
  return {(below + band.contents(depth)) / cubic_millimetre,
          band.section(depth) / square_millimetre};
}

std::vector<Level> BandCurve::at(const std::vector<double>& depths) const {
  std::vector<Level> levels;
  for (const double depth : depths) levels.push_back(at(depth));
  return levels;
}

DepthRange BandCurve::around(double volume_mm3) const {
  const Volume volume = volume_mm3 * cubic_millimetre;
  const auto next = std::upper_bound(start_.begin() + 1, start_.end() - 1, volume);
  const LevelBand& band = bands_[static_cast<std::size_t>(next - 1 - start_.begin())];
  return {band.bottom / millimetre, band.top / millimetre};
}

}  // namespace brimwright::geometry
