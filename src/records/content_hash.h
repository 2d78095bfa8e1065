#pragma once

#include <string>
#include <string_view>

namespace brimwright::records {

/// SHA-256 of `bytes` (FIPS 180-4), as 64 small hexadecimal digits.
std::string content_hash(std::string_view bytes);

}  // namespace brimwright::records
