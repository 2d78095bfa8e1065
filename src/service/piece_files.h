#pragma once

#include "planning/plan.h"

#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {

/// UserError at "--piece" for a path that does not end in what a piece can be written as: .svg,
/// .glb or .stl.
void check_piece_endings(const std::vector<std::string>& paths);

/// Files of the whole piece as bytes, by the paths' endings, which were checked. With
/// `is_cut_open`, the solids are without their front half and capped; UserError at "--cut-open" if
/// none is asked for.
std::vector<std::pair<std::string, std::string>> piece_files(const std::vector<std::string>& paths,
                                                             const planning::Run& run,
                                                             const planning::Plan& plan,
                                                             bool is_cut_open);

}  // namespace brimwright::service
