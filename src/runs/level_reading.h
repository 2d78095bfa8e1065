#pragma once

#include "geometry/levels/tilted_pour.h"
#include "planning/run.h"
#include "units/angle.h"
#include "units/fields.h"
#include "units/user_error.h"

#include <string>
#include <string_view>

namespace brimwright::runs {

// How high a cavity is filled, and how it stands meanwhile.

/// "below_brim" or "depth", exactly one of them, under `key`.
planning::FillLevel read_fill_level(const Fields& section, std::string_view key);

/// A layer's "tilted": {"angle": "12 deg", "low_side": "+x"}.
geometry::Tilt read_tilt(const Fields& tilted);

/// Which side of a tilted mould is low: "+x", "-y", or degrees from +x towards +y, from above.
Angle read_low_side(const std::string& text, const Place& where);

}  // namespace brimwright::runs
