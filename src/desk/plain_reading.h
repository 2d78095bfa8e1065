#pragma once

#include <cstddef>
#include <string>

namespace brimwright::desk {

/// The bytes of a regular file that is no link; UserError if it is anything else, cannot be read or
/// has more than `most` bytes.
std::string plain_file(const std::string& path, std::size_t most);

}  // namespace brimwright::desk
