#include "planning/dusting.h"

#include "units/rounding.h"
#include "units/share_of.h"

namespace brimwright::planning {

DustTally dust_each(const Run& run, std::size_t index, std::int64_t per_cast,
                    const std::optional<Area>& exposed) {
  const Dusting& dusting = run.dust[index];
  DustTally tally;
  tally.name = dusting.name;
  if (const auto* each = std::get_if<Mass>(&dusting.per_piece)) {
    tally.each = *each;
    tally.on_piece = *each;  // what misses it is not known apart
  } else {
    const auto& by_area = std::get<DustByArea>(dusting.per_piece);
    tally.exposed = *exposed / static_cast<double>(per_cast);
    tally.on_piece = by_area.coverage * *tally.exposed * by_area.on_covered_surface;
    tally.each = tally.on_piece / by_area.share_that_sticks.of_one();
  }
  return tally;
}

DustTally dust_for(const DustTally& each, std::int64_t pieces, const Scales& scales) {
  DustTally tally = each;
  tally.make = rounded_up(static_cast<double>(pieces) * each.each, scales.fine.step);
  return tally;
}

}  // namespace brimwright::planning
