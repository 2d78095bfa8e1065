#pragma once

#include "reports/drawing.h"

#include <string>

namespace brimwright::reports {

/// The drawing as an SVG 1.1 file, a millimetre to a unit. Its names (classes, patterns, clips)
/// begin with the drawing's prefix.
std::string svg_of(const Drawing& drawing);

}  // namespace brimwright::reports
