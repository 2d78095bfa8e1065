#pragma once

#include "moulds/shape.h"
#include "units/fields.h"
#include "units/usual_measures.h"

namespace brimwright::moulds {

/// What is usual for a cavity (data/usual_moulds.json): what is far outside is asked for once.
const UsualMeasures& usual_moulds();

/// Asks for the measures of `shape`, which stands in `fields`, where they are far from usual: a
/// radius for a diameter, metres for millimetres. To be called once all of its keys are known.
void ask_for_size(const Fields& fields, const Shape& shape);

}  // namespace brimwright::moulds
