#pragma once

#include "planning/plan.h"

#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {

/// Files of the whole piece as bytes, by the paths' endings: .svg, .glb, .stl. UserError at
/// "--piece" for any other ending.
std::vector<std::pair<std::string, std::string>> piece_files(const std::vector<std::string>& paths,
                                                             const planning::Run& run,
                                                             const planning::Plan& plan);

}  // namespace brimwright::service
