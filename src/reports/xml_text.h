#pragma once

#include <string>

namespace brimwright::reports {

/// `text` for XML content and attributes: markup escaped; characters that XML 1.0 does not allow,
/// and bytes that are not UTF-8, shown as U+FFFD.
std::string xml_escaped(const std::string& text);

}  // namespace brimwright::reports
