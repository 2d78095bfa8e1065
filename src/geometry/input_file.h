#pragma once

#include <string>

namespace brimwright::geometry {

/// All bytes of a regular file of at most 1 GiB. UserError for one that is missing, may not be
/// read, is empty or too long, and for folders, pipes and devices, which it does not wait for.
std::string bytes_of(const std::string& path);

}  // namespace brimwright::geometry
