#pragma once

#include "planning/tally.h"
#include "units/user_error.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::planning {

/// The batch of that number, by itself; it is split off from those that are alike. Its place.
/// UserError at `where` if there is none, or no number says which of several.
std::size_t split_off(Plan& plan, std::optional<std::int64_t> number, const Place& where);

/// The whipping of that number, 0: the only one, likewise.
std::size_t split_off(std::vector<Whipping>& whippings, std::int64_t number, const Place& where);

}  // namespace brimwright::planning
