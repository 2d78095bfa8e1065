#pragma once

#include "reports/drawing.h"

struct _cairo;

namespace brimwright::helpers {

/// Draws by a pen whose unit is a millimetre, from where its origin is.
void draw(_cairo* pen, const reports::Drawing& drawing);

}  // namespace brimwright::helpers
