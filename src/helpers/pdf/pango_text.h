#pragma once

#include <string>

namespace brimwright::helpers {

/// Names of a maker's may hold bytes that are no UTF-8, which Pango refuses.
std::string as_utf8(const std::string& text);

}  // namespace brimwright::helpers
