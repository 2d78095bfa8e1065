#pragma once

#include <string_view>

namespace brimwright::chemistry {

/// Whether `name` is one of plain water's, in five languages: "distilled water", "Wasser,
/// entmineralisiert", "eau déminéralisée"; not "rose water", nor "water 5 %".
bool names_water(std::string_view name);

}  // namespace brimwright::chemistry
