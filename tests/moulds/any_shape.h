#pragma once

#include "moulds/shape.h"

#include <rapidcheck.h>

namespace brimwright::moulds {

/// Any shape a maker could have, of every kind, from thumb to loaf size; what read_shape would
/// accept.
rc::Gen<Shape> any_shape();

/// The same shape with every length times `factor`.
Shape enlarged(const Shape& shape, double factor);

}  // namespace brimwright::moulds
