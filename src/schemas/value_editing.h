#pragma once

#include <string>
#include <vector>

namespace brimwright::schemas {

/// Where a value stands: the keys that lead to it from the document's top. Of a list on the way its
/// key is followed by the element's place, which is there: {"decorations", "0", "melt_loss"}.
using KeyPath = std::vector<std::string>;

/// `text`, a JSON object, with the value `json` at `path`, everything else to the letter. What is
/// not there yet comes last in its object, set off as its first member is.
std::string with_value(const std::string& text, const KeyPath& path, const std::string& json);

/// `text` without what stands at `path`, if anything does; everything else to the letter.
std::string without_value(const std::string& text, const KeyPath& path);

}  // namespace brimwright::schemas
