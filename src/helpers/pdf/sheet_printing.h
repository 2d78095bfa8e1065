#pragma once

#include "reports/sheet_blocks.h"

#include <string>

namespace brimwright::helpers {

/// The bytes of the sheet's PDF.
std::string printed(const reports::Sheet& sheet, reports::Paper paper);

}  // namespace brimwright::helpers
