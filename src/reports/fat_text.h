#pragma once

#include "chemistry/fat.h"

#include <string>

namespace brimwright::reports {

/// Everything known of a fat and where it is from, at most 80 columns wide.
std::string fat_in_full(const chemistry::Fat& fat);

/// "248 to 265", or one number where both ends are the same.
std::string range_text(double low, double high, int decimals);

}  // namespace brimwright::reports
