#pragma once

#include "planning/plan.h"
#include "service/requests.h"

#include <vector>

namespace brimwright::service {

/// Those of the wanted files that show the whole piece, in their order. With `is_cut_open`, the
/// solids are without their front half and capped.
std::vector<MadeFile> piece_files(const std::vector<WantedFile>& wanted, const planning::Run& run,
                                  const planning::Measured& measured, const planning::Plan& plan,
                                  bool is_cut_open);

}  // namespace brimwright::service
