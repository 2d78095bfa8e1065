#pragma once

#include "moulds/library.h"
#include "moulds/mould.h"
#include "runs/studio_file.h"
#include "service/day_numbers.h"

#include <map>
#include <string>

namespace brimwright::service {

/// Counts a mould that the studio owns and no run uses with one of the `used` that it is like: as
/// many cavities, of which each holds the same at every depth, within 1 %. That is noted.
void count_like_moulds(DayWork& work, const std::map<std::string, const moulds::Mould*>& used,
                       const runs::Studio& studio, const moulds::Library& library);

}  // namespace brimwright::service
