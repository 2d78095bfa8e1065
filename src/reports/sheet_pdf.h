#pragma once

#include "reports/sheet_blocks.h"

#include <string>

namespace brimwright::reports {

/// The sheet as PDF, black on white; weights of 24 points, drawings at true size. The same bytes
/// for the same sheet.
std::string sheet_pdf(const Sheet& sheet, Paper paper);

}  // namespace brimwright::reports
