#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>

namespace brimwright::geometry {

/// The attributes of one opening tag, as written (character references are not resolved).
using XmlAttributes = std::map<std::string, std::string, std::less<>>;

/// Calls `see` with the name, less its namespace's prefix, and the attributes of each opening tag
/// in turn, until it answers false. Comments, CDATA, declarations and text are passed over. Returns
/// false where the text is not XML as far as it was read.
bool for_each_tag(std::string_view xml,
                  const std::function<bool(std::string_view name, const XmlAttributes&)>& see);

}  // namespace brimwright::geometry
