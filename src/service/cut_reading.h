#pragma once

#include "geometry/levels/tilted_pour.h"
#include "planning/cutting.h"
#include "units/angle.h"
#include "units/fields.h"
#include "units/user_error.h"

#include <string>

namespace brimwright::service {

/// A run's "cut": the bar's size and the kerf always, the rest where it is not nothing. UserError
/// with the field for anything missing, unknown or contradictory.
planning::Cut read_cut(const Fields& cut);

/// A layer's "propped": {"angle": "12 deg", "low_side": "+x"}.
geometry::Tilt read_tilt(const Fields& propped);

/// Which side of a propped mould is low: "+x", "-y", or degrees from +x towards +y, from above.
Angle read_low_side(const std::string& text, const Place& where);

}  // namespace brimwright::service
