#pragma once

#include "reports/sheet_blocks.h"

#include <string>

namespace brimwright::reports {

/// The sheet as PDF, black on white; weights of 24 points, drawings at true size. The same bytes
/// for the same sheet and fonts. Printed by the helper program brimwright-pdf (see helpers/pdf);
/// UserError where that is not installed, naming HTML as the other way.
std::string sheet_pdf(const Sheet& sheet, Paper paper);

}  // namespace brimwright::reports
