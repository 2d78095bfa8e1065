#pragma once

#include "geometry/levels/level_curve.h"
#include "moulds/shape.h"

namespace brimwright::moulds {

/// The exact curve of `shape`, by closed form.
geometry::LevelCurve level_curve(const Shape& shape);

}  // namespace brimwright::moulds
