#pragma once

#include <functional>
#include <string_view>

namespace brimwright::service {

// Parts of a text that is JSON, without reading what lies in them: of a long answer of which little
// is needed. A key is given as it is written, which is itself for letters, digits and . _ - alone.
// What is no JSON is noticed late or never, but nothing past the text is looked at: then there is a
// std::runtime_error.

void each_member(std::string_view object,
                 const std::function<void(std::string_view key, std::string_view value)>& see);
void each_element(std::string_view list, const std::function<void(std::string_view)>& see);

}  // namespace brimwright::service
