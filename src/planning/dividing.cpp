#include "planning/dividing.h"

#include "units/rounding.h"

#include <algorithm>
#include <cmath>

namespace brimwright::planning {
namespace {

// See Division::bars.
constexpr Length no_matter = 0.01 * millimetre;

// Far more than anyone cuts, and far below what a whole number holds.
constexpr double most_bars = 1e9;

/// Lays strip after strip, never beyond a limit.
class StripLayer {
 public:
  StripLayer(Length from, Length to) : at_(from), limit_(to) {}

  void limit(Length to) { limit_ = to; }
  Length at() const { return at_; }
  void lay(Destination destination, Length thickness) {
    const Length to = std::min(at_ + thickness, limit_);
    // Rounding leaves strips so thin that no plane can tell their sides apart; the next takes them.
    if (to - at_ < 1e-6 * millimetre) return;
    strips_.push_back({destination, at_, to});
    at_ = to;
  }
  /// A piece that is cut off the bars on its high side or, with `low_cut`, on its low side.
  void lay_cut_off(Length thickness, Length kerf, bool low_cut) {
    const Length dust = std::min(kerf, thickness);
    if (low_cut) lay(Destination::kerf, dust);
    lay(Destination::offcuts, thickness - dust);
    if (!low_cut) lay(Destination::kerf, dust);
  }
  std::vector<Strip> strips() && { return std::move(strips_); }

 private:
  Length at_, limit_;
  std::vector<Strip> strips_;
};

}  // namespace

std::int64_t Division::bars() const {
  const double count = (usable() + no_matter + kerf) / (size + 2 * planing + kerf);
  if (!(usable() > Length{}) || !(count > 0)) return 0;
  return whole_down(std::min(count, most_bars));
}

Length Division::largest(std::int64_t count) const {
  const auto n = static_cast<double>(count);
  return (usable() + no_matter - (n - 1) * kerf) / n - 2 * planing;
}

std::vector<Strip> strips_of(const Division& division) {
  StripLayer layer(division.from, division.to);
  const auto& [from, to, trim, size, kerf, planing] = division;
  layer.lay_cut_off(trim, kerf, false);
  layer.limit(to - trim);
  const std::int64_t bars = division.bars();
  for (std::int64_t i = 0; i < bars; ++i) {
    if (i > 0) layer.lay(Destination::kerf, kerf);
    layer.lay(Destination::planing, planing);
    layer.lay(Destination::bars, size);
    layer.lay(Destination::planing, planing);
  }
  layer.lay_cut_off(to - trim - layer.at(), kerf, true);
  layer.limit(to);
  layer.lay_cut_off(to - layer.at(), kerf, true);
  std::vector<Strip> strips = std::move(layer).strips();
  strips.back().to = to;
  return strips;
}

}  // namespace brimwright::planning
