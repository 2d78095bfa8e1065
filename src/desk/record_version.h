#pragma once

#include <string>

namespace brimwright::desk {

/// Another with every act that is recorded in a folder, whoever did it; "none" where nothing is.
/// Never throws, and takes as long as it takes to read the first bytes of a file.
std::string record_version(const std::string& folder);

}  // namespace brimwright::desk
