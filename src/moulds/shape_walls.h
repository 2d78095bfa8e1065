#pragma once

#include "moulds/shape.h"

namespace brimwright::moulds {

// What the ways of measuring a shape have in common.

/// How far the wall stands inward at the floor of a cavity whose wall leans outward by `draft`.
Length inset_at_floor(Length height, Angle draft);

/// The share a of r = R (1 + a cos n t) by which a fluted wall waves.
double wave_of(const FlutedCup& cup);

}  // namespace brimwright::moulds
