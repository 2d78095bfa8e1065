#include "moulds/shape_walls.h"

#include <cmath>

namespace brimwright::moulds {

Length inset_at_floor(Length height, Angle draft) { return height * std::tan(draft.radians()); }

double wave_of(const FlutedCup& cup) { return cup.flute_depth / cup.brim_diameter; }

}  // namespace brimwright::moulds
