#pragma once

#include "geometry/levels/level_curve.h"
#include "moulds/mould.h"
#include "units/fields.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::moulds {

/// One way in which a cavity was measured, by itself.
struct MeasuredWay {
  Way way;
  geometry::LevelCurve curve;
  /// Between which the volume to the brim may lie, by what this way tells of itself; nothing where
  /// it tells nothing. What all rounds or measures have wrong in the same way is not in it.
  std::optional<Volume> low = {}, high = {};
  std::string rests_on;  // what that rests on, in words
};

/// The ways that the mould file `fields` gives, as `mould` was read of it, most trusted first.
///
/// Water: the least and the greatest of its weighings. Dimensions: each measure good to half a
/// millimetre (common practice, no source), their effects added as the root of the sum of their
/// squares (JCGM 100:2008, 5.1.2; from memory). A mesh: what its facets cut off round walls.
std::vector<MeasuredWay> measured_ways(const Fields& fields, const Mould& mould);

}  // namespace brimwright::moulds
