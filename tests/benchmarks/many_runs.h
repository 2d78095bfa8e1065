#pragma once

#include <filesystem>
#include <string>
#include <vector>

/// Writes `count` runs of as many formulas into `folder`, with a studio that sells each of the 60
/// materials that they need together in 4 packs of 8 sellers, who ask for postage and send free
/// from a sum on. What they are called is invented. Gives the runs' files.
std::vector<std::string> write_many_runs(const std::filesystem::path& source,
                                         const std::filesystem::path& folder, int count);
