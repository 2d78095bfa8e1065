#pragma once

#include <optional>
#include <string>

namespace brimwright::moulds {

/// The file in the folder of `path`, which is not there, whose name is nearest to its own, if near
/// enough to be a slip; its bare name.
std::optional<std::string> near_file(const std::string& path);

}  // namespace brimwright::moulds
