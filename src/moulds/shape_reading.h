#pragma once

#include "moulds/shape.h"
#include "units/fields.h"

namespace brimwright::moulds {

/// Reads the object under "shape" of a mould file: its "kind" and that kind's measures. UserError
/// for measures that make no cavity (a draft that closes the floor, a post wider than the cup).
Shape read_shape(const Fields& fields);

}  // namespace brimwright::moulds
