#pragma once

#include <string>
#include <vector>

namespace brimwright::cli {

/// `did you mean "NEAR"?` with the nearest of `known`; `otherwise` where none is near.
std::string meant(const std::string& typed, const std::vector<std::string>& known,
                  const std::string& otherwise);

/// The same of a file that is not there, with the files of its folder.
std::string meant_file(const std::string& path, const std::string& otherwise);

}  // namespace brimwright::cli
