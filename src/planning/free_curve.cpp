#include "planning/free_curve.h"

namespace brimwright::planning {

FreeCurve::FreeCurve(geometry::LevelCurve cavity, std::vector<Submerged> embeds)
    : cavity_(std::move(cavity)), embeds_(std::move(embeds)) {}

Volume FreeCurve::displaced_below(Length depth) const {
  Volume displaced;
  for (const auto& embed : embeds_) displaced += embed.curve.volume_below(depth - embed.bottom);
  return displaced;
}

Volume FreeCurve::volume_below(Length depth) const {
  return cavity_.volume_below(depth) - displaced_below(depth);
}

Area FreeCurve::free_surface(Length depth) const {
  Area surface = cavity_.free_surface(depth);
  for (const auto& embed : embeds_) {
    const bool reaches = depth > embed.bottom && depth < embed.bottom + embed.curve.height();
    if (reaches) surface -= embed.curve.free_surface(depth - embed.bottom);
  }
  return surface;
}

Length FreeCurve::depth_at(Volume volume) const {
  if (embeds_.empty()) return cavity_.depth_at(volume);
  // Room never shrinks with depth, so halving finds the depth whatever the embeds' shapes.
  Length below, above = cavity_.height();
  while (above - below > 1e-12 * cavity_.height()) {
    const Length middle = (below + above) / 2;
    (volume_below(middle) < volume ? below : above) = middle;
  }
  return (below + above) / 2;
}

}  // namespace brimwright::planning
