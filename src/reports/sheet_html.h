#pragma once

#include "reports/sheet_blocks.h"

#include <optional>
#include <string>

namespace brimwright::reports {

/// The sheet as one HTML file that needs nothing else: no script, no picture elsewhere. Black on
/// white; weights of 24 points. Without `paper` it prints on whatever is in the printer.
std::string sheet_html(const Sheet& sheet, std::optional<Paper> paper = {});

}  // namespace brimwright::reports
