#pragma once

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <string_view>

namespace brimwright {

/// Parses `text`, refusing what a JSON library lets through: repeated keys, more than 64 levels,
/// numbers beyond a double. UserError names `file`, with line and column where it is not JSON.
nlohmann::ordered_json parsed_json(std::string_view text, const std::string& file);

}  // namespace brimwright
