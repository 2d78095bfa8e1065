#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright {

/// The name of `known` nearest to `wrong` by edit distance, if near enough to be a slip. Nothing
/// for more than 100 characters, which no name that is known here has.
std::optional<std::string> nearest_name(std::string_view wrong,
                                        const std::vector<std::string>& known);

}  // namespace brimwright
