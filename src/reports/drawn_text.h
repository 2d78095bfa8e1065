#pragma once

#include <string>
#include <vector>

namespace brimwright::reports {

/// About how wide `text` is in a sans serif font of that size; on the safe side.
double width_of(const std::string& text, double size_mm);

/// `text` broken at blanks, or within words where it must be, into lines no wider than that.
std::vector<std::string> broken(const std::string& text, double size_mm, double width_mm);

}  // namespace brimwright::reports
