#include "reports/xml_text.h"

#include "units/shown_text.h"

#include <cstdint>
#include <string_view>

namespace brimwright::reports {
namespace {

/// XML 1.0, production 2.
bool is_allowed(std::uint32_t code) {
  return code == 0x9 || code == 0xA || code == 0xD || (code >= 0x20 && code <= 0xD7FF) ||
         (code >= 0xE000 && code <= 0xFFFD) || (code >= 0x10000 && code <= 0x10FFFF);
}

}  // namespace

std::string xml_escaped(const std::string& text) {
  constexpr const char* unknown = "\xEF\xBF\xBD";  // U+FFFD
  std::string escaped;
  for (std::string_view rest = text; !rest.empty();) {
    const auto [bytes, number] = first_character(rest);
    const std::string_view shown = rest.substr(0, bytes);
    rest.remove_prefix(bytes);
    if (!number || !is_allowed(*number))
      escaped += unknown;
    else if (shown == "&")
      escaped += "&amp;";
    else if (shown == "<")
      escaped += "&lt;";
    else if (shown == ">")
      escaped += "&gt;";
    else if (shown == "\"")
      escaped += "&quot;";
    else
      escaped += shown;
  }
  return escaped;
}

}  // namespace brimwright::reports
