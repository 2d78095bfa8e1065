#pragma once

#include "planning/piece.h"
#include "planning/tally.h"

#include <string>

namespace brimwright::reports {

/// One finished piece from the front, or a loaf before it is cut from the side that its bars show,
/// as an SVG for print, in black and white and to scale: each part in a shading of its own, buried
/// embeds dashed, with its size, the pour line, what each part weighs, and scale bars.
///
/// At most 190 mm by 259 mm; true size when it fits so, otherwise at the first scale of ISO 5455
/// that does. A topping whose shape is not known is left out, and that is said.
std::string piece_picture_svg(const planning::PieceModel& model, const planning::Plan& plan);

}  // namespace brimwright::reports
