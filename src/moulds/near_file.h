#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::moulds {

/// The file probably meant by `name`, which is in none of `folders`: the same in a folder further
/// in, or one that is a slip away; as it is named from the folder that it was found from.
std::optional<std::string> near_file(const std::string& name,
                                     const std::vector<std::filesystem::path>& folders);

}  // namespace brimwright::moulds
