#pragma once

#include <string>
#include <string_view>

namespace brimwright::reports {

/// 16 digits that are the same for the same text, today and in years, and differ for any other text
/// that is met by chance. Keeps nothing secret.
std::string text_mark(std::string_view text);

}  // namespace brimwright::reports
