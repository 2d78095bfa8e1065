#pragma once

#include <string>
#include <string_view>

namespace brimwright::desk {

/// 192 bits from the system's random numbers, as 48 hexadecimal digits.
std::string new_token();

/// Compares without telling by its time where the first difference is; only the length shows.
bool is_same_secret(std::string_view a, std::string_view b);

}  // namespace brimwright::desk
